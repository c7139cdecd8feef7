// SPDX-License-Identifier: GPL-3.0-or-later

// How pages of help are set: searched line by line, as they are shown.

#include "help/help_page_view.h"
#include "help/help_topics.h"
#include "support/window.h"
#include "text/text_of.h"
#include "units/unit_table.h"

#include <QMimeData>
#include <QRegularExpression>
#include <QSet>
#include <QTextBlock>
#include <QTextLayout>

using namespace feedwright;

namespace {

class ShownPage : public HelpPageView {
public:
  ShownPage(const QString& topic, const QString& language, int width) {
    resize(width, 600);
    show();
    show_page(help_page(topic, language));
    QCoreApplication::processEvents();
  }

  QStringList lines() const {
    QStringList lines;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
      for (int i = 0; i < block.layout()->lineCount(); ++i) {
        const QTextLine line = block.layout()->lineAt(i);
        lines << block.text().mid(line.textStart(), line.textLength());
      }
      lines << QString();
    }
    return lines;
  }

  QString copied() {
    selectAll();
    const std::unique_ptr<QMimeData> taken(createMimeDataFromSelection());
    return taken->text();
  }
};

QSet<QString> unit_symbols() {
  QSet<QString> symbols;
  for (int kind = 0; kind < static_cast<int>(Kind::compound); ++kind) {
    for (const Unit& unit : units_of(static_cast<Kind>(kind))) {
      symbols.insert(text_of(unit.symbol));
    }
  }
  symbols.remove(QString());
  return symbols;
}

} // namespace

TEST_CASE("no line of a page of help ends within a quantity") {
  const QSet<QString> symbols = unit_symbols();
  static const QRegularExpression ends(QStringLiteral("[\\s.,;:)].*$"));
  for (const Language& language : languages()) {
    for (const QString& topic : all_help_topics()) {
      const ShownPage page(topic, QString::fromLatin1(language.code), 430);
      const QStringList lines = page.lines();
      for (qsizetype i = 0; i + 1 < lines.size(); ++i) {
        const QString line = lines[i].trimmed();
        if (line.isEmpty() || lines[i + 1].isEmpty()) {
          continue;
        }
        INFO(language.code << " " << topic.toStdString() << ": " << lines[i].toStdString() << " | "
                           << lines[i + 1].toStdString());
        const bool unit_begins = symbols.contains(QString(lines[i + 1]).remove(ends));
        CHECK_FALSE((line.back().isNumber() && unit_begins));
        CHECK_FALSE(line.endsWith(QStringLiteral("--")));
        CHECK_FALSE((line.endsWith(QLatin1Char('/')) && lines[i + 1].front().isLetter()));
      }
    }
  }
}

TEST_CASE("symbols on pages of help have subscripts, and are found and copied as text") {
  ShownPage page(QStringLiteral("limit/life"), QStringLiteral("en"), 700);
  const QTextCursor found = page.document()->find(QStringLiteral("Ca in the nut"));
  REQUIRE_FALSE(found.isNull());
  QTextCursor below = found;
  below.setPosition(found.selectionStart() + 2);
  CHECK(below.charFormat().verticalAlignment() == QTextCharFormat::AlignSubScript);
  below.setPosition(found.selectionStart() + 1);
  CHECK(below.charFormat().verticalAlignment() == QTextCharFormat::AlignNormal);
  CHECK(below.charFormat().fontPointSize() == found.charFormat().fontPointSize());
  CHECK_FALSE(page.toPlainText().contains(QLatin1Char('_')));
  page.mark_words({QStringLiteral("C_a")});
  CHECK_FALSE(page.extraSelections().isEmpty());
}

TEST_CASE("what is copied from a page of help can be pasted into a field") {
  ShownPage page(QStringLiteral("limit/acceleration"), QStringLiteral("en"), 700);
  const QString copied = page.copied();
  CHECK(copied.contains(QStringLiteral("m/s²")));
  CHECK_FALSE(copied.contains(QChar(0x2060)));
  CHECK_FALSE(copied.contains(QChar(QChar::Nbsp)));
}
