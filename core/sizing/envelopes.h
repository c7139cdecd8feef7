// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Results over a range, for plots. Each calls the same steps as size_axis.

#include "machine/machine.h"

#include <optional>
#include <vector>

namespace feedwright {

struct ThrustPoint {
  Velocity feed;
  Force thrust; ///< cutting thrust the motor can push at that steady feed, up the slope; ≥ 0
  Force clear;  ///< up to which the motor's margin reads clear; ≥ 0
};
struct AccelerationPoint {
  Velocity feed;
  Acceleration acceleration; ///< up the slope, not cutting; ≥ 0
  Acceleration clear;        ///< up to which the margin reads clear
};
struct MotorTorquePoint {
  AngularVelocity speed;
  Velocity feed;     ///< of the axis at that speed
  Torque whole;      ///< pull-out of a stepper, short-time of a servo
  Torque usable;     ///< of it, for a moment
  Torque continuous; ///< usable for ever; of a stepper the same
};
struct WhipPoint {
  Length span;
  Velocity feed; ///< allowed by whip
};

/// From standstill to the end of the motor's curve, or where nothing is left, or to the last feed
/// of interest; evenly spaced.
std::vector<ThrustPoint> thrust_over_feed(const Machine&, const Axis&, int count,
                                          std::optional<Velocity> last = std::nullopt);
std::vector<AccelerationPoint> acceleration_over_feed(const Machine&, const Axis&, int count,
                                                      std::optional<Velocity> last = std::nullopt);
/// A curve without an end of its own is drawn to where little is left, and as far as `at_least`.
std::vector<MotorTorquePoint> motor_torque_over_speed(const Machine&, const Axis&, int count,
                                                      AngularVelocity at_least = {});

/// Allowed whip feed over the span between bearings, for given end supports, all else as it is.
std::vector<WhipPoint> whip_over_span(const Axis&, EndSupport motor_end, EndSupport far_end,
                                      Length from, Length to, int count);

} // namespace feedwright
