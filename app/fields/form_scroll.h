// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/steady_area.h"

namespace feedwright {

/// A form that scrolls. The field with the keyboard stays where it can be seen, whatever grows
/// beside the form or in it.
class FormScroll : public SteadyArea {
  Q_OBJECT
public:
  explicit FormScroll(QWidget* parent);

protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void keep_in_sight();
  void look_when_placed();
};

} // namespace feedwright
