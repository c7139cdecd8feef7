// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_table.h"

#include "text/symbol_text.h"

#include <QPainter>

#include <algorithm>
#include <numeric>

namespace feedwright::sheet {

namespace {

constexpr qreal gutter = 8.0;
constexpr qreal leading = 3.0;

qreal width_of(const Table& table, std::size_t column, qreal width) {
  const qreal all = std::accumulate(table.columns.begin(), table.columns.end(), 0.0,
                                    [](qreal sum, const Column& c) { return sum + c.share; });
  const qreal gutters = gutter * static_cast<qreal>(table.columns.size() - 1);
  return (width - gutters) * table.columns[column].share / all;
}

TextStyle style_of(const Table& table, const Row& row, std::size_t column) {
  return {table.size, row.bold, table.columns[column].alignment};
}

QString cell(const Row& row, std::size_t column) {
  return row.cells.value(static_cast<qsizetype>(column));
}

qreal cell_height(const Table& table, const Row& row, std::size_t column, qreal width) {
  return table.columns[column].symbols
             ? symbols_height(cell(row, column), font(table.size, row.bold), width)
             : text_height(cell(row, column), style_of(table, row, column), width);
}

void paint_cell(QPainter& painter, const QRectF& rect, const Table& table, const Row& row,
                std::size_t column) {
  if (table.columns[column].symbols) {
    paint_symbols(painter, rect, cell(row, column), font(table.size, row.bold), Qt::black);
  } else {
    paint_text(painter, rect, cell(row, column), style_of(table, row, column));
  }
}

Row titles(const Table& table) {
  Row row{{}, true, false};
  for (const Column& column : table.columns) {
    row.cells.append(column.title);
  }
  return row;
}

void add_row(Pages& pages, const Table& table, const Row& row, bool ruled_below) {
  pages.add(row_height(table, row, pages.body().width()),
            [table_head = Table{table.columns, {}, table.size}, row,
             ruled_below](QPainter& painter, const QRectF& rect) {
              paint_row(painter, rect, table_head, row, ruled_below);
            });
}

} // namespace

void paint_row(QPainter& painter, const QRectF& rect, const Table& table, const Row& row,
               bool ruled_below) {
  qreal x = rect.left();
  for (std::size_t column = 0; column < table.columns.size(); ++column) {
    const qreal width = width_of(table, column, rect.width());
    paint_cell(painter, QRectF(x, rect.top() + leading / 2.0, width, rect.height()), table, row,
               column);
    x += width + gutter;
  }
  painter.setPen(QPen(ruled_below ? Qt::black : QColor(0xbb, 0xbb, 0xbb), ruled_below ? 0.8 : 0.4));
  if (ruled_below) {
    painter.drawLine(rect.bottomLeft(), rect.bottomRight());
  }
  if (row.begins_group) {
    painter.drawLine(rect.topLeft(), rect.topRight());
  }
}

qreal row_height(const Table& table, const Row& row, qreal width) {
  qreal height = 0.0;
  for (std::size_t column = 0; column < table.columns.size(); ++column) {
    height = std::max(height, cell_height(table, row, column, width_of(table, column, width)));
  }
  return height + leading;
}

void add_table(Pages& pages, const Table& table) {
  const Row head = titles(table);
  const bool has_head =
      std::ranges::any_of(table.columns, [](const Column& c) { return !c.title.isEmpty(); });
  const qreal width = pages.body().width();
  const qreal head_height = has_head ? row_height(table, head, width) : 0.0;
  bool needs_head = has_head;
  for (const Row& row : table.rows) {
    const qreal height = row_height(table, row, width);
    const std::size_t before = pages.list().size();
    pages.ensure(height + (needs_head ? head_height : 0.0));
    if (has_head && (needs_head || pages.list().size() != before)) {
      add_row(pages, table, head, true);
    }
    needs_head = false;
    add_row(pages, table, row, false);
  }
}

} // namespace feedwright::sheet
