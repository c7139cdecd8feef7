// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/quantities.h"

#include <optional>

namespace feedwright {

/// What the two halves of a preloaded pair carry under an outer load.
struct PairLoads {
  Force loaded, relieved;
};

/// External load up to which a preloaded pair keeps both halves loaded: 2^(3/2) F_pl.
/// Source: ISO 3408-5, from the 2/3 power law of ball contacts.
inline Force preload_holds_to(Force preload) {
  return 2.0 * std::numbers::sqrt2 * preload;
}

/// F_1 = F_pl (1 + F/(2^(3/2) F_pl))^(3/2), F_2 = F_1 − F while both halves are loaded; past that
/// the loaded half carries everything. Load and preload ≥ 0. Source: ISO 3408-5.
inline PairLoads pair_loads(Force load, Force preload) {
  if (load >= preload_holds_to(preload)) {
    return {load, Force()};
  }
  const double stretched = 1.0 + load / preload_holds_to(preload);
  const Force loaded = preload * (stretched * std::sqrt(stretched));
  return {loaded, loaded - load};
}

/// The external load under which the loaded half of a pair carries so much: pair_loads() the other
/// way. Zero where the preload alone is as much.
inline Force outer_load_of_pair(Force loaded_half, Force preload) {
  const Force holds = preload_holds_to(preload);
  if (loaded_half >= holds) {
    return loaded_half;
  }
  if (loaded_half <= preload) {
    return {};
  }
  const double root = std::cbrt(loaded_half / preload);
  return holds * (root * root - 1.0);
}

/// L₁₀ = (C_a/(f_w F_m))³·10⁶ revolutions. Nothing for no load: the life is then not limited by it.
/// Source: ISO 3408-5; f_w by the trade.
inline std::optional<double> rated_revolutions(Force dynamic_rating, double load_factor,
                                               Force mean_load) {
  if (mean_load <= Force()) {
    return std::nullopt;
  }
  const double ratio = dynamic_rating / (load_factor * mean_load);
  return ratio * ratio * ratio * 1e6;
}

/// Life of two halves that both must last: L = (L_a^(−10/9) + L_b^(−10/9))^(−9/10).
/// Source: ISO 3408-5.
inline double life_of_pair(double a, double b) {
  return std::pow(std::pow(a, -10.0 / 9.0) + std::pow(b, -10.0 / 9.0), -0.9);
}

/// Life factor for a share of screws that reach the life, interpolated between the standard's
/// values; 1 at 90 % and below. Source: from memory, ISO 281:2007, table of a₁.
double reliability_factor(double reliability);

/// Gathers the cubic mean of loads, weighted with the revolutions turned under each:
/// F_m = (Σ F³ u/Σ u)^(1/3). Source: ISO 3408-5.
class CubicMeanLoad {
public:
  /// Load ≥ 0, revolutions ≥ 0.
  void add(Force load, double revolutions) {
    const double f = si_value(load);
    cubes_ += f * f * f * revolutions;
    revolutions_ += revolutions;
  }
  /// Zero if nothing turned.
  Force value() const {
    return revolutions_ > 0.0 ? from_si<Force>(std::cbrt(cubes_ / revolutions_)) : Force();
  }

private:
  double cubes_ = 0.0;
  double revolutions_ = 0.0;
};

} // namespace feedwright
