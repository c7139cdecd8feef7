// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A toothed belt on fixed centres. Its pitch line is elastic, c_sp newtons for a strain of one, and
// does not slip: what the tight side gains in length the slack side loses.

#include "working/traced.h"

namespace feedwright {

/// Share of the belt's free length that lies on the tight side, L_t/(L_t + L_s): ½ for two equal
/// spans, near 1 when a carriage is far from the pulley that hauls it.
template <NumberOf<Length> T, NumberOf<Length> S>
auto tight_share(const T& tight_length, const S& slack_length) {
  return tight_length / (tight_length + slack_length);
}

/// F_0 = (1 + margin) share F_u, the static pull in every span that keeps the slack side from going
/// limp at the largest rim force F_u ≥ 0; share as of tight_share, margin ≥ 0. A fast belt wants
/// its centrifugal pull on top. Two spans: F_u/2; a carriage at its farthest: F_u.
/// Source: belts as springs; Siegling/Forbo, Calculation methods (F_V ≥ 0.5 F_U and F_V ≥ F_U).
template <NumberOf<Force> F, PureNumber S, PureNumber M>
auto static_pull(const F& rim_force, const S& tight_share, const M& margin) {
  return (1.0 + number(margin)) * number(tight_share) * rim_force;
}

/// F_t = F_0 + (1 − share) F_u, pull of the tight side while the belt hands on F_u.
template <NumberOf<Force> P, NumberOf<Force> F, PureNumber S>
auto tight_pull(const P& static_pull, const F& rim_force, const S& tight_share) {
  return static_pull + (1.0 - number(tight_share)) * rim_force;
}

/// F_s = F_0 − share F_u, pull of the slack side; below zero the side is limp and the equation
/// void.
template <NumberOf<Force> P, NumberOf<Force> F, PureNumber S>
auto slack_pull(const P& static_pull, const F& rim_force, const S& tight_share) {
  return static_pull - number(tight_share) * rim_force;
}

/// F = √(F₁² + F₂² − 2 F₁F₂ cos wrap), what two span pulls do to a shaft. Source: vector sum.
template <NumberOf<Force> P, NumberOf<Force> Q, NumberOf<Angle> A>
auto shaft_load(const P& pull_1, const Q& pull_2, const A& wrap) {
  return sqrt(square(pull_1) + square(pull_2) - 2.0 * pull_1 * pull_2 * cos(wrap));
}

/// F = 2 F_0 sin(wrap/2), the same at rest.
template <NumberOf<Force> P, NumberOf<Angle> A>
auto static_shaft_load(const P& static_pull, const A& wrap) {
  return 2.0 * static_pull * sin(wrap / 2.0);
}

/// f = √(T/m')/(2 L_s), first tone of a plucked span. A limp string: the belt's bending stiffness,
/// which raises the tone of short spans, is left out. Source: string; belt makers' tension meters.
template <NumberOf<Force> P, NumberOf<LinearDensity> M, NumberOf<Length> L>
auto span_frequency(const P& pull, const M& mass_per_length, const L& span) {
  return sqrt(pull / mass_per_length) / (2.0 * span);
}

/// T = 4 m' L_s² f², the pull of a span heard at f.
template <NumberOf<Frequency> F, NumberOf<LinearDensity> M, NumberOf<Length> L>
auto pull_of_frequency(const F& frequency, const M& mass_per_length, const L& span) {
  return 4.0 * mass_per_length * square(span) * square(frequency);
}

/// k = c_sp (1/L_a + 1/L_b) at the pitch line while both sides are tight, the far pulley held. c_sp
/// pull for a strain of one of the belt as wide as it is, lengths of the two sides > 0: of a drive
/// its spans, of a carriage the belt from it either way to the pulley that hauls it. Teeth and
/// clamps are left out. Source: springs side by side; belt makers' technical pages (k = c_sp/L).
template <NumberOf<Force> C, NumberOf<Length> A, NumberOf<Length> B>
auto belt_stiffness(const C& specific_stiffness, const A& side_a, const B& side_b) {
  return specific_stiffness * (1.0 / side_a + 1.0 / side_b);
}

/// k_φ = k r², the same at the shaft of a pulley of pitch radius r.
template <NumberOf<Stiffness> K, NumberOf<Length> R>
auto stiffness_at_shaft(const K& stiffness, const R& pitch_radius) {
  return stiffness * square(per_radian(pitch_radius));
}

} // namespace feedwright
