// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Quantities that cannot hold a bad value. Checked once, where a value enters.

#include "units/quantities.h"

#include <cassert>
#include <cmath>
#include <optional>

namespace feedwright {

/// What a constrained value demands of its number.
enum class Bound { any, positive, non_negative, fraction, fraction_above_zero };

constexpr bool within(Bound bound, double v) {
  // Comparisons are false for NaN; the upper bound refuses infinities.
  constexpr double largest = 1e300;
  switch (bound) {
  case Bound::any: return v > -largest && v < largest;
  case Bound::positive: return v > 0.0 && v < largest;
  case Bound::non_negative: return v >= 0.0 && v < largest;
  case Bound::fraction: return v >= 0.0 && v <= 1.0;
  case Bound::fraction_above_zero: return v > 0.0 && v <= 1.0;
  }
  return false;
}

template <class Q, Bound B>
class Constrained {
public:
  using Value = Q;
  static constexpr Bound bound = B;

  /// Nothing if the value is out of bounds or not finite.
  static constexpr std::optional<Constrained> make(const Q& q) {
    if (!within(B, si_value(q))) {
      return std::nullopt;
    }
    return Constrained(q);
  }
  /// For values known to be good where they are written: defaults and tests.
  static constexpr Constrained of(const Q& q) {
    assert(within(B, si_value(q)));
    return Constrained(q);
  }
  constexpr const Q& operator*() const { return value_; }
  friend bool operator==(const Constrained& a, const Constrained& b) {
    return si_value(a.value_) == si_value(b.value_);
  }

private:
  constexpr explicit Constrained(const Q& q) : value_(q) {}
  Q value_;
};

template <class Q>
using Positive = Constrained<Q, Bound::positive>;
template <class Q>
using NonNegative = Constrained<Q, Bound::non_negative>;
/// Any finite value, for quantities that may be negative.
template <class Q>
using Finite = Constrained<Q, Bound::any>;
/// From 0 to 1, both included.
using Fraction = Constrained<double, Bound::fraction>;
/// Above 0, up to 1: an efficiency, a share.
using Share = Constrained<double, Bound::fraction_above_zero>;

} // namespace feedwright
