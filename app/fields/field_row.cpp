// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_row.h"

#include "fields/choice_row.h"
#include "fields/table_row.h"
#include "fields/text_row.h"
#include "text/words.h"
#include "window/style.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>

namespace feedwright {

namespace {

QString key_of(PartSlot slot, std::string_view member) {
  const std::string key = std::string(slot_name(slot)) + "." + std::string(member);
  return QString::fromStdString(key);
}

QString capital(const QString& text) {
  return text.isEmpty() ? text : text.left(1).toUpper() + text.mid(1);
}

} // namespace

std::unique_ptr<FieldRow> FieldRow::make(MachineDocument& document, std::size_t axis, PartSlot slot,
                                         const FieldView& field) {
  switch (field.info.type) {
  case FieldType::choice: return std::make_unique<ChoiceRow>(document, axis, slot, field);
  case FieldType::flag: return std::make_unique<FlagRow>(document, axis, slot, field);
  case FieldType::table: return std::make_unique<TableFieldRow>(document, axis, slot, field);
  case FieldType::quantity:
  case FieldType::count:
  case FieldType::text: break;
  }
  return std::make_unique<TextRow>(document, axis, slot, field);
}

FieldRow::FieldRow(MachineDocument& document, std::size_t axis, PartSlot slot, FieldView field)
    : document_(document), axis_(axis), slot_(slot), field_(std::move(field)) {}

FieldRow::~FieldRow() {
  // The widgets belong to their parent, but a row taken away takes them along at once.
  for (QWidget* widget : {editor_, static_cast<QWidget*>(name_), static_cast<QWidget*>(origin_),
                          static_cast<QWidget*>(note_)}) {
    delete widget;
  }
}

void FieldRow::add_to(QGridLayout& grid, QWidget& parent) {
  const QString key = key_of(slot_, field_.info.member);
  const QString name = words::field_name(slot_, field_.info.member);
  const QString help = words::field_help(slot_, field_.info.member);
  editor_ = make_editor(parent);
  editor_->setObjectName(key);
  editor_->setAccessibleName(name);
  editor_->setAccessibleDescription(help);
  editor_->setToolTip(QStringLiteral("<p>%1</p>").arg(help.toHtmlEscaped()));
  editor_->installEventFilter(this);
  name_ = new QLabel(capital(name), &parent);
  name_->setTextFormat(Qt::PlainText);
  name_->setWordWrap(true);
  name_->setBuddy(editor_);
  name_->setToolTip(editor_->toolTip());
  origin_ = new QLabel(&parent);
  origin_->setTextFormat(Qt::PlainText);
  origin_->setForegroundRole(QPalette::PlaceholderText);
  origin_->setObjectName(key + QStringLiteral(".origin"));
  note_ = new QLabel(&parent);
  note_->setTextFormat(Qt::PlainText);
  note_->setWordWrap(true);
  note_->setObjectName(key + QStringLiteral(".note"));
  note_->hide();
  const int row = grid.rowCount();
  const bool wide = field_.info.type == FieldType::table;
  if (wide) {
    grid.addWidget(name_, row, 0, 1, 2);
    grid.addWidget(origin_, row, 2);
    grid.addWidget(editor_, row + 1, 0, 1, 3);
  } else {
    grid.addWidget(name_, row, 0);
    grid.addWidget(editor_, row, 1);
    grid.addWidget(origin_, row, 2);
  }
  grid.addWidget(note_, row + 2, 0, 1, 3);
  refresh();
}

void FieldRow::refresh() {
  auto field = field_of(document_.machine(), axis_, slot_, field_.info.member);
  if (!field) {
    return;
  }
  field_ = *std::move(field);
  if (holds_typed()) {
    return;
  }
  show_value();
  show_origin();
  show_note();
}

void FieldRow::take_focus() {
  editor_->setFocus(Qt::OtherFocusReason);
}

bool FieldRow::commit(const FieldValue& value, const EntryNote& note) {
  return document_.edit_field(axis_, slot_, field_.info.member, value, note);
}

void FieldRow::show_origin() {
  const bool given = !std::holds_alternative<std::monostate>(field_.value);
  const bool is_text = field_.info.type == FieldType::text;
  const QString origin = given && !is_text ? words::origin_name(field_.note.origin) : QString();
  if (origin_->text() != origin) {
    origin_->setText(origin);
  }
}

void FieldRow::show_note() {
  for (const Fault& fault : document_.faults()) {
    const bool here = fault.slot == slot_ && fault.member == field_.info.member &&
                      (fault.axis == axis_ || of_machine(slot_));
    if (here) {
      show_error(words::fault_sentence(fault));
      return;
    }
  }
  show_became(became());
}

void FieldRow::show_error(const QString& sentence) {
  say(words::verdict_sign(Verdict::over) + QLatin1Char(' ') + sentence, true);
}

void FieldRow::show_became(const QString& text) {
  say(text, false);
}

/// Touches the widgets only where something changes: each touch lays the form out anew.
void FieldRow::say(const QString& text, bool error) {
  const QString description = error ? text : words::field_help(slot_, field_.info.member);
  if (editor_->accessibleDescription() != description) {
    editor_->setAccessibleDescription(description);
  }
  const Look look = Look::of(note_->palette());
  const QColor colour = error ? look.over : look.faint_ink;
  if (note_->palette().color(QPalette::WindowText) != colour) {
    QPalette palette = note_->palette();
    palette.setColor(QPalette::WindowText, colour);
    note_->setPalette(palette);
  }
  if (note_->text() != text) {
    note_->setText(text);
  }
  if (note_->isHidden() != text.isEmpty()) {
    note_->setVisible(!text.isEmpty());
  }
}

bool FieldRow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) {
    emit entered();
  }
  return QObject::eventFilter(watched, event);
}

} // namespace feedwright
