// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/listed_names.h"

#include "text/piecewise.h"
#include "text/word_table.h"

#include <QHash>

namespace feedwright::words {

namespace {

/// Between the semicolons of a source.
constexpr const char* phrases[] = {
    QT_TRANSLATE_NOOP("Words", "ask the supplier"),
    QT_TRANSLATE_NOOP("Words", "typical, from memory"),
    QT_TRANSLATE_NOOP("Words", "nominal diameter and lead of the series of ISO 3408-2"),
    QT_TRANSLATE_NOOP("Words", "the rest typical, from memory"),
    QT_TRANSLATE_NOOP("Words", "friction typical, from memory"),
    QT_TRANSLATE_NOOP("Words", "pitch by ISO 5296"),
    QT_TRANSLATE_NOOP("Words", "rated pull, mass and base width as in ISO 5295, recalled"),
    QT_TRANSLATE_NOOP("Words", "ISO 2904: d2 = d − 0.5 P, d3 = d − P − 2 a_c"),
    QT_TRANSLATE_NOOP("Words", "pitch by ISO 13050"),
    QT_TRANSLATE_NOOP("Words", "least teeth and tooth gap typical, from memory"),
    QT_TRANSLATE_NOOP("Words", "pitch by ISO 17396"),
    QT_TRANSLATE_NOOP("Words", "an average over the chip, so no exponent"),
    QT_TRANSLATE_NOOP("Words", "Kienzle figures, typical, from memory"),
    QT_TRANSLATE_NOOP("Words", "ask the supplier of the tool"),
    QT_TRANSLATE_NOOP("Words", "rough band, typical, from memory"),
    QT_TRANSLATE_NOOP(
        "Words",
        "friction of ball guides 0.002 to 0.003: Thomson Linear, published engineering tips"),
    QT_TRANSLATE_NOOP("Words", "Elatech catalogue, 2012 edition distributed by Goodyear, technical "
                               "data T5, open-ended type M"),
    QT_TRANSLATE_NOOP("Words", "Elatech catalogue, 2012 edition distributed by Goodyear, technical "
                               "data ATL5, open-ended type M"),
    QT_TRANSLATE_NOOP("Words", "ISO 2904: d2 = d − 0.5 P, d3 = d − P − 2 a_c (from memory: this "
                               "pitch is the trade's, not in the standard's own series)"),
    QT_TRANSLATE_NOOP("Words", "Elatech catalogue, 2012 edition distributed by Goodyear, technical "
                               "data HTD5M, open-ended type M"),
    QT_TRANSLATE_NOOP(
        "Words", "sliding friction 0.05 to 0.2: Miki Pulley, published technical data (tech 26)"),
    QT_TRANSLATE_NOOP(
        "Words",
        "friction of roller guides 0.001 to 0.002: Thomson Linear, published engineering tips"),
    QT_TRANSLATE_NOOP("Words", "THK, Type KR catalogue, worked example: friction 0.005, rolling "
                               "and seal resistance 2.5 N"),
    QT_TRANSLATE_NOOP("Words",
                      "Hepco V-guide example as published on industrialmonitordirect.com: friction "
                      "0.02 and 28 N of seal drag for the carriage, here a quarter for each wheel"),
    QT_TRANSLATE_NOOP("Words", "figures from memory"),
    QT_TRANSLATE_NOOP("Words", "they give the table of Röhm, chuck manual RN-1391, p. 43 (cast "
                               "iron HB 200 to 250, feeds 0.16 to 1.6 mm at 45°) within 3 %"),
    QT_TRANSLATE_NOOP("Words", "B. Pałubicki, Materials 2021, 14, 2208: average specific principal "
                               "force in peripheral milling, slow end (40 m/s)"),
    QT_TRANSLATE_NOOP("Words", "B. Pałubicki, Materials 2021, 14, 2208: average specific principal "
                               "force in peripheral milling, fast end (60 m/s)")};

QHash<QString, const char*> by_text() {
  QHash<QString, const char*> made;
  for (const char* phrase : phrases) {
    made.insert(QString::fromUtf8(phrase), phrase);
  }
  return made;
}

/// A phrase of the lists, alone or behind the name of the part it is about.
QString said(const QString& part) {
  static const QHash<QString, const char*> known = by_text();
  if (const char* phrase = known.value(part)) {
    return translated(phrase);
  }
  static const QString colon = QStringLiteral(": ");
  const qsizetype at = part.indexOf(colon);
  const char* phrase = at < 0 ? nullptr : known.value(part.mid(at + colon.size()));
  return phrase == nullptr ? part : listed_name(part.left(at)) + colon + translated(phrase);
}

} // namespace

QString listed_source(const QString& source) {
  return piecewise(source, QStringLiteral("; "), said);
}

} // namespace feedwright::words
