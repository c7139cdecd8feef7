// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/screw.h"
#include "working/traced.h"

#include <optional>

namespace feedwright {

/// First root λ of the frequency equation of a uniform beam with these ends; nothing for a pair
/// that does not hold the shaft. Roots: W. T. Thomson, Theory of Vibration with Applications,
/// App. D, and the frequency equations cos λ cosh λ = ∓1, tan λ = tanh λ.
constexpr std::optional<double> whip_eigenvalue(EndSupport a, EndSupport b) {
  constexpr double fixed_free = 1.8751040687119611;
  constexpr double fixed_supported = 3.9266023120479188;
  constexpr double fixed_fixed = 4.7300407448627040;
  const bool one_fixed = a == EndSupport::fixed || b == EndSupport::fixed;
  if (a == EndSupport::fixed && b == EndSupport::fixed) {
    return fixed_fixed;
  }
  if (a == EndSupport::free || b == EndSupport::free) {
    return one_fixed ? std::optional(fixed_free) : std::nullopt;
  }
  return one_fixed ? fixed_supported : pi;
}

/// First lateral critical speed of a uniform round solid shaft.
///   ω₁ = (λ/L)² · (d/4) · √(E/ρ)
/// λ eigenvalue of the end supports, L span, d core diameter, E elastic modulus, ρ density.
/// Holds for slender shafts, no axial load, rigid bearings. Too high against a Timoshenko beam at
/// L/d = 15 by 0.25 % (fixed-free), 0.54 % (supported), 1.26 % (fixed-supported), 2.16 % (fixed),
/// falling with (d/L)²; leaves out gyroscopic effects, which take back part of that. Source:
/// Euler-Bernoulli beam, e.g. W. T. Thomson, Theory of Vibration with Applications, App. D.
template <PureNumber N, NumberOf<Length> L, NumberOf<Length> D, NumberOf<Pressure> M,
          NumberOf<Density> R>
auto critical_speed(const N& eigenvalue, const L& span, const D& core_diameter,
                    const M& elastic_modulus, const R& density) {
  return times_radian(square(eigenvalue / span) * (core_diameter / 4.0) *
                      sqrt(elastic_modulus / density));
}

} // namespace feedwright
