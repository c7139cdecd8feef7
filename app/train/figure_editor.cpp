// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/figure_editor.h"

#include "fields/field_reading.h"
#include "text/words.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

constexpr int longest = 256;

bool can_be_typed(const std::optional<FieldView>& field) {
  return field && (field->info.type == FieldType::quantity ||
                   field->info.type == FieldType::count || field->info.type == FieldType::text);
}

} // namespace

FigureEditor::FigureEditor(MachineDocument& document, QWidget* parent)
    : QFrame(parent), document_(document), name_(plain_label({}, this)), edit_(new QLineEdit(this)),
      note_(plain_label({}, this)) {
  setObjectName(QStringLiteral("figure_editor"));
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  edit_->setObjectName(QStringLiteral("figure_edit"));
  edit_->setMaxLength(longest);
  edit_->setAccessibleName(tr("Figure"));
  note_->setObjectName(QStringLiteral("figure_note"));
  name_->setWordWrap(false);
  name_->setForegroundRole(QPalette::PlaceholderText);
  auto* layout = new QVBoxLayout(this);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(margin, margin, margin, margin);
  layout->setSpacing(margin / 2);
  layout->addWidget(name_);
  layout->addWidget(edit_);
  layout->addWidget(note_);
  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::textEdited, this, &FigureEditor::preview);
  connect(&document_, &MachineDocument::typed_wanted, this, &FigureEditor::hand_in);
  connect(&document_, &MachineDocument::typed_moving, this, [this](bool of_axes) {
    if (of_axes) {
      // Even with nothing typed yet: its axis is about to be another one.
      keep_typed();
      leave();
    }
  });
  hide();
}

bool FigureEditor::holds_typed() const {
  return !isHidden() && edit_->isModified();
}

bool FigureEditor::open(std::size_t axis, PartSlot slot, const QString& member,
                        const QRectF& area) {
  const auto field = field_of(document_.machine(), axis, slot, member.toStdString());
  if (!can_be_typed(field)) {
    return false;
  }
  axis_ = axis;
  slot_ = slot;
  member_ = member;
  area_ = area;
  const QString name = words::field_name(slot, field->info.member);
  name_->setText(name);
  const auto waiting = document_.pending().at(waiting_place());
  edit_->setText(waiting.value_or(words::field_text(*field)));
  edit_->setPlaceholderText(field->info.presence == Presence::open ? tr("open") : QString());
  edit_->setModified(waiting.has_value());
  edit_->setAccessibleName(name);
  edit_->setAccessibleDescription(words::field_help(slot, field->info.member));
  say({}, false);
  show();
  if (waiting) {
    preview();
  }
  raise();
  place();
  edit_->selectAll();
  edit_->setFocus(Qt::OtherFocusReason);
  return true;
}

/// The line of typing over the figure itself, all of it within the drawing.
void FigureEditor::place() {
  const int widest = fontMetrics().averageCharWidth() * 28;
  const int wanted = std::max({fontMetrics().averageCharWidth() * 16, int(area_.width()) + 24,
                               name_->sizeHint().width() + 12});
  const int width = note_->isHidden() ? wanted : std::max(wanted, widest);
  resize(width, layout()->hasHeightForWidth() ? layout()->heightForWidth(width)
                                              : layout()->sizeHint().height());
  layout()->activate();
  const QPoint middle = area_.center().toPoint();
  QPoint corner(middle.x() - width / 2, middle.y() - edit_->geometry().center().y());
  const QRect room = parentWidget()->rect();
  corner.setX(std::clamp(corner.x(), room.left(), std::max(room.left(), room.right() - width)));
  corner.setY(std::clamp(corner.y(), room.top(), std::max(room.top(), room.bottom() - height())));
  move(corner);
}

void FigureEditor::preview() {
  const auto field = field_of(document_.machine(), axis_, slot_, member_.toStdString());
  if (field) {
    const FieldReading reading =
        read_field(document_.machine(), axis_, slot_, field->info, edit_->text());
    reading.error.isEmpty() ? say(reading.became, false) : say(reading.error, true);
  }
}

void FigureEditor::say(const QString& text, bool error) {
  error_ = error;
  const Look look = Look::of(palette());
  QPalette colours = palette();
  colours.setColor(QPalette::WindowText, error ? look.over : look.faint_ink);
  note_->setPalette(colours);
  note_->setText(error ? words::verdict_sign(Verdict::over) + QLatin1Char(' ') + text : text);
  note_->setVisible(!text.isEmpty());
  if (error) {
    edit_->setAccessibleDescription(text);
  }
  if (isVisible()) {
    place();
  }
}

bool FigureEditor::commit() {
  const auto field = field_of(document_.machine(), axis_, slot_, member_.toStdString());
  if (!field) {
    // Another type of part stands there now; Undo may bring the figure back.
    keep_typed();
  }
  if (!field || !edit_->isModified()) {
    put_away();
    return true;
  }
  const FieldReading reading =
      read_field(document_.machine(), axis_, slot_, field->info, edit_->text());
  if (!reading.error.isEmpty()) {
    say(reading.error, true);
    return false;
  }
  edit_->setModified(false);
  put_away();
  document_.pending().give_up(waiting_place());
  const bool same = reading.value == field->value && reading.note.text == field->note.text;
  if (!same) {
    document_.edit_field(axis_, slot_, field->info.member, reading.value, reading.note);
  }
  return true;
}

/// Where it is neither taken nor thrown away.
void FigureEditor::keep_typed() {
  if (holds_typed()) {
    document_.pending().keep(waiting_place(), edit_->text());
    leave();
  }
}

void FigureEditor::hand_in() {
  if (!isHidden() && !commit()) {
    keep_typed();
  }
}

void FigureEditor::leave() {
  edit_->setModified(false);
  put_away();
}

void FigureEditor::leave_if_not_of(std::size_t axis) {
  if (isHidden() || axis == axis_) {
    return;
  }
  // While a step is undone nothing may be taken.
  document_.is_stepping() ? keep_typed() : hand_in();
  leave();
}

/// The keyboard first goes back to the drawing: a hidden editor would hand it on to the next part.
void FigureEditor::put_away() {
  if (edit_->hasFocus()) {
    parentWidget()->setFocus(Qt::PopupFocusReason);
  }
  hide();
}

bool FigureEditor::take_key(int key) {
  switch (key) {
  case Qt::Key_Return:
  case Qt::Key_Enter:
    if (commit()) {
      emit left();
    }
    return true;
  case Qt::Key_Escape:
    leave();
    document_.pending().give_up(waiting_place());
    emit left();
    return true;
  case Qt::Key_Tab:
  case Qt::Key_Backtab:
    if (commit()) {
      emit step_wanted(key == Qt::Key_Tab ? 1 : -1);
    }
    return true;
  default: return false;
  }
}

bool FigureEditor::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress && take_key(static_cast<QKeyEvent*>(event)->key())) {
    return true;
  }
  if (event->type() == QEvent::ShortcutOverride &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    event->accept();
  }
  if (event->type() == QEvent::FocusOut && isVisible()) {
    const Qt::FocusReason why = static_cast<QFocusEvent*>(event)->reason();
    if (why != Qt::ActiveWindowFocusReason && why != Qt::PopupFocusReason) {
      commit();
    }
  }
  return QFrame::eventFilter(watched, event);
}

void FigureEditor::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange && note_ != nullptr && isVisible()) {
    say(note_->text().mid(error_ ? 2 : 0), error_);
  }
  QFrame::changeEvent(event);
}

} // namespace feedwright
