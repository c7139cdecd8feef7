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
    const std::vector<MotorNeed> needs = motor_needs(subject_.machine, axis_);
    add_motor(past(needs));
    for (const MotorNeed& need : needs) {
      add_need(need);
    }
    add_ends(needs);
    fit();
    if (out_.top) {
      add_stop_line(out_.top->per_x);
    }
    if (results_.rms_torque && results_.limit(LimitId::rms_torque).applies) {
      panel().lines.push_back(
          {tr("root mean square of the duty, %1").arg(text(*results_.rms_torque, torque_unit())),
           in_unit(*results_.rms_torque, torque_unit()), false, false});
    }
    out_.summary = summary();
    return std::move(out_);
  }

private:
  const Unit& speed_unit() const { return unit(Kind::angular_velocity, "rpm"); }

  /// A little past the farthest speed marked, so that no mark stands where no curve is drawn.
  static AngularVelocity past(const std::vector<MotorNeed>& needs) {
    constexpr double a_little = 1.05;
    AngularVelocity farthest;
    for (const MotorNeed& need : needs) {
      farthest = std::max({farthest, need.speed, need.up_to});
    }
    return farthest * a_little;
  }

  void add_motor(AngularVelocity at_least) {
    const bool servo = std::holds_alternative<Servo>(axis_.motor);
    StudyCurve whole{servo ? tr("short-time") : tr("pull-out")};
    StudyCurve usable{servo ? tr("usable for a moment") : tr("usable")};
    StudyCurve lasting{tr("usable for ever")};
    whole.present = false;
    whole.dash = 1;
    lasting.dash = 3;
    for (const MotorTorquePoint& point :
         motor_torque_over_speed(subject_.machine, axis_, points, at_least)) {
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
         asked_at, torque,
         need.state == MotorState::holding ? need.verdict : at_feed(need.verdict, need.feed),
         true});
  }

  static bool ends(const MotorNeed& need) {
    return need.state != MotorState::holding && need.up_to > AngularVelocity();
  }

  /// Up to where the motor is strong enough. Needs that end at the same feed share the mark, the
  /// highest has it; where they do not, each says whose it is.
  void add_ends(const std::vector<MotorNeed>& needs) {
    const auto feed_of = [&](const MotorNeed& need) { return text(need.up_to_feed, feed_unit()); };
    QStringList feeds;
    for (const MotorNeed& need : needs) {
      if (ends(need) && !feeds.contains(feed_of(need))) {
        feeds << feed_of(need);
      }
    }
    for (const QString& feed : feeds) {
      const MotorNeed* highest = nullptr;
      for (const MotorNeed& need : needs) {
        if (ends(need) && feed_of(need) == feed &&
            (highest == nullptr || need.torque > highest->torque)) {
          highest = &need;
        }
      }
      panel().marks.push_back({feeds.size() > 1
                                   ? tr("%1: enough up to %2", "what the motor does, feed")
                                         .arg(motor_state_name(highest->state), feed)
                                   : tr("enough up to %1").arg(feed),
                               in_unit(highest->up_to, speed_unit()),
                               in_unit(highest->torque, torque_unit()), Verdict::open, false});
    }
  }

  QString summary() const {
    if (!results_.motor_speed || !results_.rapid_torque) {
      return tr("Motor torque against speed; give a feed and an acceleration to see the need.");
    }
    const QString speed = text(*results_.motor_speed, speed_unit());
    const QString need = text(*results_.rapid_torque, torque_unit());
    return results_.usable_torque
               ? with_stop(tr("At the wanted feed, %1, the motor needs %2 of its usable %3.")
                               .arg(speed, need, text(*results_.usable_torque, torque_unit())),
                           **axis_.targets.feed)
               : tr("At the wanted feed, %1, the motor needs %2; its curve ends before.")
                     .arg(speed, need);
  }
};

} // namespace

StudyFigure motor_figure(const StudySubject& subject) {
  return MotorMaker(subject).make();
}

} // namespace feedwright
