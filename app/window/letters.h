// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Letters and room: how small they may become, and how much of a text has room.

#include <QFont>
#include <QStringList>

namespace feedwright {

/// How much smaller than the window's the letters of a drawing or plot may be: no smaller than
/// letters usually are.
double least_share(const QFont& font);

/// The font, smaller where a drawing or plot has only that share of the room its letters want.
QFont fitted(const QFont& font, double share);

/// The text in lines of that width, in pixels.
QStringList broken(const QString& text, const QFont& font, int width);

/// As many of those lines as are allowed, the last one cut with an ellipsis if there are more.
QString cut_to_lines(const QString& text, const QFont& font, int width, int lines);

} // namespace feedwright
