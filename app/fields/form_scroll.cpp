// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/form_scroll.h"

#include <QApplication>
#include <QEvent>

namespace feedwright {

FormScroll::FormScroll(QWidget* parent) : SteadyArea(parent) {
  setObjectName(QStringLiteral("fields_scroll"));
}

void FormScroll::resizeEvent(QResizeEvent* event) {
  look_when_placed();
  SteadyArea::resizeEvent(event);
}

bool FormScroll::eventFilter(QObject* watched, QEvent* event) {
  if (watched == widget() && event->type() == QEvent::Resize) {
    look_when_placed();
  }
  return SteadyArea::eventFilter(watched, event);
}

/// When all has its new place.
void FormScroll::look_when_placed() {
  QMetaObject::invokeMethod(this, &FormScroll::keep_in_sight, Qt::QueuedConnection);
}

void FormScroll::keep_in_sight() {
  QWidget* at = QApplication::focusWidget();
  if (widget() != nullptr && at != nullptr && widget()->isAncestorOf(at)) {
    ensureWidgetVisible(at, 0, fontMetrics().height());
  }
}

} // namespace feedwright
