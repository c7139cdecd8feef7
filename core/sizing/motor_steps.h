// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the motor and its controller allow.

#include "mechanics/best_travel.h"
#include "sizing/load_steps.h"

namespace feedwright {

/// Acceleration at which need equals `torque`: the need is linear in it up the slope, where power
/// flows to the load at every stage. Below zero if the torque cannot even keep the speed.
template <class W, class T>
auto acceleration_from(const SizingState<W>& s, const T& torque) {
  const auto stage = s.reduction * s.stage_efficiency;
  const auto resting = steady_torque(s, s.gravity + s.friction);
  const auto per_acceleration =
      s.motor_side_inertia / s.motor_travel +
      (s.screw_side_inertia / s.screw_travel + s.resisting_mass * s.screw_travel / s.efficiency) /
          stage;
  return (torque - resting) / per_acceleration;
}

/// Axial force the motor makes at steady speed with `torque`.
template <class W, class T>
auto axial_force_from(const SizingState<W>& s, const T& torque) {
  return (torque * s.reduction * s.stage_efficiency - s.drag) * s.efficiency / s.screw_travel;
}

/// The force at the tool that leaves the harder-loaded motor with so much: side_force() the other
/// way.
template <class W, class F>
auto at_tool(const SizingState<W>& s, const F& of_side) {
  using Result = std::remove_cvref_t<decltype(of_side / s.side_share)>;
  if (s.two_motors) {
    return Result(of_side / s.side_share);
  }
  if (s.out.yaw_friction_share) {
    return Result(of_side / (1.0 + number(FEEDWRIGHT_EARLIER(s, yaw_friction_share))));
  }
  return Result(of_side);
}

template <class W>
void motor_at_wanted_feed(SizingState<W>& s) {
  if (!s.axis.targets.feed) {
    return;
  }
  const auto feed = s.in(PartSlot::targets, "feed", **s.axis.targets.feed);
  const auto speed = FEEDWRIGHT_KEEP(s, motor_speed, feed / s.motor_travel);
  const auto on_curve = s.motor.torque(value_of(speed), Duty::short_time);
  if (!on_curve) {
    return;
  }
  const auto whole =
      FEEDWRIGHT_KEEP(s, whole_torque, torque_on_curve(s, *on_curve, speed, Duty::short_time));
  const auto torque = FEEDWRIGHT_KEEP(
      s, usable_torque, whole * s.in(PartSlot::motor, "usable_share", s.motor.usable_share()));
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
  const auto on_curve = s.motor.torque(value_of(speed), Duty::continuous);
  if (!on_curve) {
    return;
  }
  const auto whole = FEEDWRIGHT_KEEP(s, whole_torque_cutting,
                                     torque_on_curve(s, *on_curve, speed, Duty::continuous));
  const auto torque =
      FEEDWRIGHT_KEEP(s, usable_torque_cutting,
                      whole * s.in(PartSlot::motor, "usable_share", s.motor.usable_share()));
  const auto force = axial_force_from(s, torque);
  const auto axial = FEEDWRIGHT_KEEP(s, motor_thrust,
                                     value_of(force) < Force() ? s.constant("0", Force()) : force);
  const auto left = at_tool(s, axial - s.gravity - s.friction);
  FEEDWRIGHT_KEEP(s, thrust_available, value_of(left) < Force() ? s.constant("0", Force()) : left);
}

template <class W>
void motor_feeds(SizingState<W>& s) {
  if (s.out.rapid_torque) {
    const auto need = s.earlier(ResultId::rapid_torque, *s.out.rapid_torque);
    const auto meeting = s.motor.speed_meeting(value_of(need), Duty::short_time);
    const bool ends_above = s.motor.suffices_to_end(value_of(need), Duty::short_time);
    FEEDWRIGHT_KEEP(
        s, motor_torque_feed,
        (ends_above ? s.solved("curve_ends_above_need", meeting, need, s.constant("n_end", meeting),
                               s.constant("T_end", *s.motor.usable(meeting, Duty::short_time)))
                    : s.solved("torque_meets_need", meeting, need)) *
            s.motor_travel);
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

/// Feed at which a belt of that part runs at its limit, at that travel per angle of its pulley.
template <class W, class Z, class R>
auto belt_speed_feed(const SizingState<W>& s, const BeltBody& belt, PartSlot slot, const Z& teeth,
                     const R& travel) {
  const auto radius = per_radian(teeth * s.in(slot, "pitch", *belt.pitch) / (2.0 * pi));
  return s.in(slot, "speed_limit", **belt.speed_limit) / radius * travel;
}

template <class W>
void belt_feeds(SizingState<W>& s) {
  const BeltBody* belt = belt_of(s.axis.transmission);
  if (s.haul != nullptr && s.haul->speed_limit) {
    FEEDWRIGHT_KEEP(
        s, belt_speed_feed,
        belt_speed_feed(s, *s.haul, PartSlot::drive,
                        s.in(PartSlot::drive, "pulley_teeth", double(s.haul->pulley_teeth)),
                        s.screw_travel));
  } else if (belt != nullptr && belt->speed_limit) {
    const auto* stage = std::get_if<BeltStage>(&s.axis.transmission);
    const double teeth = stage != nullptr ? double(stage->motor_pulley_teeth)
                         : s.ready.loop   ? double(s.ready.loop->motor_teeth)
                                          : 1.0;
    FEEDWRIGHT_KEEP(s, belt_speed_feed,
                    belt_speed_feed(s, *belt, PartSlot::transmission, s.constant("z_1", teeth),
                                    s.motor_travel));
  }
}

template <class W>
void other_feeds(SizingState<W>& s) {
  belt_feeds(s);
  if (const auto& limit = s.axis.guides.speed_limit) {
    FEEDWRIGHT_KEEP(s, guide_speed_feed, s.in(PartSlot::guides, "speed_limit", **limit));
  }
}

/// Step rate at the wanted feed; the motor's own frequency on its field, and the feed whose full
/// steps come at that rate.
template <class W>
void step_figures(SizingState<W>& s) {
  if (s.axis.targets.feed) {
    FEEDWRIGHT_KEEP(s, step_rate,
                    s.in(PartSlot::targets, "feed", **s.axis.targets.feed) *
                        FEEDWRIGHT_EARLIER(s, steps_per_length));
  }
  if (!s.motor.is_stepper() || !s.motor.holding_torque()) {
    return;
  }
  const auto teeth = s.constant("N_r", s.motor.rotor_teeth());
  const auto held = s.constant("T_h", *s.motor.holding_torque());
  const auto turning = s.in(PartSlot::motor, "rotor_inertia", s.motor.rotor_inertia()) +
                       FEEDWRIGHT_EARLIER(s, load_inertia);
  const auto own =
      FEEDWRIGHT_KEEP(s, motor_resonance, sqrt(per_radian(teeth * held) / turning) / (2.0 * pi));
  // Four full steps to a rotor tooth.
  FEEDWRIGHT_KEEP(s, resonance_feed, times_radian(2.0 * pi * own / (4.0 * teeth)) * s.motor_travel);
}

/// The lead, and the reduction, that would accelerate best with all else as it is.
template <class W>
void best_for_acceleration(SizingState<W>& s) {
  if (!s.out.usable_torque) {
    return;
  }
  const auto torque = FEEDWRIGHT_EARLIER(s, usable_torque);
  const auto steady = s.gravity + s.friction;
  const double through = value_of(s.reduction) * value_of(s.stage_efficiency);
  const double efficiency = value_of(s.efficiency) * value_of(s.stage_efficiency);
  const Torque left = value_of(torque) - value_of(s.drag) / through;
  const Inertia at_motor = value_of(s.motor_side_inertia) + value_of(s.screw_side_inertia) /
                                                                square(value_of(s.reduction)) /
                                                                value_of(s.stage_efficiency);
  const TravelPerAngle best =
      best_motor_travel(left, value_of(steady), efficiency, at_motor, value_of(s.resisting_mass));
  if (best > TravelPerAngle() && s.screw != nullptr) {
    FEEDWRIGHT_KEEP(s, best_lead,
                    s.solved("best_lead", TravelPerAngle(best * value_of(s.reduction)), torque,
                             steady, s.resisting_mass));
  }
  const Inertia at_screw = value_of(s.screw_side_inertia) + value_of(s.resisting_mass) *
                                                                square(value_of(s.screw_travel)) /
                                                                value_of(s.efficiency);
  const Torque load =
      value_of(steady) * value_of(s.screw_travel) / value_of(s.efficiency) + value_of(s.drag);
  const double reduction = best_reduction(
      value_of(torque), Torque(load / value_of(s.stage_efficiency)),
      Inertia(at_screw / value_of(s.stage_efficiency)), value_of(s.motor_side_inertia));
  if (reduction > 0.0) {
    FEEDWRIGHT_KEEP(
        s, best_reduction,
        as_ratio(s.solved("best_reduction", reduction, torque, steady, s.motor_side_inertia)));
  }
}

} // namespace feedwright
