// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/write_results.h"
#include "sizing/size_axis.h"
#include "support/random_hand.h"

#include <QDir>
#include <QElapsedTimer>

#include <malloc.h>
#include <sys/resource.h>
#include <unistd.h>

#include <fstream>
#include <iostream>

using namespace feedwright;
using feedwright::testing::OwnFolders;
using feedwright::testing::RandomHand;
using feedwright::testing::Running;

namespace {

QStringList every_machine() {
  QStringList paths;
  for (const char* folder : {"/sample-machines", "/tests/machines"}) {
    const QDir dir(QStringLiteral(FEEDWRIGHT_SOURCE_DIR) + QString::fromUtf8(folder));
    for (const QFileInfo& file : dir.entryInfoList({QStringLiteral("*.feedwright")})) {
      paths << file.filePath();
    }
  }
  return paths;
}

std::string bytes_of(const QString& path) {
  const auto bytes = read_file(path.toStdString(), std::size_t{1} << 24U);
  REQUIRE(bytes);
  return *bytes;
}

int set_by(const char* variable, int usual) {
  bool is_set = false;
  const int value = qEnvironmentVariableIntValue(variable, &is_set);
  return is_set ? value : usual;
}

/// What the library complains of while this lives.
class Complaints {
public:
  Complaints() {
    list().clear();
    before_ =
        qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
          const bool of_platform = text.contains(QLatin1String("This plugin does not support"));
          if (type != QtDebugMsg && type != QtInfoMsg && !of_platform) {
            list() << text;
          }
        });
  }
  ~Complaints() { qInstallMessageHandler(before_); }
  Complaints(const Complaints&) = delete;
  Complaints& operator=(const Complaints&) = delete;
  static QStringList& list() {
    static QStringList all;
    return all;
  }

private:
  QtMessageHandler before_ = nullptr;
};

void check_results(const MachineDocument& document) {
  const Machine& machine = document.machine();
  REQUIRE(document.faults().size() == faults_of(machine).size());
  if (!document.faults().empty()) {
    REQUIRE(document.results().empty());
    return;
  }
  std::vector<AxisResults> fresh;
  for (const Axis& axis : machine.axes) {
    fresh.push_back(size_axis(machine, axis));
  }
  REQUIRE(write_results(machine, document.results(), {}) == write_results(machine, fresh, {}));
}

void check_marks(MainWindow& window) {
  const MachineDocument& document = window.document();
  const bool modified = document.is_modified();
  REQUIRE(window.isWindowModified() == modified);
  if (!modified && !document.file_path().isEmpty()) {
    REQUIRE(bytes_of(document.file_path()) == write_machine(document.machine()));
  }
  REQUIRE(document.selection().axis < document.machine().axes.size());
}

/// A run of events on a machine; what must hold after each, and when all is undone and redone.
void check_run(const QString& machine, unsigned seed, int events) {
  const OwnFolders own;
  const QString path = own.files().path("m.feedwright");
  // As this program writes it: a file by hand may be spelt in another way.
  const Machine before = *read_machine(bytes_of(machine));
  const std::string first = write_machine(before);
  own.files().put("m.feedwright", first);
  const Complaints complaints;
  std::string deeds;
  INFO("FEEDWRIGHT_EVENT_SEED=" << seed << " " << machine.toStdString());
  {
    Running run(path);
    RandomHand hand(run, seed);
    hand.set_path(own.files().path("other.feedwright"));
    for (int event = 0; event < events; ++event) {
      deeds += hand.act() + ", ";
      INFO(event << ": " << deeds);
      REQUIRE(run.count() == 1);
      check_results(run.document());
      check_marks(run.window());
      if (event % 10 == 0) {
        REQUIRE_FALSE(run.window().grab().isNull());
      }
      INFO(Complaints::list().join(QLatin1Char('\n')).toStdString());
      REQUIRE(Complaints::list().isEmpty());
    }
    INFO(deeds);
    QUndoStack& stack = *run.document().undo_stack();
    while (stack.canRedo()) {
      stack.redo();
    }
    const std::string last = write_machine(run.document().machine());
    while (stack.canUndo()) {
      stack.undo();
    }
    CHECK(write_machine(run.document().machine()) == first);
    while (stack.canRedo()) {
      stack.redo();
    }
    CHECK(write_machine(run.document().machine()) == last);
    // Whatever was typed can be read again, sound or not.
    const auto again = read_machine_as_typed(last);
    REQUIRE(again);
    CHECK(write_machine(*again) == last);
    run.answers.unsaved = UnsavedAnswer::discard;
    run.trigger("theme_1");
  }
  use_language(QStringLiteral("en"));
}

/// What the process holds, in KiB.
struct Held {
  long heap = 0;     ///< given out by the heap and not given back
  long resident = 0; ///< of that and all else, what is in memory, with the heap's unused pieces
  long most = 0;     ///< that was resident since `forget_most`

  static void forget_most() { std::ofstream("/proc/self/clear_refs") << '5'; }

  static Held now() {
    ::malloc_trim(0);
    std::ifstream statm("/proc/self/statm");
    long size = 0;
    long pages = 0;
    statm >> size >> pages;
    const auto heap = ::mallinfo2();
    rusage used{};
    ::getrusage(RUSAGE_SELF, &used);
    return {long((heap.uordblks + heap.hblkhd) / 1024), pages * (::sysconf(_SC_PAGESIZE) / 1024),
            used.ru_maxrss};
  }
};

} // namespace

// FEEDWRIGHT_EVENT_RUNS and FEEDWRIGHT_EVENT_SEED say how many runs a machine and from which seed.
TEST_CASE("whatever is done in whatever order, results are fresh, marks true and undo exact") {
  const int runs = set_by("FEEDWRIGHT_EVENT_RUNS", 2);
  const auto seed = static_cast<unsigned>(set_by("FEEDWRIGHT_EVENT_SEED", 20261126));
  constexpr int events = 60;
  for (const QString& machine : every_machine()) {
    for (int run = 0; run < runs; ++run) {
      check_run(machine, seed + static_cast<unsigned>(run), events);
    }
  }
}

// FEEDWRIGHT_SOAK_SECONDS says for how long, FEEDWRIGHT_SOAK_SEED which hand.
TEST_CASE("memory does not grow while somebody works for long") {
  const OwnFolders own;
  const qint64 milliseconds = 1000LL * set_by("FEEDWRIGHT_SOAK_SECONDS", 20);
  const std::string start = write_machine(*read_machine(
      bytes_of(QStringLiteral(FEEDWRIGHT_SOURCE_DIR "/sample-machines/plank-router.feedwright"))));
  const QString path = own.files().put("m.feedwright", start);
  Running run(path);
  RandomHand hand(run, unsigned(set_by("FEEDWRIGHT_SOAK_SEED", 1)));
  hand.set_path(path);
  QElapsedTimer clock;
  clock.start();
  long events = 0;
  std::pair<qint64, std::string> longest; // ms, what took them
  const auto work = [&](qint64 until) {
    while (clock.elapsed() < until) {
      const qint64 before = clock.elapsed();
      const std::string deed = hand.act();
      longest = std::max(longest, {clock.elapsed() - before, deed});
      if (++events % 100 == 0) {
        // The machine as at the start, and nothing to be undone: only leaks are left.
        run.window().files().put_untitled(*read_machine(start));
      }
    }
    run.window().files().put_untitled(*read_machine(start));
    run.window().resize(1280, 800);
    run.trigger("theme_1");
    // Windows made anew, without what was opened beside them: a page of help holds megabytes.
    for (QWidget* window : QApplication::topLevelWidgets()) {
      if (qobject_cast<MainWindow*>(window) == nullptr) {
        window->hide();
      }
    }
    for (const char* language : {"language_de", "language_en"}) {
      run.trigger(language);
    }
    return Held::now();
  };
  Held::forget_most();
  // All of them are told, for a leak goes on and what is kept to be used again does not.
  std::vector<Held> held;
  for (int tenth = 1; tenth <= 10; ++tenth) {
    held.push_back(work(milliseconds * tenth / 10));
    std::cout << events << " events; heap " << held.back().heap << " KiB, resident "
              << held.back().resident << ", never more than " << held.back().most << std::endl;
  }
  std::cout << "the longest took " << longest.first << " ms: " << longest.second << '\n';
  const Held& warm = held[3];
  const Held& end = held.back();
  CHECK(end.heap - warm.heap < 4'000);
  CHECK(end.resident - warm.resident < 24'000);
  // Nor for a moment, as a drawing did that had a hundred million lines.
  CHECK(end.most - warm.resident < 400'000);
}
