// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/at_position.h"

#include "sizing/pipeline.h"

#include <algorithm>

namespace feedwright {

namespace {

bool nut_counts_for_whip(const Axis& axis, const NutReach& reach) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  return screw != nullptr && screw->whip_span == WhipSpan::nut_to_bearing &&
         nut_segment(reach, *screw).has_value();
}

} // namespace

Length place_at_start(const Axis& axis) {
  if (const auto* screw = std::get_if<Screw>(&axis.drive)) {
    return nut_at_start(axis.basics, *screw);
  }
  return hauling_lengths(axis.basics, std::get<HaulingBelt>(axis.drive)).near;
}

AtPosition at_position(const Machine& machine, const Axis& axis, Length along) {
  AtPosition at;
  at.place = place_at_start(axis) + std::clamp(along, Length(), *axis.basics.travel);
  const NutReach standing{at.place, at.place};
  NoWorking none;
  const AxisResults there =
      run_sizing(machine, axis, AxisPreparation(machine, axis), none, standing);
  at.whip_depends = nut_counts_for_whip(axis, standing);
  at.whip_length = there.whip_length;
  at.whip_speed = there.whip_speed;
  at.whip_allowed_speed = there.whip_allowed_speed;
  at.whip_feed = there.whip_feed;
  at.buckling_length = there.buckling_length;
  at.buckling_thrust = there.buckling_thrust;
  at.shaft_stiffness = there.shaft_stiffness;
  at.haul_stiffness = there.haul_stiffness;
  at.axis_stiffness = there.axis_stiffness;
  at.natural_frequency = there.natural_frequency;
  at.windup_error = there.windup_error;
  return at;
}

std::optional<double> whip_nearness(const Axis& axis, const AxisResults& results,
                                    AngularVelocity critical) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  if (screw == nullptr || screw->driven != DrivenMember::screw || !axis.targets.feed ||
      !results.screw_travel || critical <= AngularVelocity()) {
    return std::nullopt;
  }
  return number(**axis.targets.feed / *results.screw_travel / critical);
}

} // namespace feedwright
