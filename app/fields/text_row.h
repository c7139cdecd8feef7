// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"

class QLineEdit;

namespace feedwright {

/// A field that is typed: a quantity, a whole number, a text. What cannot be used stays as typed,
/// with a sentence that says why, and changes nothing.
class TextRow : public FieldRow {
  Q_OBJECT
public:
  TextRow(MachineDocument& document, std::size_t axis, PartSlot slot, const FieldView& field);

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;
  QString became() const override;
  bool holds_typed() const override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void preview(const QString& text);
  void finish();

  QLineEdit* edit_ = nullptr;
};

} // namespace feedwright
