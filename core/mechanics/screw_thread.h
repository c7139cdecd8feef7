// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

namespace feedwright {

/// tan φ = l/(π d_m), l lead per turn, d_m pitch or ball-circle diameter.
template <NumberOf<Length> L, NumberOf<Length> D>
auto lead_angle_tangent(const L& lead_per_turn, const D& pitch_diameter) {
  return lead_per_turn / (pi * pitch_diameter);
}

/// Friction angle of a ball screw: ρ' = atan μ.
template <PureNumber M>
auto ball_friction_angle(const M& friction) {
  return atan(number(friction));
}

/// Friction angle of a 30° trapezoidal thread: ρ' = atan(μ/cos α_n), tan α_n = tan 15°·cos φ.
/// Source: flank angle in the normal section; ISO 2901 profile of 30°.
template <PureNumber M, PureNumber T>
auto trapezoidal_friction_angle(const M& friction, const T& lead_angle_tangent) {
  const double tan_flank = std::tan(15.0 * pi / 180.0);
  return atan(number(friction) / cos(atan(tan_flank * cos(atan(number(lead_angle_tangent))))));
}

/// η = tan φ/tan(φ + ρ'), power from screw to load. Source: Shigley, Mechanical Engineering
/// Design, ch. 8; the same for balls with ρ' = atan μ.
template <PureNumber T, PureNumber F>
auto thread_efficiency(const T& lead_angle_tangent, const F& friction_angle) {
  return number(lead_angle_tangent) / tan(atan(number(lead_angle_tangent)) + friction_angle);
}

/// η_r = tan(φ − ρ')/tan φ, power from load to screw; at or below 0 the load cannot drive the
/// screw (at rest, without vibration).
template <PureNumber T, PureNumber F>
auto thread_back_efficiency(const T& lead_angle_tangent, const F& friction_angle) {
  return tan(atan(number(lead_angle_tangent)) - friction_angle) / number(lead_angle_tangent);
}

/// η_r = 2 − 1/η, from a measured forward efficiency: what is lost forward is lost backward too.
/// Source: Shigley ch. 8 equations to first order in the friction.
template <PureNumber E>
auto back_efficiency_from_forward(const E& efficiency) {
  return 2.0 - 1.0 / efficiency;
}

/// Torque on a screw that pushes with axial force F along the motion (negative when the load
/// pulls the nut along): T = F r/η while power flows to the load, F r η_r while it flows back.
/// r travel per angle.
template <NumberOf<Force> F, NumberOf<TravelPerAngle> R, PureNumber E, PureNumber B>
auto thread_torque(const F& force, const R& travel, const E& efficiency, const B& back_efficiency) {
  using Result = std::remove_cvref_t<decltype(force * travel / efficiency)>;
  return value_of(force) < std::remove_cvref_t<decltype(value_of(force))>()
             ? Result(force * travel * back_efficiency)
             : Result(force * travel / efficiency);
}

/// Torque handed through a stage of the given efficiency and reduction, from its driven side T to
/// its driving side: T/(i η) while power flows forward, T η/i while it flows back.
template <NumberOf<Torque> T, PureNumber I, PureNumber E>
auto through_stage(const T& driven, const I& reduction, const E& efficiency) {
  using Result = std::remove_cvref_t<decltype(driven / (reduction * efficiency))>;
  return value_of(driven) < std::remove_cvref_t<decltype(value_of(driven))>()
             ? Result(driven * efficiency / reduction)
             : Result(driven / (reduction * efficiency));
}

} // namespace feedwright
