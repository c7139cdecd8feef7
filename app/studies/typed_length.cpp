// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/typed_length.h"

#include "text/whole_quantities.h"
#include "text/words.h"
#include "units/read_quantity.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

namespace feedwright {

TypedLength::TypedLength(const QString& id, const QString& name, const QString& help,
                         QWidget* parent)
    : QWidget(parent) {
  setObjectName(id + QStringLiteral("_row"));
  auto* label = new QLabel(name, this);
  label->setTextFormat(Qt::PlainText);
  editor_ = new QLineEdit(this);
  editor_->setObjectName(id);
  editor_->setAccessibleName(QString(name).remove(QLatin1Char('&')));
  editor_->setToolTip(help);
  editor_->setAlignment(Qt::AlignTrailing);
  fit_editor();
  label->setBuddy(editor_);
  note_ = plain_label({}, this);
  note_->setObjectName(id + QStringLiteral("_note"));
  row_ = new QHBoxLayout(this);
  row_->setContentsMargins(0, 0, 0, 0);
  row_->addWidget(label);
  row_->addWidget(editor_);
  row_->addWidget(note_, 1);
}

/// Room for a length with its unit, and not much more.
void TypedLength::fit_editor() {
  constexpr int least_letters = 9;
  constexpr int most_letters = 18;
  const int letter = fontMetrics().averageCharWidth();
  editor_->setMinimumWidth(least_letters * letter);
  editor_->setMaximumWidth(most_letters * letter);
}

void TypedLength::take_keyboard() {
  editor_->setFocus(Qt::OtherFocusReason);
  editor_->selectAll();
}

const Unit& TypedLength::unit_of(const FileUnits& units) {
  return units.unit_of(Kind::length, "mm");
}

std::optional<Length> TypedLength::read(const QString& text, const FileUnits& units) {
  const QString typed = text.trimmed();
  if (typed.isEmpty()) {
    say({}, false);
    return std::nullopt;
  }
  const Unit& unit = unit_of(units);
  const auto found = read_quantity(typed.toStdString(), Kind::length, &unit);
  if (!found) {
    say(words::read_error_text(found.error(), unit.symbol, PartSlot::axis, "travel"), true);
    return std::nullopt;
  }
  return from_si<Length>(found->value.si);
}

void TypedLength::say(const QString& text, bool error) {
  wrong_ = error;
  const QString said = error ? tr("▲ %1", "sign of a fault, sentence").arg(text) : text;
  note_->setText(with_whole_quantities(said));
  note_->setAccessibleName(said);
  editor_->setAccessibleDescription(said);
  colour_note();
}

void TypedLength::colour_note() {
  const Look look = Look::of(palette());
  const QColor wanted = wrong_ ? look.over : look.faint_ink;
  QPalette colours = note_->palette();
  if (colours.color(QPalette::WindowText) != wanted) {
    colours.setColor(QPalette::WindowText, wanted);
    note_->setPalette(colours);
  }
}

void TypedLength::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    colour_note();
  } else if (event->type() == QEvent::FontChange && editor_ != nullptr) {
    fit_editor();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
