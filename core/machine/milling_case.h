// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mechanics/cutting_force.h"
#include "parts/axis_parts.h"
#include "parts/duty.h"

namespace feedwright {

/// The cut a load case describes; nothing if its description is not whole, or cannot be (a width
/// beyond the cutter).
std::optional<MillingCut> milling_cut(const LoadCase& load);

/// Whether everything a cut needs is given, be it possible or not.
bool describes_cut(const LoadCase& load);

/// Thrust of a load case along the axis: what its cut asks, capped by the spindle, where the cut is
/// described whole; else as given.
struct CaseThrust {
  Force thrust;
  bool capped = false;
};
/// Nothing if the case has neither.
std::optional<CaseThrust> case_thrust(const LoadCase& load, const Spindle& spindle);

} // namespace feedwright
