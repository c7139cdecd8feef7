// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"
#include "studies/study_canvas.h"
#include "studies/working_view.h"
#include "support/axes.h"
#include "support/letters.h"
#include "support/painted_study.h"
#include "support/plots.h"
#include "support/studies.h"
#include "support/window.h"
#include "window/style.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTabBar>
#include <QTableWidget>
#include <QToolButton>
#include <QWheelEvent>
#include <qcustomplot.h>

#include <algorithm>
#include <set>

using namespace feedwright;
using feedwright::testing::check_words_apart;
using feedwright::testing::figure_of;
using feedwright::testing::Folder;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::ordinary_router;
using feedwright::testing::PaintedStudy;
using feedwright::testing::Shown;
using feedwright::testing::WithLetters;
using feedwright::testing::words_of;

namespace {

void press(QWidget& widget, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
  QTest::keyClick(&widget, key, modifiers);
  QCoreApplication::processEvents();
}

struct Studied : Shown {
  explicit Studied(Study study, const Machine& machine = ordinary_router()) : Shown(machine) {
    window->show_study(static_cast<int>(study));
    QCoreApplication::processEvents();
  }
  StudyCanvas& canvas() { return window->studies().canvas(); }
  QCustomPlot& plot() { return canvas().plot(); }
  std::string reading() { return canvas().reading().toStdString(); }
};

} // namespace

TEST_CASE("each study of many machines says a sentence and has units on its axes") {
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const Study study : all_studies) {
        INFO(name << " axis " << axis << " " << study_name(study).toStdString());
        const StudyFigure figure = figure_of(study, machine, axis);
        CHECK_FALSE(figure.summary.isEmpty());
        CHECK_FALSE(figure.title.isEmpty());
        if (!figure.is_empty()) {
          CHECK((!figure.x_unit.isEmpty() || !figure.stacks.empty()));
          for (const StudyPanel& panel : figure.panels) {
            CHECK_FALSE(panel.y_unit.isEmpty());
          }
          const StudyTable table = as_table(figure);
          CHECK(table.rows.size() >= 2);
          CHECK(table.rows.size() <= 260);
          for (const QStringList& row : table.rows) {
            REQUIRE(row.size() == table.head.size());
          }
          CHECK_FALSE(read_out(figure, (figure.x_start + figure.x_end) / 2.0).isEmpty());
        }
      }
    }
  }
}

TEST_CASE("no word of a plot covers another or leaves it, at common sizes and in large type") {
  for (const auto& [name, machine] : many_machines()) {
    for (const int points : {0, 18}) {
      for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
        for (const Study study : all_studies) {
          INFO(name << " axis " << axis << " " << study_name(study).toStdString() << " " << points);
          PaintedStudy painted(study, figure_of(study, machine, axis),
                               points > 0 ? QSize(1000, 460) : PaintedStudy::usual_size, points);
          if (!painted.canvas.figure().is_empty()) {
            check_words_apart(painted.plot());
          }
        }
      }
    }
  }
}

TEST_CASE("arrow keys read a plot off in words and units, Home and End go to its ends") {
  Studied shown(Study::thrust);
  const std::string summary = shown.reading();
  CHECK_THAT(summary, Catch::Contains("N"));
  press(shown.plot(), Qt::Key_Right);
  CHECK_THAT(shown.reading(), Catch::Contains("feed") && Catch::Contains("m/min") &&
                                  Catch::Contains("the motor can push"));
  press(shown.plot(), Qt::Key_Home);
  CHECK_THAT(shown.reading(), Catch::StartsWith("feed 0 m/min"));
}

TEST_CASE("arrow keys step through the columns of an error budget") {
  Studied shown(Study::errors, machine_in("/sample-machines/", "plank-router"));
  press(shown.plot(), Qt::Key_Right);
  CHECK_THAT(shown.reading(), Catch::StartsWith("on reversal"));
  press(shown.plot(), Qt::Key_Right);
  CHECK_THAT(shown.reading(), Catch::StartsWith("over the travel"));
  press(shown.plot(), Qt::Key_Right);
  press(shown.plot(), Qt::Key_Right);
  CHECK_THAT(shown.reading(), Catch::StartsWith("under cut"));
}

TEST_CASE("plus zooms, Shift with an arrow pans, nought and the button show the whole again") {
  Studied shown(Study::acceleration);
  const QCPRange whole = shown.plot().xAxis->range();
  CHECK_FALSE(shown.find<QToolButton>("study_whole_button").isVisible());
  press(shown.plot(), Qt::Key_Plus);
  CHECK(shown.plot().xAxis->range().size() < whole.size());
  CHECK(shown.find<QToolButton>("study_whole_button").isVisible());
  const QCPRange zoomed = shown.plot().xAxis->range();
  press(shown.plot(), Qt::Key_Right, Qt::ShiftModifier);
  CHECK(shown.plot().xAxis->range().lower > zoomed.lower);
  press(shown.plot(), Qt::Key_0);
  CHECK(shown.plot().xAxis->range() == whole);
  press(shown.plot(), Qt::Key_Plus);
  QTest::mouseClick(&shown.find<QToolButton>("study_whole_button"), Qt::LeftButton);
  CHECK(shown.plot().xAxis->range() == whole);
}

TEST_CASE("the wheel zooms a plot only while it has the keyboard or Ctrl is held") {
  Studied shown(Study::thrust);
  shown.find<QTabBar>("study_tabs").setFocus();
  const QCPRange whole = shown.plot().xAxis->range();
  const auto turn = [&](Qt::KeyboardModifiers modifiers) {
    const QPointF at = shown.plot().axisRect()->center();
    QWheelEvent wheel(at, shown.plot().mapToGlobal(at), {}, {0, 120}, Qt::NoButton, modifiers,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&shown.plot(), &wheel);
  };
  turn(Qt::NoModifier);
  CHECK(shown.plot().xAxis->range() == whole);
  turn(Qt::ControlModifier);
  CHECK(shown.plot().xAxis->range() != whole);
  QTest::mouseDClick(&shown.plot(), Qt::LeftButton);
  CHECK(shown.plot().xAxis->range() == whole);
}

TEST_CASE("a plot is copied as picture and numbers, twice as fine as on the screen") {
  Studied shown(Study::motor);
  shown.plot().setFocus();
  press(shown.plot(), Qt::Key_C, Qt::ControlModifier);
  const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
  REQUIRE(copied->hasImage());
  CHECK(qvariant_cast<QImage>(copied->imageData()).width() == 2 * shown.plot().width());
  CHECK_THAT(copied->text().toStdString(),
             Catch::StartsWith("motor speed, rpm\tfeed, m/min\tpull-out, N·m\tusable, N·m"));
}

TEST_CASE("a study as a table has the same numbers, and copies what is selected") {
  Studied shown(Study::torque);
  QTest::mouseClick(&shown.find<QToolButton>("study_table_button"), Qt::LeftButton);
  auto& table = shown.find<QTableWidget>("study_table");
  REQUIRE(table.isVisible());
  CHECK_FALSE(shown.plot().isVisible());
  CHECK_FALSE(table.accessibleName().isEmpty());
  REQUIRE(table.rowCount() >= 4);
  table.setRangeSelected({0, 0, 1, 2}, true);
  table.setFocus();
  press(table, Qt::Key_C, Qt::ControlModifier);
  const QString text = QGuiApplication::clipboard()->text();
  CHECK(text.count(QLatin1Char('\n')) == 2);
  CHECK(text.startsWith(table.item(0, 0)->text() + QLatin1Char('\t') + table.item(0, 1)->text()));
  // The table stays while another study is chosen.
  shown.window->show_study(static_cast<int>(Study::errors));
  QCoreApplication::processEvents();
  CHECK(table.isVisible());
  QTest::mouseClick(&shown.find<QToolButton>("study_table_button"), Qt::LeftButton);
  CHECK(shown.plot().isVisible());
}

TEST_CASE("the distance of the move takes any unit and stays with its axis") {
  Studied shown(Study::move, machine_in("/sample-machines/", "plank-router"));
  auto& editor = shown.find<QLineEdit>("move_distance");
  auto& note = shown.find<QLabel>("move_distance_note");
  REQUIRE(editor.isVisible());
  CHECK_THAT(shown.reading(), Catch::StartsWith("120 mm take at least"));
  editor.setFocus();
  QTest::keyClicks(&editor, QStringLiteral("2 in"));
  CHECK_THAT(shown.reading(), Catch::StartsWith("50.8 mm take at least"));
  CHECK(note.accessibleName() == QStringLiteral("= 50.8 mm"));
  shown.window->show_axis(1);
  QCoreApplication::processEvents();
  CHECK(editor.text().isEmpty());
  shown.window->show_axis(0);
  QCoreApplication::processEvents();
  CHECK(editor.text() == QStringLiteral("2 in"));
  CHECK_FALSE(shown.document().is_modified());
}

TEST_CASE("a distance that cannot be is refused in words, and the last one stays drawn") {
  Studied shown(Study::move, machine_in("/sample-machines/", "plank-router"));
  auto& editor = shown.find<QLineEdit>("move_distance");
  auto& note = shown.find<QLabel>("move_distance_note");
  editor.setFocus();
  QTest::keyClicks(&editor, QStringLiteral("80"));
  CHECK(note.accessibleName() == QStringLiteral("= 80 mm"));
  for (const char* wrong : {"5 kg", "-3 mm", "9 m"}) {
    INFO(wrong);
    editor.selectAll();
    QTest::keyClicks(&editor, QString::fromUtf8(wrong));
    CHECK(note.text().startsWith(QStringLiteral("▲ ")));
    CHECK(editor.text() == QString::fromUtf8(wrong));
  }
  CHECK_FALSE(shown.canvas().figure().is_empty());
}

TEST_CASE("an axis is made longer in one step, told before and taken back at once") {
  Studied shown(Study::thrust, machine_in("/sample-machines/", "plank-router"));
  const std::string before = write_machine(shown.document().machine());
  shown.trigger("lengthen_axis");
  auto& editor = shown.find<QLineEdit>("lengthen_by");
  auto& note = shown.find<QLabel>("lengthen_by_note");
  auto& button = shown.find<QPushButton>("lengthen");
  REQUIRE(editor.isVisible());
  CHECK(shown.window->focusWidget() == &editor);
  CHECK_FALSE(button.isEnabled());
  QTest::keyClicks(&editor, QStringLiteral("400"));
  CHECK(note.accessibleName() ==
        QStringLiteral("then travel 1600 mm, length between bearings 1880 mm, overall length "
                       "1960 mm"));
  CHECK(button.isEnabled());
  CHECK_FALSE(shown.document().is_modified());
  QTest::mouseClick(&button, Qt::LeftButton);
  const Axis& axis = shown.document().machine().axes[0];
  CHECK(si_value(*axis.basics.travel) == Approx(1.6));
  CHECK(shown.document().undo_stack()->undoText() == QStringLiteral("lengthen axis X by 400 mm"));
  CHECK(editor.text().isEmpty());
  CHECK(note.text().isEmpty());
  shown.document().undo_stack()->undo();
  CHECK(write_machine(shown.document().machine()) == before);
  // Enter does it too, and a length can be taken away.
  editor.setFocus();
  QTest::keyClicks(&editor, QStringLiteral("-4 in"));
  QTest::keyClick(&editor, Qt::Key_Return);
  CHECK(si_value(*axis.basics.travel) == Approx(1.0984));
  CHECK(shown.document().undo_stack()->undoText() == QStringLiteral("shorten axis X by 101.6 mm"));
}

TEST_CASE("in a window low for its letters the place to type a length comes in sight") {
  const WithLetters large(18);
  Studied shown(Study::thrust, machine_in("/sample-machines/", "plank-router"));
  shown.find<QTabBar>("side_tabs").setCurrentIndex(0);
  QCoreApplication::processEvents();
  shown.trigger("lengthen_axis");
  QCoreApplication::processEvents();
  CHECK(shown.find<QLineEdit>("lengthen_by").isVisible());
  CHECK(shown.window->focusWidget() == &shown.find<QLineEdit>("lengthen_by"));
}

TEST_CASE("a length that cannot be is refused in words, and nothing is made of it") {
  Studied shown(Study::stretch, machine_in("/sample-machines/", "plank-router"));
  auto& editor = shown.find<QLineEdit>("lengthen_by");
  auto& note = shown.find<QLabel>("lengthen_by_note");
  editor.setFocus();
  for (const char* wrong : {"5 kg", "-3 m", "abc"}) {
    INFO(wrong);
    editor.selectAll();
    QTest::keyClicks(&editor, QString::fromUtf8(wrong));
    CHECK(note.text().startsWith(QStringLiteral("▲ ")));
    CHECK_FALSE(shown.find<QPushButton>("lengthen").isEnabled());
    QTest::keyClick(&editor, Qt::Key_Return);
    CHECK(editor.text() == QString::fromUtf8(wrong));
  }
  CHECK_FALSE(shown.document().is_modified());
  // of another axis nothing is left standing
  shown.window->show_axis(1);
  QCoreApplication::processEvents();
  CHECK(editor.text().isEmpty());
}

TEST_CASE("a study is saved as picture and as numbers, and what fails is told") {
  Folder folder;
  Studied shown(Study::stretch);
  shown.answers.path = folder.path("a.png");
  shown.trigger("study_save_picture");
  CHECK(shown.answers.suggested.endsWith(QStringLiteral("X Stretch.png")));
  CHECK(folder.bytes("a.png").substr(1, 3) == "PNG");
  shown.answers.path = folder.path("a.csv");
  shown.trigger("study_save_numbers");
  CHECK_THAT(folder.bytes("a.csv"), Catch::StartsWith("\"length between bearings, mm\""));
  shown.answers.path = folder.path("none/a.csv");
  shown.trigger("study_save_numbers");
  CHECK(shown.answers.told.size() == 2);
}

TEST_CASE("studies speak the units the machine is typed in") {
  Machine machine = testing::ordinary_router_read();
  REQUIRE(set_field(machine, 0, PartSlot::targets, "feed", AnyQuantity{Kind::velocity, 0.0423333},
                    {"100 in/min", Origin::entered}));
  CHECK(x_axis_label(figure_of(Study::thrust, machine)) == QStringLiteral("feed, in/min"));
  CHECK(figure_of(Study::move, machine).panels[1].y_unit == QStringLiteral("in/min"));
}

TEST_CASE("what cannot be drawn is said in a sentence instead") {
  Machine machine = ordinary_router();
  machine.axes[0].targets.acceleration.reset();
  Studied shown(Study::move, machine);
  CHECK_FALSE(shown.plot().isVisible());
  CHECK(shown.find<QLabel>("study_nothing").text().contains(QStringLiteral("acceleration")));
}

TEST_CASE("regions of a margin carry a sign and a word beside their hatching") {
  const StudyFigure figure = figure_of(Study::thrust, ordinary_router());
  REQUIRE(figure.panels.front().bands.size() == 2);
  const auto& bands = figure.panels.front().bands;
  CHECK(bands[0].label == QStringLiteral("✓ clear"));
  CHECK(bands[1].ground == StudyBand::Ground::hatched);
  CHECK(bands[1].label.endsWith(QStringLiteral("close")));
  for (std::size_t i = 0; i < bands[0].x.size(); ++i) {
    CHECK(bands[0].high[i] <= bands[1].high[i]);
  }
}

TEST_CASE("a plot takes on the colours of a palette set while it is shown") {
  Studied shown(Study::acceleration);
  const Look dark = Look::dark_look();
  shown.window->setPalette(palette_of(dark));
  QCoreApplication::processEvents();
  CHECK(shown.plot().xAxis->labelColor() == dark.faint_ink);
  CHECK(shown.plot().grab().toImage().pixelColor(2, 2) == dark.paper);
}

TEST_CASE("a wide and low plot puts the panels of a move abreast, a high one in a row") {
  Studied shown(Study::move);
  StudyCanvas canvas;
  canvas.show_figure(Study::move, shown.canvas().figure());
  canvas.resize(900, 220);
  canvas.show();
  CHECK(QTest::qWaitFor([&] { return canvas.plot().plotLayout()->columnCount() == 2; }, 2000));
  canvas.resize(600, 700);
  CHECK(QTest::qWaitFor([&] { return canvas.plot().plotLayout()->columnCount() == 1; }, 2000));
  CHECK(canvas.plot().axisRectCount() == 4);
}

TEST_CASE("words of an error budget are not cut while a column beside them is empty") {
  for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
    const Machine machine = machine_in("/sample-machines/", name);
    PaintedStudy painted(Study::errors, figure_of(Study::errors, machine));
    for (const auto& [text, place] : words_of(painted.plot())) {
      INFO(name << " " << text.toStdString());
      CHECK_FALSE(text.endsWith(QChar(0x2026)));
    }
    check_words_apart(painted.plot());
  }
}

TEST_CASE("the pointer reads off the column of an error budget that it is over") {
  Studied shown(Study::errors, machine_in("/sample-machines/", "plank-router"));
  shown.plot().replot(QCustomPlot::rpImmediateRefresh);
  const StudyFigure& figure = shown.canvas().figure();
  for (const StudyStack& stack : figure.stacks) {
    for (const auto& [text, place] : words_of(shown.plot())) {
      if (text == stack.name) {
        QTest::mouseMove(&shown.plot(), QPoint(int(place.center().x()), shown.plot().height() / 2));
        QCoreApplication::processEvents();
        CHECK(shown.canvas().reading().startsWith(stack.name));
      }
    }
  }
}

TEST_CASE("how far the motor is strong enough is said once where its needs end together") {
  const Machine machine = machine_in("/sample-machines/", "plank-router");
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    QStringList said;
    const StudyFigure figure = figure_of(Study::motor, machine, axis);
    for (const StudyMark& mark : figure.panels.front().marks) {
      CHECK_FALSE(said.contains(mark.label));
      said << mark.label;
    }
  }
  const auto marks = figure_of(Study::motor, machine).panels.front().marks;
  CHECK(std::ranges::count_if(marks, [](const StudyMark& mark) {
          return mark.label.contains(QStringLiteral("enough up to"));
        }) == 1);
}

TEST_CASE("numbers of a column in a study's table have the same decimals") {
  for (const auto& [name, machine] : many_machines()) {
    for (const Study study : all_studies) {
      const StudyTable table = as_table(figure_of(study, machine));
      for (qsizetype column = 0; column + 1 < table.head.size(); ++column) {
        std::set<qsizetype> decimals;
        for (const QStringList& row : table.rows) {
          bool number = false;
          static_cast<void>(row[column].toDouble(&number));
          if (number && !row[column].contains(QLatin1Char('e'))) {
            const qsizetype point = row[column].indexOf(QLatin1Char('.'));
            decimals.insert(point < 0 ? 0 : row[column].size() - point - 1);
          }
        }
        INFO(name << " " << study_name(study).toStdString() << " column " << column);
        CHECK(decimals.size() <= 1);
      }
    }
  }
}
