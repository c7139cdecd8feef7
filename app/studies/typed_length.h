// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/file_units.h"

#include <QWidget>

#include <optional>

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace feedwright {

/// A line over a study: a length to type in any unit, and beside it what is to be said of it.
class TypedLength : public QWidget {
  Q_OBJECT
public:
  /// `id` names the row's widgets; the mnemonic in `name` leads to the field.
  TypedLength(const QString& id, const QString& name, const QString& help, QWidget* parent);

  /// Puts the keyboard into the field, all of it marked.
  void take_keyboard();

protected:
  QLineEdit& editor() { return *editor_; }
  QHBoxLayout& row() { return *row_; }
  /// The unit of lengths of a file, in which a bare number is read and values are shown.
  static const Unit& unit_of(const FileUnits& units);
  /// What a text comes to; nothing, and the fault said, if it is no length. An empty one says
  /// nothing.
  std::optional<Length> read(const QString& text, const FileUnits& units);
  void say(const QString& text, bool error);
  void changeEvent(QEvent* event) override;

private:
  void fit_editor();
  void colour_note();

  QHBoxLayout* row_ = nullptr;
  QLineEdit* editor_ = nullptr;
  QLabel* note_ = nullptr;
  bool wrong_ = false;
};

} // namespace feedwright
