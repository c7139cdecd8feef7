// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Forces on the carriage and the torque they ask of the motor. "Up the slope" is the direction in
// which gravity, less the counterbalance, works against the motion; on a level axis either.

#include "mechanics/screw_thread.h"
#include "sizing/sizing_state.h"

namespace feedwright {

template <class W>
void resisting_forces(SizingState<W>& s) {
  const Carriage& carriage = s.axis.carriage;
  const Guides& guides = s.axis.guides;
  const auto weight =
      s.in(PartSlot::carriage, "mass", *carriage.mass) * s.constant("g", standard_gravity);
  const auto incline =
      number(s.in(PartSlot::axis, "incline", Ratio(*s.axis.basics.incline / radian)));
  const auto along = value_of(incline) < 0.0 ? -(weight * sin(incline)) : weight * sin(incline);
  const auto balanced =
      value_of(incline) == 0.0
          ? along
          : along - s.in(PartSlot::carriage, "counterbalance", *carriage.counterbalance);
  s.gravity =
      FEEDWRIGHT_KEEP(s, gravity_force, value_of(balanced) < Force() ? -balanced : balanced);
  const auto across = weight * cos(incline);
  const auto pressed = value_of(across) < Force() ? -across : across;
  const auto blocks = s.in(PartSlot::guides, "blocks", double(guides.blocks));
  s.friction = FEEDWRIGHT_KEEP(s, friction_force,
                               s.in(PartSlot::guides, "friction", *guides.friction) * pressed +
                                   blocks * s.in(PartSlot::guides, "seal_drag", *guides.seal_drag) +
                                   s.in(PartSlot::guides, "cover_drag", *guides.cover_drag));
  s.drag = FEEDWRIGHT_KEEP(s, drag_torque,
                           s.in(PartSlot::screw, "preload_drag", *s.axis.screw.preload_drag) +
                               s.in(PartSlot::screw, "bearing_drag", *s.axis.screw.bearing_drag));
}

/// Torque at the motor for an axial force along the motion at steady speed.
template <class W, class F>
auto steady_torque(const SizingState<W>& s, const F& force) {
  return through_stage(thread_torque(force, s.screw_travel, s.efficiency, s.back_efficiency) +
                           s.drag,
                       s.reduction, s.stage_efficiency);
}

template <class W>
void rapid_case(SizingState<W>& s) {
  if (!s.axis.targets.acceleration) {
    return;
  }
  const auto a = s.in(PartSlot::targets, "acceleration", **s.axis.targets.acceleration);
  const auto mass = s.in(PartSlot::carriage, "mass", *s.axis.carriage.mass);
  const auto force = FEEDWRIGHT_KEEP(s, rapid_force, mass * a + s.gravity + s.friction);
  const auto rotor = FEEDWRIGHT_KEEP(s, rotor_torque, s.motor_side_inertia * (a / s.motor_travel));
  const auto shaft =
      FEEDWRIGHT_KEEP(s, screw_shaft_torque, s.screw_side_inertia * (a / s.screw_travel));
  const auto thread_part = FEEDWRIGHT_KEEP(
      s, thread_torque, thread_torque(force, s.screw_travel, s.efficiency, s.back_efficiency));
  FEEDWRIGHT_KEEP(s, rapid_torque,
                  rotor +
                      through_stage(shaft + thread_part + s.drag, s.reduction, s.stage_efficiency));
}

template <class W>
void cutting_case(SizingState<W>& s) {
  if (!s.axis.targets.thrust) {
    return;
  }
  const auto thrust = s.in(PartSlot::targets, "thrust", **s.axis.targets.thrust);
  const auto force = FEEDWRIGHT_KEEP(s, cutting_force, thrust + s.gravity + s.friction);
  FEEDWRIGHT_KEEP(s, cutting_torque, steady_torque(s, force));
}

template <class W>
void gravity_cases(SizingState<W>& s) {
  const auto lowering = FEEDWRIGHT_KEEP(s, lowering_force, s.friction - s.gravity);
  FEEDWRIGHT_KEEP(s, lowering_torque, steady_torque(s, lowering));
  const auto back =
      s.gravity * s.screw_travel * s.back_efficiency * s.stage_efficiency / s.reduction;
  FEEDWRIGHT_KEEP(s, holding_torque_needed,
                  value_of(back) < Torque() ? s.constant("0", Torque()) : back);
}

/// Largest axial force over the cases that are known.
template <class W>
void largest_load(SizingState<W>& s) {
  const auto& rapid = s.out.rapid_force;
  const auto& cutting = s.out.cutting_force;
  if (!rapid && !cutting) {
    return;
  }
  const bool cutting_rules = cutting && (!rapid || *cutting > *rapid);
  const Force largest = cutting_rules ? *cutting : *rapid;
  FEEDWRIGHT_KEEP(
      s, axial_load,
      s.earlier(cutting_rules ? ResultId::cutting_force : ResultId::rapid_force, largest));
}

template <class W>
void loads(SizingState<W>& s) {
  resisting_forces(s);
  rapid_case(s);
  cutting_case(s);
  gravity_cases(s);
  largest_load(s);
}

} // namespace feedwright
