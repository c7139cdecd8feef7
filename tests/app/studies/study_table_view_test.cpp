// SPDX-License-Identifier: GPL-3.0-or-later

// The table of a study in a narrow pane with large letters.

#include "studies/study_table_view.h"
#include "support/painted_study.h"
#include "support/studies.h"
#include "support/window.h"
#include "window/letters.h"

#include <QHeaderView>
#include <QScrollBar>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::InLanguage;
using feedwright::testing::many_machines;
using feedwright::testing::PaintedStudy;

namespace {

int line_widths(const QFont& font, const QString& text) {
  int widest = 0;
  for (const QString& line : text.split(QLatin1Char('\n'))) {
    widest = std::max(widest, QFontMetrics(font).horizontalAdvance(line));
  }
  return widest;
}

void check_not_cut(QTableWidget& table) {
  const QFont heads = table.horizontalHeader()->font();
  for (int column = 0; column < table.columnCount(); ++column) {
    const QString head = table.horizontalHeaderItem(column)->text();
    INFO(head.toStdString());
    CHECK(line_widths(heads, head) <= table.columnWidth(column));
    CHECK(QFontMetrics(heads).size(0, head).height() <= table.horizontalHeader()->height());
    for (int row = 0; row < table.rowCount(); ++row) {
      const QString text = table.item(row, column)->text();
      INFO(text.toStdString());
      const QStringList lines = broken(text, table.font(), table.columnWidth(column) - 8);
      CHECK(line_widths(table.font(), lines.join(QLatin1Char('\n'))) <= table.columnWidth(column));
      CHECK(lines.size() * table.fontMetrics().height() <= table.rowHeight(row));
    }
  }
}

} // namespace

TEST_CASE("in a narrow pane the columns of a study's table share its width and break, uncut") {
  qsizetype broken_heads = 0;
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const auto& [name, machine] : many_machines()) {
      for (const Study study : {Study::torque, Study::errors}) {
        INFO(language.code << " " << name << " " << int(study));
        PaintedStudy painted(study, figure_of(study, machine), QSize(720, 340), 18);
        if (painted.table().isHidden()) {
          QTest::mouseClick(&painted.button(), Qt::LeftButton);
        }
        QTableWidget& table = painted.table();
        REQUIRE(table.isVisible());
        CHECK(table.horizontalScrollBar()->maximum() == 0);
        check_not_cut(table);
        for (int column = 0; column < table.columnCount(); ++column) {
          broken_heads += table.horizontalHeaderItem(column)->text().count(QLatin1Char('\n'));
        }
      }
    }
  }
  CHECK(broken_heads > 0);
}

TEST_CASE("a study's table with room has heads and cells in one line, and again after narrowing") {
  PaintedStudy painted(Study::errors,
                       figure_of(Study::errors, feedwright::testing::machine_in("/tests/machines/",
                                                                                "looped-screws")),
                       QSize(1400, 500));
  QTest::mouseClick(&painted.button(), Qt::LeftButton);
  QTableWidget& table = painted.table();
  const auto one_line = [&] {
    for (int column = 0; column < table.columnCount(); ++column) {
      if (table.horizontalHeaderItem(column)->text().contains(QLatin1Char('\n'))) {
        return false;
      }
    }
    return true;
  };
  CHECK(one_line());
  const int height = table.rowHeight(0);
  painted.canvas.resize(230, 500);
  QCoreApplication::processEvents();
  CHECK_FALSE(one_line());
  painted.canvas.resize(1400, 500);
  QCoreApplication::processEvents();
  CHECK(one_line());
  CHECK(table.rowHeight(0) == height);
}

TEST_CASE("a table in any room takes one study's columns after another's") {
  StudyTableView view;
  view.show();
  const Machine machine = feedwright::testing::machine_in("/sample-machines/", "plank-router");
  for (const QSize size : {QSize(160, 90), QSize(300, 140), QSize(700, 400)}) {
    view.resize(size);
    for (const Study first : all_studies) {
      for (const Study next : all_studies) {
        view.show_figure(feedwright::testing::figure_of(first, machine));
        QCoreApplication::processEvents();
        const StudyFigure figure = feedwright::testing::figure_of(next, machine);
        view.show_figure(figure);
        CHECK(view.columnCount() == as_table(figure).head.size());
      }
    }
  }
}
