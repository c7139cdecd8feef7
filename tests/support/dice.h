// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Random figures for tests, the same in every run.

#include "units/constrained.h"

#include <random>

namespace feedwright::testing {

class Dice {
public:
  explicit Dice(unsigned seed) : random_(seed) {}
  double in(double least, double most) {
    return std::uniform_real_distribution<double>(least, most)(random_);
  }
  /// Evenly over the powers of ten between.
  double over(double least, double most) { return std::exp(in(std::log(least), std::log(most))); }
  int whole(int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(random_);
  }
  bool chance(double share) { return in(0.0, 1.0) < share; }
  /// A constrained quantity from its range in SI units.
  template <class C>
  C of(double least, double most) {
    return C::of(from_si<typename C::Value>(in(least, most)));
  }

private:
  std::mt19937 random_;
};

} // namespace feedwright::testing
