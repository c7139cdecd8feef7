// SPDX-License-Identifier: GPL-3.0-or-later

// Going round the window with the keyboard: from pane to pane, from axis to axis.

#include "window/main_window.h"
#include "window/panes.h"

#include <QMenu>

#include <algorithm>
#include <iterator>

namespace feedwright {

namespace {

/// In reading order.
constexpr const char* panes[] = {"axes_panel", "train_view", "limits_view", "studies_view",
                                 "fields_panel"};
constexpr std::ptrdiff_t pane_count = std::ssize(panes);

bool is_a_stop(const QWidget& widget, const QWidget& window) {
  return (widget.focusPolicy() & Qt::TabFocus) != 0 && widget.isEnabled() &&
         widget.isVisibleTo(&window);
}

/// What takes the keyboard first in a pane; nullptr if nothing does now.
QWidget* first_stop(const QWidget& window, std::ptrdiff_t pane) {
  auto* area = window.findChild<QWidget*>(QString::fromLatin1(panes[pane]));
  if (area == nullptr || !area->isVisibleTo(&window)) {
    return nullptr;
  }
  if (is_a_stop(*area, window)) {
    return area;
  }
  const auto inside = area->findChildren<QWidget*>();
  const auto found = std::ranges::find_if(
      inside, [&](const QWidget* widget) { return is_a_stop(*widget, window); });
  return found != inside.end() ? *found : nullptr;
}

std::ptrdiff_t pane_of(const QWidget* widget) {
  for (; widget != nullptr; widget = widget->parentWidget()) {
    const auto* found = std::ranges::find_if(
        panes, [&](const char* name) { return widget->objectName() == QLatin1String(name); });
    if (found != std::end(panes)) {
      return found - std::begin(panes);
    }
  }
  return -1;
}

void go_to_pane(const QWidget& window, std::ptrdiff_t step) {
  std::ptrdiff_t at = pane_of(window.focusWidget());
  at = at < 0 && step < 0 ? 0 : at;
  for (int tries = 0; tries < pane_count; ++tries) {
    at = (at + step + pane_count) % pane_count;
    // One that shares its place with another may be behind that.
    window.findChild<Panes*>()->bring_in_sight(QString::fromLatin1(panes[at]));
    if (QWidget* stop = first_stop(window, at)) {
      stop->setFocus(step > 0 ? Qt::TabFocusReason : Qt::BacktabFocusReason);
      return;
    }
  }
}

} // namespace

void MainWindow::add_pane_actions(QMenu& menu) {
  add_action(menu, QStringLiteral("next_pane"), tr("&Next pane"), QKeySequence(Qt::Key_F6),
             [this] { go_to_pane(*this, 1); });
  add_action(menu, QStringLiteral("previous_pane"), tr("&Previous pane"),
             QKeySequence(Qt::SHIFT | Qt::Key_F6), [this] { go_to_pane(*this, -1); });
  const auto go_to_axis = [this](int step) {
    const auto count = static_cast<std::ptrdiff_t>(document_->machine().axes.size());
    // The machine stands above its axes.
    const Selection& from = document_->selection();
    const std::ptrdiff_t at = (from.machine ? -1 : static_cast<std::ptrdiff_t>(from.axis)) + step;
    if (at >= 0 && at < count) {
      show_axis(static_cast<std::size_t>(at));
    }
  };
  add_action(menu, QStringLiteral("previous_axis"), tr("Axis a&bove"),
             QKeySequence(Qt::CTRL | Qt::Key_PageUp), [go_to_axis] { go_to_axis(-1); });
  add_action(menu, QStringLiteral("next_axis"), tr("Axis b&elow"),
             QKeySequence(Qt::CTRL | Qt::Key_PageDown), [go_to_axis] { go_to_axis(1); });
}

} // namespace feedwright
