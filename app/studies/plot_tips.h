// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QCustomPlot;
class QPoint;

namespace feedwright {

/// A tip with what the word at that place of the plot says in full, where the plot says less.
void show_full_text(QCustomPlot& plot, const QPoint& at, const QPoint& on_screen);

} // namespace feedwright
