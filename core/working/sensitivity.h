// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"

#include <vector>

namespace feedwright {

/// One per cent on an input moves a result by `share` per cent.
struct Sensitivity {
  InputRef input;
  double share; ///< d ln y/d ln x
};

/// Which figures of the machine and the axis move a result, the strongest first; those that move it
/// by less than a hundredth of their own change are left out. Each figure is changed by a tenth of
/// a per cent up and down and the whole axis sized anew, so that everything it acts through counts.
/// Counts and choices have no per cent and are not among them, nor are figures that are zero. The
/// machine must be sound; empty if the result is open or zero.
std::vector<Sensitivity> sensitivities(const Machine& machine, std::size_t axis, ResultId result);

} // namespace feedwright
