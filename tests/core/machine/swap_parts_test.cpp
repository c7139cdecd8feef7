// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/swap_parts.h"

#include "files/read_file.h"
#include "machine/loop_layout.h"
#include "machine/machine_file.h"
#include "machine/swap_belts.h"
#include "mechanics/belt_geometry.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "support/near.h"

#include <algorithm>
#include <filesystem>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;
using feedwright::testing::screw_of;

namespace {

SwapAids aids_with_stock() {
  const auto text =
      read_file(FEEDWRIGHT_SOURCE_DIR "/resources/parts/stock/belt_lengths.json", 1U << 20U);
  REQUIRE(text);
  return {*read_stock_belts(*text), {}};
}

std::vector<Machine> all_machines() {
  std::vector<std::filesystem::path> paths;
  for (const char* folder : {"/sample-machines", "/tests/machines"}) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(FEEDWRIGHT_SOURCE_DIR) + folder)) {
      if (entry.path().extension() == ".feedwright") {
        paths.push_back(entry.path());
      }
    }
  }
  std::ranges::sort(paths);
  std::vector<Machine> machines{testing::ordinary_router()};
  for (const auto& path : paths) {
    const auto text = read_file(path, 1U << 20U);
    REQUIRE(text);
    machines.push_back(*read_machine(*text));
  }
  REQUIRE(machines.size() > 10);
  return machines;
}

std::vector<Swap> all_swaps(const Axis& axis) {
  std::vector<Swap> swaps;
  for (const PartSlot slot : axis_slots) {
    std::ranges::copy(swaps_of(axis, slot), std::back_inserter(swaps));
  }
  return swaps;
}

Machine made(const Machine& machine, SwapKind kind, const SwapAids& aids = aids_with_stock()) {
  const auto result = swapped(machine, 0, {kind}, aids);
  REQUIRE(result);
  return *result;
}

const BeltLoopDrive& loop_of(const Machine& machine) {
  return std::get<BeltLoopDrive>(machine.axes[0].transmission);
}

} // namespace

TEST_CASE("every swap on every axis of every machine is sound, or says which fault it would make") {
  const SwapAids aids = aids_with_stock();
  int sound = 0;
  int refused = 0;
  for (const Machine& machine : all_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const Swap& swap : all_swaps(machine.axes[axis])) {
        INFO(machine.name << " " << machine.axes[axis].basics.letter << " " << int(swap.kind) << " "
                          << swap.pulley);
        const auto result = swapped(machine, axis, swap, aids);
        if (!result) {
          ++refused;
          CHECK(result.error().slot.has_value());
          continue;
        }
        ++sound;
        CHECK(faults_of(*result).empty());
        const auto read = read_machine(write_machine(*result));
        REQUIRE(read);
        CHECK(write_machine(*read) == write_machine(*result));
        static_cast<void>(size_axis(*result, result->axes[axis]));
      }
    }
  }
  CHECK(sound > 10 * refused);
}

TEST_CASE("figures a swap has to invent are the program's own, in the file too") {
  const auto origin = [](const Machine& machine, PartSlot slot, const char* member) {
    const auto field = field_of(machine, 0, slot, member);
    REQUIRE(field);
    REQUIRE_FALSE(std::holds_alternative<std::monostate>(field->value));
    return field->note.origin;
  };
  const Machine hauled = made(testing::ordinary_router(), SwapKind::hauling_belt);
  const Machine turned = made(testing::ordinary_router(), SwapKind::nut_turns);
  for (const bool reread : {false, true}) {
    INFO("read from its file: " << reread);
    const auto as_is = [reread](const Machine& machine) {
      return reread ? *read_machine(write_machine(machine)) : machine;
    };
    CHECK(origin(as_is(hauled), PartSlot::drive, "belt_length") == Origin::preset);
    CHECK(origin(as_is(turned), PartSlot::drive, "nut_inertia") == Origin::preset);
    // asked for
    CHECK(origin(as_is(turned), PartSlot::drive, "driven") == Origin::entered);
  }
}

TEST_CASE("a swap that cannot be made is one of ends that hold nothing or of a loop without room") {
  const SwapAids aids = aids_with_stock();
  for (const Machine& machine : all_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const Swap& swap : all_swaps(machine.axes[axis])) {
        const auto result = swapped(machine, axis, swap, aids);
        const bool of_ends =
            swap.kind >= SwapKind::motor_end_fixed && swap.kind <= SwapKind::far_end_free;
        const bool of_idlers =
            swap.kind == SwapKind::add_idler || swap.kind == SwapKind::remove_idler;
        INFO(machine.name << " " << int(swap.kind));
        CHECK((result || of_ends || of_idlers));
        if (!result && of_ends) {
          CHECK(result.error().code == FaultCode::ends_do_not_hold);
        }
      }
    }
  }
}

TEST_CASE("what was there comes back when a part is swapped forth and back") {
  for (const Machine& machine : all_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const auto kinds = all_swaps(machine.axes[axis]);
      for (const Swap& back : kinds) {
        if (!stands(machine.axes[axis], back)) {
          continue;
        }
        for (const Swap& forth : kinds) {
          SwapAids aids = aids_with_stock();
          const auto away = swapped(machine, axis, forth, aids);
          if (!away || stands(away->axes[axis], back)) {
            continue;
          }
          aids.made.push_back({machine.axes[axis], away->axes[axis]});
          const auto again = swapped(*away, axis, back, aids);
          INFO(machine.name << " " << int(forth.kind) << " " << int(back.kind));
          REQUIRE(again);
          CHECK(*again == machine);
        }
      }
    }
  }
}

TEST_CASE("a part comes back as it was though another has been changed since") {
  const Machine machine = testing::ordinary_router();
  SwapAids aids = aids_with_stock();
  Machine hauled = made(machine, SwapKind::hauling_belt, aids);
  aids.made.push_back({machine.axes[0], hauled.axes[0]});
  hauled.axes[0].carriage.mass = Positive<Mass>::of(30_kg);
  const Machine back = made(hauled, SwapKind::screw, aids);
  CHECK(back.axes[0].drive == machine.axes[0].drive);
  CHECK(*back.axes[0].carriage.mass == 30_kg);
  // Too short for the travel by now: a longer one is put in its place.
  hauled.axes[0].basics.travel = Positive<Length>::of(2_m);
  hauled = made(made(hauled, SwapKind::screw), SwapKind::hauling_belt);
  const Machine longer = made(hauled, SwapKind::screw, aids);
  CHECK(*screw_of(longer.axes[0]).span >= 2_m);
}

TEST_CASE("one motor for two screws gets a loop of a belt in stock that wraps its pulley well") {
  for (const double spacing : {0.12, 0.2, 0.3, 0.5, 0.8, 1.2, 2.5}) {
    Machine machine = testing::ordinary_router();
    machine.axes[0].sides.spacing = Positive<Length>::of(from_si<Length>(spacing));
    const Machine looped = made(machine, SwapKind::one_motor);
    INFO(spacing);
    CHECK(faults_of(looped).empty());
    const auto layout = loop_layout(loop_of(looped));
    REQUIRE(layout);
    CHECK(layout->screws.size() == 2);
    const LoopPulley& one = layout->pulleys[layout->screws[0]];
    const LoopPulley& other = layout->pulleys[layout->screws[1]];
    CHECK(near(Length(abs(one.x - other.x)), from_si<Length>(spacing)));
    if (spacing >= 0.2) {
      CHECK(layout->path.contacts[layout->motor].wrap > 150_deg);
    }
    const auto stock = aids_with_stock().stock;
    const auto& teeth = std::ranges::find(stock, "5M", &StockBelts::profile)->teeth;
    if (spacing <= 0.8) {
      CHECK(std::ranges::binary_search(teeth, loop_of(looped).belt_teeth));
    }
  }
}

TEST_CASE("a loop of two screws left without its layout is computed once the layout is chosen") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].transmission = BeltLoopDrive();
  REQUIRE_FALSE(faults_of(machine).empty());
  CHECK(faults_of(made(machine, SwapKind::one_motor)).empty());
  CHECK(faults_of(made(machine, SwapKind::one_side)).empty());
  CHECK(faults_of(made(machine, SwapKind::two_motors)).empty());
}

TEST_CASE("a stage takes over the loop's teeth and belt, and its shafts stand apart") {
  const Machine looped = made(testing::ordinary_router(), SwapKind::belt_loop);
  CHECK(looped.axes[0].sides.layout == DriveLayout::one);
  Machine machine = looped;
  auto& loop = std::get<BeltLoopDrive>(machine.axes[0].transmission);
  loop.width = Positive<Length>::of(9_mm);
  const Machine staged = made(machine, SwapKind::belt_stage);
  const auto& stage = std::get<BeltStage>(staged.axes[0].transmission);
  CHECK(*stage.width == 9_mm);
  CHECK(stage.motor_pulley_teeth == 20);
  const auto apart = centre_distance(pulley_pitch_diameter(20.0, *stage.pitch),
                                     pulley_pitch_diameter(20.0, *stage.pitch),
                                     double(stage.belt_teeth) * *stage.pitch);
  REQUIRE(apart);
  CHECK(*apart > 75_mm);
  CHECK(*apart < 200_mm);
}

TEST_CASE("an idler more presses on the belt's back, and without it the loop is as it was") {
  SwapAids aids = aids_with_stock();
  const Machine looped = made(testing::ordinary_router(), SwapKind::one_motor, aids);
  const Machine more = made(looped, SwapKind::add_idler, aids);
  CHECK(loop_of(more).pulleys.size() == loop_of(looped).pulleys.size() + 1);
  CHECK(faults_of(more).empty());
  const auto layout = loop_layout(loop_of(more));
  REQUIRE(layout);
  for (std::size_t i = 0; i < loop_of(more).pulleys.size(); ++i) {
    if (loop_of(more).pulleys[i].role == PulleyRole::idler) {
      CHECK(layout->path.contacts[i].wrap > 1_deg);
      CHECK(swapped(more, 0, {SwapKind::remove_idler, i}, aids).has_value());
    }
  }
}

TEST_CASE("a turning nut gets an inertia and a load case the targets' thrust") {
  const Machine turned = made(testing::ordinary_router(), SwapKind::nut_turns);
  const auto inertia = screw_of(turned.axes[0]).nut_inertia;
  REQUIRE(inertia);
  CHECK(**inertia > 0.2_kg_cm2);
  CHECK(**inertia < 20_kg_cm2);
  const Machine worked = made(testing::ordinary_router(), SwapKind::add_load_case);
  REQUIRE(worked.axes[0].duty.load_cases.size() == 1);
  CHECK(**worked.axes[0].duty.load_cases[0].thrust == 150_N);
}

TEST_CASE("an end let go gives up the stretch that two fixed ends held") {
  Machine machine = testing::ordinary_router();
  screw_of(machine.axes[0]).far_end = EndSupport::fixed;
  screw_of(machine.axes[0]).stretch = NonNegative<Force>::of(900_N);
  const Machine loose = made(machine, SwapKind::far_end_supported);
  CHECK(*screw_of(loose.axes[0]).stretch == Force());
  const auto refused = swapped(loose, 0, {SwapKind::motor_end_free}, {});
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::ends_do_not_hold);
}

TEST_CASE("what stands is left alone to the bit") {
  const SwapAids aids = aids_with_stock();
  for (const Machine& machine : all_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const Swap& swap : all_swaps(machine.axes[axis])) {
        if (stands(machine.axes[axis], swap)) {
          CHECK(*swapped(machine, axis, swap, aids) == machine);
        }
      }
    }
  }
}

TEST_CASE("a change that would leave an axis uncomputed brings what must follow with it") {
  for (const Machine& machine : all_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      for (const PartSlot slot : {PartSlot::motor, PartSlot::transmission, PartSlot::drive}) {
        for (const std::string_view type : part_types(slot)) {
          Machine plain = machine;
          REQUIRE(set_part_type(plain, axis, slot, type));
          const auto swap = swap_to(type);
          REQUIRE(swap);
          const Machine made = with_what_follows(machine, plain, axis, swap, aids_with_stock());
          INFO(machine.name << " " << axis << " " << type);
          CHECK(faults_of(made).empty());
          CHECK(part_type(made, axis, slot) == type);
          CHECK((!faults_of(plain).empty() || made == plain));
        }
      }
    }
  }
}

TEST_CASE("each layout of the sides has its swap, and no other word has") {
  for (const std::string_view layout : fields::Names<DriveLayout>::list) {
    CHECK(swap_to_layout(layout));
  }
  CHECK_FALSE(swap_to_layout("three"));
  CHECK_FALSE(swap_to("crank"));
}
