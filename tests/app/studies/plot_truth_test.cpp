// SPDX-License-Identifier: GPL-3.0-or-later

// What a plot shows agrees with what the limits and its own sentence say.

#include "studies/plots.h"
#include "support/painted_study.h"
#include "support/plots.h"
#include "support/studies.h"
#include "support/window.h"

#include <algorithm>
#include <cmath>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::InLanguage;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::PaintedStudy;
using feedwright::testing::words_of;

namespace {

/// 25.9 m/min by whip at 1000 mm, of supports fixed and supported; it falls with the square of the
/// length, and at the travel of 1600 mm the lead of 10 mm comes to about a tenth over 10 m/min.
Machine too_far_apart() {
  Machine machine = machine_in("/tests/machines/", "looped-screws");
  const auto set = [&](PartSlot slot, const char* member, Kind kind, double si, const char* text) {
    REQUIRE(set_field(machine, 0, slot, member, AnyQuantity{kind, si}, {text, Origin::entered}));
  };
  set(PartSlot::axis, "travel", Kind::length, 1.6, "1600 mm");
  set(PartSlot::drive, "span", Kind::length, 1.88, "1880 mm");
  set(PartSlot::targets, "feed", Kind::velocity, 0.25, "15 m/min");
  return machine;
}

QPolygonF painted(const StudyCurve& curve, const QCPAxisRect& rect) {
  QPolygonF made;
  for (std::size_t i = 0; i < curve.x.size(); ++i) {
    made << QPointF(rect.axis(QCPAxis::atBottom)->coordToPixel(curve.x[i]),
                    rect.axis(QCPAxis::atLeft)->coordToPixel(curve.y[i]));
  }
  return made;
}

bool crosses(const QPolygonF& curve, const QRectF& word, const QRectF& frame) {
  for (qsizetype i = 1; i < curve.size(); ++i) {
    constexpr int steps = 8;
    for (int k = 0; k <= steps; ++k) {
      const QPointF at = curve[i - 1] + (curve[i] - curve[i - 1]) * (double(k) / steps);
      if (frame.contains(at) && word.contains(at)) {
        return true;
      }
    }
  }
  return false;
}

} // namespace

TEST_CASE("a motor's curve is drawn at least to where it is said to be strong enough") {
  int held = 0;
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const StudyFigure figure = figure_of(Study::motor, machine, axis);
      const StudyPanel& panel = figure.panels.front();
      const StudyCurve& curve = panel.curves.front();
      for (const StudyMark& mark : panel.marks) {
        if (!mark.wanted) {
          INFO(name << " axis " << axis << " " << mark.label.toStdString());
          CHECK(value_at(curve.x, curve.y, mark.x));
          ++held;
        }
      }
    }
  }
  CHECK(held >= 9);
}

TEST_CASE("the root mean square of a duty is no line across the curve of a stepper") {
  int drawn = 0;
  for (const auto& [name, machine] : many_machines()) {
    MachineDocument document(machine);
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      INFO(name << " axis " << axis);
      const bool servo = std::holds_alternative<Servo>(machine.axes[axis].motor);
      const bool known = document.results()[axis].rms_torque.has_value();
      const StudyFigure figure = figure_of(Study::motor, machine, axis);
      CHECK(std::ranges::count(figure.panels.front().lines, false, &StudyLine::upright) ==
            (servo && known ? 1 : 0));
      drawn += servo && known ? 1 : 0;
    }
  }
  CHECK(drawn > 0);
}

// Whip allows X of the plank router 4.545 m/min, and 6 are wanted.
TEST_CASE("over feed nothing reads clear or close past what another limit allows") {
  const Machine machine = machine_in("/sample-machines/", "plank-router");
  for (const Study study : {Study::thrust, Study::acceleration}) {
    const StudyFigure figure = figure_of(study, machine);
    const StudyPanel& panel = figure.panels.front();
    const auto whip = std::ranges::find(panel.lines, true, &StudyLine::upright);
    REQUIRE(whip != panel.lines.end());
    CHECK(whip->label == QStringLiteral("whip 4.55 m/min"));
    CHECK(whip->value == Approx(4.545).epsilon(1e-3));
    REQUIRE(panel.bands.size() == 2);
    CHECK(panel.bands[0].x.back() == Approx(whip->value / 1.2));
    CHECK(panel.bands[1].x.back() == Approx(whip->value));
    CHECK(std::ranges::is_sorted(panel.bands[1].x));
    CHECK(panel.bands[1].low.back() == 0.0);
    CHECK(panel.bands[1].high.back() ==
          Approx(*value_at(panel.curves[0].x, panel.curves[0].y, whip->value)));
  }
  const StudyFigure acceleration = figure_of(Study::acceleration, machine);
  CHECK(acceleration.panels.front().marks.front().verdict == Verdict::over);
  for (const Study study : {Study::acceleration, Study::motor, Study::move}) {
    CHECK_THAT(figure_of(study, machine).summary.toStdString(),
               Catch::EndsWith("But whip allows no more than 4.55 m/min."));
  }
  // Cutting is wanted at less.
  CHECK_THAT(figure_of(Study::thrust, machine).summary.toStdString(), !Catch::Contains("But"));
  // Along a scale of motor speed it stands where the screw turns that feed: one to one, 5 mm a
  // turn.
  const StudyFigure motor = figure_of(Study::motor, machine);
  const auto there = std::ranges::find(motor.panels.front().lines, true, &StudyLine::upright);
  REQUIRE(there != motor.panels.front().lines.end());
  CHECK(there->value == Approx(4545.0 / 5.0).epsilon(1e-3));
}

TEST_CASE("read off past what another limit allows, the limit is told") {
  const StudyFigure figure =
      figure_of(Study::acceleration, machine_in("/sample-machines/", "plank-router"));
  const auto at = [&](double feed) { return read_out(figure, feed).toStdString(); };
  CHECK_THAT(at(2.0), !Catch::Contains("whip"));
  CHECK_THAT(at(4.2), Catch::EndsWith("◑ close: whip 4.55 m/min"));
  CHECK_THAT(at(5.5), Catch::EndsWith("▲ over: whip 4.55 m/min"));
}

TEST_CASE("a load case that asks what is wanted shares its mark") {
  const StudyFigure figure =
      figure_of(Study::thrust, machine_in("/tests/machines/", "slaved-gantry"));
  QStringList labels;
  for (const StudyMark& mark : figure.panels.front().marks) {
    labels << mark.label;
  }
  CHECK(labels == QStringList{QStringLiteral("wanted 150 N at 1.5 m/min = case 1"),
                              QStringLiteral("case 2: 40 N at 2 m/min")});
}

// At rest the knee asks 1.16 N·m of a motor that has 1.7, of which six tenths count: 1.02; where it
// is hardest pressed 0.9 count. It does not stall.
TEST_CASE("a move lacks torque from where the motor first has too little to rely on") {
  const StudyFigure figure = figure_of(Study::move, machine_in("/tests/machines/", "trapezoidal"));
  const StudyMark& mark = figure.panels.back().marks.front();
  CHECK(mark.x == 0.0);
  CHECK(mark.label == QStringLiteral("asks 1.16 N·m, has 1.02 N·m"));
  CHECK(mark.verdict == Verdict::over);
  CHECK_THAT(figure.summary.toStdString(),
             Catch::Contains("From 0 s on the motor is asked more than can be relied on: asks "
                             "1.16 N·m, has 1.02 N·m."));
}

TEST_CASE("a feed that no length reaches is nowhere under the curve of the lowest limit") {
  const StudyFigure figure = figure_of(Study::stretch, too_far_apart());
  const StudyPanel& panel = figure.panels.front();
  CHECK_THAT(figure.summary.toStdString(),
             Catch::Contains("no length that still holds the travel of 1600 mm reaches 15 m/min: "
                             "whip stops at"));
  const auto travel = std::ranges::find_if(panel.lines, [](const StudyLine& line) {
    return line.label == QStringLiteral("travel 1600 mm");
  });
  REQUIRE(travel != panel.lines.end());
  CHECK(travel->upright);
  CHECK(travel->value == Approx(1600.0));
  CHECK(figure.x_start < 1600.0);
  CHECK(figure.x_end > 1880.0);
  bool said = false;
  for (const StudyLine& line : panel.lines) {
    said = said || line.label == QStringLiteral("▲ wanted 15 m/min, not reached with this travel");
  }
  CHECK(said);
}

TEST_CASE("no length is drawn for a screw at which it could not hold its travel") {
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      if (std::holds_alternative<Screw>(machine.axes[axis].drive)) {
        INFO(name << " axis " << axis);
        const double travel = si_value(*machine.axes[axis].basics.travel) * 1e3;
        const StudyFigure figure = figure_of(Study::stretch, machine, axis);
        for (const StudyCurve& curve : figure.panels.front().curves) {
          REQUIRE_FALSE(curve.x.empty());
          CHECK(curve.x.front() >= travel * (1.0 - 1e-9));
        }
      }
    }
  }
}

TEST_CASE("names of the end supports stand each at its own curve, in every language") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const char* name : {"looped-screws", "slaved-gantry", "upright", "preloaded-pairs"}) {
      const Machine machine = machine_in("/tests/machines/", name);
      const StudyFigure figure = figure_of(Study::stretch, machine);
      for (const QSize size : {QSize(665, 280), QSize(1100, 420)}) {
        PaintedStudy drawn(Study::stretch, figure, size);
        const QCPAxisRect& rect = *panel_rects(drawn.plot()).front();
        const QRectF frame(rect.rect());
        int named = 0;
        int in_view = 0;
        for (const StudyCurve& curve : figure.panels.front().curves) {
          in_view += !curve.present && curve.y.back() < figure.panels.front().y_end ? 1 : 0;
          const QString& shown = curve.caption.isEmpty() ? curve.label : curve.caption;
          for (const auto& [text, place] : words_of(drawn.plot())) {
            const QString words = QString(text).replace(QLatin1Char('\n'), QLatin1Char(' '));
            if (words == shown && !curve.present) {
              INFO(language.code << " " << name << " " << text.toStdString());
              // Beside the frame, in the order in which the curves leave it.
              CHECK(place.left() > frame.right());
              ++named;
            }
          }
        }
        INFO(language.code << " " << name << " " << size.width());
        CHECK(named == in_view);
        CHECK(named >= 2);
      }
    }
  }
}

TEST_CASE("each strip of a move has its top value beside nought") {
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const StudyFigure figure = figure_of(Study::move, machine, axis);
      if (figure.is_empty()) {
        continue;
      }
      for (const QSize size : {QSize(665, 230), QSize(665, 280), QSize(1000, 420)}) {
        PaintedStudy drawn(Study::move, figure, size);
        const auto rects = panel_rects(drawn.plot());
        for (qsizetype i = 0; i < rects.size(); ++i) {
          INFO(name << " axis " << axis << " panel " << i << " " << size.width());
          const QCPAxis& up = *rects[i]->axis(QCPAxis::atLeft);
          const auto& curve = figure.panels[std::size_t(i)].curves.front();
          const double top = std::ranges::max(curve.y);
          const auto ticks = up.tickVector();
          CHECK(ticks.size() >= 2);
          CHECK(std::ranges::any_of(ticks, [](double tick) { return std::abs(tick) < 1e-9; }));
          if (i + 1 < rects.size()) {
            CHECK(std::ranges::any_of(
                ticks, [&](double tick) { return std::abs(tick - top) <= 1e-9 * top; }));
          }
        }
      }
    }
  }
}

TEST_CASE("words of a zone stand clear of every curve, or not at all") {
  int shown = 0;
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const Study study : {Study::thrust, Study::acceleration}) {
        const StudyFigure figure = figure_of(study, machine, axis);
        if (figure.is_empty()) {
          continue;
        }
        for (const QSize size : {QSize(665, 280), QSize(450, 190), QSize(1100, 500)}) {
          PaintedStudy drawn(study, figure, size);
          const QCPAxisRect& rect = *panel_rects(drawn.plot()).front();
          const StudyPanel& panel = figure.panels.front();
          for (const auto& [text, place] : words_of(drawn.plot())) {
            const bool zone = text == panel.over_word ||
                              std::ranges::any_of(panel.bands, [&](const StudyBand& band) {
                                return band.label == text;
                              });
            if (zone) {
              INFO(name << " axis " << axis << " " << text.toStdString() << " " << size.width());
              CHECK_FALSE(crosses(painted(panel.curves.front(), rect), place, QRectF(rect.rect())));
              ++shown;
            }
          }
        }
      }
    }
  }
  CHECK(shown > 60);
}

TEST_CASE("what is marked on a motor's curve is not written across the curves") {
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const StudyFigure figure = figure_of(Study::motor, machine, axis);
      const StudyPanel& panel = figure.panels.front();
      for (const QSize size : {QSize(665, 280), QSize(1100, 420)}) {
        PaintedStudy drawn(Study::motor, figure, size);
        const QCPAxisRect& rect = *panel_rects(drawn.plot()).front();
        for (const auto& [text, place] : words_of(drawn.plot())) {
          if (std::ranges::any_of(panel.marks,
                                  [&](const StudyMark& mark) { return mark_text(mark) == text; })) {
            for (std::size_t i = 0; i < panel.curves.size(); ++i) {
              INFO(name << " axis " << axis << " " << text.toStdString() << " | "
                        << panel.curves[i].label.toStdString() << " " << size.width());
              CHECK_FALSE(crosses(painted(panel.curves[i], rect), place, QRectF(rect.rect())));
            }
          }
        }
      }
    }
  }
}

TEST_CASE("the name of a level line of a motor is written across no line, and leads to its own") {
  int named = 0;
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const StudyFigure figure = figure_of(Study::motor, machine, axis);
      const StudyPanel& panel = figure.panels.front();
      for (const QSize size : {QSize(665, 280), QSize(1100, 420)}) {
        PaintedStudy drawn(Study::motor, figure, size);
        const QCPAxisRect& rect = *panel_rects(drawn.plot()).front();
        const QRectF frame(rect.rect());
        for (const StudyLine& line : panel.lines) {
          for (const auto& [text, place] : words_of(drawn.plot())) {
            if (text != line.label) {
              continue;
            }
            INFO(name << " axis " << axis << " " << text.toStdString() << " " << size.width());
            ++named;
            for (const StudyCurve& curve : panel.curves) {
              INFO(curve.label.toStdString());
              CHECK_FALSE(crosses(painted(curve, rect), place, frame));
            }
            const double own = rect.axis(QCPAxis::atLeft)->coordToPixel(line.value);
            CHECK((own < place.top() || own > place.bottom()));
          }
        }
      }
    }
  }
  CHECK(named >= 2);
}
