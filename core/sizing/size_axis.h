// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"
#include "working/working.h"

namespace feedwright {

/// Everything computed for one axis. The machine must be sound (see machine/soundness.h).
AxisResults size_axis(const Machine& machine, const Axis& axis);

/// The same, with every result's equation recorded by the code that computes it.
AxisResults size_axis(const Machine& machine, const Axis& axis, Working& working);

} // namespace feedwright
