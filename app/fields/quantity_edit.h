// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/entry_edit.h"
#include "units/unit_table.h"

#include <optional>
#include <string>

namespace feedwright {

/// A line to type a quantity into, in any unit of its kind. A mark at its end opens a menu with the
/// value in each unit; choosing one hands in the same value, to the last bit, in that unit.
/// Alt+Down and F4 open it too. Neither the wheel nor the arrow keys change the value.
class QuantityEdit : public EntryEdit {
  Q_OBJECT
public:
  /// `unit` is the usual one, in which a bare number is read.
  QuantityEdit(Kind kind, std::string_view unit, QWidget* parent = nullptr);

  /// Shows a quantity that counts, by the text it was given in.
  void show_quantity(const QString& text, const std::optional<AnyQuantity>& value);
  /// Symbol of the unit a text is in; empty for a bare number or one that cannot be read.
  QString unit_of(const QString& text) const;
  /// Opens the menu of units and offers.
  void open_menu();
  /// The menu as it would open now; the caller's to delete.
  QMenu* made_menu();

protected:
  QString at_rest(const QString& text) const override;
  void fill_menu(QMenu& menu) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void draw_mark();
  void choose(const Unit& unit);

  Kind kind_;
  std::string unit_;
  std::optional<AnyQuantity> value_;
  QAction* mark_ = nullptr;
};

} // namespace feedwright
