// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/window_place.h"

#include <QGuiApplication>
#include <QScreen>
#include <QSettings>
#include <QWidget>

#include <algorithm>

namespace feedwright {

namespace {

constexpr QLatin1String geometry_key("geometry");
constexpr QLatin1String maximised_key("maximised");

/// The desktop says how large its frames are only once a window has one.
QMargins usual_frame(const QWidget& window) {
  const int line = window.fontMetrics().lineSpacing();
  return {line / 2, 2 * line, line / 2, line / 2};
}

} // namespace

QRect within_area(const QRect& wanted, const QRect& area, const QMargins& frame) {
  const QRect room = area.marginsRemoved(frame);
  QRect placed = wanted;
  placed.setSize(wanted.size().boundedTo(room.size()));
  placed.moveTo(std::clamp(placed.left(), room.left(), room.right() + 1 - placed.width()),
                std::clamp(placed.top(), room.top(), room.bottom() + 1 - placed.height()));
  return placed;
}

QRect on_screen(const QRect& wanted, const QWidget& window) {
  const QScreen* there = QGuiApplication::screenAt(wanted.center());
  const QScreen& screen = there != nullptr ? *there : *window.screen();
  return within_area(wanted, screen.availableGeometry(), usual_frame(window));
}

void show_in_last_place(QWidget& window, const QSize& usual) {
  const QSettings settings;
  window.resize(
      on_screen(QRect(window.screen()->availableGeometry().topLeft(), usual), window).size());
  const bool restored = window.restoreGeometry(settings.value(geometry_key).toByteArray());
  const bool maximised = window.isMaximized() || settings.value(maximised_key, false).toBool();
  if (restored) {
    const QRect last = window.isMaximized() ? window.normalGeometry() : window.geometry();
    window.setWindowState(window.windowState() & ~Qt::WindowMaximized);
    window.setGeometry(on_screen(last, window));
  }
  maximised ? window.showMaximized() : window.show();
}

void remember_place(const QWidget& window) {
  QSettings settings;
  settings.setValue(geometry_key, window.saveGeometry());
  settings.setValue(maximised_key, window.isMaximized());
}

} // namespace feedwright
