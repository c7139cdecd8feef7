// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/steady_area.h"

#include "studies/studies_view.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QResizeEvent>
#include <QScrollBar>

using namespace feedwright;
using feedwright::testing::Shown;

namespace {

/// Lower in less width, as what changes its shape where it is narrow may be.
class Contrary : public QWidget {
public:
  int changes = 0;

protected:
  void resizeEvent(QResizeEvent* event) override {
    ++changes;
    setMinimumHeight(event->size().width() >= 400 ? 400 : 100);
  }
};

} // namespace

TEST_CASE("a bar that would come and go for ever stays, until the area has another size") {
  SteadyArea area;
  auto* inside = new Contrary;
  area.setWidget(inside);
  area.resize(400, 300);
  area.show();
  QCoreApplication::processEvents();
  CHECK(area.verticalScrollBar()->isVisible());
  CHECK(inside->width() < 400);
  CHECK(inside->changes < 60);
  // Wide enough for both shapes to want it, then so narrow that none does.
  area.resize(600, 300);
  QCoreApplication::processEvents();
  CHECK(area.verticalScrollBar()->isVisible());
  CHECK(area.verticalScrollBar()->maximum() > 0);
  area.resize(350, 300);
  QCoreApplication::processEvents();
  CHECK_FALSE(area.verticalScrollBar()->isVisible());
}

TEST_CASE("the working comes to rest in windows of every size") {
  Shown shown(feedwright::testing::machine_in("/tests/machines/", "belt-reduction"));
  shown.window->show_study(StudiesView::study_count() - 1);
  for (int height = 120; height < 1000; height += 37) {
    for (const int width : {620, 775, 1210, 2300}) {
      shown.window->resize(width, height);
      QCoreApplication::processEvents();
    }
  }
  CHECK(shown.find<>("working_view").isVisibleTo(shown.window.get()));
}
