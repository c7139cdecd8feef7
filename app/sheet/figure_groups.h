// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_columns.h"
#include "sheet/sheet_content.h"

namespace feedwright::sheet {

/// What was computed besides the limits, by what it is about; groups without a figure are left out.
std::vector<TableGroup> figure_groups(const SheetAxis& axis, const FileUnits& units);

} // namespace feedwright::sheet
