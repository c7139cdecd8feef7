// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/need_words.h"

#include <QCoreApplication>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  static QString state(MotorState state) {
    switch (state) {
    case MotorState::accelerating: return tr("accelerating");
    case MotorState::cutting: return tr("cutting");
    case MotorState::holding: break;
    }
    return tr("holding");
  }

  static QString share(TorqueShare share, bool screw) {
    switch (share) {
    case TorqueShare::motor_side: return tr("rotor and its shaft");
    case TorqueShare::screw_side: return screw ? tr("turning screw") : tr("turning pulleys");
    case TorqueShare::mass: return tr("moving mass");
    case TorqueShare::gravity: return tr("weight");
    case TorqueShare::guides: return tr("guides and covers");
    case TorqueShare::drag: return screw ? tr("bearings and preload") : tr("bearings");
    case TorqueShare::thrust: return tr("cutting thrust");
    case TorqueShare::thread_loss: return screw ? tr("lost in the thread") : tr("lost in the belt");
    case TorqueShare::stage_loss: break;
    }
    return tr("lost in the stage");
  }
};

} // namespace

QString motor_state_name(MotorState state) {
  return Words::state(state);
}

QString torque_share_name(TorqueShare share, const FinalDrive& drive) {
  return Words::share(share, std::holds_alternative<Screw>(drive));
}

} // namespace feedwright
