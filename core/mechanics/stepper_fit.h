// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mechanics/stepper_torque.h"

#include <span>

namespace feedwright {

/// Torque a motor loses in proportion to its speed (iron, eddy currents, windage).
using SpeedLoss = Per<Torque, AngularVelocity>;

/// A point of a measured pull-out curve.
struct PullOutPoint {
  AngularVelocity speed;
  Torque torque;
};

/// A winding with its loss that comes nearest to measured points.
struct FittedStepper {
  StepperWinding winding;
  SpeedLoss loss{};
  Torque residual; ///< root mean square of what is left over
};

/// Fits inductance and speed loss (≥ 0) to the points that have torque left, least squares; all
/// else of the winding as given, its inductance a starting guess within a factor of 30 either way.
/// For each inductance the loss follows in closed form; the inductance is searched.
FittedStepper fit_to_points(const StepperWinding& winding, std::span<const PullOutPoint> points);

/// Pull-out torque of a winding less its loss, not below zero.
Torque pull_out_torque(const FittedStepper& fitted, AngularVelocity speed);

} // namespace feedwright
