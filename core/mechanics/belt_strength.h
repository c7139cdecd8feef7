// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

#include <cmath>
#include <optional>
#include <span>

namespace feedwright {

namespace belt_numbers {

/// Whole teeth in a computed number of teeth; one short of whole by rounding counts as whole.
inline double whole(double teeth) {
  constexpr double rounding = 1e-9;
  return std::floor(teeth + rounding);
}
inline Traced<double> whole(const Traced<double>& teeth) {
  return tracing::node(Expression::Form::function, whole(teeth.value), {teeth.how}, "floor");
}

inline double raised(double base, double exponent) {
  return std::pow(base, exponent);
}
/// Written as exp(exponent · ln(base)).
inline Traced<double> raised(const Traced<double>& base, double exponent) {
  using enum Expression::Form;
  const auto logarithm = tracing::node(function, std::log(base.value), {base.how}, "ln");
  const auto product = exponent * logarithm;
  return tracing::node(function, raised(base.value, exponent), {product.how}, "exp");
}

/// A number the equation itself sets, as plain or traced as the argument.
inline double set_number(double, double value) {
  return value;
}
inline Traced<double> set_number(const Traced<double>&, double value) {
  return {value, tracing::literal(value)};
}

} // namespace belt_numbers

/// F_u = T/r, what the belt pulls at the pitch line, r pitch radius. Negative like its torque.
template <NumberOf<Torque> T, NumberOf<Length> R>
auto rim_force(const T& torque, const R& pitch_radius) {
  return torque / per_radian(pitch_radius);
}

/// z_m = ⌊z wrap/2π⌋, teeth of a pulley of z teeth that stand fully in the belt.
/// Source: ISO 5295.
template <PureNumber N, NumberOf<Angle> A>
auto whole_teeth_in_mesh(const N& teeth, const A& wrap) {
  return belt_numbers::whole(number(number(teeth) * per_radian(wrap) / (2.0 * pi)));
}

/// k_z: 1 from six teeth in mesh, less 0.2 for each that is missing: 0.2 at two. Nothing below two,
/// which is no drive. Source: ISO 5295; the steps below six from memory.
template <PureNumber N>
auto mesh_factor(const N& teeth_in_mesh) {
  constexpr double carry_fully = 6.0;
  constexpr double least = 2.0;
  const auto teeth = number(teeth_in_mesh);
  using Factor = std::remove_cvref_t<decltype(1.0 - 0.2 * (carry_fully - teeth))>;
  if (!(value_of(teeth) >= least)) {
    return std::optional<Factor>();
  }
  return std::optional<Factor>(value_of(teeth) >= carry_fully
                                   ? belt_numbers::set_number(teeth, 1.0)
                                   : Factor(1.0 - 0.2 * (carry_fully - teeth)));
}

/// k_w = (b/b₀)^1.14, b width, b₀ base width of the profile. Source: from memory: ISO 5295.
template <NumberOf<Length> B, NumberOf<Length> C>
auto width_factor(const B& width, const C& base_width) {
  return belt_numbers::raised(number(width / base_width), 1.14);
}

/// m' = (b/b₀) m, m the mass per length at the base width.
template <NumberOf<LinearDensity> M, NumberOf<Length> B, NumberOf<Length> C>
auto mass_at_width(const M& base_mass, const B& width, const C& base_width) {
  return number(width / base_width) * base_mass;
}

/// F_c = m' v², what bending the moving belt round any pulley takes of its pull; m' of the belt as
/// wide as it is. Source: elementary mechanics.
template <NumberOf<LinearDensity> M, NumberOf<Velocity> V>
auto centrifugal_pull(const M& mass_per_length, const V& speed) {
  return mass_per_length * square(speed);
}

/// F = k_z k_w T_a − F_c, the pull a toothed belt may carry for good: T_a allowable pull at the
/// base width, F_c centrifugal pull of this width. At or below zero the belt carries nothing at
/// that speed. Source: from memory: ISO 5295, rated power over speed.
template <PureNumber Z, PureNumber W, NumberOf<Force> T, NumberOf<Force> C>
auto iso_allowed_pull(const Z& mesh_factor, const W& width_factor, const T& base_pull,
                      const C& centrifugal) {
  return number(mesh_factor) * number(width_factor) * base_pull - centrifugal;
}

/// P = F v.
template <NumberOf<Force> F, NumberOf<Velocity> V>
auto belt_power(const F& pull, const V& speed) {
  return pull * speed;
}

/// A maker's figure of what one tooth in mesh carries for its width, at a pulley speed ≥ 0.
struct ToothLoadPoint {
  AngularVelocity speed;
  Stiffness load; ///< pull for each tooth and width
};

/// The table's load at that speed, straight lines between its points, which rise in speed; below
/// the first point its load. Nothing beyond the last point, below zero or for an empty table.
inline std::optional<Stiffness> tooth_load_at(std::span<const ToothLoadPoint> table,
                                              AngularVelocity speed) {
  if (table.empty() || !(speed >= AngularVelocity()) || speed > table.back().speed) {
    return std::nullopt;
  }
  if (speed <= table.front().speed) {
    return table.front().load;
  }
  std::size_t above = 1;
  while (table[above].speed < speed) {
    ++above;
  }
  const ToothLoadPoint& a = table[above - 1];
  const ToothLoadPoint& b = table[above];
  return a.load + (b.load - a.load) * number((speed - a.speed) / (b.speed - a.speed));
}

/// z_e: teeth in mesh, counted up to a most. Usual: 12 for an open belt clamped at its ends, 6 for
/// a welded one. Source: belt maker's technical pages (Elatech, 2012, T5, HTD 5M, ATL5).
template <PureNumber N>
auto counted_teeth(const N& teeth_in_mesh, int most) {
  const auto teeth = number(teeth_in_mesh);
  return value_of(teeth) > most ? belt_numbers::set_number(teeth, double(most)) : teeth;
}

/// F = F_U,spez z_e b, the pull the meshing teeth carry. Source: as counted_teeth.
template <NumberOf<Stiffness> L, PureNumber N, NumberOf<Length> B>
auto tooth_load_pull(const L& load_per_width, const N& counted_teeth, const B& width) {
  return load_per_width * number(counted_teeth) * width;
}

} // namespace feedwright
