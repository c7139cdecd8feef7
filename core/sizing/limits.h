// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/axis_preparation.h"
#include "sizing/results.h"

namespace feedwright {

/// Holds every limit against its target, names what governs and what deserves care.
void judge_limits(const Machine& machine, const Axis& axis, const AxisPreparation& ready,
                  AxisResults& out);

/// The margin from which a limit reads clear. Common practice, no source.
inline constexpr double clear_margin = 1.2;

/// From 1.2 clear, from 1 close, below 1 over. Common practice, no source.
Verdict verdict_of(double margin);

/// Which input keeps the axis' stiffness open.
InputRef missing_for_stiffness(const Axis& axis);

/// What was computed but deserves care.
void find_cautions(const Machine& machine, const Axis& axis, const AxisPreparation& ready,
                   AxisResults& out);

} // namespace feedwright
