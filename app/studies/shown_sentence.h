// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A sentence as it is painted in lines. What is copied and spoken stays as it was written.

#include <QFont>
#include <QString>

namespace feedwright {

/// With whole quantities, in as many lines of that width as are allowed; where there would be more,
/// cut between words.
QString shown_sentence(const QString& sentence, const QFont& font, int width, int lines);

/// Lines that takes where as many are allowed as it wants.
int lines_of_sentence(const QString& sentence, const QFont& font, int width);

} // namespace feedwright
