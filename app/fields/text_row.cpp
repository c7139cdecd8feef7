// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/text_row.h"

#include "fields/field_reading.h"
#include "text/words.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace feedwright {

namespace {

constexpr int longest_quantity = 256;
constexpr int longest_text = 4096;

} // namespace

TextRow::TextRow(MachineDocument& document, std::size_t axis, PartSlot slot, const FieldView& field)
    : FieldRow(document, axis, slot, field) {}

QWidget* TextRow::make_editor(QWidget& parent) {
  edit_ = new QLineEdit(&parent);
  const bool text = field_.info.type == FieldType::text;
  edit_->setMaxLength(text ? longest_text : longest_quantity);
  edit_->setAlignment(text ? Qt::AlignLeft : Qt::AlignRight);
  if (field_.info.presence == Presence::open) {
    edit_->setPlaceholderText(tr("open"));
  }
  connect(edit_, &QLineEdit::textEdited, this, &TextRow::preview);
  connect(edit_, &QLineEdit::editingFinished, this, &TextRow::finish);
  return edit_;
}

void TextRow::show_value() {
  const QString text = words::field_text(field_);
  // Rewriting the same text would lose cursor and selection.
  if (edit_->text() != text) {
    edit_->setText(text);
    edit_->setCursorPosition(0);
  }
  edit_->setModified(false);
}

QString TextRow::became() const {
  const bool typed = field_.info.type == FieldType::quantity && !field_.note.text.empty();
  return typed ? read_field(document_.machine(), axis_, slot_, field_.info, edit_->text()).became
               : QString();
}

bool TextRow::holds_typed() const {
  return edit_->isModified();
}

void TextRow::preview(const QString& text) {
  const FieldReading reading = read_field(document_.machine(), axis_, slot_, field_.info, text);
  if (reading.error.isEmpty()) {
    show_became(reading.became);
  } else {
    show_error(reading.error);
  }
}

void TextRow::finish() {
  if (!edit_->isModified()) {
    return;
  }
  const FieldReading reading =
      read_field(document_.machine(), axis_, slot_, field_.info, edit_->text());
  if (!reading.error.isEmpty()) {
    show_error(reading.error);
    return;
  }
  edit_->setModified(false);
  const bool same = reading.value == field_.value && reading.note.text == field_.note.text;
  if (same || !commit(reading.value, reading.note)) {
    refresh();
  }
}

bool TextRow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape && edit_->isModified()) {
    edit_->setModified(false);
    refresh();
    edit_->selectAll();
    return true;
  }
  return FieldRow::eventFilter(watched, event);
}

} // namespace feedwright
