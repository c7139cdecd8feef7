// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/studies.h"
#include "support/window.h"
#include "text/words.h"

#include <algorithm>
#include <map>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::InLanguage;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::ordinary_router;
using feedwright::testing::screw_of;

namespace {

const StudyCurve* present_curve(const StudyFigure& figure) {
  const auto& curves = figure.panels.front().curves;
  const auto found = std::ranges::find(curves, true, &StudyCurve::present);
  return found != curves.end() ? &*found : nullptr;
}

} // namespace

// 25 000 pulses a second, 200 full steps in eighths a turn, 2 mm a turn: 1.875 m/min. 1000 rpm at
// 2 mm a turn: 2 m/min.
TEST_CASE("a feed that pulses and screw speed forbid is reached at no length, and both are named") {
  const Machine machine = machine_in("/sample-machines/", "sign-engraver");
  const StudyFigure figure = figure_of(Study::stretch, machine);
  const StudyPanel& panel = figure.panels.front();
  CHECK(panel.marks.empty());
  CHECK_THAT(figure.summary.toStdString(),
             Catch::Contains("no length that still holds the travel of 420 mm reaches 2.4 m/min: "
                             "step rate stops at 1.88 m/min, screw "
                             "speed stops at 2 m/min."));
  CHECK(std::ranges::any_of(panel.lines, [](const StudyLine& line) {
    return line.target && line.label.startsWith(QStringLiteral("▲ wanted 2.4 m/min"));
  }));
}

TEST_CASE("the bold line over the length is nowhere above another limit of the axis") {
  int held = 0;
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      if (!std::holds_alternative<Screw>(machine.axes[axis].drive)) {
        continue;
      }
      INFO(name << " axis " << axis);
      const StudyFigure figure = figure_of(Study::stretch, machine, axis);
      const StudyCurve* lowest = present_curve(figure);
      REQUIRE(lowest != nullptr);
      MachineDocument document(machine);
      const AxisResults& results = document.results()[axis];
      const double span = si_value(*std::get<Screw>(machine.axes[axis].drive).span) * 1e3;
      const double feed = si_value(*results.governing_feed) * 60.0;
      CHECK(*value_at(lowest->x, lowest->y, span) == Approx(feed).epsilon(2e-3));
      for (const StudyCurve& other : figure.panels.front().curves) {
        if (other.label.startsWith(QStringLiteral("whip, "))) {
          continue; // of supports the axis has not
        }
        for (std::size_t i = 0; i < lowest->x.size(); ++i) {
          if (const auto y = value_at(other.x, other.y, lowest->x[i])) {
            CHECK(lowest->y[i] <= *y * (1.0 + 1e-9));
            ++held;
          }
        }
      }
    }
  }
  CHECK(held > 2000);
}

TEST_CASE("end supports keep their style of line, whichever the axis has") {
  std::map<QString, int> dash_of;
  Machine machine = ordinary_router();
  using enum EndSupport;
  for (const auto& [motor, far] :
       {std::pair(fixed, supported), std::pair(fixed, fixed), std::pair(supported, supported),
        std::pair(fixed, EndSupport::free)}) {
    screw_of(machine.axes[0]).motor_end = motor;
    screw_of(machine.axes[0]).far_end = far;
    int own = 0;
    const StudyFigure figure = figure_of(Study::stretch, machine);
    for (const StudyCurve& curve : figure.panels.front().curves) {
      if (curve.label.startsWith(QStringLiteral("whip"))) {
        const QString pair = curve.label.section(QStringLiteral(", "), 1);
        INFO(pair.toStdString());
        CHECK(dash_of.try_emplace(pair, curve.dash).first->second == curve.dash);
        own += curve.label.startsWith(QStringLiteral("whip as it is")) ? 1 : 0;
      }
    }
    CHECK(own == 1);
  }
  CHECK(dash_of.size() == 4);
}

TEST_CASE("the sentence on length names the limit it speaks of, in every language") {
  const Machine machine = machine_in("/tests/machines/", "upright");
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      MachineDocument document(machine);
      const auto governing = document.results()[axis].governing;
      REQUIRE(governing);
      CHECK(
          figure_of(Study::stretch, machine, axis).summary.contains(words::limit_name(*governing)));
    }
  }
}
