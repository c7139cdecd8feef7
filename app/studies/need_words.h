// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/motor_needs.h"

#include <QString>

namespace feedwright {

QString motor_state_name(MotorState state); ///< "accelerating"
/// Of an axis with that drive: "moving mass".
QString torque_share_name(TorqueShare share, const FinalDrive& drive);

} // namespace feedwright
