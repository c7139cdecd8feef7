// SPDX-License-Identifier: GPL-3.0-or-later

// Where the motor's torque goes while the axis accelerates, cuts and holds.

#include "sizing/motor_needs.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"
#include "studies/need_words.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

namespace {

class TorqueMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    set_y(tr("torque"), torque_unit());
    double most = 0.0;
    const auto needs = motor_needs(subject_.machine, axis_);
    for (const MotorNeed& need : needs) {
      out_.stacks.push_back(stack(need));
      most = std::max(most, in_unit(need.torque, torque_unit()));
    }
    scale(most);
    out_.x_end = std::max(1.0, double(out_.stacks.size()));
    out_.summary = summary(needs);
    return std::move(out_);
  }

private:
  StudyStack stack(const MotorNeed& need) const {
    StudyStack made{column_name(need)};
    if (need.state == MotorState::holding) {
      made.parts.push_back({tr("weight, less what the drive holds"),
                            in_unit(need.torque, torque_unit()),
                            static_cast<int>(TorqueShare::gravity)});
    } else {
      for (std::size_t i = 0; i < need.shares.size(); ++i) {
        if (need.shares[i] > Torque()) {
          made.parts.push_back({torque_share_name(static_cast<TorqueShare>(i), axis_.drive),
                                in_unit(need.shares[i], torque_unit()), static_cast<int>(i)});
        }
      }
    }
    made.ticks.push_back({tr("asked"), in_unit(need.torque, torque_unit())});
    if (need.has) {
      made.ticks.push_back({need.state == MotorState::holding ? tr("usable at rest") : tr("usable"),
                            in_unit(*need.has, torque_unit()), true, need.verdict});
    } else {
      const QString why = tr("▲ past the end of the motor's curve");
      made.notes.push_back({why, why});
    }
    return made;
  }

  QString column_name(const MotorNeed& need) const {
    return need.state == MotorState::holding
               ? motor_state_name(need.state)
               : tr("%1 at %2", "what the motor does, feed")
                     .arg(motor_state_name(need.state), text(need.feed, feed_unit()));
  }

  /// Holds what is asked whole, and with it every level that is not far beyond; the others stand at
  /// the top.
  void scale(double most) {
    constexpr double far_beyond = 3.0;
    double top = most;
    for (const StudyStack& each : out_.stacks) {
      for (const StackTick& tick : each.ticks) {
        top = tick.at <= most * far_beyond ? std::max(top, tick.at) : top;
      }
    }
    panel().y_end = top > 0.0 ? top * 1.1 : 1.0;
  }

  QString summary(const std::vector<MotorNeed>& needs) const {
    if (needs.empty()) {
      return tr("Give a feed and an acceleration, or a cutting feed and a thrust, to see where the "
                "motor's torque goes.");
    }
    const MotorNeed& first = needs.front();
    const auto largest = std::ranges::max_element(first.shares);
    const auto which = static_cast<TorqueShare>(largest - first.shares.begin());
    return tr("While %1 the motor is asked %2; the largest share, %3, is %4.",
              "what the motor does, torque, torque, where it goes")
        .arg(motor_state_name(first.state), text(first.torque, torque_unit()),
             text(*largest, torque_unit()), torque_share_name(which, axis_.drive));
  }
};

} // namespace

StudyFigure torque_figure(const StudySubject& subject) {
  return TorqueMaker(subject).make();
}

} // namespace feedwright
