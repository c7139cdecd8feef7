// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace feedwright {

/// A point of a curve with the curve's slope there.
struct Knot {
  double x, y;
  double slope = 0.0;
};

/// Gives the knots the slopes of a cubic Hermite interpolant that never overshoots its data:
/// between two points it stays between their values. x rising, at least two points; two are joined
/// by a straight line.
/// Source: F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304; end slopes by
/// the three-point formula with the same limits.
void set_monotone_slopes(std::vector<Knot>& knots);

/// Value of the interpolant at x, clamped to the range of the knots.
double hermite_value(const std::vector<Knot>& knots, double x);

} // namespace feedwright
