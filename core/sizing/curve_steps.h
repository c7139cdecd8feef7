// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The motor's torque at a speed, told as what it comes from: points, ratings or a servo's regions.

#include "sizing/sizing_state.h"

namespace feedwright {

/// A stepper's by its ratings, with each of them.
template <class W, class S>
auto torque_by_ratings(const SizingState<W>& s, const StepperByRatings& motor,
                       CurveEquation equation, const Torque& torque, const S& speed) {
  constexpr auto slot = PartSlot::motor;
  const auto held = s.in(slot, "holding_torque", *motor.holding_torque);
  const auto rated = s.in(slot, "rated_current", *motor.rated_current);
  const auto driven = s.in(slot, "drive_current", *motor.drive_current);
  const auto detent = s.in(slot, "detent_torque", *motor.detent_torque);
  if (equation == CurveEquation::ratings_by_current) {
    return s.solved("ratings_by_current", torque, held, rated, driven, detent);
  }
  const auto teeth = s.constant("N_r", s.motor.rotor_teeth());
  const auto resistance = s.in(slot, "resistance", *motor.resistance);
  const auto inductance = s.in(slot, "inductance", *motor.inductance);
  const auto voltage = s.in(PartSlot::supply, "voltage", *s.machine.supply.voltage);
  return equation == CurveEquation::ratings_by_voltage
             ? s.solved("ratings_by_voltage", torque, speed, held, rated, resistance, inductance,
                        voltage, teeth, detent)
             : s.solved("ratings_by_both", torque, speed, held, rated, driven, resistance,
                        inductance, voltage, teeth, detent);
}

/// `torque` is what the curve gives at that speed and for that long.
template <class W, class S>
auto torque_on_curve(const SizingState<W>& s, const Torque& torque, const S& speed, Duty duty) {
  using Result = typename SizingState<W>::template N<Torque>;
  const CurveEquation equation = s.motor.equation(value_of(speed));
  if (const auto* servo = std::get_if<Servo>(&s.axis.motor)) {
    const auto held = duty == Duty::continuous
                          ? s.in(PartSlot::motor, "continuous_torque", *servo->continuous_torque)
                          : s.in(PartSlot::motor, "peak_torque", *servo->peak_torque);
    if (equation == CurveEquation::servo_held) {
      return Result(held);
    }
    return Result(held * (s.in(PartSlot::motor, "rated_speed", *servo->rated_speed) / speed));
  }
  if (const auto* ratings = std::get_if<StepperByRatings>(&s.axis.motor)) {
    return Result(torque_by_ratings(s, *ratings, equation, torque, speed));
  }
  const auto voltage = s.in(PartSlot::supply, "voltage", *s.machine.supply.voltage);
  switch (equation) {
  case CurveEquation::points_taken_down:
    return Result(s.solved("motor_points_taken_down", torque, speed, voltage));
  case CurveEquation::fitted:
    return Result(s.solved("motor_points_fitted", torque, speed, voltage));
  default: return Result(s.solved("motor_points", torque, speed));
  }
}

} // namespace feedwright
