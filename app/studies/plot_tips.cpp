// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_tips.h"

#include "studies/plots.h"

#include <QToolTip>
#include <qcustomplot.h>

namespace feedwright {

void show_full_text(QCustomPlot& plot, const QPoint& at, const QPoint& on_screen) {
  for (int i = 0; i < plot.itemCount(); ++i) {
    const auto* text = qobject_cast<const QCPItemText*>(plot.item(i));
    if (text == nullptr || !text->visible()) {
      continue;
    }
    const QString hint = text->property(hint_property).toString();
    const QString full = hint.isEmpty() ? text->property(full_text_property).toString() : hint;
    if (full.isEmpty() || full == text->text()) {
      continue;
    }
    const QRectF place(text->topLeft->pixelPosition(), text->bottomRight->pixelPosition());
    if (place.contains(at)) {
      QToolTip::showText(on_screen, QStringLiteral("<p>%1</p>").arg(full.toHtmlEscaped()), &plot);
      return;
    }
  }
  QToolTip::hideText();
}

} // namespace feedwright
