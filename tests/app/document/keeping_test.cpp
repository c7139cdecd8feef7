// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/differences.h"
#include "document/file_claim.h"
#include "document/state_folder.h"
#include "document/unsaved_copy.h"
#include "machine/machine_file.h"
#include "support/whole_workbench.h"

#include <QDir>

using namespace feedwright;
using feedwright::testing::ordinary_router;
using feedwright::testing::OwnFolders;

TEST_CASE("an unsaved copy reads back as it was written, half done or not") {
  UnsavedCopy copy{
      QString::fromUtf8("/home/ä \"b\"/m.feedwright"), QStringLiteral("0123"),
      QDateTime::fromString(QStringLiteral("2026-11-25T21:00:01.234Z"), Qt::ISODateWithMs),
      QStringLiteral("0.1.0"), ordinary_router()};
  testing::screw_of(copy.machine.axes[0]).span = Positive<Length>::of(from_si<Length>(0.001));
  copy.machine.unknown.emplace_back("later", "{\"a\": [1, 2]}");
  const auto read = read_unsaved_copy(write_unsaved_copy(copy));
  REQUIRE(read);
  CHECK(read->file == copy.file);
  CHECK(read->base == copy.base);
  CHECK(read->time == copy.time);
  CHECK(read->program == copy.program);
  CHECK(write_machine(read->machine) == write_machine(copy.machine));
}

TEST_CASE("a damaged copy is no copy, wherever it is cut off") {
  const std::string whole =
      write_unsaved_copy({{}, {}, QDateTime::currentDateTimeUtc(), {}, ordinary_router()});
  REQUIRE(read_unsaved_copy(whole));
  for (std::size_t size = 0; size + 3 < whole.size(); size += 7) {
    CHECK_FALSE(read_unsaved_copy(whole.substr(0, size)));
  }
  CHECK_FALSE(read_unsaved_copy(write_machine(ordinary_router())));
}

TEST_CASE("differences name each field once, and there are none between like machines") {
  const Machine before = ordinary_router();
  CHECK(differences(before, before).empty());
  Machine after = before;
  after.name = "another";
  const auto lead = AnyQuantity{Kind::lead, 0.01 / (2.0 * pi)};
  REQUIRE(set_field(after, 0, PartSlot::drive, "lead", lead, {"10 mm", Origin::entered}));
  REQUIRE(set_part_type(after, 0, PartSlot::motor, "servo"));
  const auto all = differences(before, after);
  REQUIRE(all.size() == 3);
  CHECK(all[0].what == Difference::What::machine);
  CHECK(all[1].what == Difference::What::type);
  CHECK(all[2].member == "lead");
  const QString sentence = differences_sentence(all);
  CHECK(sentence.contains(QStringLiteral("X: lead")));
}

TEST_CASE("axes that are added, removed, moved or given another letter are told apart") {
  using What = Difference::What;
  Machine one = ordinary_router();
  Machine two = one;
  two.axes.push_back(two.axes[0]);
  two.axes[1].basics.letter = "Y";
  const auto what = [](const std::vector<Difference>& all) {
    REQUIRE(all.size() == 1);
    return all[0].what;
  };
  CHECK(what(differences(one, two)) == What::axis_added);
  CHECK(what(differences(two, one)) == What::axis_removed);
  Machine lettered = two;
  lettered.axes[1].basics.letter = "A";
  CHECK(what(differences(two, lettered)) == What::field);
  Machine swapped = two;
  std::swap(swapped.axes[0], swapped.axes[1]);
  const auto moved = differences(two, swapped);
  REQUIRE(moved.size() == 2);
  CHECK(moved[0].what == What::axis_moved);
}

TEST_CASE("a file is claimed once, by whatever path, until the claim is given up") {
  const OwnFolders own;
  const QString path = own.files().put("m.feedwright", "x");
  const QString link = own.files().path("link.feedwright");
  REQUIRE(QFile::link(path, link));
  FileClaim first;
  CHECK_FALSE(first.claim(path));
  CHECK_FALSE(first.claim(link));
  FileClaim second;
  const auto holder = second.claim(link);
  REQUIRE(holder);
  CHECK(holder->process == QCoreApplication::applicationPid());
  CHECK_FALSE(holder->host.isEmpty());
  CHECK_FALSE(holder->user.isEmpty());
  CHECK_FALSE(first.claim({}));
  CHECK_FALSE(second.claim(path));
}

TEST_CASE("a file in a folder that takes no lock file is claimed all the same") {
  const OwnFolders own;
  // Nobody, not even the administrator, can make a file there.
  const QString path = QStringLiteral("/proc/version");
  FileClaim first;
  FileClaim second;
  CHECK_FALSE(first.claim(path));
  CHECK(second.claim(path));
  CHECK(QDir(state_folder() + QStringLiteral("/locks")).entryList(QDir::Files).size() == 1);
}

TEST_CASE("a claim that cannot be had leaves the one before in place") {
  const OwnFolders own;
  const QString mine = own.files().put("mine.feedwright", "x");
  const QString theirs = own.files().put("theirs.feedwright", "x");
  FileClaim me;
  FileClaim them;
  CHECK_FALSE(me.claim(mine));
  CHECK_FALSE(them.claim(theirs));
  CHECK(me.claim(theirs));
  CHECK(them.claim(mine));
}
