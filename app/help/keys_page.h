// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The page of keys, made from the window's own menus so that it cannot say what is not so.

#include "machine/machine.h"

#include <QKeySequence>
#include <QList>
#include <QString>

#include <optional>
#include <vector>

class QAction;
class QWidget;

namespace feedwright {

/// A key a view takes while it has the keyboard.
struct ViewKey {
  QList<QKeySequence> keys;
  QString does;
  std::optional<PartSlot> at = {}; ///< only with the drawing's mark on that part
};

/// The keys of one view, found by its object name.
struct ViewKeys {
  QString view; ///< object name of what takes them
  QString title;
  std::vector<ViewKey> keys;
};

/// What the drawing, the ladders, the plots and the fields take besides the menus' keys.
std::vector<ViewKeys> view_keys();

/// An action's text without its mnemonic and dots.
QString plain_action_text(const QAction& action);

/// The page as Markdown: the menus of `window` with their keys, then the views.
QString keys_page(const QWidget& window);

} // namespace feedwright
