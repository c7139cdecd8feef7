// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/word_widths.h"

#include "window/text_measure.h"

#include <algorithm>

namespace feedwright {

namespace {

double widest(const QStringList& texts, const TextMeasure& measure) {
  double most = 0.0;
  for (const QString& text : texts) {
    most = std::max(most, measure.width(text));
  }
  return most;
}

QStringList broken_into(const QStringList& words, int lines, const TextMeasure& measure) {
  QStringList best{words.join(QLatin1Char(' '))};
  for (qsizetype first = 1; lines > 1 && first < words.size(); ++first) {
    QStringList tried{words.mid(0, first).join(QLatin1Char(' '))};
    tried += broken_into(words.mid(first), lines - 1, measure);
    if (widest(tried, measure) < widest(best, measure)) {
      best = std::move(tried);
    }
  }
  return best;
}

} // namespace

double widest_word(const QString& text, const QFont& font) {
  return widest(text.split(QLatin1Char(' ')), TextMeasure(font));
}

double widest_line(const QStringList& lines, const QFont& font) {
  return widest(lines, TextMeasure(font));
}

QStringList broken_name(const QString& name, int lines, const QFont& font) {
  return broken_into(name.split(QLatin1Char(' ')), lines, TextMeasure(font));
}

} // namespace feedwright
