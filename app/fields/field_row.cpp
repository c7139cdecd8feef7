// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_row.h"

#include "fields/choice_row.h"
#include "fields/entry_edit.h"
#include "fields/field_reading.h"
#include "fields/table_row.h"
#include "fields/text_row.h"
#include "text/field_guide.h"
#include "text/listed_names.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QContextMenuEvent>
#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QToolButton>

#include <algorithm>

namespace feedwright {

namespace {

/// The palette's own colour again where the theme has changed.
void paint_in(QWidget& widget, QPalette::ColorRole role, const QColor& colour) {
  if (widget.palette().color(role) != colour) {
    QPalette palette = widget.palette();
    palette.setColor(role, colour);
    widget.setPalette(palette);
  }
}

QString key_of(PartSlot slot, std::string_view member) {
  const std::string key = std::string(slot_name(slot)) + "." + std::string(member);
  return QString::fromStdString(key);
}

QString capital(const QString& text) {
  return text.isEmpty() ? text : text.left(1).toUpper() + text.mid(1);
}

QString as_tool_tip(const QString& plain) {
  return QStringLiteral("<p>%1</p>").arg(plain.toHtmlEscaped());
}

} // namespace

std::unique_ptr<FieldRow> FieldRow::make(const FormContext& context, std::size_t axis,
                                         PartSlot slot, const FieldView& field) {
  switch (field.info.type) {
  case FieldType::choice: return std::make_unique<ChoiceRow>(context, axis, slot, field);
  case FieldType::flag: return std::make_unique<FlagRow>(context, axis, slot, field);
  case FieldType::table: return std::make_unique<TableFieldRow>(context, axis, slot, field);
  case FieldType::quantity:
  case FieldType::count:
  case FieldType::text: break;
  }
  return std::make_unique<TextRow>(context, axis, slot, field);
}

FieldRow::FieldRow(const FormContext& context, std::size_t axis, PartSlot slot, FieldView field)
    : context_(context), axis_(axis), slot_(slot), field_(std::move(field)) {}

FieldRow::~FieldRow() {
  // The widgets belong to their parent, but a row taken away takes them along at once.
  for (QWidget* widget : {editor_, static_cast<QWidget*>(name_), static_cast<QWidget*>(origin_),
                          static_cast<QWidget*>(note_)}) {
    delete widget;
  }
}

void FieldRow::make_labels(QWidget& parent) {
  const QString key = key_of(slot_, field_.info.member);
  name_ = plain_label(capital(words::field_name(slot_, field_.info.member)), &parent);
  name_->setBuddy(editor_);
  name_->setToolTip(editor_->toolTip());
  origin_ = new QToolButton(&parent);
  origin_->setObjectName(key + QStringLiteral(".origin"));
  origin_->setAutoRaise(true);
  // The same offers are in the editor's own menu: one stop of Tab to a field is enough.
  origin_->setFocusPolicy(Qt::NoFocus);
  origin_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  connect(origin_, &QToolButton::clicked, this, [this] {
    QMenu menu;
    add_offers(menu);
    menu.exec(origin_->mapToGlobal(QPoint(0, origin_->height())));
  });
  note_ = plain_label({}, &parent);
  note_->setObjectName(key + QStringLiteral(".note"));
  note_->hide();
}

void FieldRow::add_to(QGridLayout& grid, QWidget& parent, bool stacked) {
  editor_ = make_editor(parent);
  editor_->setObjectName(key_of(slot_, field_.info.member));
  editor_->setAccessibleName(words::field_name(slot_, field_.info.member));
  const QString guide = words::field_guide(slot_, field_.info);
  editor_->setAccessibleDescription(guide);
  editor_->setToolTip(as_tool_tip(guide));
  editor_->installEventFilter(this);
  if (editor_->focusProxy() != nullptr) {
    editor_->focusProxy()->installEventFilter(this);
    editor_->focusProxy()->setAccessibleDescription(guide);
  }
  make_labels(parent);
  const int row = grid.rowCount();
  const bool wide = field_.info.type == FieldType::table;
  if (wide || stacked) {
    grid.addWidget(name_, row, 0, 1, 2, Qt::AlignBottom);
    grid.addWidget(origin_, row, 2);
    grid.addWidget(editor_, row + 1, 0, 1, 3);
  } else {
    // The grid's own shares, the same in every section, whatever stands in it.
    QSizePolicy wraps(QSizePolicy::Ignored, QSizePolicy::Preferred);
    wraps.setHeightForWidth(true);
    name_->setSizePolicy(wraps);
    editor_->setSizePolicy(QSizePolicy::Ignored, editor_->sizePolicy().verticalPolicy());
    grid.addWidget(name_, row, 0);
    grid.addWidget(editor_, row, 1);
    grid.addWidget(origin_, row, 2);
  }
  grid.addWidget(note_, row + 2, 0, 1, 3);
  refresh();
}

void FieldRow::refresh() {
  auto field = field_of(document().machine(), axis_, slot_, field_.info.member);
  if (!field) {
    return;
  }
  field_ = *std::move(field);
  show_origin();
  if (!holds_typed()) {
    show_value();
    show_note();
  } else if (const auto said = said_) { // in the colours of another theme, perhaps
    say(said->text, said->error);
  }
  restore_typed();
}

void FieldRow::take_focus() {
  editor_->setFocus(Qt::OtherFocusReason);
  // Also where it had the keyboard before.
  if (auto* line = qobject_cast<QLineEdit*>(editor_)) {
    line->selectAll();
  }
}

void FieldRow::set_shown(bool shown) {
  shown_ = shown;
  name_->setVisible(shown);
  editor_->setVisible(shown);
  origin_->setVisible(shown);
  note_->setVisible(shown && !note_->text().isEmpty());
}

bool FieldRow::is_given() const {
  return !std::holds_alternative<std::monostate>(field_.value) &&
         field_.note.origin != Origin::preset;
}

bool FieldRow::commit(const FieldValue& value, const EntryNote& note) {
  document().pending().give_up(place());
  return document().edit_field(axis_, slot_, field_.info.member, value, note);
}

void FieldRow::show_origin() {
  const auto colours = editor_->palette().cacheKey();
  if (colours != painted_for_) {
    painted_for_ = colours;
    paint_in(*origin_, QPalette::ButtonText, Look::of(editor_->palette()).faint_ink);
  }
  const bool given = !std::holds_alternative<std::monostate>(field_.value);
  const bool is_text = field_.info.type == FieldType::text;
  const QString origin = given && !is_text ? words::origin_name(field_.note.origin) : QString();
  QString tip;
  if (!origin.isEmpty()) {
    switch (field_.note.origin) {
    case Origin::preset: tip = tr("The program's own figure until you give yours."); break;
    case Origin::entered: tip = tr("Typed in here or in the file."); break;
    case Origin::part_list: {
      const std::string source = visit_part(document().machine(), axis_, slot_,
                                            [](const auto& part) { return part.notes.source; });
      tip = tr("From a list: %1").arg(words::listed_source(text_of(source)));
      break;
    }
    }
  }
  if (origin_->text() != origin) {
    origin_->setText(origin);
    origin_->setAccessibleName(tr("%1: %2", "field, where its value came from")
                                   .arg(words::field_name(slot_, field_.info.member), origin));
  }
  origin_->setEnabled(!origin.isEmpty());
  if (const QString html = tip.isEmpty() ? tip : as_tool_tip(tip); origin_->toolTip() != html) {
    origin_->setToolTip(html);
  }
}

void FieldRow::show_note() {
  if (const QString refused = refused_text(); !refused.isEmpty()) {
    show_error(refused);
    return;
  }
  for (const Fault& fault : document().faults()) {
    const bool here = fault.slot == slot_ && fault.member == field_.info.member &&
                      (fault.axis == axis_ || of_machine(slot_));
    if (here) {
      show_error(words::fault_sentence(fault));
      return;
    }
  }
  show_became(asides());
}

void FieldRow::show_error(const QString& sentence) {
  say(words::verdict_sign(Verdict::over) + QLatin1Char(' ') + sentence, true);
}

void FieldRow::show_became(const QString& text) {
  say(text, false);
}

/// Touches the widgets only where something changes: each touch lays the form out anew.
void FieldRow::say(const QString& text, bool error) {
  const Said now{text, error, editor_->palette().cacheKey()};
  if (said_ == now && note_->isHidden() == (text.isEmpty() || !shown_)) {
    return;
  }
  said_ = now;
  trouble_ = error;
  const QString guide = words::field_guide(slot_, field_.info);
  const QString description = text.isEmpty() ? guide : text + QLatin1Char(' ') + guide;
  QWidget* spoken = editor_->focusProxy() != nullptr ? editor_->focusProxy() : editor_;
  if (spoken->accessibleDescription() != description) {
    spoken->setAccessibleDescription(description);
  }
  const Look look = Look::of(editor_->palette());
  paint_in(*note_, QPalette::WindowText, error ? look.over : look.faint_ink);
  if (note_->text() != text) {
    note_->setText(text);
  }
  if (note_->isHidden() != (text.isEmpty() || !shown_)) {
    note_->setVisible(shown_ && !text.isEmpty());
  }
}

bool FieldRow::eventFilter(QObject* watched, QEvent* event) {
  const auto is_help = [&] { return static_cast<QKeyEvent*>(event)->key() == Qt::Key_F1; };
  switch (event->type()) {
  case QEvent::FocusIn: emit entered(); break;
  case QEvent::ShortcutOverride:
    if (is_help()) {
      event->accept();
      return true;
    }
    break;
  case QEvent::KeyPress:
    if (is_help()) {
      emit help_wanted();
      return true;
    }
    break;
  case QEvent::ContextMenu:
    // A line to type into has a menu of its own, which shows the offers too.
    if (qobject_cast<EntryEdit*>(watched) == nullptr) {
      QMenu menu;
      add_offers(menu);
      menu.exec(static_cast<QContextMenuEvent*>(event)->globalPos());
      return true;
    }
    break;
  default: break;
  }
  return QObject::eventFilter(watched, event);
}

} // namespace feedwright
