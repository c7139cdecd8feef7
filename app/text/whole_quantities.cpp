// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/whole_quantities.h"

#include "text/text_of.h"
#include "units/unit_table.h"

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

} // namespace feedwright
