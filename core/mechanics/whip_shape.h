// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mechanics/shaft_whip.h"

#include <cmath>

namespace feedwright {

/// Shape of the first lateral mode of a uniform beam, not normalised, at `place` from 0 at end `a`
/// to 1 at end `b`; 0 everywhere for a pair that does not hold the shaft.
///   φ = cosh λt − cos λt − σ (sinh λt − sin λt), t from a fixed end;
///   σ = (cosh λ − cos λ)/(sinh λ − sin λ), with a free far end (sinh λ − sin λ)/(cosh λ + cos λ);
///   φ = sin πt between two supported ends.
/// Source: Euler-Bernoulli beam, W. T. Thomson, Theory of Vibration with Applications, App. D.
inline double whip_shape(EndSupport a, EndSupport b, double place) {
  const auto eigenvalue = whip_eigenvalue(a, b);
  if (!eigenvalue) {
    return 0.0;
  }
  if (a != EndSupport::fixed && b != EndSupport::fixed) {
    return std::sin(pi * place);
  }
  const bool starts_fixed = a == EndSupport::fixed;
  const EndSupport far = starts_fixed ? b : a;
  const double t = *eigenvalue * (starts_fixed ? place : 1.0 - place);
  const double l = *eigenvalue;
  const double sigma = far == EndSupport::free
                           ? (std::sinh(l) - std::sin(l)) / (std::cosh(l) + std::cos(l))
                           : (std::cosh(l) - std::cos(l)) / (std::sinh(l) - std::sin(l));
  return std::cosh(t) - std::cos(t) - sigma * (std::sinh(t) - std::sin(t));
}

} // namespace feedwright
