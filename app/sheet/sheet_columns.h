// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_table.h"

namespace feedwright::sheet {

/// Rows under a heading. A group of a few rows stays whole; of a longer one the heading keeps two
/// rows, and neither its last row nor one that is led by another is torn off.
struct TableGroup {
  QString title;
  std::vector<Row> rows;
};

/// Lays groups out in two columns of equal height, page after page while there are more. The
/// columns of `head` are those of each row.
void add_two_columns(Pages& pages, const std::vector<Column>& head,
                     const std::vector<TableGroup>& groups);

} // namespace feedwright::sheet
