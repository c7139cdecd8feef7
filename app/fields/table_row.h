// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_reading.h"
#include "fields/field_row.h"

class QLayout;
class QLineEdit;
class QTableWidget;
class QTableWidgetItem;

namespace feedwright {

/// A table field: one line to a row, one column to each of the row's own fields, quantities with
/// any unit. A row of many fields stands upright: its fields down, the rows side by side. Made from
/// the columns' descriptors. A cell that cannot be used stays as typed; the others count.
class TableFieldRow : public FieldRow {
  Q_OBJECT
public:
  TableFieldRow(const FormContext& context, std::size_t axis, PartSlot slot,
                const FieldView& field);

  int row_at_hand() const override;
  std::vector<QWidget*> tab_stops() const override;
  void hand_in() override;
  void keep_typed() override;

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;
  QString refused_text() const override;

private:
  struct Cell {
    int row = 0;
    std::size_t column = 0;
  };

  void make_table();
  void name_cells();
  QStringList headings() const;
  QLayout* make_buttons();
  void take_cell(int table_row, int table_column);
  void take(Cell cell, const QString& text);
  QLineEdit* typing() const;
  const QTableWidgetItem* typed_into() const;
  Cell cell_at(int table_row, int table_column) const;
  QString said_change(const FieldInfo& column, const QString& before, const QString& after) const;
  void add_row();
  void remove_row();
  void paste();
  void import_text();
  void put_cells(TableRows rows, const std::vector<QStringList>& lines, int first_row);
  bool commit_rows(TableRows rows, const QString& what, TypedMoves moves = {});
  CellReading read(Cell cell, const QString& text) const;
  void show_refused();
  void mark_refused(QTableWidgetItem& item, const QString& sentence);
  void fit_height();
  TypedAt place_of(Cell cell) const;
  std::vector<std::pair<Cell, QString>> refused() const;
  TableRows rows() const;
  std::span<const FieldInfo> columns() const { return field_.info.table->columns(); }

  int shown_rows() const;
  QTableWidgetItem* item_at(Cell cell) const;
  QTableWidgetItem& made_item(Cell cell);

  QWidget* frame_ = nullptr;
  QTableWidget* table_ = nullptr;
  std::vector<QWidget*> buttons_;
  bool upright_ = false;
  bool filling_ = false;
  bool taking_ = false; ///< what is typed into a cell: its editor is only about to close
};

} // namespace feedwright
