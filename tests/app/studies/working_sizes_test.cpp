// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QScrollArea>

// The machine page does the same in machine_view_test.cpp.

using namespace feedwright;
using feedwright::testing::Shown;

namespace {

class CountedResizes : public QObject {
public:
  int count = 0;
  bool eventFilter(QObject*, QEvent* event) override {
    count += event->type() == QEvent::Resize ? 1 : 0;
    return false;
  }
};

} // namespace

TEST_CASE("the working comes to rest in windows of every size") {
  Shown shown(feedwright::testing::machine_in("/tests/machines/", "belt-reduction"));
  shown.window->show_study(StudiesView::study_count() - 1);
  CountedResizes counted;
  shown.find<QScrollArea>("working_scroll").widget()->installEventFilter(&counted);
  for (int height = 120; height < 1000; height += 37) {
    for (const int width : {620, 775, 1210, 2300}) {
      INFO(width << " x " << height);
      shown.window->resize(width, height);
      for (int turn = 0; turn < 4; ++turn) {
        QCoreApplication::processEvents();
      }
      counted.count = 0;
      QCoreApplication::processEvents();
      CHECK(counted.count == 0);
    }
  }
}
