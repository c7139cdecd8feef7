// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The whole workbench, with settings and state of its own, as after a fresh installation.

#include "document/unsaved_folder.h"
#include "support/own_home.h"
#include "support/window.h"
#include "window/workbench.h"

#include <QDir>
#include <QPushButton>
#include <QSettings>

namespace feedwright::testing {

/// Settings and state in a folder of the test's own, for as long as this lives.
class OwnFolders {
public:
  OwnFolders() {
    QCoreApplication::setOrganizationName(QStringLiteral("feedwright-test"));
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, folder_.path("config"));
  }
  ~OwnFolders() {
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope,
                       QStringLiteral("/nonexistent"));
    QCoreApplication::setOrganizationName({});
  }
  OwnFolders(const OwnFolders&) = delete;
  OwnFolders& operator=(const OwnFolders&) = delete;

  QString state() const { return folder_.path("state"); }
  const Folder& files() const { return folder_; }
  /// The copies that stand in the folder, in whosever hands.
  static QStringList copies() {
    return QDir(unsaved_folder()).entryList({QStringLiteral("*.json")}, QDir::Files);
  }
  static QStringList discarded() {
    return QDir(discarded_folder()).entryList({QStringLiteral("*.json")}, QDir::Files);
  }

private:
  Folder folder_;
  Environment state_{"XDG_STATE_HOME", folder_.path("state").toUtf8()};
};

/// A run of the program in this process. `end` leaves the copies behind as a crash does.
struct Running {
  explicit Running(const QString& path = {}, Autosave::Pace pace = {std::chrono::milliseconds(20),
                                                                    std::chrono::milliseconds(60)})
      : bench(std::make_unique<Workbench>(pace)) {
    bench->set_prompts(answers);
    REQUIRE(bench->start(path, QStringLiteral("en")));
    settle();
  }
  ~Running() { end(); }
  Running(const Running&) = delete;
  Running& operator=(const Running&) = delete;

  void end() {
    bench.reset();
    settle();
  }
  static void settle() {
    for (int i = 0; i < 5; ++i) {
      QCoreApplication::processEvents();
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
  }

  MainWindow& window(std::size_t at = 0) {
    REQUIRE(at < bench->windows().size());
    return *bench->windows()[at];
  }
  MachineDocument& document(std::size_t at = 0) { return window(at).document(); }
  std::size_t count() const { return bench->windows().size(); }
  void trigger(const char* action, std::size_t at = 0) {
    auto* found = window(at).findChild<QAction*>(QString::fromUtf8(action));
    INFO(action);
    REQUIRE(found != nullptr);
    found->trigger();
    settle();
  }
  /// Presses the button of that name.
  void press(const char* button, std::size_t at = 0) {
    auto* found = window(at).findChild<QAbstractButton*>(QString::fromUtf8(button));
    INFO(button);
    REQUIRE(found != nullptr);
    QTest::mouseClick(found, Qt::LeftButton);
    settle();
  }
  bool has(const char* button, std::size_t at = 0) {
    return window(at).findChild<QAbstractButton*>(QString::fromUtf8(button)) != nullptr;
  }
  void set_name(const char* name, std::size_t at = 0) {
    Machine changed = document(at).machine();
    changed.name = name;
    document(at).edit(std::move(changed), QStringLiteral("name"));
  }

  SetAnswers answers;
  std::unique_ptr<Workbench> bench;
};

inline void wait_for(const std::function<bool()>& done) {
  CHECK(QTest::qWaitFor(done, 5000));
}

inline std::string machine_text(const char* name) {
  Machine machine = ordinary_router();
  machine.name = name;
  return write_machine(machine);
}

} // namespace feedwright::testing
