// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/wheel_guard.h"

#include <QEvent>
#include <QWidget>

namespace feedwright {

WheelGuard::WheelGuard(QWidget* guarded) : QObject(guarded) {
  guarded->installEventFilter(this);
}

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Wheel) {
    event->ignore();
    return true;
  }
  return QObject::eventFilter(watched, event);
}

} // namespace feedwright
