// SPDX-License-Identifier: GPL-3.0-or-later
// From an edit to the whole window painted, offscreen: median and 99th percentile over many edits
// of a sample machine, every study shown in turn. Also the time from start to the first painting.
#include "document/machine_document.h"
#include "files/read_file.h"
#include "machine/machine_file.h"
#include "studies/studies_view.h"
#include "window/main_window.h"
#include "window/style.h"

#include <QApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <string>
#include <vector>

using namespace feedwright;

namespace {

/// What the event loop of a desktop does after an edit: lay out, and paint what the edit marked. A
/// second turn paints what a queued replot of the plot left.
void paint_marked() {
  for (int turn = 0; turn < 2; ++turn) {
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
  }
}

/// Of one edit: what the clock of the wall says, and how long the thread that paints was at work.
/// On a machine that has other work to do the first says little.
struct EditTime {
  double wall = 0.0;
  double work = 0.0;
};

double milliseconds_of_work() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return double(now.tv_sec) * 1e3 + double(now.tv_nsec) * 1e-6;
}

EditTime time_of_edit(MachineDocument& document, int round) {
  const double millimetres = 4.0 + 0.01 * round;
  const auto lead = AnyQuantity{Kind::lead, millimetres * 1e-3 / (2.0 * pi)};
  QElapsedTimer timer;
  timer.start();
  const double before = milliseconds_of_work();
  document.edit_field(0, PartSlot::drive, "lead", lead, {});
  paint_marked();
  return {double(timer.nsecsElapsed()) * 1e-6, milliseconds_of_work() - before};
}

void tell(const std::string& name, const std::vector<EditTime>& times) {
  std::vector<double> wall;
  std::vector<double> work;
  for (const EditTime& time : times) {
    wall.push_back(time.wall);
    work.push_back(time.work);
  }
  std::sort(wall.begin(), wall.end());
  std::sort(work.begin(), work.end());
  const std::size_t half = times.size() / 2;
  const std::size_t last = times.size() * 99 / 100;
  std::printf("%s, edit to repaint: median %.2f ms (at work %.2f ms), 99th percentile %.2f ms (at "
              "work %.2f ms)\n",
              name.c_str(), wall[half], work[half], wall[last], work[last]);
}

} // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  QElapsedTimer start;
  start.start();
  const QApplication application(argc, argv);
  apply_theme(Theme::light);
  const auto text =
      read_file(FEEDWRIGHT_SOURCE_DIR "/sample-machines/plank-router.feedwright", 1 << 20);
  const auto machine = text ? read_machine(*text) : read_machine("");
  if (!machine) {
    std::fprintf(stderr, "The sample machine could not be read.\n");
    return 2;
  }
  auto owned = std::make_unique<MachineDocument>(*machine);
  MachineDocument& document = *owned;
  MainWindow window(std::move(owned));
  window.resize(1920, 1080);
  window.show();
  paint_marked();
  std::printf("start to painted window: %.0f ms\n", double(start.nsecsElapsed()) * 1e-6);

  const int studies = StudiesView::study_count();
  constexpr int edits = 200;
  std::vector<EditTime> all;
  for (int study = 0; study < studies; ++study) {
    window.show_study(study);
    paint_marked();
    std::vector<EditTime> times;
    for (int i = 0; i < edits; ++i) {
      times.push_back(time_of_edit(document, study * edits + i));
    }
    all.insert(all.end(), times.begin(), times.end());
    tell("study " + std::to_string(study), times);
  }
  tell("all studies", all);
  return 0;
}
