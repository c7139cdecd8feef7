// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/milling_case.h"

namespace feedwright {

bool describes_cut(const LoadCase& load) {
  return load.specific_force && load.exponent && load.tool_diameter && load.teeth &&
         load.spindle_speed && load.depth && load.engagement;
}

std::optional<MillingCut> milling_cut(const LoadCase& load) {
  if (!describes_cut(load)) {
    return std::nullopt;
  }
  constexpr double most_teeth = 1000.0;
  if (**load.engagement > **load.tool_diameter || **load.teeth < 1.0 || **load.teeth > most_teeth ||
      **load.exponent >= 1.0) {
    return std::nullopt;
  }
  MillingCut cut{};
  cut.specific_force = **load.specific_force;
  cut.exponent = **load.exponent;
  cut.depth = **load.depth;
  cut.width = **load.engagement;
  cut.diameter = **load.tool_diameter;
  cut.teeth = static_cast<int>(**load.teeth);
  cut.spindle_speed = **load.spindle_speed;
  cut.feed = *load.feed;
  cut.radial_ratio = usual_radial_ratio;
  return cut;
}

std::optional<CaseThrust> case_thrust(const LoadCase& load, const Spindle& spindle) {
  const auto cut = milling_cut(load);
  if (!cut) {
    return load.thrust ? std::optional(CaseThrust{**load.thrust, false}) : std::nullopt;
  }
  std::optional<Power> at_tool;
  if (spindle.power) {
    at_tool = **spindle.power * *spindle.efficiency;
  }
  const auto forces = milling_forces(*cut, at_tool);
  if (!forces) {
    return std::nullopt;
  }
  return CaseThrust{forces->along_feed, forces->capped};
}

} // namespace feedwright
