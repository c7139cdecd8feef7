// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Compares quantities of the same kind; a check across kinds does not compile.

#include "units/kind.h"
#include "units/literals.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace feedwright::testing {

/// Whether `actual` agrees with `wanted` to the relative tolerance.
template <class Q>
bool near(const Q& actual, const Q& wanted, double relative = 1e-9) {
  const double a = si_value(actual);
  const double w = si_value(wanted);
  INFO("actual " << a << " wanted " << w << " (SI)");
  return std::isfinite(a) && std::abs(a - w) <= relative * std::max(std::abs(a), std::abs(w));
}

} // namespace feedwright::testing
