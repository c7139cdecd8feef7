// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/part_shelf.h"
#include "support/window.h"
#include "text/listed_names.h"

#include <QRegularExpression>

#include <set>

using namespace feedwright;
using feedwright::testing::InLanguage;

TEST_CASE("the words of the program's own lists are said in the language, designations are not") {
  const PartShelf shelf = read_part_shelf();
  REQUIRE(shelf.parts.size() > 100);
  const QRegularExpression word(QStringLiteral("\\b(?!mm\\b)[a-z]{2,}\\b"));
  for (const ShelvedPart& shelved : shelf.parts) {
    const QString name = QString::fromStdString(shelved.part.name);
    INFO(shelved.part.name);
    CHECK(words::listed_name(name) == name);
    const InLanguage german("de");
    const QStringList pieces = name.split(QStringLiteral(", "));
    const QStringList said = words::listed_name(name).split(QStringLiteral(", "));
    REQUIRE(said.size() == pieces.size());
    for (qsizetype i = 0; i < pieces.size(); ++i) {
      INFO(said[i].toStdString());
      CHECK(pieces[i].contains(word) ==
            (QString(said[i]).replace(QLatin1Char(','), QLatin1Char('.')) != pieces[i]));
    }
  }
  const InLanguage german("de");
  CHECK(words::listed_name(QStringLiteral("Tr 8 × 1.5, bronze nut, lubricated")) ==
        QStringLiteral("Tr 8 × 1,5, Bronzemutter, geschmiert"));
  CHECK(words::listed_name(QStringLiteral("T2.5, 6 mm, rubber, glass cords")) ==
        QStringLiteral("T2.5, 6 mm, Gummi, Glaszugstränge"));
  CHECK(words::listed_name(QStringLiteral("NEMA 34, 98 mm, 4.5 N·m at 60 V")) ==
        QStringLiteral("NEMA 34, 98 mm, 4,5 N·m bei 60 V"));
  CHECK(words::listed_name(QStringLiteral("from the drawer %1")) ==
        QStringLiteral("from the drawer %1"));
}

TEST_CASE(
    "every source of the program's own lists is said in the language, what a user wrote is not") {
  std::set<QString> phrases;
  for (const ShelvedPart& shelved : read_part_shelf().parts) {
    const QString source = QString::fromStdString(shelved.part.source);
    CHECK(words::listed_source(source) == source);
    const QStringList parts = source.split(QStringLiteral("; "));
    phrases.insert(parts.begin(), parts.end());
  }
  REQUIRE(phrases.size() > 20);
  const InLanguage german("de");
  const QRegularExpression english(QStringLiteral("\\b(from|the|supplier|of|by|to|data)\\b"));
  for (const QString& phrase : phrases) {
    INFO(phrase.toStdString());
    CHECK_FALSE(words::listed_source(phrase).contains(english));
  }
  CHECK(words::listed_source(
            QStringLiteral("16 × 5, rolled: typical, from memory; ask the supplier")) ==
        QStringLiteral("16 × 5, gerollt: typisch, aus dem Gedächtnis; Lieferanten fragen"));
  CHECK(words::listed_source(QStringLiteral("measured: by myself; from the drawer")) ==
        QStringLiteral("measured: by myself; from the drawer"));
}
