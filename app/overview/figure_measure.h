// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What is alike in measuring a table of figures and in painting it.

#include "overview/figure_table.h"
#include "text/whole_quantities.h"

#include <QFont>
#include <QFontMetrics>
#include <QString>

namespace feedwright::figure_measure {

inline constexpr int side_padding = 6;
inline constexpr int upright_padding = 2;

/// Of a verdict's sign with the gap after it.
inline int sign_width(const QFontMetrics& metrics) {
  return metrics.horizontalAdvance(QStringLiteral("▲ ")) + 2;
}

/// Words as they are set: no line ends within a quantity.
inline QString words_of(const FigureCell& cell) {
  return with_whole_quantities(cell.text);
}

inline QFont font_of(const FigureCell& cell, QFont font) {
  font.setBold(cell.bold || cell.verdict == Verdict::over);
  return font;
}

} // namespace feedwright::figure_measure
