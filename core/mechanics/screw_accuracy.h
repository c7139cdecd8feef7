// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

#include <optional>

namespace feedwright {

/// Most the travel may vary within any 300 mm, by ISO 3408-3 tolerance grade; nothing for a grade
/// the standard does not have. Source: from memory, ISO 3408-3.
inline std::optional<Length> lead_variation_per_300(int grade) {
  switch (grade) {
  case 1: return from_si<Length>(6e-6);
  case 2: return from_si<Length>(8e-6);
  case 3: return from_si<Length>(12e-6);
  case 4: return from_si<Length>(16e-6);
  case 5: return from_si<Length>(23e-6);
  case 7: return from_si<Length>(52e-6);
  case 10: return from_si<Length>(210e-6);
  default: return std::nullopt;
  }
}

/// Travel deviation over a length of a transport screw: e_p = 2 (l_u/300 mm) V_300p.
/// Source: from memory, ISO 3408-3.
template <NumberOf<Length> V, NumberOf<Length> T>
auto transport_travel_error(const V& per_300, const T& travel) {
  const Length reference = from_si<Length>(0.3);
  if constexpr (is_traced<T>::value) {
    const auto traced = tracing::node(Expression::Form::constant, reference, {}, "300 mm");
    return 2.0 * per_300 * (travel / traced);
  } else {
    return 2.0 * per_300 * (travel / reference);
  }
}

/// ΔL = α L ΔT.
template <NumberOf<Expansion> A, NumberOf<Length> L, NumberOf<Temperature> T>
auto thermal_growth(const A& expansion, const L& length, const T& rise) {
  return expansion * rise * length;
}

/// Pull between fixed ends that keeps a screw from going slack when it warms: E A α ΔT.
template <NumberOf<Pressure> E, NumberOf<Area> S, NumberOf<Expansion> A, NumberOf<Temperature> T>
auto stretch_for_heat(const E& modulus, const S& area, const A& expansion, const T& rise) {
  return modulus * area * (expansion * rise);
}

} // namespace feedwright
