// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

namespace feedwright {

/// Inertia of a solid cylinder about its axis: ρ π L d⁴/32. Source: elementary mechanics.
template <NumberOf<Density> R, NumberOf<Length> L, NumberOf<Length> D>
auto cylinder_inertia(const R& density, const L& length, const D& diameter) {
  return per_radian(per_radian(density * pi * length * square(square(diameter)) / 32.0));
}

/// Inertia of a mass carried at so much travel per angle: m r².
template <NumberOf<Mass> M, NumberOf<TravelPerAngle> R>
auto carried_inertia(const M& mass, const R& travel) {
  return mass * square(travel);
}

} // namespace feedwright
