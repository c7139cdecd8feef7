// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/stepper_torque.h"

#include <algorithm>

namespace feedwright {

double rotor_teeth(Angle step_angle) {
  return (pi / 2.0) * radian / step_angle;
}

TorquePerCurrent torque_constant(Torque holding_torque, Current rated_current) {
  return holding_torque / (std::numbers::sqrt2 * rated_current);
}

PullOut pull_out(const StepperWinding& w, AngularVelocity speed) {
  const Resistance reactance = w.rotor_teeth * (speed / radian) * w.inductance;
  const Voltage back_emf = w.torque_constant * speed;
  const auto impedance_squared = w.resistance * w.resistance + reactance * reactance;
  const Resistance impedance = sqrt(impedance_squared);

  // Top of the current disc inside the voltage disc: current alone limits.
  const Current limit = w.current_limit;
  const Voltage in_phase = w.resistance * limit + back_emf;
  const Voltage across = reactance * limit;
  if (in_phase * in_phase + across * across <= w.voltage_limit * w.voltage_limit) {
    return {w.torque_constant * limit, PullOutBound::current};
  }

  // Centre of the voltage disc, −Kω/(R + jX), and its radius.
  const Current centre_q = -back_emf * w.resistance / impedance_squared;
  const Current centre_d = back_emf * reactance / impedance_squared;
  const Current radius = w.voltage_limit / impedance;

  // Top of the voltage disc inside the current disc: voltage alone limits.
  const Current top_q = centre_q + radius;
  if (top_q * top_q + centre_d * centre_d <= limit * limit) {
    return {std::max(Torque(), Torque(w.torque_constant * top_q)), PullOutBound::voltage};
  }

  // Both limit: the upper crossing of the two circles.
  const Current distance = sqrt(centre_q * centre_q + centre_d * centre_d);
  if (distance > limit + radius || distance == Current()) {
    return {Torque(), PullOutBound::both};
  }
  const Current along = (limit * limit - radius * radius + distance * distance) / (2.0 * distance);
  const auto off_squared = limit * limit - along * along;
  if (off_squared < Current() * Current()) {
    return {Torque(), PullOutBound::both};
  }
  const Current off = sqrt(off_squared);
  const Current q = (centre_q * along + abs(centre_d) * off) / distance;
  return {std::max(Torque(), Torque(w.torque_constant * q)), PullOutBound::both};
}

Torque pull_out_torque(const StepperWinding& winding, AngularVelocity speed) {
  return pull_out(winding, speed).torque;
}

} // namespace feedwright
