// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/screw.h"
#include "working/traced.h"

#include <optional>

namespace feedwright {

/// End-condition constant C of Euler's load, as screw catalogues take it (fixed-supported 2,
/// exactly 2.0457). Nothing for a pair that does not hold the shaft.
/// Source: Shigley, Mechanical Engineering Design, Table 4-2, theoretical values.
constexpr std::optional<double> buckling_constant(EndSupport a, EndSupport b) {
  const bool one_fixed = a == EndSupport::fixed || b == EndSupport::fixed;
  if (a == EndSupport::fixed && b == EndSupport::fixed) {
    return 4.0;
  }
  if (a == EndSupport::free || b == EndSupport::free) {
    return one_fixed ? std::optional(0.25) : std::nullopt;
  }
  return one_fixed ? 2.0 : 1.0;
}

/// Area of a round solid shaft.
template <NumberOf<Length> D>
auto round_area(const D& diameter) {
  return pi * square(diameter) / 4.0;
}

/// s = L/k with k = d/4, the radius of gyration of a round solid shaft.
template <NumberOf<Length> L, NumberOf<Length> D>
auto slenderness_ratio(const L& length, const D& diameter) {
  return length / (diameter / 4.0);
}

/// s₁ = √(2π² C E/S_y), where Johnson's parabola meets Euler's curve at half the yield strength.
/// Source: Shigley, Mechanical Engineering Design, ch. 4 (columns).
template <PureNumber N, NumberOf<Pressure> M, NumberOf<Pressure> Y>
auto slenderness_transition(const N& constant, const M& elastic_modulus, const Y& yield_strength) {
  return sqrt(2.0 * square(pi) * constant * elastic_modulus / yield_strength);
}

/// P = C π² E A/s², long columns. Source: Euler; Shigley ch. 4.
template <PureNumber N, NumberOf<Pressure> M, NumberOf<Area> A, PureNumber S>
auto euler_load(const N& constant, const M& elastic_modulus, const A& area, const S& slenderness) {
  return constant * square(pi) * elastic_modulus * area / square(slenderness);
}

/// P = A (S_y − (S_y s/2π)²/(C E)), short columns. Source: J. B. Johnson; Shigley ch. 4.
template <PureNumber N, NumberOf<Pressure> M, NumberOf<Pressure> Y, NumberOf<Area> A, PureNumber S>
auto johnson_load(const N& constant, const M& elastic_modulus, const Y& yield_strength,
                  const A& area, const S& slenderness) {
  return area * (yield_strength -
                 square(yield_strength * slenderness / (2.0 * pi)) / (constant * elastic_modulus));
}

} // namespace feedwright
