// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What an axis can do with its carriage at one place of the travel. The sizing itself gives the
// worst of all places.

#include "sizing/results.h"

#include <optional>

namespace feedwright {

/// Of the nut (or the carriage on its belt) at one place. What is missing is open, or the train has
/// no such thing.
struct AtPosition {
  Length place; ///< from the motor-end bearing, or from the driving pulley
  /// The whip's figures depend on the place: the length between nut and bearing counts.
  bool whip_depends = false;
  std::optional<Length> whip_length;
  std::optional<AngularVelocity> whip_speed;
  std::optional<AngularVelocity> whip_allowed_speed;
  std::optional<Velocity> whip_feed;
  std::optional<Length> buckling_length;
  std::optional<Force> buckling_thrust;
  std::optional<Stiffness> shaft_stiffness; ///< of one screw
  std::optional<Stiffness> haul_stiffness;  ///< of one hauling belt
  std::optional<Stiffness> axis_stiffness;
  std::optional<Frequency> natural_frequency;
  std::optional<Length> windup_error; ///< on reversal, under the guides' friction
};

/// From the motor-end bearing (or the driving pulley) to the nut at the start of its travel.
Length place_at_start(const Axis& axis);

/// The axis with its carriage `along` the travel from its start, 0 ≤ along ≤ travel (kept within).
/// The machine must be sound. Computed by the steps of the sizing, for that place alone: the
/// sources are theirs.
AtPosition at_position(const Machine& machine, const Axis& axis, Length along);

/// Wanted speed of the screw over a critical speed of it; nothing without a wanted feed or a screw
/// that turns.
std::optional<double> whip_nearness(const Axis& axis, const AxisResults& results,
                                    AngularVelocity critical);

} // namespace feedwright
