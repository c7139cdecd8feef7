// SPDX-License-Identifier: GPL-3.0-or-later

// Names of curves beside the frame, in panes as they are in windows of usual sizes.

#include "studies/plots.h"
#include "studies/studies_view.h"
#include "studies/study_canvas.h"
#include "support/letters.h"
#include "support/painted_study.h"
#include "support/plots.h"
#include "support/studies.h"
#include "support/window.h"

#include <QTableWidget>

#include <optional>

using namespace feedwright;
using feedwright::testing::check_words_apart;
using feedwright::testing::InLanguage;
using feedwright::testing::machine_in;
using feedwright::testing::Shown;
using feedwright::testing::WithLetters;
using feedwright::testing::words_of;

namespace {

std::optional<QPen> pen_of(const QCustomPlot& plot, const QString& curve) {
  for (int i = 0; i < plot.graphCount(); ++i) {
    if (plot.graph(i)->name() == curve) {
      return plot.graph(i)->pen();
    }
  }
  return std::nullopt;
}

/// The piece of line before a name, at the height of its first line.
const QCPItemLine* sample_before(const QCustomPlot& plot, const QRectF& name) {
  for (int i = 0; i < plot.itemCount(); ++i) {
    const auto* line = qobject_cast<const QCPItemLine*>(plot.item(i));
    if (line != nullptr && line->visible()) {
      const QPointF from = line->start->pixelPosition();
      const QPointF to = line->end->pixelPosition();
      const double gap = name.left() - to.x();
      if (from.y() == to.y() && to.x() - from.x() > 20.0 && gap > 0.0 && gap < 8.0 &&
          to.y() > name.top() && to.y() < name.bottom()) {
        return line;
      }
    }
  }
  return nullptr;
}

/// Each curve that leaves the plot at its right has its name there, behind a piece of its line; one
/// that is not drawn for want of room is of supports the axis has not.
int check_names(const QCustomPlot& plot, const StudyFigure& figure, bool all) {
  const QRectF frame(panel_rects(plot).front()->rect());
  int named = 0;
  for (const StudyCurve& curve : figure.panels.front().curves) {
    if (!curve.at_edge || curve.y.back() > figure.panels.front().y_end) {
      continue;
    }
    INFO(curve.label.toStdString());
    const auto drawn = pen_of(plot, curve.label);
    if (!drawn) {
      CHECK((curve.spare && !all));
      continue;
    }
    bool found = false;
    for (const auto& [text, place] : words_of(plot)) {
      if (QString(text).replace(QLatin1Char('\n'), QLatin1Char(' ')) == short_name(curve) &&
          place.left() > frame.right()) {
        const QCPItemLine* sample = sample_before(plot, place);
        REQUIRE(sample != nullptr);
        CHECK(sample->pen().style() == drawn->style());
        CHECK(sample->pen().dashPattern() == drawn->dashPattern());
        CHECK(sample->pen().widthF() == drawn->widthF());
        found = true;
        ++named;
      }
    }
    CHECK(found);
  }
  return named;
}

} // namespace

TEST_CASE(
    "curves over the length are named apart and beside a piece of their line, in any window") {
  int plots = 0;
  int names = 0;
  for (const int points : {9, 18}) {
    const WithLetters letters(points);
    for (const Language& language : languages()) {
      const InLanguage spoken(language.code);
      for (const char* name : {"looped-screws", "slaved-gantry", "preloaded-pairs", "upright"}) {
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
          INFO(points << " " << language.code << " " << name << " " << size.width());
          Shown shown(machine_in("/tests/machines/", name), size);
          shown.window->show_study(static_cast<int>(Study::stretch));
          for (int turn = 0; turn < 4; ++turn) {
            QCoreApplication::processEvents();
          }
          StudyCanvas& canvas = shown.window->studies().canvas();
          if (!canvas.plot().isVisible()) {
            CHECK(shown.find<QTableWidget>("study_table").isVisible());
            continue;
          }
          ++plots;
          canvas.plot().replot(QCustomPlot::rpImmediateRefresh);
          check_words_apart(canvas.plot());
          names += check_names(canvas.plot(), canvas.figure(), points < 18);
        }
      }
    }
  }
  CHECK(plots >= 30); // of 32
  CHECK(names >= 3 * plots);
}

TEST_CASE("a plot too small for the names of its curves gives way to the table") {
  feedwright::testing::PaintedStudy small(
      Study::stretch,
      feedwright::testing::figure_of(Study::stretch, machine_in("/tests/machines/", "upright")),
      QSize(190, 150));
  CHECK(small.table().isVisible());
  CHECK_FALSE(small.plot().isVisible());
  small.canvas.resize(700, 300);
  CHECK(QTest::qWaitFor([&] { return small.plot().isVisible(); }, 2000));
}
