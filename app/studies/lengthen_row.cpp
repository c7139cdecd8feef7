// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/lengthen_row.h"

#include "choosing/lengthen.h"
#include "choosing/remedies.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>

namespace feedwright {

LengthenRow::LengthenRow(MachineDocument& document, QWidget* parent)
    : TypedLength(QStringLiteral("lengthen_by"), tr("&Longer by"),
                  tr("How much longer the travel is to be, in any unit; less than nothing makes it "
                     "shorter. Screw or belt grow with it."),
                  parent),
      document_(document) {
  button_ = new QPushButton(tr("Make the a&xis so long"), this);
  button_->setObjectName(QStringLiteral("lengthen"));
  button_->setAccessibleName(tr("Make the axis so long"));
  button_->setAutoDefault(false);
  row().insertWidget(2, button_);
  connect(&editor(), &QLineEdit::textEdited, this, &LengthenRow::judge);
  connect(button_, &QPushButton::clicked, this, &LengthenRow::lengthen);
  judge();
}

void LengthenRow::show_axis() {
  if (document_.selection().axis != axis_) {
    axis_ = document_.selection().axis;
    editor().setText({}); // unlike clear() it leaves no typing to go back to
  }
  judge();
}

void LengthenRow::keyPressEvent(QKeyEvent* event) {
  const bool enters = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enters && editor().hasFocus()) {
    lengthen();
    return;
  }
  TypedLength::keyPressEvent(event);
}

std::optional<Length> LengthenRow::typed() {
  const auto by = read(editor().text(), document_.units());
  return by && *by != Length() ? by : std::nullopt;
}

void LengthenRow::judge() {
  button_->setEnabled(false);
  if (document_.current_axis() == nullptr) {
    return;
  }
  const auto by = typed();
  if (!by) {
    return;
  }
  const Machine& machine = document_.machine();
  const auto changes = lengthening(machine, axis_, *by, document_.units());
  if (changes.empty()) {
    say(tr("So much shorter, nothing would be left."), true);
    return;
  }
  QStringList grown;
  for (const FieldChange& change : changes) {
    auto field = field_of(machine, axis_, change.slot, change.member);
    field->value = change.after;
    field->note.text = change.text;
    grown << tr("%1 %2", "field, its new value")
                 .arg(words::field_name(change.slot, change.member), words::field_text(*field));
  }
  say(tr("then %1", "fields with their new values").arg(grown.join(tr(", ", "between fields"))),
      false);
  button_->setEnabled(true);
}

void LengthenRow::lengthen() {
  // What stands typed in a field counts first.
  document_.gather_typed();
  const auto by = document_.current_axis() != nullptr ? typed() : std::nullopt;
  if (!by) {
    return;
  }
  const Machine& machine = document_.machine();
  auto changed = with_changes(machine, axis_, lengthening(machine, axis_, *by, document_.units()));
  if (!changed || *changed == machine) {
    return;
  }
  const QString length = words::quantity(any(abs(*by)), unit_of(document_.units()).symbol, 6);
  const QString letter = text_of(machine.axes[axis_].basics.letter);
  editor().setText({}); // unlike clear() it leaves no typing to go back to
  document_.edit(*std::move(changed), *by > Length()
                                          ? tr("lengthen axis %1 by %2").arg(letter, length)
                                          : tr("shorten axis %1 by %2").arg(letter, length));
}

} // namespace feedwright
