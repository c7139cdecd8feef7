// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mechanics/column_buckling.h"
#include "units/quantities.h"

#include <cmath>

namespace feedwright {

/// First root of tan k = k: the column fixed at one end and supported at the other.
inline constexpr double fixed_supported_column_root = 4.493409457909064;

/// Shape in which a uniform column first buckles, not normalised, at `place` from 0 at end `a` to 1
/// at end `b`; 0 everywhere for a pair that does not hold the column.
///   fixed-free 1 − cos(πt/2), fixed-fixed 1 − cos 2πt, supported-supported sin πt,
///   fixed-supported k (1 − cos kt) − (k t − sin kt), tan k = k; t from a fixed end.
/// Source: S. P. Timoshenko, J. M. Gere, Theory of Elastic Stability, ch. 2 (from memory).
inline double buckling_shape(EndSupport a, EndSupport b, double place) {
  if (!buckling_constant(a, b)) {
    return 0.0;
  }
  const bool starts_fixed = a == EndSupport::fixed;
  const EndSupport far = starts_fixed ? b : a;
  const double t = starts_fixed ? place : 1.0 - place;
  if (a != EndSupport::fixed && b != EndSupport::fixed) {
    return std::sin(pi * place);
  }
  if (far == EndSupport::fixed) {
    return 1.0 - std::cos(2.0 * pi * t);
  }
  if (far == EndSupport::free) {
    return 1.0 - std::cos(pi * t / 2.0);
  }
  const double k = fixed_supported_column_root;
  return k * (1.0 - std::cos(k * t)) - (k * t - std::sin(k * t));
}

} // namespace feedwright
