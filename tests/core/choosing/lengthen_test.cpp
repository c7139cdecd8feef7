// SPDX-License-Identifier: GPL-3.0-or-later

// An axis made longer as a whole.

#include "choosing/lengthen.h"

#include "core/choosing/choosing_support.h"
#include "units/read_quantity.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;
using feedwright::testing::screw_of;

namespace {

Machine longer(const Machine& machine, Length by) {
  const auto changed = with_changes(machine, 0, lengthening(machine, 0, by, FileUnits(machine)));
  REQUIRE(changed);
  return *changed;
}

double metres(const Positive<Length>& length) {
  return si_value(*length);
}

} // namespace

TEST_CASE("an axis grows with its screw, and shrinks back to the same") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  screw_of(axis).overall_length = Positive<Length>::of(Length(*screw_of(axis).span + 80_mm));
  const Machine grown = longer(machine, 400_mm);
  const Axis& then = grown.axes[0];
  CHECK(metres(then.basics.travel) == Approx(metres(axis.basics.travel) + 0.4).epsilon(1e-12));
  CHECK(metres(screw_of(then).span) == Approx(metres(screw_of(axis).span) + 0.4).epsilon(1e-12));
  CHECK(metres(*screw_of(then).overall_length) ==
        Approx(metres(*screw_of(axis).overall_length) + 0.4).epsilon(1e-12));
  CHECK(then.basics.notes.entries.at("travel").origin == Origin::entered);
  const Machine back = longer(grown, -400_mm);
  CHECK(metres(back.axes[0].basics.travel) == metres(axis.basics.travel));
  CHECK(metres(screw_of(back.axes[0]).span) == metres(screw_of(axis).span));
  // nothing else moves
  Machine forgotten = back;
  forgotten.axes[0].basics.notes = axis.basics.notes;
  screw_of(forgotten.axes[0]).notes = screw_of(axis).notes;
  CHECK(forgotten == machine);
}

TEST_CASE("a whole length that is open stays open") {
  const Machine machine = ordinary_router();
  REQUIRE_FALSE(screw_of(machine.axes[0]).overall_length);
  CHECK_FALSE(screw_of(longer(machine, 400_mm).axes[0]).overall_length);
}

TEST_CASE("a hauling belt grows twice as much") {
  Machine machine = ordinary_router();
  HaulingBelt belt;
  machine.axes[0].drive = belt;
  const Machine grown = longer(machine, 250_mm);
  CHECK(metres(std::get<HaulingBelt>(grown.axes[0].drive).belt_length) ==
        Approx(metres(belt.belt_length) + 0.5).epsilon(1e-12));
}

TEST_CASE("a length keeps the unit it was typed in") {
  Machine machine = ordinary_router();
  const auto span = read_quantity("60 in", Kind::length);
  REQUIRE(set_field(machine, 0, PartSlot::drive, "span", span->value, {"60 in", Origin::entered}));
  const auto changes = lengthening(machine, 0, 254_mm, FileUnits(machine));
  REQUIRE(changes.size() == 2);
  CHECK(changes[1].text == "70 in");
  CHECK(std::get<AnyQuantity>(changes[1].after).si == Approx(1.778).epsilon(1e-12));
}

TEST_CASE("an axis is not made shorter than nothing") {
  const Machine machine = ordinary_router();
  CHECK(
      lengthening(machine, 0, Length(-*machine.axes[0].basics.travel), FileUnits(machine)).empty());
  CHECK(lengthening(machine, 7, 100_mm, FileUnits(machine)).empty());
}
