// SPDX-License-Identifier: GPL-3.0-or-later

// Tables in machine files, and the parts that came with format 2.

#include "machine/machine_file.h"
#include "support/axes.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace feedwright;
using Json = nlohmann::ordered_json;

namespace {

Json looped() {
  Machine machine = testing::ordinary_router();
  set_part_type(machine, 0, PartSlot::transmission, "belt_loop");
  machine.axes[0].sides.layout = DriveLayout::one_motor;
  LoadCase load;
  load.name = "pocket";
  machine.axes[0].duty.load_cases.push_back(load);
  machine.axes[0].duty.moves.emplace_back();
  return Json::parse(write_machine(machine));
}

Fault only_fault(const Json& json) {
  const auto read = read_machine(json.dump());
  REQUIRE_FALSE(read);
  REQUIRE(read.error().size() == 1);
  return read.error().front();
}

Json& axis(Json& json) {
  return json["axes"][0];
}

} // namespace

TEST_CASE("tables are kept through the file, with what is open left out") {
  Json json = looped();
  const Json& pulley = axis(json)["transmission"]["pulleys"][0];
  CHECK(pulley["role"] == "motor");
  CHECK_FALSE(pulley.contains("diameter"));
  CHECK(axis(json)["duty"]["moves"][0].is_array());
  const auto read = read_machine(json.dump());
  REQUIRE(read);
  CHECK(std::get<BeltLoopDrive>(read->axes[0].transmission).pulleys.size() == 3);
  CHECK(read->axes[0].duty.load_cases[0].name == "pocket");
  CHECK(write_machine(*read) == write_machine(*read_machine(write_machine(*read))));
}

TEST_CASE("a wrong cell is refused with its line and what was wanted") {
  Json json = looped();
  axis(json)["transmission"]["pulleys"][1]["role"] = "wheel";
  CHECK(only_fault(json).code == FaultCode::unknown_choice);
  json = looped();
  axis(json)["transmission"]["pulleys"][1]["x"] = "5 kg";
  CHECK(only_fault(json).code == FaultCode::unreadable_quantity);
  json = looped();
  axis(json)["transmission"]["pulleys"][1].erase("y");
  CHECK(only_fault(json).code == FaultCode::missing_member);
  json = looped();
  axis(json)["duty"]["load_cases"][0]["time"] = "-5 s";
  CHECK(only_fault(json).code == FaultCode::out_of_bounds);
  json = looped();
  axis(json)["duty"]["moves"][0] = Json::array({"5 mm"});
  CHECK(only_fault(json).code == FaultCode::wrong_type);
  json = looped();
  axis(json)["duty"]["load_cases"] = "none";
  CHECK(only_fault(json).code == FaultCode::wrong_type);
}

TEST_CASE("a missing thrust stays open and is refused, not taken as the preset") {
  Json json = looped();
  axis(json)["duty"]["load_cases"][0].erase("thrust");
  const Fault fault = only_fault(json);
  CHECK(fault.code == FaultCode::load_case_without_thrust);
  CHECK(fault.first == 1);
}

TEST_CASE("a file of format 1 is read as it is and written in format 2") {
  Json json = Json::parse(write_machine(testing::ordinary_router()));
  json["format"]["major"] = 1;
  Json screw = axis(json)["drive"];
  screw.erase("type");
  axis(json).erase("drive");
  axis(json)["screw"] = screw;
  const auto read = read_machine(json.dump());
  REQUIRE(read);
  CHECK(read->axes[0].drive == testing::ordinary_router_read().axes[0].drive);
  CHECK(write_machine(*read).find("\"major\": 2") != std::string::npos);
}

TEST_CASE("what does not go together is refused by name") {
  using Change = void (*)(Machine&);
  const std::pair<FaultCode, Change> changes[] = {
      {FaultCode::loop_needed, [](Machine& m) { m.axes[0].sides.layout = DriveLayout::one_motor; }},
      {FaultCode::opposed_without_pair,
       [](Machine& m) {
         m.axes[0].sides.pairing = Pairing::opposed;
         testing::screw_of(m.axes[0]).preload = Positive<Force>::of(from_si<Force>(500.0));
       }},
      {FaultCode::opposed_by_two_motors,
       [](Machine& m) {
         m.axes[0].sides.layout = DriveLayout::two_motors;
         m.axes[0].sides.pairing = Pairing::opposed;
         testing::screw_of(m.axes[0]).preload = Positive<Force>::of(from_si<Force>(500.0));
       }},
      {FaultCode::preload_missing,
       [](Machine& m) { testing::screw_of(m.axes[0]).nuts = NutArrangement::preloaded_pair; }},
      {FaultCode::nut_without_inertia,
       [](Machine& m) { testing::screw_of(m.axes[0]).driven = DrivenMember::nut; }},
      {FaultCode::bore_not_below_core,
       [](Machine& m) {
         testing::screw_of(m.axes[0]).bore = NonNegative<Length>::of(from_si<Length>(0.014));
       }},
      {FaultCode::stretch_without_fixed_ends,
       [](Machine& m) {
         testing::screw_of(m.axes[0]).stretch = NonNegative<Force>::of(from_si<Force>(500.0));
       }},
      {FaultCode::crossing_beyond_mass,
       [](Machine& m) {
         m.axes[0].sides.crossing_mass = NonNegative<Mass>::of(from_si<Mass>(30.0));
       }},
      {FaultCode::spacing_missing,
       [](Machine& m) {
         m.axes[0].sides.layout = DriveLayout::two_motors;
         m.axes[0].sides.cross_travel = NonNegative<Length>::of(from_si<Length>(0.4));
       }},
      {FaultCode::block_spacing_missing,
       [](Machine& m) {
         m.axes[0].sides.cross_travel = NonNegative<Length>::of(from_si<Length>(0.4));
       }},
      {FaultCode::hauling_belt_too_short,
       [](Machine& m) {
         HaulingBelt belt;
         belt.belt_length = Positive<Length>::of(from_si<Length>(1.5));
         m.axes[0].drive = belt;
       }},
      {FaultCode::loop_not_wanted, [](Machine& m) { m.axes[0].transmission = BeltLoopDrive(); }},
  };
  for (const auto& [code, change] : changes) {
    Machine machine = testing::ordinary_router();
    change(machine);
    const auto faults = faults_of(machine);
    INFO(static_cast<int>(code));
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].code == code);
  }
}

TEST_CASE("a loop that cannot be is refused by name and pulley") {
  using Change = void (*)(BeltLoopDrive&);
  const auto place = [](LoopMember& member, double x, double y) {
    member.x = Finite<Length>::of(from_si<Length>(x));
    member.y = Finite<Length>::of(from_si<Length>(y));
  };
  static const auto put = place;
  const std::pair<FaultCode, Change> changes[] = {
      {FaultCode::loop_no_single_motor,
       [](BeltLoopDrive& loop) { loop.pulleys[0].role = PulleyRole::idler; }},
      {FaultCode::loop_pulley_without_size, [](BeltLoopDrive& loop) { loop.pulleys[1].teeth = 0; }},
      {FaultCode::loop_screw_teeth_differ, [](BeltLoopDrive& loop) { loop.pulleys[2].teeth = 30; }},
      {FaultCode::loop_driven_on_back,
       [](BeltLoopDrive& loop) {
         loop.pulleys[1].face = BeltFace::back;
         loop.pulleys[1].diameter = Positive<Length>::of(from_si<Length>(0.03));
       }},
      {FaultCode::loop_no_such_slide, [](BeltLoopDrive& loop) { loop.sliding_pulley = 9; }},
      {FaultCode::loop_belt_does_not_fit, [](BeltLoopDrive& loop) { loop.belt_teeth = 500; }},
      {FaultCode::loop_overlap, [](BeltLoopDrive& loop) { put(loop.pulleys[1], 0.151, -0.079); }},
  };
  for (const auto& [code, change] : changes) {
    Machine machine = testing::ordinary_router();
    BeltLoopDrive loop;
    change(loop);
    machine.axes[0].transmission = loop;
    machine.axes[0].sides.layout = DriveLayout::one_motor;
    const auto faults = faults_of(machine);
    INFO(static_cast<int>(code));
    REQUIRE_FALSE(faults.empty());
    CHECK(faults[0].code == code);
  }
}
