// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"

class QLayout;
class QTableWidget;

namespace feedwright {

/// A table field: one line to a row, one column to each of the row's own fields, quantities with
/// any unit. Made from the columns' descriptors.
class TableFieldRow : public FieldRow {
  Q_OBJECT
public:
  TableFieldRow(MachineDocument& document, std::size_t axis, PartSlot slot, const FieldView& field);

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;

private:
  void make_table();
  QLayout* make_buttons();
  void take_table();
  void add_row();
  void remove_row();
  void paste();
  void import_text();
  void put_cells(const std::vector<QStringList>& lines, int first_row);
  std::optional<CellValue> read_cell(int row, std::size_t column);
  TableRows rows() const;
  std::span<const FieldInfo> columns() const { return field_.info.table->columns(); }

  QWidget* frame_ = nullptr;
  QTableWidget* table_ = nullptr;
  bool filling_ = false;
};

} // namespace feedwright
