// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/steady_area.h"

#include <QEvent>

#include <utility>

namespace feedwright {

SteadyArea::SteadyArea(QWidget* parent) : QScrollArea(parent) {
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
}

bool SteadyArea::event(QEvent* event) {
  if (event->type() == QEvent::Resize) {
    setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  }
  return QScrollArea::event(event);
}

bool SteadyArea::eventFilter(QObject* watched, QEvent* event) {
  constexpr int deepest = 8;
  if (depth_ == deepest) {
    restless_ = true;
    return false;
  }
  ++depth_;
  const bool taken = QScrollArea::eventFilter(watched, event);
  --depth_;
  if (depth_ == 0 && std::exchange(restless_, false)) {
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  }
  return taken;
}

} // namespace feedwright
