// SPDX-License-Identifier: GPL-3.0-or-later

// The sentence under a study, the names in its columns, and the button beside it.

#include "support/painted_study.h"
#include "support/plots.h"
#include "support/studies.h"
#include "support/window.h"

#include <QRegularExpression>

#include <algorithm>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::InLanguage;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::ordinary_router;
using feedwright::testing::PaintedStudy;
using feedwright::testing::words_of;

namespace {

/// As it is copied and spoken: without what only keeps a line from breaking.
QString plain(QString shown) {
  shown.remove(QChar(0x2060));
  return shown.replace(QChar(QChar::Nbsp), QLatin1Char(' '))
      .replace(QLatin1Char('\n'), QLatin1Char(' '));
}

} // namespace

TEST_CASE("the sentence under a study is whole in any size of letters, and breaks no quantity") {
  const QRegularExpression apart(
      QStringLiteral("[0-9] (m/min|mm|µm|N|N·m|m/s²|rpm|s)(?![\\w·/])|/(?!\\x{2060})"));
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const auto& [name, machine] : many_machines()) {
      for (const Study study : all_studies) {
        const StudyFigure figure = figure_of(study, machine);
        if (figure.is_empty()) {
          continue;
        }
        for (const int points : {0, 18}) {
          PaintedStudy painted(study, figure, points > 0 ? QSize(640, 400) : QSize(665, 280),
                               points);
          INFO(language.code << " " << name << " " << int(study) << " " << points << ": "
                             << painted.sentence().toStdString());
          CHECK(plain(painted.sentence()) == figure.summary);
          CHECK_FALSE(painted.sentence().contains(apart));
          CHECK(painted.canvas.reading() == figure.summary);
        }
      }
    }
  }
}

TEST_CASE("what is read off is cut between words only, never within a quantity") {
  PaintedStudy painted(Study::motor, figure_of(Study::motor, ordinary_router()), QSize(460, 240),
                       18);
  QTest::keyClick(&painted.plot(), Qt::Key_Right);
  const QString shown = plain(painted.sentence());
  const QString whole = painted.canvas.reading();
  REQUIRE(shown.endsWith(QChar(0x2026)));
  const QString kept = shown.chopped(1).trimmed();
  CHECK(whole.simplified().startsWith(kept.simplified()));
  CHECK(kept.simplified().size() > 0);
  CHECK(whole.simplified().mid(kept.simplified().size()).startsWith(QLatin1Char(' ')));
  CHECK_FALSE(kept.back().isDigit());
}

TEST_CASE("no number of a column stands without the name of what it is, else a table is shown") {
  int plots = 0;
  int tables = 0;
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const auto& [name, machine] : many_machines()) {
      for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
        for (const Study study : {Study::torque, Study::errors}) {
          const StudyFigure figure = figure_of(study, machine, axis);
          for (const auto& [size, points] :
               {std::pair(QSize(665, 280), 0), std::pair(QSize(1250, 420), 0),
                std::pair(QSize(450, 340), 18), std::pair(QSize(1000, 420), 18)}) {
            INFO(language.code << " " << name << " axis " << axis << " " << int(study) << " "
                               << size.width() << " " << points);
            PaintedStudy painted(study, figure, size, points);
            if (painted.table().isVisible()) {
              CHECK_FALSE(painted.plot().isVisible());
              CHECK(painted.table().rowCount() > 0);
              ++tables;
              continue;
            }
            ++plots;
            QStringList shown;
            for (const auto& [text, place] : words_of(painted.plot())) {
              shown << QString(text).replace(QLatin1Char('\n'), QLatin1Char(' '));
              INFO(text.toStdString());
              CHECK_FALSE(text.endsWith(QChar(0x2026)));
            }
            for (const StudyStack& stack : figure.stacks) {
              for (const StackPart& part : stack.parts) {
                const bool number = shown.contains(part_number(part, QString())) ||
                                    shown.contains(part_number(part, figure.panels[0].y_unit));
                INFO(part.label.toStdString());
                CHECK((!number || part.size <= 0.0 || shown.contains(part.label)));
              }
            }
          }
        }
      }
    }
  }
  CHECK(plots > tables / 2);
  CHECK(tables > 0);
}

TEST_CASE("in the window's usual size a budget of errors is a plot with whole names") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const char* name : {"looped-screws", "slaved-gantry"}) {
      INFO(language.code << " " << name);
      PaintedStudy painted(Study::errors,
                           figure_of(Study::errors, machine_in("/tests/machines/", name)),
                           QSize(665, 280));
      REQUIRE(painted.plot().isVisible());
      for (const auto& [text, place] : words_of(painted.plot())) {
        INFO(text.toStdString());
        CHECK_FALSE(text.contains(QChar(0x2026)));
      }
    }
  }
}

TEST_CASE("the button beside a study says what it brings: the table, or the plot again") {
  PaintedStudy painted(Study::thrust, figure_of(Study::thrust, ordinary_router()), QSize(665, 280));
  CHECK(painted.button().text() == QStringLiteral("Table"));
  CHECK(painted.button().accessibleName() == QStringLiteral("Table"));
  QTest::mouseClick(&painted.button(), Qt::LeftButton);
  CHECK(painted.button().text() == QStringLiteral("Plot"));
  CHECK(painted.button().accessibleName() == QStringLiteral("Plot"));
  CHECK(painted.button().toolTip() == QStringLiteral("Back to the plot"));
  QTest::mouseClick(&painted.button(), Qt::LeftButton);
  CHECK(painted.button().text() == QStringLiteral("Table"));
}
