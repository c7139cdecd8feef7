// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_pages.h"

#include <QStringList>

namespace feedwright::sheet {

struct Column {
  QString title;
  qreal share = 1.0; ///< of the width, relative to the others
  Qt::Alignment alignment = Qt::AlignLeft;
  /// What follows a "_" is set as a subscript.
  bool symbols = false;
};

struct Row {
  QStringList cells;
  bool bold = false;
  /// Ruled off from the row above.
  bool begins_group = false;
  /// Says nothing without the row below it.
  bool leads = false;
};

struct Table {
  std::vector<Column> columns;
  std::vector<Row> rows;
  int size = body_size;
};

/// Lays the table out from the present place; rows stay whole, the heads come again on each page.
void add_table(Pages& pages, const Table& table);

/// Height of a row at that width.
qreal row_height(const Table& table, const Row& row, qreal width);

/// Paints one row with the table's columns.
void paint_row(QPainter& painter, const QRectF& rect, const Table& table, const Row& row,
               bool ruled_below = false);

} // namespace feedwright::sheet
