// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

#include <optional>

namespace feedwright {

/// D = z p/π. Source: ISO 5296, definition of pitch diameter.
template <PureNumber N, NumberOf<Length> P>
auto pulley_pitch_diameter(const N& teeth, const P& pitch) {
  return teeth * pitch / pi;
}

/// Pitch length of an inextensible belt round two pulleys, open drive:
///   L = 2 C cos β + (π/2)(D₁ + D₂) + β (D₂ − D₁), sin β = (D₂ − D₁)/2C.
/// Needs C ≥ |D₂ − D₁|/2. Exact.
Length open_belt_length(Length diameter_1, Length diameter_2, Length centre_distance);

/// Centre distance at which a belt of that pitch length is taut; nothing if the pulleys would
/// overlap (C < (D₁ + D₂)/2). Solves open_belt_length, relative error below 1e-14.
std::optional<Length> centre_distance(Length diameter_1, Length diameter_2, Length belt_length);

/// Arc of contact on the smaller pulley: π − 2|β|.
Angle smaller_pulley_wrap(Length diameter_1, Length diameter_2, Length centre_distance);

} // namespace feedwright
