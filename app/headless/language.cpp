// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/language.h"

#include "text/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

namespace feedwright::headless {

namespace {

/// Loads a catalogue and keeps it as long as the application. False if there is none.
bool install(const QString& name) {
  auto* translator = new QTranslator(QCoreApplication::instance());
  if (!translator->load(name)) {
    delete translator;
    return false;
  }
  return QCoreApplication::installTranslator(translator);
}

} // namespace

QString language_codes() {
  return QStringLiteral("en, de");
}

bool use_language(const QString& code) {
  if (code.isEmpty() || code == QLatin1String("en")) {
    QLocale::setDefault(QLocale::c());
    words::set_decimal_mark(DecimalMark::point);
    return true;
  }
  if (code != QLatin1String("de") || !install(QStringLiteral(":/translations/feedwright_de.qm"))) {
    return false;
  }
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  words::set_decimal_mark(DecimalMark::comma);
  return true;
}

} // namespace feedwright::headless
