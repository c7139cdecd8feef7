// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/language.h"

#include "text/words.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QStringList>
#include <QTranslator>

#include <algorithm>

namespace feedwright {

namespace {

constexpr Language all_languages[] = {{"en", "English"}, {"de", "Deutsch"}};

/// Translators are children of the application under this name, so that the next language can take
/// them away.
const char* const translator_name = "feedwright_language";

bool install(const QString& file, const QString& folder) {
  auto* translator = new QTranslator(QCoreApplication::instance());
  translator->setObjectName(QString::fromLatin1(translator_name));
  if (!translator->load(file, folder)) {
    delete translator;
    return false;
  }
  return QCoreApplication::installTranslator(translator);
}

void remove_translators(const QList<QTranslator*>& old) {
  for (QTranslator* translator : old) {
    QCoreApplication::removeTranslator(translator);
    delete translator;
  }
}

QLocale locale_of(const QString& code) {
  return code == QLatin1String("en") ? QLocale::c() : QLocale(code);
}

} // namespace

std::span<const Language> languages() {
  return all_languages;
}

QString language_codes() {
  QStringList codes;
  for (const Language& language : all_languages) {
    codes.append(QString::fromLatin1(language.code));
  }
  return codes.join(QStringLiteral(", "));
}

QString language_of_desktop() {
  const QString wanted = QLocale::system().name().left(2);
  const bool known = std::ranges::any_of(all_languages, [&](const Language& language) {
    return wanted == QLatin1String(language.code);
  });
  return known ? wanted : QStringLiteral("en");
}

bool use_language(const QString& code) {
  const QString wanted = code.isEmpty() ? QStringLiteral("en") : code;
  const auto old = QCoreApplication::instance()->findChildren<QTranslator*>(
      QString::fromLatin1(translator_name));
  // English has a catalogue too: it holds the plurals.
  if (!language_codes().split(QStringLiteral(", ")).contains(wanted) ||
      !install(QStringLiteral("feedwright_") + wanted, QStringLiteral(":/translations"))) {
    return false;
  }
  // Words of the library's own buttons; where its catalogue is not installed they stay English.
  install(QStringLiteral("qtbase_") + wanted, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  remove_translators(old);
  const QLocale locale = locale_of(wanted);
  QLocale::setDefault(locale);
  words::set_decimal_mark(locale.decimalPoint() == QLatin1String(",") ? DecimalMark::comma
                                                                      : DecimalMark::point);
  return true;
}

} // namespace feedwright
