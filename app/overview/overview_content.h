// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the machine view's tables say, made from results: words and numbers, no pixels.

#include "overview/figure_table.h"
#include "sizing/size_machine.h"

namespace feedwright {

/// A machine with all that was computed of it.
struct SizedMachine {
  const Machine& machine;
  const std::vector<AxisResults>& results; ///< one an axis
  const MachineResults& together;
  const FileUnits& units;
};

/// A column an axis: what governs, what is reached and wanted, the parts.
FigureContent axes_compared(const SizedMachine& sized);
/// Supply power and bus voltage, all axes at once.
FigureContent machine_limits(const SizedMachine& sized);
/// What each axis adds to the sums.
FigureContent axis_shares(const SizedMachine& sized);
/// What the controller is told of each axis, and the steps it must give.
FigureContent controller_figures(const SizedMachine& sized);
/// The parts of all axes, like ones counted together.
FigureContent parts_to_buy(const Machine& machine);

} // namespace feedwright
