// SPDX-License-Identifier: GPL-3.0-or-later

// What the drawing says in words: to a screen reader, and in a tip.

#include "text/words.h"
#include "train/train_tips.h"
#include "train/train_view.h"

#include <QAccessible>
#include <QToolTip>

namespace feedwright {

void TrainView::describe() {
  if (!has_axis_) {
    setAccessibleDescription(tr("There is no axis."));
    return;
  }
  setAccessibleName(tr("Drive train of %1: %2").arg(train_.title, words::part_name(focused_)));
  QString said =
      train_tips::about(train_, focused_).replace(QLatin1Char('\n'), QStringLiteral(", "));
  if (!read_out_.heading.isEmpty()) {
    said = read_out_.spoken() + QStringLiteral(", ") + said;
  }
  setAccessibleDescription(said);
  QAccessibleEvent event(this, QAccessible::NameChanged);
  QAccessible::updateAccessibility(&event);
}

bool TrainView::show_tip(QPoint position, QPoint global) {
  const PlannedPart* part = plan().part_at(in_plan(position));
  if (part == nullptr) {
    QToolTip::hideText();
    return true;
  }
  const QString text =
      words::part_name(part->slot) + QLatin1Char('\n') + train_tips::about(train_, part->slot);
  // Escaped, so that nothing from a file is taken for markup.
  QToolTip::showText(
      global,
      QStringLiteral("<p>%1</p>")
          .arg(text.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"))),
      this);
  return true;
}

} // namespace feedwright
