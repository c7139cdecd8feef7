// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/axis_preparation.h"
#include "sizing/results.h"
#include "working/working.h"

namespace feedwright {

/// Everything computed for one axis. The machine must be sound (see machine/soundness.h).
AxisResults size_axis(const Machine& machine, const Axis& axis);

/// The same with the motor's curve and the belt's geometry made ready before: for a search over
/// what does not touch them.
AxisResults size_axis(const Machine& machine, const Axis& axis, const AxisPreparation& ready);

/// The same, with every result's equation recorded by the code that computes it.
AxisResults size_axis(const Machine& machine, const Axis& axis, Working& working);

} // namespace feedwright
