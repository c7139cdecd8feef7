// SPDX-License-Identifier: GPL-3.0-or-later

// How the sheet's pages read: searched as they are printed.

#include "headless/program.h"
#include "sheet/sheet_columns.h"
#include "text/text_of.h"
#include "units/unit_table.h"

#include <QRegularExpression>
#include <QSet>

#include <map>

using namespace feedwright;
using feedwright::testing::MachineFolder;
using feedwright::testing::ordinary_router;
using feedwright::testing::run;
using feedwright::testing::said_by;

namespace {

QString checked_machine(const char* name) {
  return QStringLiteral(FEEDWRIGHT_SOURCE_DIR "/tests/machines/%1.feedwright")
      .arg(QString::fromUtf8(name));
}

/// The sheet of a machine file as text, in the order it was painted or as it lies on the page.
QString sheet_text(const QString& machine, const QStringList& more = {},
                   const QString& order = QStringLiteral("-raw")) {
  const MachineFolder folder;
  REQUIRE(run(QStringList{QStringLiteral("sheet"), machine, QStringLiteral("--output"),
                          folder.path("sheet.pdf"), QStringLiteral("--date"),
                          QStringLiteral("2026-05-01")} +
              more)
              .code == 0);
  return QString::fromUtf8(said_by(QStringLiteral("pdftotext"),
                                   {order, folder.path("sheet.pdf"), QStringLiteral("-")}))
      .normalized(QString::NormalizationForm_KC);
}

QString on_one_line(const QString& text) {
  return text.simplified();
}

const char* const checked_machines[] = {"upright", "belt-hauled", "looped-screws"};

} // namespace

TEST_CASE("no line of the sheet ends within a quantity") {
  QSet<QString> symbols;
  for (int kind = 0; kind < static_cast<int>(Kind::compound); ++kind) {
    for (const Unit& unit : units_of(static_cast<Kind>(kind))) {
      symbols.insert(text_of(unit.symbol).normalized(QString::NormalizationForm_KC));
    }
  }
  symbols.remove(QString());
  for (const char* name : checked_machines) {
    for (const char* language : {"en", "de"}) {
      INFO(name << " " << language);
      const QStringList lines = sheet_text(checked_machine(name), {QStringLiteral("--language"),
                                                                   QString::fromLatin1(language)})
                                    .split(QLatin1Char('\n'), Qt::SkipEmptyParts);
      for (qsizetype i = 0; i + 1 < lines.size(); ++i) {
        INFO((lines[i] + QStringLiteral(" | ") + lines[i + 1]).toStdString());
        CHECK_FALSE(lines[i].endsWith(QLatin1Char('/')));
        static const QRegularExpression ends(QStringLiteral("[ .,;:)].*$"));
        const bool unit_begins = symbols.contains(QString(lines[i + 1]).remove(ends));
        const bool number_ends = lines[i].back().isDigit();
        CHECK_FALSE((unit_begins && number_ends));
      }
    }
  }
}

TEST_CASE("what is typed as a sum is printed as what it comes to, with what was typed beside") {
  const MachineFolder folder;
  std::string text = write_machine(ordinary_router());
  const std::string member = "\"travel\": ";
  const auto from = text.find(member) + member.size();
  text.replace(from, text.find(',', from) - from, "\"(600+20) mm\"");
  const QString machine = folder.put("sum.feedwright", std::string_view(text));
  const QString said = on_one_line(sheet_text(machine));
  CHECK(said.contains(QStringLiteral("travel 620 mm, typed as (600+20) mm")));
}

TEST_CASE("symbols on the sheet have subscripts, not the sign that marks one") {
  static const QRegularExpression raw(QStringLiteral("\\b\\p{L}_[\\p{L}\\d]"));
  for (const char* name : checked_machines) {
    const QString text = sheet_text(checked_machine(name), {QStringLiteral("--working")});
    const auto found = raw.match(text);
    INFO(name << ": " << text.mid(found.capturedStart() - 20, 60).toStdString());
    CHECK_FALSE(found.hasMatch());
  }
}

TEST_CASE("a negative figure on the sheet has a true minus, and an angle its sign at the figure") {
  const QString text = on_one_line(sheet_text(checked_machine("upright")));
  CHECK(text.contains(QStringLiteral("−0.04")));
  CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("(?<![\\w·–-])-\\d"))));
  CHECK(text.contains(QStringLiteral("incline 90° ")));
  CHECK(text.contains(QStringLiteral("incline −45° ")));
  CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("\\d °(?![A-Za-z/])"))));
}

TEST_CASE("a life nobody waits for is told as such, and large figures in groups") {
  const QString text = on_one_line(sheet_text(checked_machine("upright")));
  CHECK(text.contains(QStringLiteral("life in hours Lh more than 100 000 h")));
  CHECK(text.contains(QRegularExpression(QStringLiteral("life more than 100 000 h 2000 h"))));
  CHECK(text.contains(QStringLiteral("buckling 16 855 N")));
  CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("\\d[.,]?\\d*e\\d"))));
}

TEST_CASE("the load cases of a hauling belt speak of the drive, and rows for screws are left out") {
  const QString belt = on_one_line(sheet_text(checked_machine("belt-hauled")));
  CHECK(belt.contains(QStringLiteral("force on the drive 160.2 N")));
  CHECK_FALSE(belt.contains(QStringLiteral("axial force on one drive")));
  CHECK_FALSE(belt.contains(QStringLiteral("two screws")));
  const QString screws = on_one_line(sheet_text(checked_machine("looped-screws")));
  CHECK(screws.contains(QStringLiteral("axial force on one drive")));
  CHECK(screws.contains(QStringLiteral("two screws share the load")));
}

TEST_CASE("an axis begins on the machine's last page where half of it is left") {
  const QString text = sheet_text(checked_machine("upright"));
  const QStringList pages = text.split(QLatin1Char('\f'), Qt::SkipEmptyParts);
  CHECK(pages.size() == 10);
  CHECK(pages[1].contains(QStringLiteral("Holding brake")));
  CHECK(pages[1].contains(QStringLiteral("Machine, Z · with brake")));
  CHECK(pages[1].contains(QStringLiteral("governs the feed")));
}

TEST_CASE("the sentences on all axes name what they speak of") {
  const QString text = on_one_line(sheet_text(checked_machine("upright")));
  CHECK(text.contains(QStringLiteral("For this power the supply gives")));
  CHECK(text.contains(QStringLiteral("of capacitance keep the bus at its voltage limit")));
}

TEST_CASE("a column tears no small group, and of a large one neither a thing nor its heading") {
  using namespace sheet;
  const auto group_of = [](int rows) {
    TableGroup made{QStringLiteral("group"), {}};
    for (int row = 0; row < rows; ++row) {
      made.rows.push_back({{QStringLiteral("row")}, false, false, row % 3 != 2});
    }
    return made;
  };
  for (double height = 300.0; height < 520.0; height += 6.0) {
    Pages pages(QSizeF(600.0, height));
    pages.begin_page(QStringLiteral("X"));
    add_two_columns(pages, {{{}, 1.0}},
                    {group_of(3), group_of(24), group_of(6), group_of(12), group_of(3)});
    constexpr double heading = 20.0;
    int rows = 0;
    for (const Page& page : pages.list()) {
      std::map<double, std::vector<double>> columns;
      for (const Mark& mark : page.marks) {
        columns[mark.rect.left()].push_back(mark.rect.height());
      }
      for (const auto& [left, heights] : columns) {
        INFO(height << " " << left);
        // Three rows are one thing.
        const auto here = std::ranges::count_if(heights, [&](double h) { return h != heading; });
        CHECK(here % 3 == 0);
        CHECK(heights.back() != heading);
        rows += int(here);
      }
    }
    CHECK(rows == 48);
  }
}
