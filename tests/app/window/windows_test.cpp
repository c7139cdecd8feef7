// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/recent_files.h"
#include "support/whole_workbench.h"

#include <QDropEvent>
#include <QMenu>
#include <QMimeData>
#include <QProcess>
#include <QUrl>

#include <csignal>
#include <iostream>

using namespace feedwright;
using feedwright::testing::machine_text;
using feedwright::testing::OwnFolders;
using feedwright::testing::Running;
using feedwright::testing::wait_for;

namespace {

void drop(MainWindow& window, const QMimeData& clip) {
  const QPointF at(window.width() / 2.0, window.height() / 2.0);
  QDragEnterEvent enter(at.toPoint(), Qt::CopyAction, &clip, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window, &enter);
  if (enter.isAccepted()) {
    QDropEvent event(at, Qt::CopyAction, &clip, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &event);
  }
  Running::settle();
}

QString banner(Running& run, std::size_t at = 0) {
  return run.window(at).banner().text();
}

} // namespace

TEST_CASE("a first start shows the start page, later ones the machine worked on last") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("mine"));
  {
    Running run;
    CHECK(run.window().is_on_start_page());
    CHECK(run.window().windowTitle() == QStringLiteral("Feedwright[*]"));
    const auto is_offered = [&](const char* name) {
      return run.window().findChild<QAction*>(QString::fromLatin1(name))->isEnabled();
    };
    CHECK_FALSE(is_offered("save"));
    CHECK_FALSE(is_offered("print"));
    run.answers.path = path;
    run.press("start_open");
    CHECK_FALSE(run.window().is_on_start_page());
    CHECK(is_offered("save"));
    CHECK(is_offered("print"));
    CHECK(run.count() == 1);
    CHECK(run.document().machine().name == "mine");
  }
  Running run;
  CHECK_FALSE(run.window().is_on_start_page());
  CHECK(run.document().file_path() == path);
}

TEST_CASE("a last machine that is gone or broken gives the start page and no question") {
  const OwnFolders own;
  RecentFiles::add(own.files().put("m.feedwright", "broken"));
  Running run;
  CHECK(run.window().is_on_start_page());
  CHECK(run.answers.told.isEmpty());
}

TEST_CASE("a second run does not begin with the machine the first has open") {
  const OwnFolders own;
  Running first(own.files().put("m.feedwright", machine_text("m")));
  Running second;
  CHECK(second.window().is_on_start_page());
  CHECK(banner(second).isEmpty());
}

TEST_CASE("samples of the start page open as machines without a file, with a first thing to try") {
  const OwnFolders own;
  for (const char* sample : {"plank-router", "clock-mill", "sign-engraver"}) {
    INFO(sample);
    RecentFiles::clear();
    Running run;
    run.press((std::string("start_") + sample).c_str());
    CHECK_FALSE(run.window().is_on_start_page());
    CHECK(run.document().file_path().isEmpty());
    CHECK_FALSE(run.document().is_modified());
    CHECK(banner(run).contains(QStringLiteral("Try this")));
    const QString place = own.files().path("own.feedwright");
    run.answers.path = place;
    CHECK(run.window().files().save());
    CHECK(run.document().file_path() == place);
  }
  CHECK(RecentFiles::paths() == QStringList{own.files().path("own.feedwright")});
}

TEST_CASE("a file that cannot be read leaves the start page where it was") {
  const OwnFolders own;
  const QString bad = own.files().put("bad.feedwright", "{\"format\": \"nothing of ours\"}");
  Running run;
  REQUIRE(run.window().is_on_start_page());
  run.answers.path = bad;
  run.trigger("open");
  run.settle();
  CHECK_FALSE(run.answers.told.isEmpty());
  CHECK(run.window().is_on_start_page());
}

TEST_CASE("the start page can be called up and left again, and nothing is lost by it") {
  const OwnFolders own;
  Running run;
  run.press("start_new");
  run.set_name("kept");
  run.trigger("start_page");
  CHECK(run.window().is_on_start_page());
  run.press("start_back");
  CHECK_FALSE(run.window().is_on_start_page());
  CHECK(run.document().machine().name == "kept");
  CHECK(run.document().is_modified());
}

TEST_CASE("another machine comes into an untouched window, else into one of its own, unasked") {
  const OwnFolders own;
  Running run;
  run.press("start_plank-router");
  run.answers.path = own.files().put("a.feedwright", machine_text("a"));
  run.trigger("open");
  REQUIRE(run.count() == 1);
  CHECK(run.document().machine().name == "a");
  run.answers.path = own.files().put("b.feedwright", machine_text("b"));
  run.trigger("open");
  REQUIRE(run.count() == 2);
  run.set_name("changed");
  run.trigger("new");
  REQUIRE(run.count() == 3);
  run.trigger("clock-mill", 2);
  REQUIRE(run.count() == 3);
  run.trigger("new_window");
  REQUIRE(run.count() == 4);
  CHECK(run.window(3).is_on_start_page());
  CHECK(run.document(0).machine().name == "changed");
  CHECK(run.document(1).machine().name == "b");
  CHECK(run.answers.times_unsaved == 0);
}

TEST_CASE("a file that is open already is shown, not opened twice, by whatever path") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("m"));
  const QString link = own.files().path("link.feedwright");
  REQUIRE(QFile::link(path, link));
  Running run(path);
  run.set_name("changed");
  for (const QString& way : {path, link, own.files().path("./m.feedwright")}) {
    run.answers.path = way;
    run.trigger("open");
    CHECK(run.count() == 1);
  }
  CHECK(run.document().machine().name == "changed");
}

TEST_CASE("a file that cannot be read leaves no window behind") {
  const OwnFolders own;
  Running run(own.files().put("m.feedwright", machine_text("m")));
  run.answers.path = own.files().put("broken.feedwright", "{");
  run.trigger("open");
  CHECK(run.count() == 1);
  CHECK_FALSE(run.answers.told.isEmpty());
}

TEST_CASE("each window undoes its own edits, and closing one leaves the others") {
  const OwnFolders own;
  Running run(own.files().put("a.feedwright", machine_text("a")));
  run.answers.path = own.files().put("b.feedwright", machine_text("b"));
  run.trigger("open");
  REQUIRE(run.count() == 2);
  run.set_name("a changed", 0);
  run.set_name("b changed", 1);
  run.trigger("undo", 0);
  CHECK(run.document(0).machine().name == "a");
  CHECK(run.document(1).machine().name == "b changed");
  run.trigger("close_window", 0);
  REQUIRE(run.count() == 1);
  CHECK(run.document().machine().name == "b changed");
}

TEST_CASE("quitting asks every window with changes, and one that is kept keeps the program") {
  const OwnFolders own;
  Running run(own.files().put("a.feedwright", machine_text("a")));
  run.trigger("new");
  run.set_name("changed", 1);
  run.trigger("quit", 1);
  REQUIRE(run.count() == 1);
  CHECK(run.document().machine().name == "changed");
  run.answers.unsaved = UnsavedAnswer::discard;
  run.trigger("quit");
  CHECK(run.count() == 0);
}

TEST_CASE("language and colours change in every window, and the documents stay as they are") {
  const OwnFolders own;
  Running run(own.files().put("a.feedwright", machine_text("a")));
  run.trigger("new");
  run.trigger("new_window", 1);
  REQUIRE(run.count() == 3);
  run.set_name("a changed", 0);
  wait_for([] { return OwnFolders::copies().size() == 1; });
  run.trigger("language_de");
  REQUIRE(run.count() == 3);
  for (std::size_t at = 0; at < 3; ++at) {
    CHECK(run.window(at).findChild<QAction*>(QStringLiteral("save"))->text() ==
          QStringLiteral("&Speichern"));
  }
  CHECK(run.window(2).is_on_start_page());
  CHECK(run.document(0).is_modified());
  CHECK(run.document(0).undo_stack()->canUndo());
  CHECK(OwnFolders::copies().size() == 1);
  CHECK_FALSE(run.window(0).files().held_by());
  run.trigger("theme_2", 1);
  for (std::size_t at = 0; at < 3; ++at) {
    CHECK(run.window(at).findChild<QAction*>(QStringLiteral("theme_2"))->isChecked());
  }
  run.trigger("theme_1");
  run.trigger("language_en");
  CHECK(run.window(0).files().save());
}

TEST_CASE("recent files are stored at once, ten at most, and are not looked for until chosen") {
  const OwnFolders own;
  Running run;
  for (int i = 0; i < 12; ++i) {
    RecentFiles::add(own.files().path(QByteArray::number(i).append(".feedwright")));
  }
  CHECK(QSettings().value(QStringLiteral("recent_machines")).toStringList().size() == 10);
  auto* menu = run.window().findChild<QMenu*>(QStringLiteral("recent_menu"));
  REQUIRE(menu != nullptr);
  emit menu->aboutToShow();
  CHECK(run.window().findChild<QAction*>(QStringLiteral("recent_9")) != nullptr);
  CHECK(run.window().findChild<QAction*>(QStringLiteral("recent_10")) == nullptr);
  // None of them is there.
  run.trigger("recent_0");
  CHECK(banner(run).contains(QStringLiteral("11.feedwright")));
  CHECK(RecentFiles::paths().size() == 10);
  run.press("recent_remove");
  CHECK(RecentFiles::paths().size() == 9);
  CHECK(RecentFiles::paths().constFirst() == own.files().path("10.feedwright"));
  emit menu->aboutToShow();
  run.trigger("recent_clear");
  CHECK(RecentFiles::paths().isEmpty());
}

TEST_CASE("recent files switched off are forgotten, and stay so") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("m"));
  {
    Running run(path);
    CHECK(RecentFiles::paths() == QStringList{path});
    run.trigger("recent_remember");
    CHECK(RecentFiles::paths().isEmpty());
    CHECK(run.window().files().save());
    CHECK(RecentFiles::paths().isEmpty());
  }
  Running run;
  CHECK(run.window().is_on_start_page());
  for (const QString& key : QSettings().allKeys()) {
    INFO(key.toStdString());
    CHECK_FALSE(QSettings().value(key).toString().contains(QStringLiteral("m.feedwright")));
  }
}

TEST_CASE("files dropped on a window open each in a window, and none takes another's place") {
  const OwnFolders own;
  Running run;
  run.press("start_new");
  run.set_name("being drawn");
  QMimeData clip;
  clip.setUrls({QUrl::fromLocalFile(own.files().put("a.feedwright", machine_text("a"))),
                QUrl::fromLocalFile(own.files().put("b.feedwright", machine_text("b"))),
                QUrl(QStringLiteral("https://example.org/c.feedwright"))});
  drop(run.window(), clip);
  REQUIRE(run.count() == 3);
  CHECK(run.document(0).machine().name == "being drawn");
  CHECK(run.document(1).machine().name == "a");
  CHECK(run.document(2).machine().name == "b");
}

// Run by the test below in a process of its own.
TEST_CASE("holds a file until it is killed", "[.child]") {
  testing::SetAnswers answers;
  Workbench bench;
  bench.set_prompts(answers);
  REQUIRE(bench.start(qEnvironmentVariable("FEEDWRIGHT_TEST_FILE"), QStringLiteral("en")));
  std::cout << "held" << std::endl;
  for (;;) {
    QTest::qWait(100);
  }
}

TEST_CASE("a file another run has open is said so, with who, and saved under another name only") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  QProcess child;
  auto environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("FEEDWRIGHT_TEST_FILE"), path);
  environment.insert(QStringLiteral("XDG_CONFIG_HOME"), own.files().path("child-config"));
  environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
  child.setProcessEnvironment(environment);
  child.start(QCoreApplication::applicationFilePath(),
              {QStringLiteral("holds a file until it is killed")});
  REQUIRE(child.waitForReadyRead(30'000));
  Running run(path);
  CHECK(banner(run).contains(QString::number(child.processId())));
  CHECK(run.window().windowTitle().contains(QStringLiteral("open elsewhere")));
  run.set_name("mine");
  run.answers.path = path;
  CHECK_FALSE(run.window().files().save());
  CHECK(run.answers.told.join(QLatin1Char(' ')).contains(QStringLiteral("open elsewhere")));
  CHECK(own.files().bytes("m.feedwright") == machine_text("first"));
  const bool elsewhere = GENERATE(true, false);
  if (elsewhere) {
    run.answers.path = own.files().path("other.feedwright");
    CHECK(run.window().files().save());
    CHECK(run.document().file_path() == run.answers.path);
    CHECK_FALSE(run.window().windowTitle().contains(QStringLiteral("open elsewhere")));
    CHECK(banner(run).isEmpty());
  }
  ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
  REQUIRE(child.waitForFinished());
  if (!elsewhere) {
    // Its holder is gone: nothing is in the way any more.
    CHECK(run.window().files().save());
    CHECK(read_machine(own.files().bytes("m.feedwright"))->name == "mine");
    CHECK_FALSE(run.window().windowTitle().contains(QStringLiteral("open elsewhere")));
  }
}

TEST_CASE("two windows of one run cannot save to the same file") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  Running run(path);
  run.trigger("new");
  run.set_name("second", 1);
  run.answers.path = path;
  CHECK_FALSE(run.window(1).files().save());
  CHECK(run.answers.told.join(QLatin1Char(' ')).contains(QStringLiteral("another window")));
  CHECK(own.files().bytes("m.feedwright") == machine_text("first"));
  run.trigger("close_window", 0);
  CHECK(run.window(0).files().save());
  CHECK(read_machine(own.files().bytes("m.feedwright"))->name == "second");
}

TEST_CASE("no lock file is left beside a machine that was closed") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  const auto hidden = [&] {
    return QFileInfo(path).dir().entryList({QStringLiteral(".m*")}, QDir::Files | QDir::Hidden);
  };
  {
    Running run(path);
    CHECK(hidden() == QStringList{QStringLiteral(".m.feedwright.lock")});
    run.trigger("language_de");
    CHECK(hidden().size() == 1);
    run.trigger("language_en");
    run.trigger("close_window");
    CHECK(hidden().isEmpty());
  }
}

TEST_CASE("a machine saved half done opens again half done") {
  const OwnFolders own;
  const QString path = own.files().path("half.feedwright");
  {
    Running run;
    run.press("start_new");
    REQUIRE(run.document().edit_field(0, PartSlot::drive, "span", AnyQuantity{Kind::length, 0.001},
                                      {}));
    REQUIRE_FALSE(run.document().faults().empty());
    run.answers.path = path;
    REQUIRE(run.window().files().save());
  }
  Running run(path);
  CHECK(run.answers.told.isEmpty());
  CHECK(run.document().file_path() == path);
  CHECK_FALSE(run.document().faults().empty());
}
