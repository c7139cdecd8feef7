// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the motor and its controller allow.

#include "sizing/load_steps.h"

namespace feedwright {

/// Acceleration at which need equals `torque`: the need is linear in it up the slope, where power
/// flows to the load at every stage. Below zero if the torque cannot even keep the speed.
template <class W, class T>
auto acceleration_from(const SizingState<W>& s, const T& torque) {
  const auto mass = s.in(PartSlot::carriage, "mass", *s.axis.carriage.mass);
  const auto stage = s.reduction * s.stage_efficiency;
  const auto resting = steady_torque(s, s.gravity + s.friction);
  const auto per_acceleration =
      s.motor_side_inertia / s.motor_travel +
      (s.screw_side_inertia / s.screw_travel + mass * s.screw_travel / s.efficiency) / stage;
  return (torque - resting) / per_acceleration;
}

/// Axial force the motor makes at steady speed with `torque`.
template <class W, class T>
auto axial_force_from(const SizingState<W>& s, const T& torque) {
  return (torque * s.reduction * s.stage_efficiency - s.drag) * s.efficiency / s.screw_travel;
}

template <class W>
void motor_at_wanted_feed(SizingState<W>& s) {
  if (!s.axis.targets.feed) {
    return;
  }
  const auto feed = s.in(PartSlot::targets, "feed", **s.axis.targets.feed);
  const auto speed = FEEDWRIGHT_KEEP(s, motor_speed, feed / s.motor_travel);
  const auto usable = s.motor.usable(value_of(speed), Duty::short_time);
  if (!usable) {
    return;
  }
  const auto torque =
      FEEDWRIGHT_KEEP(s, usable_torque, s.working.solved("motor_curve", *usable, speed));
  const auto acceleration = acceleration_from(s, torque);
  FEEDWRIGHT_KEEP(s, acceleration_available,
                  value_of(acceleration) < Acceleration() ? s.constant("0", Acceleration())
                                                          : acceleration);
}

template <class W>
void motor_at_cutting_feed(SizingState<W>& s) {
  if (!s.axis.targets.cutting_feed) {
    return;
  }
  const auto feed = s.in(PartSlot::targets, "cutting_feed", **s.axis.targets.cutting_feed);
  const auto speed = feed / s.motor_travel;
  const auto usable = s.motor.usable(value_of(speed), Duty::continuous);
  if (!usable) {
    return;
  }
  const auto torque =
      FEEDWRIGHT_KEEP(s, usable_torque_cutting, s.working.solved("motor_curve", *usable, speed));
  const auto force = axial_force_from(s, torque);
  const auto axial = FEEDWRIGHT_KEEP(s, motor_thrust,
                                     value_of(force) < Force() ? s.constant("0", Force()) : force);
  const auto left = axial - s.gravity - s.friction;
  FEEDWRIGHT_KEEP(s, thrust_available, value_of(left) < Force() ? s.constant("0", Force()) : left);
}

template <class W>
void motor_feeds(SizingState<W>& s) {
  if (s.out.rapid_torque) {
    const auto need = s.earlier(ResultId::rapid_torque, *s.out.rapid_torque);
    const auto meeting = s.motor.speed_meeting(value_of(need), Duty::short_time);
    FEEDWRIGHT_KEEP(s, motor_torque_feed,
                    s.working.solved("torque_meets_need", meeting, need) * s.motor_travel);
  }
  if (const auto last = s.motor.last_speed()) {
    FEEDWRIGHT_KEEP(s, motor_speed_feed, s.constant("n_end", *last) * s.motor_travel);
  }
  if (const auto& rate = s.machine.controller.step_rate_limit) {
    const auto steps = s.constant("n_t", s.motor.steps_per_turn());
    FEEDWRIGHT_KEEP(
        s, step_rate_feed,
        times_radian(2.0 * pi * s.in(PartSlot::controller, "step_rate_limit", **rate) / steps) *
            s.motor_travel);
  }
}

template <class W>
void other_feeds(SizingState<W>& s) {
  if (const auto* belt = std::get_if<BeltStage>(&s.axis.transmission);
      belt != nullptr && belt->speed_limit) {
    constexpr auto slot = PartSlot::transmission;
    const auto radius =
        per_radian(s.in(slot, "motor_pulley_teeth", double(belt->motor_pulley_teeth)) *
                   s.in(slot, "pitch", *belt->pitch) / (2.0 * pi));
    FEEDWRIGHT_KEEP(s, belt_speed_feed,
                    s.in(slot, "speed_limit", **belt->speed_limit) / radius * s.motor_travel);
  }
  if (const auto& limit = s.axis.guides.speed_limit) {
    FEEDWRIGHT_KEEP(s, guide_speed_feed, s.in(PartSlot::guides, "speed_limit", **limit));
  }
}

} // namespace feedwright
