// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What stands beside the motor's thrust in the plot over feed: the other limits of thrust and the
// load cases, all brought to the tool.

#include "machine/machine.h"
#include "sizing/results.h"

#include <vector>

namespace feedwright {

struct ThrustAtTool {
  LimitId id;
  Force thrust; ///< along the axis at the tool, at a steady feed up the slope, that just meets it
};
/// Every limit of thrust that was reckoned, but the motor's, which changes with the feed; ≥ 0.
std::vector<ThrustAtTool> thrust_limits_at_tool(const Machine&, const Axis&, const AxisResults&);

struct CasePoint {
  Velocity feed;
  Force thrust;  ///< along the axis, at the tool
  bool capped;   ///< by the spindle's power
  Ratio reserve; ///< the lesser of torque there is over torque asked and governing feed over feed
  Verdict verdict;
};
/// The load cases of the duty, in its order; empty where they were not reckoned.
std::vector<CasePoint> load_case_points(const Machine&, const Axis&, const AxisResults&);

} // namespace feedwright
