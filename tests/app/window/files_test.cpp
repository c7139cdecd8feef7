// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/program.h"
#include "sheet/print_sheet.h"
#include "support/whole_workbench.h"

#include <QApplication>
#include <QCloseEvent>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::Folder;
using feedwright::testing::ordinary_router;
using feedwright::testing::OwnFolders;
using feedwright::testing::said_by;
using feedwright::testing::Shown;

namespace {

void rename_machine(Shown& shown, const char* name) {
  Machine changed = shown.document().machine();
  changed.name = name;
  shown.document().edit(std::move(changed), QStringLiteral("name"));
}

std::string with_name(const char* name) {
  Machine machine = ordinary_router();
  machine.name = name;
  return write_machine(machine);
}

void run_until(const std::function<bool()>& done) {
  CHECK(QTest::qWaitFor(done, 5000));
}

} // namespace

TEST_CASE("closing with unsaved changes asks, and cancel keeps the window") {
  Shown shown;
  rename_machine(shown, "changed");
  CHECK_FALSE(shown.window->close());
  CHECK(shown.answers.times_unsaved == 1);
  CHECK(shown.window->isVisible());
  shown.answers.unsaved = UnsavedAnswer::discard;
  CHECK(shown.window->close());
}

TEST_CASE("in the question about unsaved changes Enter saves and Escape cancels") {
  const auto answered_by = [](Qt::Key key) {
    QTimer::singleShot(0, [key] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      REQUIRE(box != nullptr);
      CHECK(box->textFormat() == Qt::PlainText);
      QTest::keyClick(box, key);
    });
    return DialogPrompts().unsaved_changes(nullptr, QStringLiteral("<b>m</b>"));
  };
  CHECK(answered_by(Qt::Key_Return) == UnsavedAnswer::save);
  CHECK(answered_by(Qt::Key_Escape) == UnsavedAnswer::cancel);
}

TEST_CASE("closing without changes asks nothing") {
  Shown shown;
  CHECK(shown.window->close());
  CHECK(shown.answers.times_unsaved == 0);
}

TEST_CASE("closing and saving writes the file that was chosen") {
  const Folder folder;
  Shown shown;
  rename_machine(shown, "kept");
  shown.answers.unsaved = UnsavedAnswer::save;
  shown.answers.path = folder.path("kept.feedwright");
  CHECK(shown.window->close());
  const auto read = read_machine(folder.bytes("kept.feedwright"));
  REQUIRE(read);
  CHECK(read->name == "kept");
}

TEST_CASE("a save that fails says so, keeps the window and the mark of unsaved changes") {
  Shown shown;
  rename_machine(shown, "homeless");
  shown.answers.unsaved = UnsavedAnswer::save;
  shown.answers.path = QStringLiteral("/no/such/folder/machine.feedwright");
  CHECK_FALSE(shown.window->close());
  CHECK(shown.document().is_modified());
  REQUIRE(shown.answers.told.size() == 2);
  CHECK(shown.answers.told.at(1).contains(QStringLiteral("/no/such/folder")));
}

TEST_CASE("opening a broken file tells everything and leaves the machine as it is") {
  const Folder folder;
  Shown shown;
  const Machine before = shown.document().machine();
  CHECK_FALSE(shown.window->files().open(folder.put("broken.feedwright", "{\"format\": 3}")));
  CHECK_FALSE(shown.answers.told.isEmpty());
  CHECK(shown.document().machine() == before);
  CHECK(shown.document().file_path().isEmpty());
}

TEST_CASE("opening another machine asks about unsaved changes first") {
  const Folder folder;
  Shown shown;
  shown.answers.path = folder.put("other.feedwright", with_name("other"));
  rename_machine(shown, "changed");
  shown.trigger("open");
  CHECK(shown.document().machine().name == "changed");
  shown.answers.unsaved = UnsavedAnswer::discard;
  shown.trigger("open");
  CHECK(shown.document().machine().name == "other");
  CHECK_FALSE(shown.document().is_modified());
  CHECK(shown.document().undo_stack()->count() == 0);
}

TEST_CASE("a file somebody else has changed is noticed, and read again when asked") {
  const Folder folder;
  Shown shown;
  REQUIRE(shown.window->files().open(folder.put("m.feedwright", with_name("first"))));
  folder.put("m.feedwright", with_name("second"));
  run_until([&] { return shown.window->banner().isVisible(); });
  CHECK(shown.window->banner().text().contains(QStringLiteral("m.feedwright")));
  QTest::mouseClick(&shown.find<QPushButton>("reload"), Qt::LeftButton);
  run_until([&] { return shown.document().machine().name == "second"; });
}

TEST_CASE("saving over somebody else's change asks first") {
  const Folder folder;
  Shown shown;
  REQUIRE(shown.window->files().open(folder.put("m.feedwright", with_name("first"))));
  rename_machine(shown, "mine");
  folder.put("m.feedwright", with_name("theirs"));
  CHECK_FALSE(shown.window->files().save());
  REQUIRE(shown.answers.reasons.size() == 1);
  CHECK(shown.answers.reasons.front() == OverwriteReason::changed_outside);
  CHECK(read_machine(folder.bytes("m.feedwright"))->name == "theirs");
  shown.answers.overwriting = OverwriteAnswer::overwrite;
  CHECK(shown.window->files().save());
  CHECK(read_machine(folder.bytes("m.feedwright"))->name == "mine");
}

TEST_CASE("a file of a newer program is not written over without a question") {
  const Folder folder;
  std::string text = with_name("newer");
  const auto at = text.find("\"minor\": 0");
  REQUIRE(at != std::string::npos);
  text.replace(at, 10, "\"minor\": 7");
  Shown shown;
  REQUIRE(shown.window->files().open(folder.put("m.feedwright", text)));
  CHECK(shown.window->banner().isVisible());
  CHECK(shown.window->banner().text().contains(QStringLiteral("2.7")));
  rename_machine(shown, "mine");
  CHECK_FALSE(shown.window->files().save());
  REQUIRE(shown.answers.reasons.size() == 1);
  CHECK(shown.answers.reasons.front() == OverwriteReason::newer_format);
  CHECK(folder.bytes("m.feedwright") == text);
}

TEST_CASE("the title names the machine and marks unsaved changes") {
  const Folder folder;
  Shown shown;
  REQUIRE(shown.window->files().open(folder.put("m.feedwright", with_name("first"))));
  CHECK(shown.window->windowTitle().startsWith(QStringLiteral("m.feedwright[*]")));
  CHECK_FALSE(shown.window->isWindowModified());
  rename_machine(shown, "second");
  CHECK(shown.window->isWindowModified());
  shown.trigger("undo");
  CHECK_FALSE(shown.window->isWindowModified());
}

TEST_CASE("a sample has no file of its own, so that saving it asks where") {
  const Folder folder;
  Shown shown;
  REQUIRE(shown.window->files().open(QStringLiteral(":/sample-machines/plank-router.feedwright")));
  CHECK(shown.document().file_path().isEmpty());
  shown.answers.path = folder.path("own.feedwright");
  CHECK(shown.window->files().save());
  CHECK(shown.document().file_path() == folder.path("own.feedwright"));
}

TEST_CASE("the window's sheets come with the working when it is chosen, and it is remembered") {
  const OwnFolders own;
  const Folder folder;
  Shown shown;
  const auto written = [&](const char* name) {
    shown.answers.path = folder.path(name);
    shown.trigger("sheet_pdf");
    return QString::fromUtf8(
        said_by(QStringLiteral("pdftotext"), {shown.answers.path, QStringLiteral("-")}));
  };
  const auto pages = [](const QString& text) { return text.count(QLatin1Char('\f')); };
  CHECK_FALSE(shown.find<QAction>("sheet_with_working").isChecked());
  const QString without = written("without.pdf");
  shown.trigger("sheet_with_working");
  CHECK(shown.find<QAction>("sheet_with_working").isChecked());
  const QString with = written("with.pdf");
  CHECK_FALSE(without.contains(QStringLiteral("· working")));
  CHECK(with.contains(QStringLiteral("· working")));
  CHECK(pages(with) > pages(without));
  // Preview and print ask the same.
  CHECK(sheet_info(shown.document()).working);
  const Shown later;
  CHECK(later.window->findChild<QAction*>(QStringLiteral("sheet_with_working"))->isChecked());
  shown.trigger("sheet_with_working");
  CHECK_FALSE(sheet_info(shown.document()).working);
}

TEST_CASE("the sheet is written from the window as PDF") {
  const Folder folder;
  Shown shown;
  shown.answers.path = folder.path("sheet.pdf");
  shown.trigger("sheet_pdf");
  CHECK(folder.bytes("sheet.pdf").starts_with("%PDF-"));
}
