// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

namespace feedwright {

/// Axial stiffness of a shaft held at one end: k = A E/x, x from the bearing that takes thrust to
/// the nut, > 0. Source: Hooke.
template <NumberOf<Area> A, NumberOf<Pressure> E, NumberOf<Length> X>
auto shaft_stiffness_one_end(const A& area, const E& modulus, const X& distance) {
  return area * modulus / distance;
}

/// Held at both ends: k = A E L/(x (L − x)), 0 < x < L. Source: Hooke, both lengths in parallel.
template <NumberOf<Area> A, NumberOf<Pressure> E, NumberOf<Length> S, NumberOf<Length> X>
auto shaft_stiffness_both_ends(const A& area, const E& modulus, const S& span, const X& distance) {
  return area * modulus / distance * (span / (span - distance));
}

/// Twist of a round shaft: k = G π d⁴/(32 L). Source: Saint-Venant's torsion of a round bar.
template <NumberOf<Pressure> G, NumberOf<Length> D, NumberOf<Length> L>
auto shaft_torsional_stiffness(const G& shear_modulus, const D& diameter, const L& length) {
  return per_radian(per_radian(shear_modulus * (pi / 32.0) * (square(square(diameter)) / length)));
}

/// What a torsional spring at a shaft is worth along the axis: k = k_t/r².
template <NumberOf<TorsionalStiffness> K, NumberOf<TravelPerAngle> R>
auto along_the_axis(const K& torsional, const R& travel) {
  return torsional / square(travel);
}

/// Two springs one after the other.
template <class A, class B>
auto in_series(const A& a, const B& b) {
  return a * (b / (a + b));
}

/// Stiffness of a ball nut at a load other than the catalogue's: k = 0.8 k_cat (F/(ε C_a))^(1/3),
/// ε 0.1 when preloaded (F then the preload), 0.3 when not (F the axial load). Source: ball-screw
/// catalogues; the third root from Hertz.
inline Stiffness nut_stiffness_at(Stiffness catalogue, Force load, Force dynamic_rating,
                                  bool preloaded) {
  const double reference = preloaded ? 0.1 : 0.3;
  return 0.8 * catalogue * std::cbrt(load / (reference * dynamic_rating));
}

/// f = √(k/m)/2π.
template <NumberOf<Stiffness> K, NumberOf<Mass> M>
auto axial_frequency(const K& stiffness, const M& mass) {
  return sqrt(stiffness / mass) / (2.0 * pi);
}

/// Two inertias with a spring between them, free to turn: f = √(k (J₁ + J₂)/(J₁ J₂))/2π.
/// Source: Thomson, Theory of Vibration with Applications, ch. 5.
inline Frequency torsional_frequency(TorsionalStiffness stiffness, Inertia one, Inertia other) {
  return from_si<Frequency>(
      std::sqrt(si_value(stiffness) * (1.0 / si_value(one) + 1.0 / si_value(other))) / (2.0 * pi));
}

} // namespace feedwright
