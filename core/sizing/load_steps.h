// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Forces on the carriage and the torque they ask of the motor, of the harder-loaded one where there
// are two. "Up the slope" is the direction in which gravity, less the counterbalance, works against
// the motion; on a level axis either.

#include "machine/milling_case.h"
#include "mechanics/screw_life.h"
#include "mechanics/screw_thread.h"
#include "mechanics/two_sides.h"
#include "sizing/curve_steps.h"

namespace feedwright {

template <class W>
void resisting_forces(SizingState<W>& s) {
  const Carriage& carriage = s.axis.carriage;
  const Guides& guides = s.axis.guides;
  const auto mass = s.in(PartSlot::carriage, "mass", *carriage.mass);
  const auto weight = mass * s.constant("g", standard_gravity);
  const auto incline =
      number(s.in(PartSlot::axis, "incline", Ratio(*s.axis.basics.incline / radian)));
  const auto along = value_of(incline) < 0.0 ? -(weight * sin(incline)) : weight * sin(incline);
  const auto balanced =
      value_of(incline) == 0.0
          ? along
          : along - s.in(PartSlot::carriage, "counterbalance", *carriage.counterbalance);
  s.gravity =
      FEEDWRIGHT_KEEP(s, gravity_force, value_of(balanced) < Force() ? -balanced : balanced);
  s.out.overbalanced = value_of(balanced) < Force();
  const auto across = weight * cos(incline);
  const auto pressed = value_of(across) < Force() ? -across : across;
  const auto blocks = s.in(PartSlot::guides, "blocks", double(guides.blocks));
  const auto rolling = s.in(PartSlot::guides, "friction", *guides.friction) * pressed;
  const auto seals = blocks * s.in(PartSlot::guides, "seal_drag", *guides.seal_drag);
  const auto covers = s.in(PartSlot::guides, "cover_drag", *guides.cover_drag);
  s.friction = FEEDWRIGHT_KEEP(s, friction_force, rolling + seals + covers);
  if (s.two_motors) {
    const auto share = number(s.mass / mass);
    s.gravity = FEEDWRIGHT_KEEP(s, side_gravity, s.gravity * share);
    s.friction = FEEDWRIGHT_KEEP(s, side_friction, rolling * share + (seals + covers) / 2.0);
  }
}

/// Torque at the screws of one motor for its axial force along the motion, and their drags.
template <class W, class F>
auto screw_torque(const SizingState<W>& s, const F& force) {
  return thread_torque(force, s.screw_travel, s.efficiency, s.back_efficiency) + s.drag;
}

/// Torque at the motor for an axial force along the motion at steady speed.
template <class W, class F>
auto steady_torque(const SizingState<W>& s, const F& force) {
  return through_stage(screw_torque(s, force), s.reduction, s.stage_efficiency);
}

/// Force that speeds the moving mass up (or down) along the motion. The couple of a mass off the
/// drive's line makes the guides rub either way, against the motion.
template <class W, class A>
auto accelerating_force(const SizingState<W>& s, const A& acceleration) {
  using Result = std::remove_cvref_t<decltype(s.mass * acceleration)>;
  if (value_of(s.resisting_mass) == value_of(s.mass)) {
    return Result(s.mass * acceleration);
  }
  const auto rubbing = s.resisting_mass - s.mass;
  return value_of(acceleration) < Acceleration() ? Result((s.mass - rubbing) * acceleration)
                                                 : Result(s.resisting_mass * acceleration);
}

/// Torque at the motor while speeding up at `acceleration` (negative: slowing down) against
/// `steady` force. Each stage's efficiency follows the way its power flows.
template <class W, class A, class F>
auto moving_torque(const SizingState<W>& s, const A& acceleration, const F& steady) {
  const auto force = accelerating_force(s, acceleration) + steady;
  const auto shaft = s.screw_side_inertia * (acceleration / s.screw_travel);
  return s.motor_side_inertia * (acceleration / s.motor_travel) +
         through_stage(shaft + screw_torque(s, force), s.reduction, s.stage_efficiency);
}

template <class W>
void rapid_case(SizingState<W>& s) {
  if (!s.axis.targets.acceleration) {
    return;
  }
  const auto a = s.in(PartSlot::targets, "acceleration", **s.axis.targets.acceleration);
  const auto force = FEEDWRIGHT_KEEP(s, rapid_force, s.resisting_mass * a + s.gravity + s.friction);
  const auto rotor = FEEDWRIGHT_KEEP(s, rotor_torque, s.motor_side_inertia * (a / s.motor_travel));
  const auto shaft =
      FEEDWRIGHT_KEEP(s, screw_shaft_torque, s.screw_side_inertia * (a / s.screw_travel));
  const auto thread_part = FEEDWRIGHT_KEEP(
      s, thread_torque, thread_torque(force, s.screw_travel, s.efficiency, s.back_efficiency));
  FEEDWRIGHT_KEEP(s, rapid_torque,
                  rotor +
                      through_stage(shaft + thread_part + s.drag, s.reduction, s.stage_efficiency));
}

/// What a force at the tool asks of the harder-loaded motor: its share of two sides, or with what
/// the guides add under the couple of one.
template <class W, class F>
auto side_force(const SizingState<W>& s, const F& at_tool) {
  using Result = std::remove_cvref_t<decltype(s.side_share * at_tool)>;
  if (s.two_motors) {
    return Result(s.side_share * at_tool);
  }
  if (s.out.yaw_friction_share) {
    return Result(at_tool + number(FEEDWRIGHT_EARLIER(s, yaw_friction_share)) * at_tool);
  }
  return Result(at_tool);
}

template <class W>
void cutting_case(SizingState<W>& s) {
  if (!s.axis.targets.thrust) {
    return;
  }
  const auto thrust = s.in(PartSlot::targets, "thrust", **s.axis.targets.thrust);
  const auto force =
      FEEDWRIGHT_KEEP(s, cutting_force, side_force(s, thrust) + s.gravity + s.friction);
  FEEDWRIGHT_KEEP(s, cutting_torque, steady_torque(s, force));
  if (s.out.yaw_friction_share) {
    const auto offset = s.in(PartSlot::sides, "cross_travel", *s.axis.sides.cross_travel) / 2.0;
    FEEDWRIGHT_KEEP(
        s, couple_force,
        couple_force(thrust, offset,
                     s.in(PartSlot::guides, "block_spacing", **s.axis.guides.block_spacing)));
  }
}

/// A plain value as the steps want it.
template <class W, class Q>
auto as_step(const SizingState<W>& s, const Q& value) {
  return s.constant("", value);
}

/// How much more torque the motor has at a load case's feed than that asks; none past the end of
/// the motor's curve.
template <class W>
double case_reserve(const SizingState<W>& s, const CaseResult& load) {
  const auto usable = s.motor.usable(load.feed / value_of(s.motor_travel), Duty::continuous);
  constexpr double boundless = 1e6;
  return !usable                             ? 0.0
         : load.torque > *usable / boundless ? number(*usable / load.torque)
                                             : boundless;
}

/// Each load case of the duty.
template <class W>
void case_loads(SizingState<W>& s) {
  for (const LoadCase& load : s.axis.duty.load_cases) {
    const auto thrust = case_thrust(load, s.machine.spindle);
    if (!thrust) {
      return; // soundness refuses it
    }
    const Force side = value_of(side_force(s, as_step(s, thrust->thrust))) + value_of(s.gravity) +
                       value_of(s.friction);
    const Torque torque = value_of(steady_torque(s, as_step(s, side)));
    s.out.cases.push_back(
        {thrust->thrust, thrust->capped, side * value_of(s.screw_share), torque, *load.feed, side});
  }
}

/// The torque a load case leaves, worked out for that case.
template <class W>
void keep_case_torque(SizingState<W>& s, const CaseResult& worst, double reserve) {
  const auto feed = s.constant("v_case", worst.feed);
  const auto thrust = s.constant("F_cut", worst.thrust);
  const auto whole = s.motor.torque(worst.feed / value_of(s.motor_travel), Duty::continuous);
  if (!whole || reserve == 0.0) {
    FEEDWRIGHT_KEEP(s, load_case_reserve, as_ratio(s.solved("case_past_curve", 0.0, feed)));
    return;
  }
  const auto usable = s.in(PartSlot::motor, "usable_share", s.motor.usable_share()) *
                      torque_on_curve(s, *whole, feed / s.motor_travel, Duty::continuous);
  const auto needed = steady_torque(s, side_force(s, thrust) + s.gravity + s.friction);
  FEEDWRIGHT_KEEP(s, load_case_reserve,
                  value_of(needed) > Torque()
                      ? as_ratio(usable / needed)
                      : as_ratio(s.solved("case_reserve", reserve, usable, needed)));
}

/// The reserve of the hardest load case: the torque it leaves, or, if that is less, how far the
/// governing feed lies above its own.
template <class W>
void load_case_reserve(SizingState<W>& s) {
  const CaseResult* worst = nullptr;
  double least = 0.0;
  bool by_feed = false;
  for (const CaseResult& load : s.out.cases) {
    const double in_torque = case_reserve(s, load);
    const double in_feed =
        s.out.governing_feed ? number(Ratio(*s.out.governing_feed / load.feed)) : in_torque;
    const double reserve = std::min(in_torque, in_feed);
    if (worst == nullptr || reserve < least) {
      worst = &load;
      least = reserve;
      by_feed = in_feed < in_torque;
    }
  }
  if (worst == nullptr) {
    return;
  }
  if (!by_feed) {
    keep_case_torque(s, *worst, least);
    return;
  }
  const auto allowed = s.earlier(descriptor(*s.out.governing).result, *s.out.governing_feed);
  FEEDWRIGHT_KEEP(s, load_case_reserve, as_ratio(allowed / s.constant("v_case", worst->feed)));
}

/// How fast the axis gains speed downwards with the motor unpowered and no brake.
template <class W>
void falling(SizingState<W>& s) {
  const auto back = s.back_efficiency * s.stage_efficiency / s.reduction;
  const auto driving = (s.gravity - s.friction) * s.screw_travel * back -
                       s.drag * s.stage_efficiency / s.reduction -
                       s.constant("T_d", s.motor.detent_torque());
  const auto per_acceleration =
      s.motor_side_inertia / s.motor_travel +
      (s.screw_side_inertia / s.screw_travel) * s.stage_efficiency / s.reduction +
      s.mass * s.screw_travel * back;
  const bool falls = value_of(driving) > Torque() && value_of(s.back_efficiency) > 0.0;
  FEEDWRIGHT_KEEP(s, falling_acceleration,
                  falls ? driving / per_acceleration : s.constant("0", Acceleration()));
}

template <class W>
void gravity_cases(SizingState<W>& s) {
  const auto lowering = FEEDWRIGHT_KEEP(s, lowering_force, s.friction - s.gravity);
  FEEDWRIGHT_KEEP(s, lowering_torque, steady_torque(s, lowering));
  const auto back =
      s.gravity * s.screw_travel * s.back_efficiency * s.stage_efficiency / s.reduction;
  FEEDWRIGHT_KEEP(s, holding_torque_needed,
                  value_of(back) < Torque() ? s.constant("0", Torque()) : back);
  if (*s.axis.basics.incline != Angle()) {
    falling(s);
  }
  if (s.axis.targets.acceleration) {
    const auto a = s.in(PartSlot::targets, "acceleration", **s.axis.targets.acceleration);
    FEEDWRIGHT_KEEP(s, braking_torque, moving_torque(s, -a, s.friction - s.gravity));
  }
}

/// Largest axial force on one screw over the cases that are known.
template <class W>
void largest_load(SizingState<W>& s) {
  const auto& rapid = s.out.rapid_force;
  const auto& cutting = s.out.cutting_force;
  if (!rapid && !cutting && s.out.cases.empty()) {
    return;
  }
  const bool cutting_rules = cutting && (!rapid || *cutting > *rapid);
  Force largest = cutting || rapid ? (cutting_rules ? *cutting : *rapid) : Force();
  auto of_motor =
      s.earlier(cutting_rules ? ResultId::cutting_force : ResultId::rapid_force, largest);
  for (const CaseResult& load : s.out.cases) {
    if (load.pushed > largest) {
      largest = load.pushed;
      of_motor = s.constant("F_case", largest);
    }
  }
  const bool opposed = s.axis.sides.pairing == Pairing::opposed;
  if (opposed && s.screw != nullptr && s.screw->preload) {
    // Two screws wound against each other are the halves of one pair; the preload is in them.
    const Force whole = s.two_motors ? Force(2.0 * largest) : largest;
    FEEDWRIGHT_KEEP(s, axial_load,
                    s.solved("pair_load", pair_loads(whole, **s.screw->preload).loaded, of_motor,
                             s.in(PartSlot::drive, "preload", **s.screw->preload)));
    return;
  }
  FEEDWRIGHT_KEEP(s, axial_load, s.screws_each > 1.0 ? s.screw_share * of_motor : of_motor);
}

template <class W>
void loads(SizingState<W>& s) {
  resisting_forces(s);
  rapid_case(s);
  cutting_case(s);
  case_loads(s);
  gravity_cases(s);
  largest_load(s);
}

} // namespace feedwright
