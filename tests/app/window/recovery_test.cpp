// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/whole_workbench.h"

#include <QProcess>

#include <csignal>
#include <iostream>

using namespace feedwright;
using feedwright::testing::machine_text;
using feedwright::testing::OwnFolders;
using feedwright::testing::Running;
using feedwright::testing::wait_for;

namespace {

void edit_lead(MachineDocument& document, double millimetres) {
  REQUIRE(document.edit_field(0, PartSlot::drive, "lead",
                              AnyQuantity{Kind::lead, millimetres * 1e-3 / (2.0 * pi)}, {}));
}

QString banner(Running& run, std::size_t at = 0) {
  return run.window(at).banner().text();
}

/// A run that changes a machine and ends as in a crash.
void crash_with_changes(const QString& path) {
  Running run(path);
  edit_lead(run.document(), 8.0);
  run.set_name("half done");
  wait_for([] { return OwnFolders::copies().size() == 1; });
}

} // namespace

TEST_CASE("work that a crash cut short is offered, by what differs, and taken up in one step") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  crash_with_changes(path);
  CHECK(own.files().bytes("m.feedwright") == machine_text("first"));
  Running run(path);
  CHECK(run.document().machine().name == "first");
  INFO(banner(run).toStdString());
  CHECK(banner(run).contains(QStringLiteral("m.feedwright")));
  CHECK(banner(run).contains(QStringLiteral("2 thing")));
  CHECK(banner(run).contains(QStringLiteral("X: lead")));
  run.press("recovery_take_up");
  CHECK(run.document().machine().name == "half done");
  CHECK(run.document().is_modified());
  CHECK(run.document().file_path() == path);
  CHECK(OwnFolders::copies().size() == 1);
  run.trigger("undo");
  CHECK(write_machine(run.document().machine()) == machine_text("first"));
}

TEST_CASE("a machine that never had a file is offered again, half done as it was") {
  const OwnFolders own;
  {
    Running run;
    run.press("start_new");
    run.set_name("nameless no more");
    REQUIRE(run.document().edit_field(0, PartSlot::drive, "span", AnyQuantity{Kind::length, 0.001},
                                      {}));
    CHECK_FALSE(run.document().faults().empty());
    wait_for([] { return OwnFolders::copies().size() == 1; });
  }
  Running run;
  CHECK(banner(run).contains(QStringLiteral("nameless no more")));
  run.press("recovery_take_up");
  CHECK(run.count() == 1);
  CHECK(run.document().machine().name == "nameless no more");
  CHECK_FALSE(run.document().faults().empty());
  CHECK(run.document().is_modified());
  CHECK(run.document().file_path().isEmpty());
}

TEST_CASE("what is offered can be looked at in its own window, and is offered still") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  crash_with_changes(path);
  Running run(path);
  run.press("recovery_look");
  REQUIRE(run.count() == 2);
  CHECK(run.document(1).machine().name == "half done");
  CHECK(run.document(1).file_path().isEmpty());
  CHECK_FALSE(run.document(1).is_modified());
  CHECK(run.document(0).machine().name == "first");
  CHECK(run.has("recovery_take_up"));
  CHECK(OwnFolders::copies().size() == 1);
}

TEST_CASE("what is thrown away is kept for thirty days and then removed") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  crash_with_changes(path);
  {
    Running run(path);
    run.press("recovery_throw_away");
    CHECK_FALSE(run.has("recovery_take_up"));
    CHECK(OwnFolders::copies().isEmpty());
    REQUIRE(OwnFolders::discarded().size() == 1);
  }
  {
    Running run(path);
    CHECK_FALSE(run.has("recovery_take_up"));
    CHECK(OwnFolders::discarded().size() == 1);
  }
  const std::filesystem::path copy =
      QDir(discarded_folder()).filePath(OwnFolders::discarded().constFirst()).toStdString();
  const auto age = [&](int days) {
    std::filesystem::last_write_time(copy, std::filesystem::file_time_type::clock::now() -
                                               std::chrono::hours(24 * days));
    tidy_unsaved_folder();
  };
  age(29);
  CHECK(OwnFolders::discarded().size() == 1);
  age(31);
  CHECK(OwnFolders::discarded().isEmpty());
}

TEST_CASE("content decides whether a copy is offered, not which is newer") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  crash_with_changes(path);
  SECTION("a newer file of other content does not hide it") {
    own.files().put("m.feedwright", machine_text("third"));
    Running run(path);
    CHECK(run.has("recovery_take_up"));
    CHECK(banner(run).contains(QStringLiteral("changed since")));
  }
  SECTION("a damaged file does not hide it, however new") {
    own.files().put("m.feedwright", "");
    Running run;
    CHECK(run.has("recovery_take_up"));
    run.press("recovery_take_up");
    CHECK(run.document().machine().name == "half done");
    CHECK(run.document().file_path() == path);
    CHECK(run.document().is_modified());
  }
  SECTION("a file that says the same makes it superfluous, however old") {
    Machine same = *read_machine(machine_text("half done"));
    REQUIRE(set_field(same, 0, PartSlot::drive, "lead",
                      AnyQuantity{Kind::lead, 8.0 * 1e-3 / (2.0 * pi)}, {}));
    own.files().put("m.feedwright", write_machine(same));
    Running run(path);
    CHECK_FALSE(run.has("recovery_take_up"));
    CHECK(OwnFolders::copies().isEmpty());
  }
}

TEST_CASE("a copy goes when its machine is saved, or undone to what is saved, and not before") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  Running run(path);
  run.set_name("second");
  wait_for([] { return OwnFolders::copies().size() == 1; });
  SECTION("saved") {
    CHECK(run.window().files().save());
  }
  SECTION("undone") {
    run.trigger("undo");
  }
  CHECK(OwnFolders::copies().isEmpty());
  CHECK(OwnFolders::discarded().isEmpty());
}

TEST_CASE("a save that fails leaves the copy where it is") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  Running run(path);
  run.set_name("second");
  wait_for([] { return OwnFolders::copies().size() == 1; });
  run.answers.path = QStringLiteral("/no/such/folder/m.feedwright");
  CHECK_FALSE(run.window().files().save_as());
  CHECK(OwnFolders::copies().size() == 1);
  CHECK(run.document().is_modified());
}

TEST_CASE("closing without saving puts the copy among the discarded, and it is not offered") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  {
    Running run(path);
    run.set_name("second");
    wait_for([] { return OwnFolders::copies().size() == 1; });
    run.answers.unsaved = UnsavedAnswer::discard;
    CHECK(run.window().close());
    Running::settle();
    CHECK(run.count() == 0);
  }
  CHECK(OwnFolders::copies().isEmpty());
  CHECK(OwnFolders::discarded().size() == 1);
  Running run(path);
  CHECK_FALSE(run.has("recovery_take_up"));
}

TEST_CASE("a copy of a window that is still open is offered to nobody") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  Running one(path);
  one.set_name("second");
  wait_for([] { return OwnFolders::copies().size() == 1; });
  CHECK(take_left_copies().empty());
  Running other;
  CHECK_FALSE(other.has("recovery_take_up"));
}

TEST_CASE("a copy is offered with its file, by whatever path that is opened") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  const QString link = own.files().path("link.feedwright");
  REQUIRE(QFile::link(path, link));
  Running run(own.files().put("other.feedwright", machine_text("other")));
  // Another run is cut short while this one goes on.
  crash_with_changes(path);
  run.answers.path = link;
  run.trigger("open");
  REQUIRE(run.count() == 2);
  INFO(banner(run, 1).toStdString());
  CHECK(banner(run, 1).contains(QStringLiteral("X: lead")));
  run.press("recovery_take_up", 1);
  CHECK(run.count() == 2);
  CHECK(run.document(1).machine().name == "half done");
  CHECK(run.document(1).file_path() == link);
  run.answers.unsaved = UnsavedAnswer::discard;
}

TEST_CASE("several machines cut short are offered one after the other") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", machine_text("first"));
  {
    Running run(path);
    run.trigger("new");
    REQUIRE(run.count() == 2);
    run.set_name("changed", 0);
    run.set_name("never saved", 1);
    wait_for([] { return OwnFolders::copies().size() == 2; });
  }
  Running run(path);
  run.press("recovery_take_up");
  CHECK(run.document().machine().name == "changed");
  CHECK(banner(run).contains(QStringLiteral("never saved")));
  run.press("recovery_take_up");
  REQUIRE(run.count() == 2);
  CHECK(run.document(1).machine().name == "never saved");
  CHECK_FALSE(run.has("recovery_take_up"));
  CHECK(OwnFolders::copies().size() == 2);
}

TEST_CASE("a state folder that cannot be written is told once, and work goes on") {
  const OwnFolders own;
  // A file where the folder should be: nobody can write there, not even the administrator.
  own.files().put("state", "in the way");
  Running run;
  run.press("start_new");
  run.set_name("one");
  wait_for([&] { return banner(run).contains(QStringLiteral("put aside")); });
  run.window().banner().close_message();
  run.set_name("two");
  QTest::qWait(150);
  CHECK_FALSE(banner(run).contains(QStringLiteral("put aside")));
  run.answers.path = own.files().path("kept.feedwright");
  CHECK(run.window().files().save());
}

TEST_CASE(
    "the same bytes are not put aside twice, and a busy typist's are within the longest wait") {
  const OwnFolders own;
  MachineDocument document(testing::ordinary_router());
  Autosave autosave(document, {std::chrono::milliseconds(200), std::chrono::milliseconds(300)});
  QElapsedTimer clock;
  clock.start();
  int edits = 0;
  while (OwnFolders::copies().isEmpty() && clock.elapsed() < 5000) {
    Machine changed = document.machine();
    changed.story = std::string(static_cast<std::size_t>(++edits), 'x');
    document.edit(std::move(changed), QStringLiteral("notes"));
    QTest::qWait(20);
  }
  CHECK(edits > 5);
  CHECK(clock.elapsed() < 2000);
  REQUIRE(autosave.keep_now());
  const QFileInfo copy(QDir(unsaved_folder()).filePath(OwnFolders::copies().constFirst()));
  const QDateTime written = copy.lastModified();
  QTest::qWait(30);
  document.undo_stack()->undo();
  document.undo_stack()->redo();
  REQUIRE(autosave.keep_now());
  CHECK(QFileInfo(copy.filePath()).lastModified() == written);
}

TEST_CASE("copies are for their owner's eyes only") {
  const OwnFolders own;
  Running run;
  run.press("start_new");
  run.set_name("private");
  wait_for([] { return OwnFolders::copies().size() == 1; });
  const auto others = QFile::ReadGroup | QFile::ReadOther | QFile::ExeGroup | QFile::ExeOther;
  CHECK((QFile::permissions(unsaved_folder()) & others) == QFile::Permissions());
}

// Run by the test below in a process of its own.
TEST_CASE("edits until it is killed", "[.child]") {
  const QString path = qEnvironmentVariable("FEEDWRIGHT_TEST_FILE");
  testing::SetAnswers answers;
  Workbench bench;
  bench.set_prompts(answers);
  REQUIRE(bench.start(path, QStringLiteral("en")));
  MachineDocument& document = bench.window()->document();
  const int last = qEnvironmentVariableIntValue("FEEDWRIGHT_TEST_EDITS");
  for (int edit = 1;; ++edit) {
    if (edit <= last) {
      Machine changed = document.machine();
      changed.name = "edit " + QString::number(edit).toStdString();
      document.edit(std::move(changed), QStringLiteral("name"));
      std::cout << edit << std::endl;
    }
    QTest::qWait(100);
  }
}

TEST_CASE("after a kill the edits are offered, but for those of the last seconds") {
  const OwnFolders own;
  // Without a pause the copy comes by the longest wait, after a pause by the shorter.
  const bool without_pause = GENERATE(true, false);
  const QString path = without_pause ? own.files().put("m.feedwright", machine_text("first"))
                                     : QStringLiteral(":/sample-machines/clock-mill.feedwright");
  QProcess child;
  auto environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("FEEDWRIGHT_TEST_FILE"), path);
  environment.insert(QStringLiteral("FEEDWRIGHT_TEST_EDITS"),
                     without_pause ? QStringLiteral("1000000") : QStringLiteral("5"));
  environment.insert(QStringLiteral("XDG_CONFIG_HOME"), own.files().path("child-config"));
  environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
  child.setProcessEnvironment(environment);
  child.start(QCoreApplication::applicationFilePath(),
              {QStringLiteral("edits until it is killed")});
  REQUIRE(child.waitForStarted());
  const auto copied = [] { return !OwnFolders::copies().isEmpty(); };
  REQUIRE(QTest::qWaitFor(copied, 60'000));
  QTest::qWait(500);
  const auto said = child.readAllStandardOutput().split('\n');
  ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
  REQUIRE(child.waitForFinished());
  int made = 0;
  for (const QByteArray& line : said) {
    made = std::max(made, line.trimmed().toInt());
  }
  Running run(without_pause ? path : QString());
  REQUIRE(run.has("recovery_take_up"));
  run.press("recovery_take_up");
  const QString name = QString::fromStdString(run.document().machine().name);
  const int kept = name.section(QLatin1Char(' '), 1).toInt();
  INFO("edits made " << made << ", kept " << kept);
  CHECK(kept > 0);
  // Ten a second at most for 15 s; all of them where there was a pause.
  CHECK(made - kept <= (without_pause ? 150 : 0));
  if (without_pause) {
    CHECK(own.files().bytes("m.feedwright") == machine_text("first"));
  }
}
