// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"
#include "sheet/sheet_pages.h"
#include "sizing/results.h"

namespace feedwright::sheet {

/// The drawing of the drive train, in ink on white.
void add_train(Pages& pages, const Machine& machine, std::size_t axis, const AxisResults& results);

/// Thrust and acceleration against feed, abreast, and stretch below, as lines and text.
void add_plots(Pages& pages, const Machine& machine, std::size_t axis, const AxisResults& results);

} // namespace feedwright::sheet
