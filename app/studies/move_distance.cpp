// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/move_distance.h"

#include "machine/machine.h"
#include "text/words.h"

#include <QLineEdit>

namespace feedwright {

MoveDistance::MoveDistance(QWidget* parent)
    : TypedLength(QStringLiteral("move_distance"), tr("Dis&tance of the move"),
                  tr("From standstill to standstill, in any unit; a tenth of the travel if "
                     "nothing is typed. Kept for this axis while the window is open."),
                  parent) {
  connect(&editor(), &QLineEdit::textEdited, this, &MoveDistance::take);
}

void MoveDistance::show_axis(const QString& axis, Length travel, const FileUnits& units) {
  const bool other = axis != axis_;
  axis_ = axis;
  travel_ = travel;
  units_ = units;
  editor().setPlaceholderText(words::quantity(any(Length(travel_ * 0.1)), unit_of(units_).symbol));
  if (other) {
    editor().setText(kept_.value(axis_).text);
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
  const auto distance = read(typed, units_);
  if (!distance) {
    if (typed.isEmpty() && kept != kept_.end()) {
      kept->read.reset();
    }
    return;
  }
  const std::string_view unit = unit_of(units_).symbol;
  if (*distance <= Length()) {
    say(tr("The distance must be more than zero."), true);
    return;
  }
  if (*distance > travel_) {
    say(tr("The distance must be within the travel of %1.")
            .arg(words::quantity(any(travel_), unit)),
        true);
    return;
  }
  kept->read = distance;
  const QString shown = words::quantity(any(*distance), unit, 6);
  say(shown == typed ? QString() : tr("= %1", "what a typed distance became").arg(shown), false);
}

} // namespace feedwright
