// SPDX-License-Identifier: GPL-3.0-or-later
// From an edit to the whole window painted, offscreen: median and 99th percentile over many edits
// of a sample machine, every study shown in turn. Also the time from start to the first painting.
#include "document/machine_document.h"
#include "files/read_file.h"
#include "machine/machine_file.h"
#include "studies/studies_view.h"
#include "window/main_window.h"

#include <QApplication>
#include <QElapsedTimer>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

using namespace feedwright;

namespace {

/// As on a desktop: everything is marked to be painted, and the event loop lays out and paints it
/// once. A second turn paints what a queued replot of the plot left.
void paint_all(QWidget& window) {
  window.update();
  for (int turn = 0; turn < 2; ++turn) {
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
  }
}

double milliseconds_of_edit(MachineDocument& document, MainWindow& window, int round) {
  const double millimetres = 4.0 + 0.01 * round;
  const auto lead = AnyQuantity{Kind::lead, millimetres * 1e-3 / (2.0 * pi)};
  QElapsedTimer timer;
  timer.start();
  document.edit_field(0, PartSlot::drive, "lead", lead, {});
  paint_all(window);
  return double(timer.nsecsElapsed()) * 1e-6;
}

} // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  QElapsedTimer start;
  start.start();
  const QApplication application(argc, argv);
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
  paint_all(window);
  std::printf("start to painted window: %.0f ms\n", double(start.nsecsElapsed()) * 1e-6);

  const int studies = StudiesView::study_count();
  constexpr int edits = 200;
  std::vector<double> all;
  for (int study = 0; study < studies; ++study) {
    window.show_study(study);
    paint_all(window);
    std::vector<double> times;
    for (int i = 0; i < edits; ++i) {
      times.push_back(milliseconds_of_edit(document, window, study * edits + i));
    }
    all.insert(all.end(), times.begin(), times.end());
    std::sort(times.begin(), times.end());
    std::printf("study %d, edit to repaint: median %.2f ms, 99th percentile %.2f ms\n", study,
                times[edits / 2], times[edits * 99 / 100]);
  }
  std::sort(all.begin(), all.end());
  std::printf("all studies: median %.2f ms, 99th percentile %.2f ms\n", all[all.size() / 2],
              all[all.size() * 99 / 100]);
  return 0;
}
