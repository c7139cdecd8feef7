// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/text_row.h"

#include "fields/field_reading.h"
#include "fields/quantity_edit.h"
#include "text/words.h"

namespace feedwright {

namespace {

constexpr int longest_text = 4096;
constexpr int longest_count = 32;

} // namespace

TextRow::TextRow(const FormContext& context, std::size_t axis, PartSlot slot,
                 const FieldView& field)
    : FieldRow(context, axis, slot, field) {}

QWidget* TextRow::make_editor(QWidget& parent) {
  if (field_.info.type == FieldType::quantity) {
    quantity_ = new QuantityEdit(field_.info.kind, field_.info.unit, &parent);
    edit_ = quantity_;
  } else {
    edit_ = new EntryEdit(&parent);
    const bool text = field_.info.type == FieldType::text;
    edit_->setMaxLength(text ? longest_text : longest_count);
    edit_->setAlignment(text ? Qt::AlignLeading : Qt::AlignRight);
  }
  if (field_.info.presence == Presence::open) {
    edit_->setPlaceholderText(tr("open"));
  }
  keeper_.emplace(*edit_, document().pending(), place());
  edit_->set_offers([this](QMenu& menu) { add_offers(menu); });
  connect(edit_, &QLineEdit::textEdited, this, &TextRow::preview);
  connect(edit_, &EntryEdit::committed, this, &TextRow::take);
  connect(edit_, &EntryEdit::given_up, this, &TextRow::give_up);
  return edit_;
}

FieldReading TextRow::read(const QString& text) const {
  return read_field(document().machine(), axis_, slot_, field_.info, text);
}

void TextRow::show_value() {
  keeper_->forget();
  const QString text = words::field_text(field_);
  if (quantity_ == nullptr) {
    edit_->show_taken(text);
    return;
  }
  const auto* value = std::get_if<AnyQuantity>(&field_.value);
  quantity_->show_quantity(text, value != nullptr ? std::optional(*value) : std::nullopt);
}

QString TextRow::became() const {
  const bool typed = quantity_ != nullptr && !field_.note.text.empty();
  return typed ? read(words::field_text(field_)).became : QString();
}

bool TextRow::holds_typed() const {
  return keeper_->holds();
}

void TextRow::restore_typed() {
  if (keeper_->restore()) {
    preview(edit_->text());
  }
}

void TextRow::keep_typed() {
  keeper_->keep();
}

void TextRow::hand_in() {
  edit_->hand_in();
}

void TextRow::preview(const QString& text) {
  const FieldReading reading = read(text);
  if (reading.error.isEmpty()) {
    edit_->mark_error(0, 0);
    show_became(reading.echo);
  } else {
    show_refused(reading);
  }
}

void TextRow::show_refused(const FieldReading& reading) {
  edit_->mark_error(reading.error_at, reading.error_length);
  show_error(reading.error);
}

void TextRow::take(const QString& text, bool same_value) {
  if (same_value) {
    show_in_unit(text);
    return;
  }
  const FieldReading reading = read(text);
  if (!reading.error.isEmpty()) {
    keeper_->keep();
    show_refused(reading);
    return;
  }
  edit_->setModified(false);
  const bool same = reading.value == field_.value && reading.note.text == field_.note.text;
  if (same || !commit(reading.value, reading.note)) {
    give_up();
  }
}

/// The value stays what it is, to the last bit; only the text that says it is another.
void TextRow::show_in_unit(const QString& text) {
  const FieldReading reading = read(text);
  if (!reading.error.isEmpty() || !(reading.value == field_.value)) {
    return;
  }
  const EntryNote note{reading.note.text,
                       field_.note.origin == Origin::preset ? Origin::entered : field_.note.origin};
  Machine changed = document().machine();
  if (set_field(changed, axis_, slot_, field_.info.member, field_.value, note)) {
    edit_->setModified(false);
    const QString shown = quantity_->unit_of(text);
    document().edit(std::move(changed),
                    tr("show %1 in %2", "field, unit")
                        .arg(words::field_name(slot_, field_.info.member), shown));
  }
}

void TextRow::give_up() {
  keeper_->give_up();
  refresh();
}

} // namespace feedwright
