// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/steady_area.h"

namespace feedwright {

/// An area of that name about a widget.
inline SteadyArea* scrolling(QWidget* inside, const QString& name) {
  auto* area = new SteadyArea;
  area->setObjectName(name);
  area->setWidget(inside);
  return area;
}

} // namespace feedwright
