// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/table_text.h"

#include <QRegularExpression>

#include <algorithm>

namespace feedwright {

namespace {

QStringList trimmed(const QStringList& cells) {
  QStringList made;
  for (const QString& cell : cells) {
    QString bare = cell.trimmed();
    if (bare.size() >= 2 && bare.startsWith(QLatin1Char('"')) && bare.endsWith(QLatin1Char('"'))) {
      bare = bare.mid(1, bare.size() - 2);
    }
    made << bare;
  }
  return made;
}

bool has_digit(const QString& line) {
  return std::any_of(line.begin(), line.end(), [](QChar c) { return c.isDigit(); });
}

/// A comma parts cells only if no cell could hold it as a decimal mark: "0,1.9" is two numbers,
/// "0,5" may be one.
bool commas_part(const QStringList& lines) {
  return std::all_of(lines.begin(), lines.end(), [&](const QString& line) {
    return line.count(QLatin1Char(',')) == lines.front().count(QLatin1Char(',')) &&
           line.contains(QLatin1Char(','));
  });
}

} // namespace

std::vector<QStringList> table_cells(const QString& text) {
  static const QRegularExpression line_end(QStringLiteral("\\r\\n|\\r|\\n"));
  static const QRegularExpression tab_or_semicolon(QStringLiteral("[\\t;]"));
  static const QRegularExpression blanks(QStringLiteral("  +"));
  QStringList lines = text.split(line_end, Qt::SkipEmptyParts);
  lines.removeIf([](const QString& line) { return line.trimmed().isEmpty(); });
  if (!lines.isEmpty() && !has_digit(lines.front())) {
    lines.removeFirst();
  }
  std::vector<QStringList> cells;
  if (lines.isEmpty()) {
    return cells;
  }
  const bool parted = std::any_of(lines.begin(), lines.end(), [&](const QString& line) {
    return line.contains(tab_or_semicolon);
  });
  const bool comma = !parted && commas_part(lines);
  for (const QString& line : lines) {
    const QStringList made = trimmed(parted  ? line.split(tab_or_semicolon)
                                     : comma ? line.split(QLatin1Char(','))
                                             : line.trimmed().split(blanks, Qt::SkipEmptyParts));
    if (made.size() >= 2) {
      cells.push_back(made);
    }
  }
  return cells;
}

} // namespace feedwright
