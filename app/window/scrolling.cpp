// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/scrolling.h"

#include <QEvent>
#include <QScrollArea>
#include <QString>

#include <utility>

namespace feedwright {

namespace {

/// Content that is lower in the width beside a bar than in the whole would have the bar come and go
/// for ever, each change within the one before: then the bar stays until the area has another size.
class SteadyArea : public QScrollArea {
protected:
  bool event(QEvent* event) override {
    if (event->type() == QEvent::Resize) {
      setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    }
    return QScrollArea::event(event);
  }

  bool eventFilter(QObject* watched, QEvent* event) override {
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

private:
  int depth_ = 0;
  bool restless_ = false;
};

} // namespace

QScrollArea* scrolling(QWidget* inside, const QString& name) {
  auto* area = new SteadyArea;
  area->setObjectName(name);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  return area;
}

} // namespace feedwright
