// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace feedwright {

/// Slopes at the knots of a cubic Hermite interpolant that never overshoots its data: between two
/// points it stays between their values. x rising, at least two points, sizes equal. Two or three
/// points are joined by straight lines' slopes limited the same way.
/// Source: F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304; end slopes by
/// the three-point formula with the same limits.
std::vector<double> monotone_slopes(const std::vector<double>& x, const std::vector<double>& y);

/// Value of the interpolant at `at`, clamped to the range of x.
double hermite_value(const std::vector<double>& x, const std::vector<double>& y,
                     const std::vector<double>& slope, double at);

} // namespace feedwright
