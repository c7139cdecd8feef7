// SPDX-License-Identifier: GPL-3.0-or-later

// The motor's torque over its speed, and what the axis asks of it.

#include "sizing/envelopes.h"
#include "sizing/motor_needs.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"
#include "studies/need_words.h"
#include "text/text_of.h"

#include <algorithm>

namespace feedwright {

namespace {

class MotorMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    set_x(tr("motor speed"), speed_unit());
    set_y(tr("torque"), torque_unit());
    add_motor();
    for (const MotorNeed& need : motor_needs(subject_.machine, axis_)) {
      add_need(need);
    }
    fit();
    if (results_.rms_torque) {
      panel().lines.push_back(
          {tr("root mean square of the duty, %1").arg(text(*results_.rms_torque, torque_unit())),
           in_unit(*results_.rms_torque, torque_unit()), false, false});
    }
    out_.summary = summary();
    return std::move(out_);
  }

private:
  const Unit& speed_unit() const { return unit(Kind::angular_velocity, "rpm"); }

  void add_motor() {
    const bool servo = std::holds_alternative<Servo>(axis_.motor);
    StudyCurve whole{servo ? tr("short-time") : tr("pull-out")};
    StudyCurve usable{servo ? tr("usable for a moment") : tr("usable")};
    StudyCurve lasting{tr("usable for ever")};
    whole.present = false;
    whole.dash = 1;
    lasting.dash = 3;
    for (const MotorTorquePoint& point : motor_torque_over_speed(subject_.machine, axis_, points)) {
      const double speed = in_unit(point.speed, speed_unit());
      const auto add = [&](StudyCurve& curve, Torque torque) {
        curve.x.push_back(speed);
        curve.y.push_back(in_unit(torque, torque_unit()));
      };
      add(whole, point.whole);
      add(usable, point.usable);
      add(lasting, point.continuous);
      if (speed > 0.0) {
        out_.top = {tr("feed"), text_of(feed_unit().symbol),
                    in_unit(point.feed, feed_unit()) / speed};
      }
    }
    panel().curves = {std::move(whole), std::move(usable)};
    if (servo) {
      panel().curves.push_back(std::move(lasting));
    }
  }

  /// The point where it is asked, and the level line to where the usable torque has fallen to it.
  void add_need(const MotorNeed& need) {
    const double asked_at = in_unit(need.speed, speed_unit());
    const double up_to = in_unit(need.up_to, speed_unit());
    const double torque = in_unit(need.torque, torque_unit());
    StudyCurve level{motor_state_name(need.state)};
    level.x = {std::min(asked_at, up_to), std::max(asked_at, up_to)};
    level.y = {torque, torque};
    level.present = false;
    level.dash = 2;
    level.named = false;
    panel().curves.push_back(std::move(level));
    const QString asked = text(need.torque, torque_unit());
    panel().marks.push_back(
        {need.state == MotorState::holding
             ? tr("%1 %2", "what the motor does, torque").arg(motor_state_name(need.state), asked)
             : tr("%1 %2 at %3", "what the motor does, torque, speed")
                   .arg(motor_state_name(need.state), asked, text(need.speed, speed_unit())),
         asked_at, torque, need.verdict, true});
    if (need.state != MotorState::holding && need.up_to > AngularVelocity()) {
      panel().marks.push_back({tr("enough up to %1").arg(text(need.up_to_feed, feed_unit())), up_to,
                               torque, Verdict::open, false});
    }
  }

  QString summary() const {
    if (!results_.motor_speed || !results_.rapid_torque) {
      return tr("Motor torque against speed; give a feed and an acceleration to see the need.");
    }
    const QString speed = text(*results_.motor_speed, speed_unit());
    const QString need = text(*results_.rapid_torque, torque_unit());
    return results_.usable_torque
               ? tr("At the wanted feed, %1, the motor needs %2 of its usable %3.")
                     .arg(speed, need, text(*results_.usable_torque, torque_unit()))
               : tr("At the wanted feed, %1, the motor needs %2; its curve ends before.")
                     .arg(speed, need);
  }
};

} // namespace

StudyFigure motor_figure(const StudySubject& subject) {
  return MotorMaker(subject).make();
}

} // namespace feedwright
