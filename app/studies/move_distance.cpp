// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/move_distance.h"

#include "machine/machine.h"
#include "text/words.h"
#include "units/read_quantity.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

namespace feedwright {

MoveDistance::MoveDistance(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("move_distance_row"));
  auto* name = new QLabel(tr("Dis&tance of the move"), this);
  name->setTextFormat(Qt::PlainText);
  editor_ = new QLineEdit(this);
  editor_->setObjectName(QStringLiteral("move_distance"));
  editor_->setAccessibleName(tr("Distance of the move"));
  editor_->setToolTip(tr("From standstill to standstill, in any unit; a tenth of the travel if "
                         "nothing is typed. Kept for this axis while the window is open."));
  editor_->setAlignment(Qt::AlignTrailing);
  editor_->setMaximumWidth(editor_->fontMetrics().averageCharWidth() * 18);
  name->setBuddy(editor_);
  note_ = plain_label({}, this);
  note_->setObjectName(QStringLiteral("move_distance_note"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(name);
  layout->addWidget(editor_);
  layout->addWidget(note_, 1);
  connect(editor_, &QLineEdit::textEdited, this, &MoveDistance::take);
}

void MoveDistance::show_axis(const QString& axis, Length travel, const FileUnits& units) {
  const bool other = axis != axis_;
  axis_ = axis;
  travel_ = travel;
  units_ = units;
  const Unit& unit = units_.unit_of(Kind::length, "mm");
  editor_->setPlaceholderText(words::quantity(any(Length(travel_ * 0.1)), unit.symbol));
  if (other) {
    editor_->setText(kept_.value(axis_).text);
  }
  judge();
}

std::optional<Length> MoveDistance::distance() const {
  const auto& read = kept_.value(axis_).read;
  return read && *read <= travel_ ? read : std::nullopt;
}

void MoveDistance::take(const QString& text) {
  kept_[axis_].text = text;
  judge();
  emit changed();
}

void MoveDistance::judge() {
  const auto kept = kept_.find(axis_);
  const QString typed = kept != kept_.end() ? kept->text.trimmed() : QString();
  if (typed.isEmpty()) {
    if (kept != kept_.end()) {
      kept->read.reset();
    }
    say({}, false);
    return;
  }
  const Unit& unit = units_.unit_of(Kind::length, "mm");
  const auto read = read_quantity(typed.toStdString(), Kind::length, &unit);
  if (!read) {
    say(words::read_error_text(read.error(), unit.symbol, PartSlot::axis, "travel"), true);
    return;
  }
  const auto distance = from_si<Length>(read->value.si);
  if (distance <= Length()) {
    say(tr("The distance must be more than zero."), true);
    return;
  }
  if (distance > travel_) {
    say(tr("The distance must be within the travel of %1.")
            .arg(words::quantity(any(travel_), unit.symbol)),
        true);
    return;
  }
  kept->read = distance;
  const QString shown = words::quantity(read->value, unit.symbol, 6);
  say(shown == typed ? QString() : tr("= %1", "what a typed distance became").arg(shown), false);
}

void MoveDistance::say(const QString& text, bool error) {
  wrong_ = error;
  note_->setText(error ? tr("▲ %1", "sign of a fault, sentence").arg(text) : text);
  note_->setAccessibleName(note_->text());
  editor_->setAccessibleDescription(note_->text());
  colour_note();
}

void MoveDistance::colour_note() {
  const Look look = Look::of(palette());
  const QColor wanted = wrong_ ? look.over : look.faint_ink;
  QPalette colours = note_->palette();
  if (colours.color(QPalette::WindowText) != wanted) {
    colours.setColor(QPalette::WindowText, wanted);
    note_->setPalette(colours);
  }
}

void MoveDistance::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    colour_note();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
