// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_life.h"

#include <algorithm>
#include <iterator>

namespace feedwright {

double reliability_factor(double reliability) {
  struct Row {
    double reliability, factor;
  };
  static constexpr Row rows[] = {{0.90, 1.0},    {0.95, 0.64},   {0.96, 0.55},   {0.97, 0.47},
                                 {0.98, 0.37},   {0.99, 0.25},   {0.992, 0.22},  {0.994, 0.19},
                                 {0.996, 0.16},  {0.998, 0.12},  {0.999, 0.093}, {0.9992, 0.087},
                                 {0.9994, 0.08}, {0.9995, 0.077}};
  if (reliability <= rows[0].reliability) {
    return 1.0;
  }
  const auto* above =
      std::ranges::find_if(rows, [&](const Row& row) { return row.reliability >= reliability; });
  if (above == std::end(rows)) {
    // Past the table: in proportion to the share that may fail, which is below the table's trend.
    const Row& last = *std::prev(above);
    return last.factor * (1.0 - reliability) / (1.0 - last.reliability);
  }
  const Row& below = *std::prev(above);
  const double share = (reliability - below.reliability) / (above->reliability - below.reliability);
  return below.factor + share * (above->factor - below.factor);
}

} // namespace feedwright
