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

/// Limits of a scale that govern together.
struct NearTie {
  std::vector<LimitId> limits; ///< the governing one and those close above it, closest first
  double gap = 0.0;            ///< of the farthest of them, as a share of the governing one
};

/// Those within a twentieth of what governs on the scale (within what the figures of parts are good
/// for: common practice, no source); fewer than two limits if nothing is so close.
NearTie near_tie(const AxisResults& results, LimitScale scale);

/// Which input keeps the axis' stiffness open.
InputRef missing_for_stiffness(const Axis& axis);

/// Holds one limit against its target anew, its result having come later than the rest.
void judge_limit(LimitId limit, const Machine& machine, const Axis& axis,
                 const AxisPreparation& ready, AxisResults& out);

/// What was computed but deserves care.
void find_cautions(const Machine& machine, const Axis& axis, const AxisPreparation& ready,
                   AxisResults& out);

} // namespace feedwright
