// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How columns beside each other share the room across.

#include <vector>

namespace feedwright {

/// How wide a column would be; each no less than the next.
struct ColumnWants {
  double wanted; ///< so that every word has one line
  double named;  ///< so that every name is whole, in lines
  double least;  ///< so that no number is cut
};

/// Alike while every word has room in one line; else each what its names take, broken, and of the
/// rest its share; where even that is too much, what its numbers take, and of the rest its share.
std::vector<double> column_widths(double room, const std::vector<ColumnWants>& columns);

} // namespace feedwright
