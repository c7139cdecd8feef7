// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"
#include "fields/typed_keeper.h"

namespace feedwright {

class EntryEdit;
class QuantityEdit;
struct FieldReading;

/// A field that is typed: a quantity, a whole number, a text. What cannot be used stays as typed,
/// with a sentence that says why, and changes nothing.
class TextRow : public FieldRow {
  Q_OBJECT
public:
  TextRow(const FormContext& context, std::size_t axis, PartSlot slot, const FieldView& field);

  void hand_in() override;
  void keep_typed() override;

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;
  void restore_typed() override;
  QString became() const override;
  bool holds_typed() const override;

private:
  FieldReading read(const QString& text) const;
  void preview(const QString& text);
  void show_refused(const FieldReading& reading);
  void take(const QString& text, bool same_value);
  void show_in_unit(const QString& text);
  void give_up();

  std::optional<TypedKeeper> keeper_;
  EntryEdit* edit_ = nullptr;
  QuantityEdit* quantity_ = nullptr; ///< the same, of a quantity
};

} // namespace feedwright
