// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/pseudo_language.h"

namespace feedwright {

namespace {

QChar accented(QChar letter) {
  static const QString plain = QStringLiteral("aceginorstuyzACEGINORSTUYZ");
  static const QString marked = QStringLiteral("áçéğíñóřšťúýžÁÇÉĞÍÑÓŘŠŤÚÝŽ");
  const qsizetype at = plain.indexOf(letter);
  return at >= 0 ? marked[at] : letter;
}

/// Four letters more for every ten, in words short enough to wrap.
QString padding(qsizetype length) {
  QString made;
  for (qsizetype i = 0; i < (length * 2 + 4) / 5; ++i) {
    made += i % 7 == 0 ? QLatin1Char(' ') : QLatin1Char('~');
  }
  return made;
}

} // namespace

QString pseudo_text(const QString& english) {
  QString made;
  for (qsizetype i = 0; i < english.size(); ++i) {
    made += accented(english[i]);
    // %n, %1, %L1: what is put in for them must still be found.
    if (english[i] == QLatin1Char('%')) {
      while (i + 1 < english.size() &&
             (english[i + 1].isDigit() || english[i + 1] == QLatin1Char('n') ||
              english[i + 1] == QLatin1Char('L'))) {
        made += english[++i];
      }
    }
  }
  return QLatin1Char('[') + made + padding(english.size()) + QLatin1Char(']');
}

QString PseudoTranslator::translate(const char* context, const char* source, const char*,
                                    int) const {
  // The library's own words, names of keys among them, have catalogues of their own.
  if (context != nullptr && context[0] == 'Q') {
    return {};
  }
  return pseudo_text(QString::fromUtf8(source));
}

} // namespace feedwright
