// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How wide words are, and where a name breaks.

#include <QFont>
#include <QStringList>

namespace feedwright {

/// In pixels, as the others.
double widest_word(const QString& text, const QFont& font);
double widest_line(const QStringList& lines, const QFont& font);

/// A name in at most so many lines, broken where the widest of them is narrowest.
QStringList broken_name(const QString& name, int lines, const QFont& font);

} // namespace feedwright
