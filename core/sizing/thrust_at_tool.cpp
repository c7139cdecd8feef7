// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/thrust_at_tool.h"

#include "sizing/prepared_axis.h"

#include <algorithm>

namespace feedwright {

namespace {

/// What the harder-loaded motor pushes when its screw carries so much: largest_load() the other
/// way.
Force pushed_by_motor(const SizingState<NoWorking>& s, Force on_screw) {
  if (s.axis.sides.pairing == Pairing::opposed && s.screw != nullptr && s.screw->preload) {
    const Force whole = outer_load_of_pair(on_screw, **s.screw->preload);
    return s.two_motors ? Force(whole / 2.0) : whole;
  }
  return s.screws_each > 1.0 ? Force(on_screw / s.screw_share) : on_screw;
}

} // namespace

std::vector<ThrustAtTool> thrust_limits_at_tool(const Machine& machine, const Axis& axis,
                                                const AxisResults& results) {
  const PreparedAxis prepared(machine, axis);
  const auto& s = prepared.state;
  std::vector<ThrustAtTool> found;
  for (const LimitDescriptor& about : limit_descriptors()) {
    const Limit& limit = results.limit(about.id);
    if (about.scale != LimitScale::thrust || about.id == LimitId::motor_thrust || !limit.applies ||
        !limit.reached) {
      continue;
    }
    const Force pushed = pushed_by_motor(s, typed<Force>(*limit.reached));
    const Force left = at_tool(s, Force(pushed - s.gravity - s.friction));
    found.push_back({about.id, std::max(Force(), left)});
  }
  return found;
}

std::vector<CasePoint> load_case_points(const Machine& machine, const Axis& axis,
                                        const AxisResults& results) {
  const PreparedAxis prepared(machine, axis);
  std::vector<CasePoint> points;
  points.reserve(results.cases.size());
  for (const CaseResult& load : results.cases) {
    double reserve = case_reserve(prepared.state, load);
    if (results.governing_feed) {
      reserve = std::min(reserve, number(*results.governing_feed / load.feed));
    }
    points.push_back({load.feed, load.thrust, load.capped, as_ratio(reserve), verdict_of(reserve)});
  }
  return points;
}

} // namespace feedwright
