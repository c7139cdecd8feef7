// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/language.h"

#include "text/pseudo_language.h"
#include "text/words.h"

#include <QGuiApplication>
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
  return code == QLatin1String("en") || code == pseudo_code ? QLocale::c() : QLocale(code);
}

QString& code_in_use() {
  static QString code = QStringLiteral("en");
  return code;
}

bool install_pseudo_language() {
  auto* translator = new PseudoTranslator(QCoreApplication::instance());
  translator->setObjectName(QString::fromLatin1(translator_name));
  return QCoreApplication::installTranslator(translator);
}

void set_direction(const QString& code, const QLocale& locale) {
  if (qobject_cast<QGuiApplication*>(QCoreApplication::instance()) != nullptr) {
    QGuiApplication::setLayoutDirection(code == pseudo_code ? Qt::RightToLeft
                                                            : locale.textDirection());
  }
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

QString current_language() {
  return code_in_use();
}

bool use_language(const QString& code) {
  const QString wanted = code.isEmpty() ? QStringLiteral("en") : code;
  const auto old = QCoreApplication::instance()->findChildren<QTranslator*>(
      QString::fromLatin1(translator_name));
  // English has a catalogue too: it holds the plurals.
  const bool known = language_codes().split(QStringLiteral(", ")).contains(wanted);
  if (wanted == pseudo_code ? !install_pseudo_language()
                            : !known || !install(QStringLiteral("feedwright_") + wanted,
                                                 QStringLiteral(":/translations"))) {
    return false;
  }
  // Words of the library's own buttons; where its catalogue is not installed they stay English.
  install(QStringLiteral("qtbase_") + wanted, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  remove_translators(old);
  const QLocale locale = locale_of(wanted);
  QLocale::setDefault(locale);
  set_direction(wanted, locale);
  code_in_use() = wanted;
  words::set_decimal_mark(locale.decimalPoint() == QLatin1String(",") ? DecimalMark::comma
                                                                      : DecimalMark::point);
  return true;
}

} // namespace feedwright
