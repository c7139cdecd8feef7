// SPDX-License-Identifier: GPL-3.0-or-later

// The picture of a study whose table stands in.

#include "studies/study_picture.h"

#include "studies/plots.h"
#include "support/painted_study.h"
#include "support/studies.h"
#include "support/window.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::InLanguage;
using feedwright::testing::machine_in;
using feedwright::testing::many_machines;
using feedwright::testing::PaintedStudy;

namespace {

bool names_have_room(const StudyFigure& figure, const QFont& font, const QImage& picture) {
  QCustomPlot plot;
  PlotShape shape;
  return fill_to_size(plot, figure, Look::light_look(), font, picture.size() / picture_fineness,
                      shape);
}

} // namespace

TEST_CASE("the picture of a study whose table stands in is large enough for its names") {
  int stood_in = 0;
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const auto& [name, machine] : many_machines()) {
      for (const Study study : {Study::torque, Study::errors}) {
        INFO(language.code << " " << name << " " << int(study));
        const StudyFigure figure = figure_of(study, machine);
        PaintedStudy painted(study, figure, QSize(450, 340), 18);
        if (!painted.table().isVisible()) {
          continue;
        }
        ++stood_in;
        const QImage picture = painted.canvas.picture();
        CHECK(names_have_room(figure, painted.canvas.font(), picture));
        CHECK(picture.width() <= 4000);
        CHECK(picture.height() <= 2800);
      }
    }
  }
  CHECK(stood_in > 3);
}

TEST_CASE("a table that stands in is copied with the picture, one that somebody wants without") {
  const StudyFigure figure =
      figure_of(Study::errors, machine_in("/tests/machines/", "looped-screws"));
  PaintedStudy small(Study::errors, figure, QSize(450, 340), 18);
  REQUIRE(small.table().isVisible());
  small.canvas.copy();
  const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
  CHECK(copied->hasImage());
  CHECK(copied->text() == as_tab_separated(as_table(figure)));
  small.table().setRangeSelected({0, 0, 0, 1}, true);
  small.canvas.copy();
  copied = QGuiApplication::clipboard()->mimeData();
  CHECK_FALSE(copied->hasImage());
  CHECK(copied->text().count(QLatin1Char('\n')) == 1);

  PaintedStudy wanted(Study::errors, figure);
  QTest::mouseClick(&wanted.button(), Qt::LeftButton);
  wanted.canvas.copy();
  CHECK_FALSE(QGuiApplication::clipboard()->mimeData()->hasImage());
}
