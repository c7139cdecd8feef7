// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"

class QCheckBox;
class QComboBox;

namespace feedwright {

/// A field that is chosen among named values.
class ChoiceRow : public FieldRow {
  Q_OBJECT
public:
  ChoiceRow(const FormContext& context, std::size_t axis, PartSlot slot, const FieldView& field);

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;

private:
  void take(const std::string& choice);

  QComboBox* box_ = nullptr;
};

/// A field that is there or not.
class FlagRow : public FieldRow {
  Q_OBJECT
public:
  FlagRow(const FormContext& context, std::size_t axis, PartSlot slot, const FieldView& field);

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;

private:
  QCheckBox* box_ = nullptr;
};

} // namespace feedwright
