// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_content.h"
#include "sheet/sheet_pages.h"

namespace feedwright::sheet {

/// The machine's own pages: the table of axes, its supply, the parts to buy.
void add_machine_pages(Pages& pages, const SheetContent& content);

/// One axis: drawing, set-up figures, limits, plots, cautions, inputs.
void add_axis_pages(Pages& pages, const Machine& machine, std::size_t axis,
                    const AxisResults& results, const SheetAxis& content, const FileUnits& units);

/// How each figure of an axis came about.
void add_working_pages(Pages& pages, const Machine& machine, std::size_t axis,
                       const SheetAxis& content);

/// "X · long table", "X" without a name.
QString axis_title(const std::string& letter, const std::string& name);

} // namespace feedwright::sheet
