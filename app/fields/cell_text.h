// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"

namespace feedwright {

/// What a table's cell shows of a value: a quantity in its column's unit, a choice by its name,
/// nothing for what is open.
QString cell_text(const FieldInfo& column, const CellValue& cell);

} // namespace feedwright
