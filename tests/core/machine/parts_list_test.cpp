// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/parts_list.h"

#include "files/read_file.h"
#include "machine/belt_choices.h"
#include "machine/machine_file.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <set>

using namespace feedwright;

namespace {

const std::filesystem::path lists =
    std::filesystem::path(FEEDWRIGHT_SOURCE_DIR) / "resources/parts";

std::string contents(const std::filesystem::path& path) {
  const auto text = read_file(path, std::size_t{1} << 22U);
  INFO(path.string());
  REQUIRE(text);
  return *text;
}

std::vector<ListedPart> all_parts() {
  std::vector<ListedPart> all;
  for (const auto& entry : std::filesystem::directory_iterator(lists)) {
    if (entry.path().extension() != ".json") {
      continue;
    }
    const auto parts = read_parts(contents(entry.path()));
    INFO(entry.path().string() << " " << (parts ? std::string() : parts.error().front().path));
    REQUIRE(parts);
    all.insert(all.end(), parts->begin(), parts->end());
  }
  return all;
}

std::string list_of(std::string_view part, std::string_view row) {
  return R"({"format": {"name": "feedwright-parts", "major": 1, "minor": 0}, "part": ")" +
         std::string(part) + R"(", "rows": [)" + std::string(row) + "]}";
}

} // namespace

TEST_CASE("every row of every parts list says its source and fits a machine, which stays sound") {
  int taken = 0;
  for (const ListedPart& part : all_parts()) {
    INFO(part.name);
    CHECK_FALSE(part.source.empty());
    Machine machine = testing::ordinary_router();
    if (part.kind == ListedKind::material) {
      machine.axes[0].duty.load_cases.emplace_back();
    }
    REQUIRE(take_part(machine, 0, slot_of(part.kind), part));
    CHECK(faults_of(machine).empty());
    const auto again = read_machine(write_machine(machine));
    REQUIRE(again);
    CHECK(write_machine(*again) == write_machine(machine));
    ++taken;
  }
  CHECK(taken > 200);
}

TEST_CASE("the parts lists hold what a builder looks for") {
  std::set<std::string> names;
  for (const ListedPart& part : all_parts()) {
    names.insert(part.name);
  }
  const auto holds = [&](std::string_view piece) {
    return std::ranges::any_of(
        names, [&](const std::string& name) { return name.find(piece) != std::string::npos; });
  };
  for (const char* piece :
       {"16 × 5", "25 × 10", "Tr 16", "NEMA 17", "NEMA 23", "NEMA 24", "NEMA 34", "400 W"}) {
    INFO(piece);
    CHECK(holds(piece));
  }
}

TEST_CASE("a listed part is marked as from a list and names it as its source") {
  const auto parts = read_parts(list_of(
      "screw", R"({"name": "16 by 5", "source": "a data sheet", "core_diameter": "12.9 mm"})"));
  REQUIRE(parts);
  Machine machine = testing::ordinary_router();
  REQUIRE(take_part(machine, 0, PartSlot::drive, parts->front()));
  const auto field = field_of(machine, 0, PartSlot::drive, "core_diameter");
  CHECK(field->note.origin == Origin::part_list);
  CHECK(field->note.text == "12.9 mm");
  CHECK(testing::screw_of(machine.axes[0]).notes.source == "16 by 5: a data sheet");
  CHECK(*testing::screw_of(machine.axes[0]).span == from_si<Length>(0.9));
}

TEST_CASE("a belt from a list fits a loop and a hauling belt, and makes a belt of a coupling") {
  const auto parts = read_parts(list_of(
      "belt", R"({"name": "5M 25", "source": "a data sheet", "width": "25 mm", "pitch": "5 mm"})"));
  REQUIRE(parts);
  Machine machine = testing::ordinary_router();
  set_part_type(machine, 0, PartSlot::transmission, "coupling");
  REQUIRE(take_part(machine, 0, PartSlot::transmission, parts->front()));
  CHECK(part_type(machine, 0, PartSlot::transmission) == "belt");
  set_part_type(machine, 0, PartSlot::transmission, "belt_loop");
  REQUIRE(take_part(machine, 0, PartSlot::transmission, parts->front()));
  CHECK(part_type(machine, 0, PartSlot::transmission) == "belt_loop");
  REQUIRE(take_part(machine, 0, PartSlot::drive, parts->front()));
  CHECK(part_type(machine, 0, PartSlot::drive) == "hauling_belt");
}

TEST_CASE("end bearings add to a screw and are named beside its source") {
  const auto parts = read_parts(
      list_of("end_bearings",
              R"({"name": "pair 12", "source": "a data sheet", "bearing_stiffness": "90 N/µm"})"));
  REQUIRE(parts);
  Machine machine = testing::ordinary_router();
  testing::screw_of(machine.axes[0]).notes.source = "own measurement";
  REQUIRE(take_part(machine, 0, PartSlot::drive, parts->front()));
  REQUIRE(take_part(machine, 0, PartSlot::drive, parts->front()));
  CHECK(testing::screw_of(machine.axes[0]).notes.source ==
        "own measurement; end bearings pair 12: a data sheet");
}

TEST_CASE("a parts list that is none, or has figures no part knows, is refused with the place") {
  const auto fault = [](const std::string& text) {
    const auto parts = read_parts(text);
    REQUIRE_FALSE(parts);
    return parts.error().front();
  };
  CHECK(fault("{").code == FaultCode::not_json);
  CHECK(fault("{}").code == FaultCode::not_a_parts_list);
  CHECK(fault(list_of("wheel", "")).code == FaultCode::not_a_parts_list);
  CHECK(fault(list_of("screw", R"({"name": "x"})")).code == FaultCode::missing_member);
  const Fault unknown =
      fault(list_of("screw", R"({"name": "x", "source": "y", "colour": "blue"})"));
  CHECK(unknown.code == FaultCode::unknown_member);
  CHECK(unknown.path == "rows[0].colour");
  CHECK(unknown.line == 1);
  CHECK(fault(list_of("screw", R"({"name": "x", "source": "y", "lead": "-5 mm"})")).code ==
        FaultCode::out_of_bounds);
  CHECK(fault(list_of("screw", R"({"name": "x", "source": "y", "lead": "5 kg"})")).code ==
        FaultCode::unreadable_quantity);
}

TEST_CASE("belts round about are those shops keep, each with its centre distance") {
  const auto stock = read_stock_belts(contents(lists / "stock/belt_lengths.json"));
  REQUIRE(stock);
  const Machine machine = testing::ordinary_router();
  const auto belts = belts_round_about(machine.axes[0].transmission, *stock, 3);
  REQUIRE(belts.size() == 7);
  for (std::size_t i = 0; i < belts.size(); ++i) {
    // Two like pulleys of 20 teeth: half of what the belt has over them lies between.
    CHECK(si_value(belts[i].place) == Approx((belts[i].teeth - 20) * 0.005 / 2.0));
    CHECK((i == 0 || belts[i].teeth > belts[i - 1].teeth));
  }
  const auto any = belts_round_about(machine.axes[0].transmission, {}, 2);
  REQUIRE(any.size() == 5);
  CHECK(any[2].teeth == 80);
  CHECK_FALSE(any[2].in_stock);
  CHECK(belts_round_about(Coupling(), *stock, 3).empty());
}

TEST_CASE("belts round about a loop are those its slide can take up") {
  const BeltLoopDrive loop;
  const auto belts = belts_round_about(loop, {}, 2);
  REQUIRE_FALSE(belts.empty());
  for (const BeltChoice& belt : belts) {
    CHECK(abs(belt.place) <= from_si<Length>(0.01 + 1e-12));
  }
}

TEST_CASE("a part kept in a list of one's own comes back with the figures it is bought with") {
  Machine machine = testing::ordinary_router_read();
  machine.axes[0].motor = Servo();
  for (const PartSlot slot : {PartSlot::drive, PartSlot::transmission, PartSlot::motor}) {
    const auto kind = list_for(machine, 0, slot);
    INFO(slot_name(slot));
    REQUIRE(kind);
    const ListedPart kept = as_listed(machine, 0, slot, *kind, "from the drawer", "measured");
    const std::string text = write_parts(*kind, std::array{kept});
    const auto read = read_parts(text);
    INFO(text);
    REQUIRE(read);
    REQUIRE(read->size() == 1);
    CHECK(write_parts(*kind, *read) == text);
    Machine other = testing::ordinary_router();
    REQUIRE(take_part(other, 0, slot, read->front()));
    for (const ListedValue& value : kept.values) {
      INFO(value.member);
      CHECK(field_of(other, 0, slot, value.member)->value == value.value);
      CHECK(field_of(other, 0, slot, value.member)->note.origin == Origin::part_list);
    }
  }
}

TEST_CASE("a list of one's own leaves out how long the screw is cut and how it is held") {
  const Machine machine = testing::ordinary_router_read();
  const ListedPart kept =
      as_listed(machine, 0, PartSlot::drive, ListedKind::screw, "mine", "measured");
  for (const ListedValue& value : kept.values) {
    CHECK(value.member != "span");
    CHECK(value.member != "far_end");
  }
  CHECK_FALSE(kept.values.empty());
}

TEST_CASE("figures the part before had from its list do not pass for the new part's") {
  Machine machine = testing::ordinary_router();
  const auto parts = all_parts();
  const auto screw = std::find_if(parts.begin(), parts.end(), [](const ListedPart& part) {
    return part.kind == ListedKind::screw &&
           std::ranges::none_of(part.values, [](const ListedValue& value) {
             return value.member == "backlash" || value.member == "starts";
           });
  });
  REQUIRE(screw != parts.end());
  const auto set = [&](std::string_view member, const FieldValue& value, Origin origin) {
    REQUIRE(set_field(machine, 0, PartSlot::drive, member, value, {{}, origin}));
  };
  const auto field = [&](std::string_view member) {
    return *field_of(machine, 0, PartSlot::drive, member);
  };
  set("backlash", any(from_si<Length>(50e-6)), Origin::part_list);
  set("starts", std::int64_t{2}, Origin::part_list);
  set("bearing_drag", any(from_si<Torque>(0.03)), Origin::part_list); // the bearings' own
  Machine entered = machine;
  REQUIRE(take_part(machine, 0, PartSlot::drive, *screw));
  CHECK(std::holds_alternative<std::monostate>(field("backlash").value));
  CHECK(field("starts").note.origin == Origin::preset);
  CHECK(field("starts").value == FieldValue(std::int64_t{1}));
  CHECK(field("bearing_drag").note.origin == Origin::part_list);
  // What was measured on the old nut is not the new one's either; what was chosen stays.
  machine = entered;
  set("backlash", any(from_si<Length>(2e-6)), Origin::entered);
  set("preload", any(from_si<Force>(300.0)), Origin::entered);
  set("span", any(from_si<Length>(0.8)), Origin::entered);
  REQUIRE(take_part(machine, 0, PartSlot::drive, *screw));
  CHECK(std::holds_alternative<std::monostate>(field("backlash").value));
  CHECK(field("preload").value == FieldValue(any(from_si<Force>(300.0))));
  CHECK(field("span").value == FieldValue(any(from_si<Length>(0.8))));
}

TEST_CASE("what stands beside a part's figures names the row they are from") {
  Machine machine = testing::ordinary_router();
  const auto parts = all_parts();
  const auto screw = std::find_if(parts.begin(), parts.end(), [](const ListedPart& part) {
    return part.kind == ListedKind::screw;
  });
  REQUIRE(screw != parts.end());
  REQUIRE(take_part(machine, 0, PartSlot::drive, *screw));
  CHECK(is_source(testing::screw_of(machine.axes[0]).notes.source, *screw));
  CHECK_FALSE(is_source("measured", *screw));
  CHECK_FALSE(list_for(machine, 0, PartSlot::targets));
}
