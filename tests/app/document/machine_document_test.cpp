// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/machine_document.h"
#include "machine/machine_file.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <QUndoStack>

#include <random>

using namespace feedwright;
using feedwright::testing::ordinary_router;

namespace {

AnyQuantity millimetres_lead(double lead) {
  return {Kind::lead, lead * 1e-3 / (2.0 * pi)};
}

} // namespace

TEST_CASE("an edit recomputes at once and undo names it and takes it back") {
  MachineDocument document(ordinary_router());
  const auto before = document.current()->whip_feed;
  REQUIRE(document.edit_field(0, PartSlot::drive, "lead", millimetres_lead(10.0),
                              {"10 mm", Origin::entered}));
  CHECK(si_value(*document.current()->whip_feed) == Approx(2.0 * si_value(*before)));
  CHECK(document.undo_stack()->undoText() == QStringLiteral("lead 5 mm → 10 mm"));
  CHECK(document.is_modified());
  document.undo_stack()->undo();
  CHECK(si_value(*document.current()->whip_feed) == si_value(*before));
  CHECK_FALSE(document.is_modified());
}

TEST_CASE("an edit that changes nothing is no step") {
  MachineDocument document(ordinary_router());
  document.edit(document.machine(), QStringLiteral("nothing"));
  CHECK(document.undo_stack()->count() == 0);
}

TEST_CASE("nothing is computed from a machine that is not sound, and mending it computes again") {
  MachineDocument document(ordinary_router());
  const AnyQuantity short_span{Kind::length, 0.1};
  REQUIRE(document.edit_field(0, PartSlot::drive, "span", short_span, {}));
  CHECK(document.current() == nullptr);
  CHECK_FALSE(document.faults().empty());
  document.undo_stack()->undo();
  CHECK(document.current() != nullptr);
  CHECK(document.faults().empty());
}

TEST_CASE("a value out of bounds is refused and changes nothing") {
  MachineDocument document(ordinary_router());
  const AnyQuantity negative{Kind::length, -1.0};
  CHECK_FALSE(document.edit_field(0, PartSlot::drive, "span", negative, {}));
  CHECK(document.undo_stack()->count() == 0);
}

TEST_CASE("steps of one key in a row are one step, and back to the start is none") {
  MachineDocument document(ordinary_router());
  for (const char* story : {"a", "ab", "abc"}) {
    Machine changed = document.machine();
    changed.story = story;
    document.edit(std::move(changed), QStringLiteral("notes"), QStringLiteral("story"));
  }
  CHECK(document.undo_stack()->count() == 1);
  Machine back = document.machine();
  back.story.clear();
  document.edit(std::move(back), QStringLiteral("notes"), QStringLiteral("story"));
  CHECK(document.undo_stack()->count() == 0);
  CHECK_FALSE(document.is_modified());
}

TEST_CASE("all undone gives the first bytes, all redone the last") {
  MachineDocument document(ordinary_router());
  const std::string first = write_machine(document.machine());
  std::mt19937 random(20261125);
  for (int step = 0; step < 700; ++step) {
    const PartSlot slot = axis_slots[random() % std::size(axis_slots)];
    const auto fields = fields_of(document.machine(), 0, slot);
    const FieldView& field = fields[random() % fields.size()];
    if (const auto* value = std::get_if<AnyQuantity>(&field.value)) {
      const double factor = 0.5 + double(random() % 1000) / 1000.0;
      document.edit_field(0, slot, field.info.member, AnyQuantity{value->kind, value->si * factor},
                          {});
    } else if (slot == PartSlot::motor || slot == PartSlot::transmission ||
               slot == PartSlot::drive) {
      Machine changed = document.machine();
      const auto types = part_types(slot);
      set_part_type(changed, 0, slot, types[random() % types.size()]);
      document.edit(std::move(changed), QStringLiteral("type"));
    }
  }
  const std::string last = write_machine(document.machine());
  CHECK(document.undo_stack()->count() > 150);
  while (document.undo_stack()->canUndo()) {
    document.undo_stack()->undo();
  }
  CHECK(write_machine(document.machine()) == first);
  while (document.undo_stack()->canRedo()) {
    document.undo_stack()->redo();
  }
  CHECK(write_machine(document.machine()) == last);
}

TEST_CASE("undoing the axis one stands on moves on to one that is there") {
  MachineDocument document(ordinary_router());
  Machine two = document.machine();
  two.axes.push_back(two.axes.front());
  two.axes.back().basics.letter = "Y";
  document.edit(std::move(two), QStringLiteral("add"));
  document.select({1, PartSlot::motor, {}});
  document.undo_stack()->undo();
  CHECK(document.selection().axis == 0);
  CHECK(document.current() != nullptr);
}
