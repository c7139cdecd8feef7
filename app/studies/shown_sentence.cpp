// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/shown_sentence.h"

#include "text/whole_quantities.h"
#include "window/letters.h"

#include <QFontMetrics>

namespace feedwright {

namespace {

/// As many of its words as have room before an ellipsis.
QString words_with_room(const QString& line, const QFont& font, int width) {
  const QFontMetrics metrics(font);
  const QChar ellipsis(0x2026);
  QString kept = line;
  while (!kept.isEmpty() && metrics.horizontalAdvance(kept + QLatin1Char(' ') + ellipsis) > width) {
    kept = kept.left(std::max<qsizetype>(0, kept.lastIndexOf(QLatin1Char(' ')))).trimmed();
  }
  return kept.isEmpty() ? QString(ellipsis) : kept + QLatin1Char(' ') + ellipsis;
}

} // namespace

int lines_of_sentence(const QString& sentence, const QFont& font, int width) {
  return int(broken(with_whole_quantities(sentence), font, width).size());
}

QString shown_sentence(const QString& sentence, const QFont& font, int width, int lines) {
  QString whole = with_whole_quantities(sentence);
  const QStringList all = broken(whole, font, width);
  if (all.size() <= lines || lines < 1) {
    return whole;
  }
  const QString rest = all.mid(lines - 1).join(QLatin1Char(' '));
  return (all.mid(0, lines - 1) << words_with_room(rest, font, width)).join(QLatin1Char('\n'));
}

} // namespace feedwright
