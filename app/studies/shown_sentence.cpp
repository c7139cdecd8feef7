// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/shown_sentence.h"

#include "text/text_of.h"
#include "units/unit_table.h"
#include "window/letters.h"

#include <QFontMetrics>
#include <QSet>

namespace feedwright {

namespace {

constexpr QChar word_joiner(0x2060);

const QSet<QString>& unit_symbols() {
  static const QSet<QString> symbols = [] {
    QSet<QString> made;
    for (int kind = 0; kind < static_cast<int>(Kind::compound); ++kind) {
      for (const Unit& unit : units_of(static_cast<Kind>(kind))) {
        made.insert(text_of(unit.symbol));
      }
    }
    return made;
  }();
  return symbols;
}

bool starts_with_unit(QStringView rest) {
  const qsizetype space = rest.indexOf(QLatin1Char(' '));
  QStringView word = space < 0 ? rest : rest.left(space);
  constexpr QStringView marks = u".,;:)";
  while (!word.isEmpty() && marks.contains(word.back())) {
    word.chop(1);
  }
  return unit_symbols().contains(word.toString());
}

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

QString with_whole_quantities(const QString& sentence) {
  QString made;
  for (qsizetype i = 0; i < sentence.size(); ++i) {
    const QChar letter = sentence[i];
    const bool within = letter == QLatin1Char(' ') && i > 0 && sentence[i - 1].isDigit() &&
                        starts_with_unit(QStringView(sentence).mid(i + 1));
    made += within ? QChar(QChar::Nbsp) : letter;
    if (letter == QLatin1Char('/')) {
      made += word_joiner;
    }
  }
  return made;
}

int lines_of_sentence(const QString& sentence, const QFont& font, int width) {
  return int(broken(with_whole_quantities(sentence), font, width).size());
}

QString shown_sentence(const QString& sentence, const QFont& font, int width, int lines) {
  const QString whole = with_whole_quantities(sentence);
  const QStringList all = broken(whole, font, width);
  if (all.size() <= lines || lines < 1) {
    return whole;
  }
  const QString rest = all.mid(lines - 1).join(QLatin1Char(' '));
  return (all.mid(0, lines - 1) << words_with_room(rest, font, width)).join(QLatin1Char('\n'));
}

} // namespace feedwright
