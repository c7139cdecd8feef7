// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/found_elsewhere.h"

#include "support/machine_files.h"
#include "text/words.h"

#include <algorithm>

using namespace feedwright;

namespace {

QString name_of(const Selection& place) {
  return words::field_name(place.slot, place.member.toStdString());
}

} // namespace

TEST_CASE("a field is found in any part but those that are shown, in letters of any size") {
  MachineDocument document(testing::sample("plank-router"));
  document.select({0, PartSlot::drive, {}, false});
  const auto all = found_elsewhere(document, {}, QStringLiteral("LeNgTh"));
  const auto others = found_elsewhere(document, {PartSlot::drive}, QStringLiteral("LeNgTh"));
  CHECK(std::ranges::find(all, PartSlot::drive, &Selection::slot) != all.end());
  CHECK(std::ranges::find(others, PartSlot::drive, &Selection::slot) == others.end());
  CHECK_FALSE(others.empty());
  for (const Selection& place : all) {
    INFO(name_of(place).toStdString());
    CHECK(name_of(place).contains(QStringLiteral("length"), Qt::CaseInsensitive));
  }
  CHECK(found_elsewhere(document, {}, QStringLiteral("qqq")).empty());
}

TEST_CASE("what is found goes to the machine's own parts without losing the machine from sight") {
  MachineDocument document(testing::sample("plank-router"));
  const QString voltage = QStringLiteral("voltage");
  for (const bool machine : {false, true}) {
    document.select({0, PartSlot::supply, {}, machine});
    const auto found = found_elsewhere(document, {}, voltage);
    const auto supply = std::ranges::find(found, PartSlot::supply, &Selection::slot);
    REQUIRE(supply != found.end());
    CHECK(supply->machine == machine);
    CHECK(std::ranges::none_of(
        found, [](const Selection& place) { return place.machine && !of_machine(place.slot); }));
  }
}

TEST_CASE("without an axis only the machine's own fields are found") {
  Machine machine = testing::sample("plank-router");
  machine.axes.clear();
  const MachineDocument document(machine);
  const auto found = found_elsewhere(document, {}, QStringLiteral("e"));
  CHECK_FALSE(found.empty());
  CHECK(std::ranges::all_of(found, of_machine, &Selection::slot));
}

TEST_CASE("of many fields found elsewhere four are named") {
  MachineDocument document(testing::sample("plank-router"));
  const auto found = found_elsewhere(document, {}, QStringLiteral("e"));
  REQUIRE(found.size() > 4);
  const QString sentence = sentence_on(found);
  CHECK(sentence == sentence_on({found.begin(), found.begin() + 4}));
  CHECK(sentence != sentence_on({found.begin(), found.begin() + 3}));
  CHECK(sentence.contains(name_of(found.front())));
  CHECK(sentence_on({}).contains(QStringLiteral("No field")));
}
