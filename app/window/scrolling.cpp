// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/scrolling.h"

#include <QScrollArea>
#include <QString>

namespace feedwright {

QScrollArea* scrolling(QWidget* inside, const QString& name) {
  auto* area = new QScrollArea;
  area->setObjectName(name);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  return area;
}

} // namespace feedwright
