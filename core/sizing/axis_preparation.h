// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/loop_layout.h"
#include "sizing/motor_curve.h"

namespace feedwright {

/// Two pulleys and their belt as geometry.
struct StageLayout {
  Length motor_diameter, screw_diameter, length, centre_distance;
};

/// Nothing if the belt does not go round (which soundness refuses).
std::optional<StageLayout> stage_layout(const BeltStage& belt);

/// What does not change between candidates that share motor, supply and belt: computed once and
/// handed in.
struct AxisPreparation {
  MotorCurve motor;
  std::optional<LoopLayout> loop;
  TakeUpTravel take_up; ///< of the loop's slide from where it stands
  std::optional<StageLayout> stage;

  AxisPreparation(const Machine& machine, const Axis& axis);
  /// With a curve made before, of the same motor and supply.
  AxisPreparation(MotorCurve known, const Axis& axis);
};

} // namespace feedwright
