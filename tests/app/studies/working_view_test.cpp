// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/working_view.h"

#include "studies/formula_label.h"
#include "studies/result_picker.h"
#include "studies/studies_view.h"
#include "studies/terms_table.h"
#include "support/letters.h"
#include "support/machine_files.h"
#include "support/window.h"
#include "text/words.h"
#include "text/working_words.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>

#include <algorithm>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::ordinary_router;
using feedwright::testing::Shown;
using feedwright::testing::WithLetters;

namespace {

/// The window with the working of a result open.
struct OnWorking : Shown {
  explicit OnWorking(ResultId id, const Machine& machine = ordinary_router(),
                     QSize size = {1280, 800})
      : Shown(machine, size) {
    window->studies().show_working(id);
    QCoreApplication::processEvents();
  }
  WorkingView& view() { return window->studies().working(); }
  FormulaLabel& formula() { return find<FormulaLabel>("working_formula"); }
  TermsTable& terms() { return find<TermsTable>("working_terms"); }
  TermsTable& movers() { return find<TermsTable>("working_movers"); }

  int row_of(const TermsTable& table, const char* symbol) {
    for (int row = 0; row < table.rowCount(); ++row) {
      if (table.item(row, 0)->text() == QString::fromUtf8(symbol)) {
        return row;
      }
    }
    FAIL("no symbol " << symbol);
    return -1;
  }
  void click_on(TermsTable& table, const char* symbol, int column) {
    const QModelIndex cell = table.model()->index(row_of(table, symbol), column);
    QTest::mouseClick(table.viewport(), Qt::LeftButton, Qt::NoModifier,
                      table.visualRect(cell).center());
    QCoreApplication::processEvents();
  }
};

} // namespace

TEST_CASE("the working of a result shows what weighs: each symbol and the figures behind") {
  OnWorking shown(ResultId::whip_feed);
  CHECK(shown.terms().item(shown.row_of(shown.terms(), "n_w"), 4)->text() ==
        QStringLiteral("+1 %"));
  const int span = shown.row_of(shown.movers(), "L");
  CHECK(span == 0);
  CHECK(shown.movers().item(span, 4)->text() == QStringLiteral("−2 %"));
  CHECK(shown.movers().isVisible());
  // The figures of both tables stand below each other.
  for (const int column : {0, 1, 3, 4}) {
    CHECK(shown.terms().columnWidth(column) == shown.movers().columnWidth(column));
  }
}

TEST_CASE("a click on what a symbol is leads to its working, and the way back is kept") {
  OnWorking shown(ResultId::whip_feed);
  CHECK_FALSE(shown.find<QToolButton>("working_forward").isEnabled());
  shown.click_on(shown.terms(), "n_w", 2);
  CHECK(shown.view().chosen() == ResultId::whip_allowed_speed);
  shown.click_on(shown.terms(), "n_1", 2);
  CHECK(shown.view().chosen() == ResultId::whip_speed);
  // The results come through stand above, each a door.
  CHECK(shown.find<QToolButton>("working_step_0").isVisible());
  CHECK(shown.find<QToolButton>("working_step_1").isVisible());
  QTest::mouseClick(&shown.find<QToolButton>("working_back"), Qt::LeftButton);
  CHECK(shown.view().chosen() == ResultId::whip_allowed_speed);
  QTest::mouseClick(&shown.find<QToolButton>("working_forward"), Qt::LeftButton);
  CHECK(shown.view().chosen() == ResultId::whip_speed);
  QTest::mouseClick(&shown.find<QToolButton>("working_step_0"), Qt::LeftButton);
  CHECK(shown.view().chosen() == ResultId::whip_feed);
}

TEST_CASE("Alt with an arrow goes back and forth from anywhere in the working") {
  OnWorking shown(ResultId::whip_feed);
  shown.window->activateWindow();
  shown.terms().setFocus();
  shown.terms().setCurrentCell(0, 0);
  QTest::keyClick(&shown.terms(), Qt::Key_Return);
  QCoreApplication::processEvents();
  CHECK(shown.view().chosen() == ResultId::whip_allowed_speed);
  QTest::keyClick(&shown.terms(), Qt::Key_Left, Qt::AltModifier);
  CHECK(shown.view().chosen() == ResultId::whip_feed);
  QTest::keyClick(&shown.terms(), Qt::Key_Right, Qt::AltModifier);
  CHECK(shown.view().chosen() == ResultId::whip_allowed_speed);
}

TEST_CASE("a click on a symbol in the equation itself goes where its row goes") {
  OnWorking shown(ResultId::whip_speed);
  const int row = shown.row_of(shown.terms(), "d_r");
  const QRectF area = shown.formula().term_area(std::size_t(row));
  REQUIRE(area.isValid());
  QTest::mouseClick(&shown.formula(), Qt::LeftButton, Qt::NoModifier, area.center().toPoint());
  CHECK(shown.document().selection().member == QStringLiteral("core_diameter"));
}

TEST_CASE("a row pointed at by the keyboard is marked in the equation") {
  OnWorking shown(ResultId::whip_speed);
  shown.terms().setCurrentCell(2, 0);
  CHECK(shown.formula().marked_term() == std::size_t{2});
}

TEST_CASE("part of a name finds a result, and what is not taken does not stay") {
  OnWorking shown(ResultId::whip_feed);
  auto& picker = shown.find<ResultPicker>("working_result");
  auto& edit = *picker.lineEdit();
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, QStringLiteral("buckling load"));
  QTest::keyClick(&edit, Qt::Key_Return);
  QCoreApplication::processEvents();
  CHECK(shown.view().chosen() == ResultId::buckling_load);
  edit.selectAll();
  QTest::keyClicks(&edit, QStringLiteral("no such result"));
  shown.terms().setFocus();
  QCoreApplication::processEvents();
  CHECK(edit.text() == picker.itemText(picker.currentIndex()));
  CHECK(shown.view().chosen() == ResultId::buckling_load);
}

TEST_CASE("results stand in groups whose heads cannot be chosen") {
  OnWorking shown(ResultId::whip_feed);
  const auto& picker = shown.find<ResultPicker>("working_result");
  int heads = 0;
  for (int i = 0; i < picker.count(); ++i) {
    const bool head = !picker.itemData(i).isValid();
    heads += head ? 1 : 0;
    const bool enabled = (picker.model()->index(i, 0).flags() & Qt::ItemIsEnabled) != 0;
    CHECK(enabled != head);
  }
  CHECK(heads >= 8);
}

TEST_CASE("a working is copied whole and its equation as MathML, the table with tabs") {
  OnWorking shown(ResultId::screw_travel);
  QTest::mouseClick(&shown.find<QToolButton>("working_copy"), Qt::LeftButton);
  const QMimeData* copied = QApplication::clipboard()->mimeData();
  REQUIRE(copied != nullptr);
  const QStringList whole = copied->text().split(QLatin1Char('\n'));
  CHECK(whole.first() == words::result_name(ResultId::screw_travel));
  CHECK(whole.contains(QStringLiteral("r_s = l / (2π) = 5 mm / (2π) = 0.7958 mm/rad = "
                                      "0.0007958 m/rad")));
  CHECK(whole.filter(QStringLiteral("l\t5 mm\tlead (Final drive)\t")).size() == 1);
  CHECK(copied->data(QStringLiteral("application/mathml+xml")).startsWith("<math "));
  shown.window->activateWindow();
  shown.terms().setFocus();
  shown.terms().selectRow(0);
  QTest::keyClick(&shown.terms(), Qt::Key_C, Qt::ControlModifier);
  const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'));
  REQUIRE(lines.size() >= 2);
  CHECK(lines[1].split(QLatin1Char('\t')).mid(0, 2) ==
        QStringList{QStringLiteral("l"), QStringLiteral("5 mm")});
}

TEST_CASE("an equation can be heard: fractions, roots and squares are said in words") {
  OnWorking shown(ResultId::whip_speed);
  const QString said = shown.formula().accessibleName();
  INFO(said.toStdString());
  CHECK(said.contains(QStringLiteral("the square root of")));
  CHECK(said.contains(QStringLiteral("E over ρ")));
  CHECK(said.contains(QStringLiteral("square of")));
  CHECK_FALSE(said.contains(QLatin1Char('_')));
}

TEST_CASE("the largest part of a sum is named with its share") {
  OnWorking shown(ResultId::load_inertia);
  const auto& label = shown.find<QLabel>("working_shares");
  CHECK(label.isVisible());
  CHECK(label.text().contains(QStringLiteral(" %")));
}

TEST_CASE("what governs and what is open lead on although they have no equation") {
  OnWorking governing(ResultId::governing_feed);
  REQUIRE(governing.terms().rowCount() == 1);
  const auto limit = governing.document().current()->governing;
  REQUIRE(limit);
  const ResultDescriptor& reached = descriptor(descriptor(*limit).result);
  governing.click_on(governing.terms(), std::string(reached.symbol).c_str(), 2);
  CHECK(governing.view().chosen() == reached.id);
  OnWorking open(ResultId::life_turns);
  CHECK_FALSE(open.formula().isVisible());
  CHECK_FALSE(open.find<QLabel>("working_meaning").text().isEmpty());
}

TEST_CASE("where it matters a result says where its equation holds") {
  for (const ResultId id :
       {ResultId::whip_speed, ResultId::buckling_load, ResultId::belt_pull_allowed,
        ResultId::usable_torque, ResultId::motor_torque_feed, ResultId::life_turns,
        ResultId::natural_frequency, ResultId::bus_voltage, ResultId::back_driving_efficiency}) {
    INFO(descriptor(id).name);
    CHECK(words::result_validity(id).endsWith(QLatin1Char('.')));
  }
  for (const ResultDescriptor& result : result_descriptors()) {
    CHECK_FALSE(words::result_group(result.id).isEmpty());
  }
  OnWorking shown(ResultId::whip_speed);
  CHECK(shown.find<QLabel>("working_validity").isVisible());
  CHECK(shown.find<QLabel>("working_source").text().contains(QStringLiteral("Thomson")));
}

TEST_CASE("every working of the router fits its pane, in every language and at 18 points") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const int points : {0, 18}) {
      OnWorking shown(ResultId::whip_feed);
      if (points > 0) {
        QFont large = shown.view().font();
        large.setPointSize(points);
        shown.view().setFont(large);
      }
      for (const ResultDescriptor& result : result_descriptors()) {
        if (!result.get(*shown.document().current())) {
          continue;
        }
        shown.window->studies().show_working(result.id);
        // The figures behind come a turn later, and the pane grows the turn after.
        for (int turn = 0; turn < 5; ++turn) {
          QCoreApplication::processEvents();
        }
        INFO(language.code << " " << points << " " << result.name);
        auto& area = shown.find<QScrollArea>("working_scroll");
        CHECK(area.widget()->width() <= area.viewport()->width());
        CHECK(shown.formula().height() >= shown.formula().heightForWidth(shown.formula().width()));
        const TermsTable& terms = shown.terms();
        if (!terms.isHidden()) {
          CHECK(terms.horizontalHeader()->length() <= terms.viewport()->width());
          CHECK(terms.verticalScrollBar()->maximum() == 0);
          for (const int column : {0, 1, 3, 4}) {
            if (terms.isColumnHidden(column)) {
              continue;
            }
            for (int row = 0; row < terms.rowCount(); ++row) {
              CHECK(terms.fontMetrics().horizontalAdvance(terms.item(row, column)->text()) <=
                    terms.columnWidth(column));
            }
          }
        }
      }
    }
  }
}

TEST_CASE("at 18 points names of a working break instead of being cut, and heads and picker begin "
          "whole") {
  const WithLetters large(18);
  int hidden = 0;
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const ResultId id : {ResultId::whip_feed, ResultId::whip_speed, ResultId::load_inertia}) {
      OnWorking shown(id);
      shown.find<QTabBar>("side_tabs").setCurrentIndex(1);
      for (int turn = 0; turn < 6; ++turn) {
        QCoreApplication::processEvents();
      }
      INFO(language.code << " " << descriptor(id).name);
      CHECK(shown.find<ResultPicker>("working_result").lineEdit()->cursorPosition() == 0);
      for (TermsTable* table : {&shown.terms(), &shown.movers()}) {
        if (table->isHidden()) {
          continue;
        }
        const QFontMetrics heads(table->horizontalHeader()->font());
        for (int column = 0; column < table->columnCount(); ++column) {
          if (table->isColumnHidden(column)) {
            ++hidden;
            continue;
          }
          const QString head = table->horizontalHeaderItem(column)->text();
          INFO(head.toStdString());
          CHECK(heads.size(0, head).width() <= table->columnWidth(column));
        }
        for (int row = 0; row < table->rowCount(); ++row) {
          const QTableWidgetItem& about = *table->item(row, 2);
          INFO(about.text().toStdString());
          const QRect room(0, 0, table->columnWidth(2) - 8, 1000);
          const QRect taken =
              table->fontMetrics().boundingRect(room, Qt::TextWrapAnywhere, about.text());
          CHECK(taken.height() <= table->rowHeight(row));
          for (const QString& word : about.text().split(QLatin1Char(' '))) {
            const int letters = 18 * table->fontMetrics().averageCharWidth();
            CHECK(std::min(table->fontMetrics().horizontalAdvance(word), letters) <=
                  table->columnWidth(2));
          }
          // What is left out is in the tip.
          CHECK(about.toolTip().contains(table->item(row, 3)->text()));
          CHECK(about.toolTip().contains(table->item(row, 4)->text()));
        }
        CHECK(table->verticalScrollBar()->maximum() == 0);
      }
    }
  }
  CHECK(hidden > 0);
}

TEST_CASE("the working follows an edit, and says when nothing is computed") {
  OnWorking shown(ResultId::whip_feed);
  const QString before = shown.formula().plain_text();
  shown.document().edit_field(0, PartSlot::drive, "lead",
                              AnyQuantity{Kind::lead, 0.01 / 6.283185307},
                              {"10 mm", Origin::entered});
  QCoreApplication::processEvents();
  CHECK(shown.formula().plain_text() != before);
  shown.document().edit_field(0, PartSlot::drive, "span", AnyQuantity{Kind::length, 0.1}, {});
  QCoreApplication::processEvents();
  CHECK_FALSE(shown.formula().isVisible());
  CHECK_FALSE(shown.find<QToolButton>("working_copy").isEnabled());
}

TEST_CASE("Working opens with what governs each axis, until somebody chooses a result") {
  Shown shown(feedwright::testing::sample("plank-router"));
  WorkingView& view = shown.window->studies().working();
  const auto governing = [&](std::size_t axis) {
    return descriptor(*shown.document().results()[axis].governing).result;
  };
  REQUIRE(governing(0) != governing(1));
  shown.window->show_study(StudiesView::study_count() - 1);
  QCoreApplication::processEvents();
  CHECK(view.chosen() == governing(0));
  shown.window->show_axis(1);
  QCoreApplication::processEvents();
  CHECK(view.chosen() == governing(1));
  view.choose(ResultId::resolution);
  shown.window->show_axis(0);
  QCoreApplication::processEvents();
  CHECK(view.chosen() == ResultId::resolution);
}
