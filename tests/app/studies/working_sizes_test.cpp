// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"
#include "support/machine_files.h"
#include "support/window.h"

// The machine page does the same in machine_view_test.cpp.

using namespace feedwright;
using feedwright::testing::Shown;

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
