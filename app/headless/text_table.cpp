// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/text_table.h"

#include <algorithm>

namespace feedwright::headless {

namespace {

/// Places a terminal gives the text: one for each code point that is not put over another.
qsizetype places(const QString& text) {
  const auto points = text.toUcs4();
  return std::ranges::count_if(points, [](char32_t point) {
    return !QChar::isNonCharacter(point) && QChar::category(point) != QChar::Mark_NonSpacing;
  });
}

QString padded(const QString& text, qsizetype width, Side side) {
  const QString pad(std::max<qsizetype>(width - places(text), 0), QLatin1Char(' '));
  return side == Side::left ? text + pad : pad + text;
}

QString without_end_spaces(QString line) {
  while (line.endsWith(QLatin1Char(' '))) {
    line.chop(1);
  }
  return line;
}

} // namespace

QString text_table(const std::vector<QStringList>& rows, const std::vector<Side>& sides,
                   int indent) {
  std::vector<qsizetype> widths(sides.size(), 0);
  for (const QStringList& row : rows) {
    for (std::size_t column = 0; column < sides.size(); ++column) {
      widths[column] = std::max(widths[column], places(row.value(static_cast<qsizetype>(column))));
    }
  }
  QString text;
  for (const QStringList& row : rows) {
    QString line(indent, QLatin1Char(' '));
    for (std::size_t column = 0; column < sides.size(); ++column) {
      line += column > 0 ? QStringLiteral("  ") : QString();
      line += padded(row.value(static_cast<qsizetype>(column)), widths[column], sides[column]);
    }
    text += without_end_spaces(line) + QLatin1Char('\n');
  }
  return text;
}

} // namespace feedwright::headless
