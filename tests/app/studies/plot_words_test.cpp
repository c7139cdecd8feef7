// SPDX-License-Identifier: GPL-3.0-or-later

// Words beside the curves of a plot, the panels they stand in, and what is read off under a
// pointer.

#include "studies/plots.h"
#include "support/painted_study.h"
#include "support/plots.h"
#include "support/studies.h"
#include "support/window.h"

#include <algorithm>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::InLanguage;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::PaintedStudy;
using feedwright::testing::words_of;

namespace {

std::vector<double> numbers_up(QCPAxisRect& rect) {
  QCPAxis& up = *rect.axis(QCPAxis::atLeft);
  QVector<double> ticks;
  up.ticker()->generate(up.range(), QLocale::c(), QLatin1Char('g'), 4, ticks, nullptr, nullptr);
  std::vector<double> shown;
  for (const double tick : ticks) {
    if (up.range().contains(tick)) {
      shown.push_back(up.coordToPixel(tick));
    }
  }
  return shown;
}

/// How many level lines there are, over which no word of the plot stands.
int check_not_struck_out(const StudyFigure& figure, const QCustomPlot& plot) {
  int level = 0;
  for (std::size_t i = 0; i < figure.panels.size(); ++i) {
    const QCPAxisRect& rect = *panel_rects(plot)[i];
    for (const StudyLine& line : figure.panels[i].lines) {
      const double at = rect.axis(QCPAxis::atLeft)->coordToPixel(line.value);
      if (line.upright || at < rect.top() || at > rect.bottom()) {
        continue;
      }
      ++level;
      for (const auto& [text, place] : words_of(plot)) {
        INFO(text.toStdString());
        CHECK((place.left() > rect.right() || at < place.top() || at > place.bottom()));
      }
    }
  }
  return level;
}

} // namespace

TEST_CASE("the torque of a move has the most room, no word on its curves, and numbers apart") {
  for (const auto& [name, axis] : {std::pair("clock-mill", 1), std::pair("plank-router", 0)}) {
    const StudyFigure figure =
        figure_of(Study::move, machine_in("/sample-machines/", name), std::size_t(axis));
    for (const QSize size : {QSize(665, 230), QSize(1000, 420), QSize(420, 520)}) {
      INFO(name << " " << size.width() << " x " << size.height());
      PaintedStudy drawn(Study::move, figure, size);
      const auto rects = panel_rects(drawn.plot());
      REQUIRE(rects.size() == 4);
      for (qsizetype i = 0; i < 3; ++i) {
        CHECK(rects.back()->height() > 1.8 * rects[i]->height());
      }
      CHECK(rects.back()->height() >= 100);
      for (const auto& [text, place] : words_of(drawn.plot())) {
        INFO(text.toStdString());
        const bool named =
            text.contains(QStringLiteral("wards")) || text == QStringLiteral("available");
        CHECK((!named || place.bottom() <= rects.back()->top()));
      }
      for (QCPAxisRect* rect : rects) {
        const std::vector<double> at = numbers_up(*rect);
        const double line = QFontMetricsF(rect->axis(QCPAxis::atLeft)->tickLabelFont()).height();
        for (std::size_t i = 1; i < at.size(); ++i) {
          CHECK(std::abs(at[i] - at[i - 1]) >= 0.9 * line);
        }
      }
    }
  }
}

TEST_CASE(
    "the numbers of a move's scales stand apart in a low plot, and none is what rounding left") {
  for (const char* name : {"upright", "slaved-gantry", "trapezoidal"}) {
    const StudyFigure figure = figure_of(Study::move, machine_in("/tests/machines/", name));
    for (int height = 110; height < 420; height += 10) {
      INFO(name << " " << height);
      PaintedStudy drawn(Study::move, figure, QSize(412, height));
      const auto rects = panel_rects(drawn.plot());
      for (qsizetype i = 0; i + 1 < rects.size(); ++i) {
        const std::vector<double> at = numbers_up(*rects[i]);
        const double line =
            QFontMetricsF(rects[i]->axis(QCPAxis::atLeft)->tickLabelFont()).height();
        REQUIRE(!at.empty());
        INFO("panel " << i << " high " << rects[i]->height() << " numbers " << at.size());
        for (std::size_t k = 1; k < at.size(); ++k) {
          CHECK(std::abs(at[k] - at[k - 1]) >= 0.7 * line);
        }
      }
    }
    for (std::size_t i = 0; i + 1 < figure.panels.size(); ++i) {
      for (const double number : figure.panels[i].numbers) {
        CHECK((number == 0.0 || std::abs(number) > 1e-6 * figure.panels[i].y_end));
      }
    }
  }
}

TEST_CASE("words of a plot are not boxes that wipe its curves out") {
  const Machine machine = machine_in("/sample-machines/", "plank-router");
  for (const Study study : {Study::thrust, Study::stretch, Study::motor, Study::acceleration}) {
    PaintedStudy drawn(study, figure_of(study, machine));
    int words = 0;
    for (int i = 0; i < drawn.plot().itemCount(); ++i) {
      if (const auto* text = qobject_cast<QCPItemText*>(drawn.plot().item(i))) {
        CHECK(text->brush().style() == Qt::NoBrush);
        ++words;
      }
    }
    CHECK(words > 0);
  }
}

TEST_CASE("limits that hardly change with the length are named beside the frame") {
  PaintedStudy drawn(Study::stretch,
                     figure_of(Study::stretch, machine_in("/sample-machines/", "sign-engraver")));
  const auto rect = panel_rects(drawn.plot()).front();
  int beside = 0;
  for (const auto& [text, place] : words_of(drawn.plot())) {
    if (text == QStringLiteral("step rate") || text == QStringLiteral("screw speed")) {
      CHECK(place.left() > rect->right());
      ++beside;
    }
  }
  CHECK(beside == 2);
}

TEST_CASE("two words in one line of a plot have a gap that no phrase has") {
  for (const auto& [name, machine] : many_machines()) {
    PaintedStudy drawn(Study::motor, figure_of(Study::motor, machine));
    const auto words = words_of(drawn.plot());
    for (std::size_t i = 0; i < words.size(); ++i) {
      for (std::size_t j = i + 1; j < words.size(); ++j) {
        const QRectF& a = words[i].second;
        const QRectF& b = words[j].second;
        if (a.top() < b.bottom() && b.top() < a.bottom()) {
          INFO(name << ": " << words[i].first.toStdString() << " | "
                    << words[j].first.toStdString());
          CHECK(std::max(a.left() - b.right(), b.left() - a.right()) > 0.8 * a.height());
        }
      }
    }
  }
}

TEST_CASE("no word of a stretch is struck out by the line of what is wanted") {
  int level = 0;
  for (const char* language : {"en", "de"}) {
    const InLanguage spoken(language);
    for (const auto& [name, machine] : many_machines()) {
      for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
        const StudyFigure figure = figure_of(Study::stretch, machine, axis);
        for (const int height : {150, 180, 200, 240, 280, 420}) {
          PaintedStudy drawn(Study::stretch, figure, {656, height});
          INFO(language << " " << name << " axis " << axis << " " << height);
          level += check_not_struck_out(figure, drawn.plot());
        }
      }
    }
  }
  CHECK(level > 30);
}
