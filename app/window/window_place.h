// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where windows stand on the screen, and how that is remembered.

#include <QMargins>
#include <QRect>

class QWidget;

namespace feedwright {

/// The place nearest to the wanted one where a window and its frame are within the area; made
/// smaller where it has no room. All in pixels of the screen; the window's without its frame.
QRect within_area(const QRect& wanted, const QRect& area, const QMargins& frame);

/// The same on the screen that the place is on, else on the window's own, with a frame as large as
/// those of desktops are.
QRect on_screen(const QRect& wanted, const QWidget& window);

/// Shows a first window where the last one stood, maximised if that was; else of the usual size, as
/// far as the screen has room.
void show_in_last_place(QWidget& window, const QSize& usual);
/// For the next run.
void remember_place(const QWidget& window);

} // namespace feedwright
