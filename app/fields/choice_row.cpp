// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/choice_row.h"

#include "fields/wheel_guard.h"
#include "machine/swap_parts.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCheckBox>
#include <QComboBox>

namespace feedwright {

ChoiceRow::ChoiceRow(const FormContext& context, std::size_t axis, PartSlot slot,
                     const FieldView& field)
    : FieldRow(context, axis, slot, field) {}

QWidget* ChoiceRow::make_editor(QWidget& parent) {
  box_ = new QComboBox(&parent);
  for (const std::string_view choice : field_.info.choices) {
    box_->addItem(words::choice_name(field_.info.member, choice), text_of(choice));
  }
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  new WheelGuard(box_);
  connect(box_, &QComboBox::activated, this,
          [this](int index) { take(box_->itemData(index).toString().toStdString()); });
  return box_;
}

/// Another layout of the sides may want another way to tie them.
void ChoiceRow::take(const std::string& choice) {
  const EntryNote note{{}, Origin::entered};
  const Machine& present = document().machine();
  Machine plain = present;
  const bool layout = slot_ == PartSlot::sides && field_.info.member == "layout";
  if (layout && set_field(plain, axis_, slot_, field_.info.member, choice, note)) {
    Machine made = with_what_follows(present, plain, axis_, swap_to_layout(choice),
                                     {context_.shelf.stock_belts, {}});
    if (made != plain) {
      document().edit(std::move(made), tr("%1: %2", "field: choice")
                                           .arg(words::field_name(slot_, field_.info.member),
                                                words::choice_name(field_.info.member, choice)));
      return;
    }
  }
  commit(choice, note);
}

void ChoiceRow::show_value() {
  if (const auto* value = std::get_if<std::string>(&field_.value)) {
    box_->setCurrentIndex(box_->findData(QString::fromStdString(*value)));
  }
}

FlagRow::FlagRow(const FormContext& context, std::size_t axis, PartSlot slot,
                 const FieldView& field)
    : FieldRow(context, axis, slot, field) {}

QWidget* FlagRow::make_editor(QWidget& parent) {
  box_ = new QCheckBox(tr("yes"), &parent);
  connect(box_, &QCheckBox::clicked, this, [this](bool checked) {
    commit(checked, {{}, Origin::entered});
  });
  return box_;
}

void FlagRow::show_value() {
  box_->setChecked(field_.value == FieldValue(true));
}

} // namespace feedwright
