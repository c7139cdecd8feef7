// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plots.h"
#include "support/painted_study.h"
#include "support/plots.h"
#include "support/studies.h"
#include "support/window.h"

#include <algorithm>
#include <set>

using namespace feedwright;
using feedwright::testing::check_words_apart;
using feedwright::testing::figure_of;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::PaintedStudy;
using feedwright::testing::words_of;

namespace {

std::set<QString> numbers_of(const StudyFigure& figure) {
  std::set<QString> numbers;
  for (const StudyStack& stack : figure.stacks) {
    for (const QString& unit : {figure.panels.front().y_unit, QString()}) {
      for (const StackPart& part : stack.parts) {
        numbers.insert(part_number(part, unit));
      }
      for (const StackTick& tick : stack.ticks) {
        numbers.insert(tick_number(tick, unit));
        numbers.insert(QStringLiteral("↑ ") + tick_number(tick, unit));
      }
    }
  }
  return numbers;
}

bool is_number(const QString& text) {
  return std::ranges::any_of(text, [](QChar c) { return c.isDigit(); }) &&
         std::ranges::none_of(text.left(1), [](QChar c) { return c.isLetter(); });
}

} // namespace

TEST_CASE("no number of a column is cut, and no name under a bar, in any size of letters") {
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const Study study : {Study::torque, Study::errors}) {
        const StudyFigure figure = figure_of(study, machine, axis);
        const std::set<QString> numbers = numbers_of(figure);
        for (const int points : {0, 18}) {
          INFO(name << " axis " << axis << " " << int(study) << " " << points);
          PaintedStudy painted(study, figure, points > 0 ? QSize(450, 340) : QSize(665, 280),
                               points);
          if (!painted.plot().isVisible()) {
            CHECK(points > 0); // no room for names: shown as a table
            continue;
          }
          std::size_t painted_numbers = 0;
          std::set<QString> under;
          for (const auto& [text, place] : words_of(painted.plot())) {
            INFO(text.toStdString());
            under.insert(QString(text).replace(QLatin1Char('\n'), QLatin1Char(' ')));
            if (is_number(text)) {
              CHECK(numbers.contains(text));
              ++painted_numbers;
            }
          }
          CHECK(painted_numbers >=
                std::size_t(std::ranges::count_if(
                    figure.stacks, [](const StudyStack& each) { return !each.ticks.empty(); })));
          for (const StudyStack& stack : figure.stacks) {
            CHECK(under.contains(stack.name));
          }
        }
      }
    }
  }
}

TEST_CASE("a target of the errors says what it measures, and the verdict stands at what is") {
  const StudyFigure belt = figure_of(Study::errors, machine_in("/tests/machines/", "belt-hauled"));
  int targets = 0;
  for (const StudyStack& stack : belt.stacks) {
    for (const StackTick& tick : stack.ticks) {
      if (tick.target) {
        ++targets;
        CHECK(tick.verdict == Verdict::open);
        CHECK(tick.label == QStringLiteral("allowed ") + stack.name);
        CHECK(std::ranges::any_of(stack.ticks, [](const StackTick& other) {
          return !other.target && other.verdict != Verdict::open;
        }));
      }
    }
  }
  CHECK(targets == 2);
  const StudyFigure screw =
      figure_of(Study::errors, machine_in("/sample-machines/", "plank-router"));
  const StudyStack& reversal = screw.stacks.front();
  const auto lost = std::ranges::find(reversal.ticks, true, &StackTick::target);
  REQUIRE(lost != reversal.ticks.end());
  REQUIRE(lost->part);
  CHECK(reversal.parts.at(*lost->part).label == QStringLiteral("lost motion"));
  CHECK(reversal.parts.at(*lost->part).verdict == Verdict::clear);
  CHECK_FALSE(reversal.notes.empty());
  for (const StackNote& note : reversal.notes) {
    CHECK(note.label.startsWith(QStringLiteral("○ ")));
    CHECK(note.label.endsWith(QStringLiteral(" is missing")));
  }
}

TEST_CASE("errors of nought have no word on the plot, and bars stand over their names") {
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      INFO(name << " axis " << axis);
      const StudyFigure figure = figure_of(Study::errors, machine, axis);
      PaintedStudy painted(Study::errors, figure, QSize(665, 280));
      const QCustomPlot& plot = painted.plot();
      check_words_apart(plot);
      std::vector<double> middles;
      for (const auto& [text, place] : words_of(plot)) {
        CHECK(text != QStringLiteral("0"));
        CHECK(text != QStringLiteral("0 µm"));
        middles.push_back(place.center().x());
      }
      for (int i = 0; i < plot.itemCount(); ++i) {
        if (const auto* bar = qobject_cast<QCPItemRect*>(plot.item(i))) {
          const double middle =
              (bar->topLeft->pixelPosition().x() + bar->bottomRight->pixelPosition().x()) / 2.0;
          CHECK(std::ranges::any_of(middles,
                                    [&](double each) { return std::abs(each - middle) < 3.0; }));
        }
      }
    }
  }
}
