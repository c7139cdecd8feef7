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

/// After a number, or what one is worked out in brackets.
bool ends_number(QChar letter) {
  return letter.isNumber() || letter == QLatin1Char(')');
}

/// "≤ 20 mm", "Ø 16 mm".
bool leads_number(QChar letter) {
  constexpr QStringView signs = u"≤≥Ø×";
  return signs.contains(letter);
}

/// "70 000": the space parts groups of one number.
bool goes_on(QChar before, QStringView rest) {
  constexpr qsizetype group = 3;
  const auto is_digit = [&](qsizetype at) { return at < rest.size() && rest[at].isDigit(); };
  return before.isDigit() && is_digit(0) && is_digit(1) && is_digit(2) && !is_digit(group);
}

bool keeps_together(const QString& sentence, qsizetype gap) {
  const QChar before = sentence[gap - 1];
  const QStringView rest = QStringView(sentence).mid(gap + 1);
  return (ends_number(before) && starts_with_unit(rest)) ||
         (leads_number(before) && !rest.isEmpty() && rest.front().isDigit()) ||
         goes_on(before, rest);
}

} // namespace

QString with_whole_quantities(const QString& sentence) {
  QString made;
  for (qsizetype i = 0; i < sentence.size(); ++i) {
    const QChar letter = sentence[i];
    const bool within = letter == QLatin1Char(' ') && i > 0 && keeps_together(sentence, i);
    made += within ? QChar(QChar::Nbsp) : letter;
    if (letter == QLatin1Char('/')) {
      made += word_joiner;
    }
  }
  return made;
}

} // namespace feedwright
