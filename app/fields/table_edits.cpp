// SPDX-License-Identifier: GPL-3.0-or-later

// What is done to a table: a cell typed, rows added and taken away, a table put in.

#include "fields/cell_text.h"
#include "fields/table_row.h"
#include "fields/table_text.h"
#include "machine/machine_file.h"
#include "text/words.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QTableWidget>

#include <algorithm>
#include <utility>

namespace feedwright {

namespace {

/// How many cells each line has.
std::vector<std::size_t> sizes_of(const std::vector<QStringList>& lines) {
  std::vector<std::size_t> sizes;
  sizes.reserve(lines.size());
  for (const QStringList& line : lines) {
    sizes.push_back(static_cast<std::size_t>(line.size()));
  }
  return sizes;
}

} // namespace

/// True if that was a step.
bool TableFieldRow::commit_rows(TableRows rows, const QString& what, TypedMoves moves) {
  Machine changed = document().machine();
  const FieldValue value = rows.rows.empty() ? FieldValue() : FieldValue(std::move(rows));
  if (!set_field(changed, axis_, slot_, field_.info.member, value, {{}, Origin::entered}) ||
      changed == document().machine()) {
    return false;
  }
  document().edit_moving(std::move(changed), what, std::move(moves));
  return true;
}

void TableFieldRow::take_cell(int table_row, int table_column) {
  if (filling_) {
    return;
  }
  const QTableWidgetItem& item = *table_->item(table_row, table_column);
  const Cell cell = cell_at(table_row, table_column);
  const QString held = item.data(Qt::UserRole).toString();
  take(cell,
       columns()[cell.column].type == FieldType::choice && !held.isEmpty() ? held : item.text());
}

void TableFieldRow::take(Cell cell, const QString& text) {
  TableRows changed = rows();
  const auto row = static_cast<std::size_t>(cell.row);
  if (row >= changed.rows.size()) {
    return;
  }
  const bool was_taking = std::exchange(taking_, true);
  const FieldInfo& column = columns()[cell.column];
  CellReading reading = read(cell, text);
  if (reading.error.isEmpty()) {
    document().pending().give_up(place_of(cell));
    CellValue& value = changed.rows[row][cell.column];
    const QString before = cell_text(column, value);
    value = std::move(reading.value);
    const QString what = said_change(column, before, cell_text(column, value));
    commit_rows(std::move(changed), what);
  } else {
    document().pending().keep(place_of(cell), text);
  }
  // Changed or not, the cell shows what it came to.
  refresh();
  taking_ = was_taking;
}

QString TableFieldRow::said_change(const FieldInfo& column, const QString& before,
                                   const QString& after) const {
  const auto shown = [](const QString& text) { return text.isEmpty() ? tr("open") : text; };
  return tr("%1: %2 %3 → %4", "table, column, value before, value after")
      .arg(words::field_name(slot_, field_.info.member),
           words::column_name(slot_, field_.info.member, column.member), shown(before),
           shown(after));
}

void TableFieldRow::add_row() {
  TableRows changed = rows();
  if (changed.rows.size() >= most_table_rows) {
    show_error(tr("A table has at most %1 rows.").arg(most_table_rows));
    return;
  }
  // A row like the last is nearer to what is wanted than a fresh one.
  std::vector<CellValue> next =
      changed.rows.empty() ? field_.info.table->fresh_row() : changed.rows.back();
  if (!changed.rows.empty() && slot_ == PartSlot::motor) {
    // Speeds of a torque curve must rise: a step of 300 rpm on, to type over.
    if (auto* speed = std::get_if<AnyQuantity>(&next.front())) {
      speed->si += 10.0 * pi;
    }
  }
  changed.rows.push_back(std::move(next));
  const int added = static_cast<int>(changed.rows.size()) - 1;
  commit_rows(std::move(changed),
              tr("%1: one more", "table").arg(words::field_name(slot_, field_.info.member)));
  upright_ ? table_->setCurrentCell(0, added) : table_->setCurrentCell(added, 0);
  table_->setFocus();
}

void TableFieldRow::remove_row() {
  TableRows changed = rows();
  const int row = row_at_hand();
  if (row < 0 || row >= static_cast<int>(changed.rows.size())) {
    return;
  }
  changed.rows.erase(changed.rows.begin() + row);
  commit_rows(std::move(changed),
              tr("%1: one less", "table").arg(words::field_name(slot_, field_.info.member)),
              TypedMoves::without_row(place(), row));
}

/// All of them or none: a row with a cell made up would be computed with.
void TableFieldRow::put_cells(TableRows rows, const std::vector<QStringList>& lines,
                              int first_row) {
  auto row = static_cast<std::size_t>(first_row);
  if (row + lines.size() > most_table_rows) {
    show_error(tr("Nothing is taken, for a table has at most %1 rows.").arg(most_table_rows));
    return;
  }
  const TypedAt table = place();
  const TypedMoves over = rows.rows.empty()
                              ? TypedMoves::over_table(table)
                              : TypedMoves::over_cells(table, first_row, sizes_of(lines));
  for (const QStringList& cells : lines) {
    if (row >= rows.rows.size()) {
      rows.rows.push_back(field_.info.table->fresh_row());
    }
    const std::size_t count = std::min(static_cast<std::size_t>(cells.size()), columns().size());
    for (std::size_t column = 0; column < count; ++column) {
      CellReading reading =
          read({static_cast<int>(row), column}, cells[static_cast<qsizetype>(column)]);
      if (!reading.error.isEmpty()) {
        show_error(tr("Nothing is taken, for in row %1: %2").arg(row + 1).arg(reading.error));
        return;
      }
      rows.rows[row][column] = std::move(reading.value);
    }
    ++row;
  }
  if (!commit_rows(
          std::move(rows),
          tr("%1: a table put in", "table").arg(words::field_name(slot_, field_.info.member)),
          over)) {
    // The same values again, but what waited over them is replaced all the same.
    for (const auto& [cell, text] : refused()) {
      if (!over.forth(place_of(cell))) {
        document().pending().give_up(place_of(cell));
      }
    }
  }
  refresh();
}

void TableFieldRow::paste() {
  const int current = upright_ ? table_->currentColumn() : table_->currentRow();
  put_cells(rows(), table_cells(QApplication::clipboard()->text()), std::max(0, current));
}

void TableFieldRow::import_text() {
  const QString path = context_.ask_for_table ? context_.ask_for_table(*frame_) : QString();
  if (path.isEmpty()) {
    return;
  }
  QFile file(path);
  constexpr qint64 largest = 1 << 20;
  if (!file.open(QIODevice::ReadOnly) || file.size() > largest) {
    show_error(tr("%1 cannot be read.").arg(path));
    return;
  }
  const auto lines = table_cells(QString::fromUtf8(file.readAll()));
  if (lines.empty()) {
    show_error(tr("%1 holds no table: wanted are lines of %2 values parted by tabs, semicolons or "
                  "commas.")
                   .arg(path)
                   .arg(columns().size()));
    return;
  }
  put_cells({}, lines, 0);
}

} // namespace feedwright
