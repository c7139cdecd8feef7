// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_content.h"
#include "sizing/limits.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "support/near.h"

#include <algorithm>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;

namespace {

Machine two_alike() {
  Machine machine = ordinary_router();
  machine.axes.push_back(machine.axes.front());
  machine.axes.back().basics.letter = "Y";
  return machine;
}

std::vector<Purchase> bought(const Machine& machine, PurchaseKind kind) {
  std::vector<Purchase> found;
  std::ranges::copy_if(purchases_of(machine), std::back_inserter(found),
                       [kind](const Purchase& p) { return p.kind == kind; });
  return found;
}

SheetContent sheet_of(const Machine& machine) {
  return sheet_content(machine, {"router.json", "0123456789abcdef", "2026-05-01"});
}

} // namespace

TEST_CASE("like parts of several axes are counted together") {
  const auto motors = bought(two_alike(), PurchaseKind::motor);
  REQUIRE(motors.size() == 1);
  CHECK(motors.front().count == 2);
  CHECK(motors.front().letters == std::vector<std::string>{"X", "Y"});
}

TEST_CASE("two pulleys of one size are one line, of two sizes two lines") {
  Machine machine = ordinary_router();
  REQUIRE(bought(machine, PurchaseKind::pulley).size() == 1);
  CHECK(bought(machine, PurchaseKind::pulley).front().count == 2);
  CHECK(bought(machine, PurchaseKind::pulley).front().letters.size() == 1);
  std::get<BeltStage>(machine.axes.front().transmission).screw_pulley_teeth = 30;
  CHECK(bought(machine, PurchaseKind::pulley).size() == 2);
}

TEST_CASE("an end that is held by nothing needs no bearing") {
  Machine machine = ordinary_router();
  CHECK(bought(machine, PurchaseKind::fixed_bearing).size() == 1);
  CHECK(bought(machine, PurchaseKind::support_bearing).size() == 1);
  testing::screw_of(machine.axes.front()).far_end = EndSupport::free;
  CHECK(bought(machine, PurchaseKind::support_bearing).empty());
}

TEST_CASE("a screw of another lead is another part") {
  Machine machine = two_alike();
  testing::screw_of(machine.axes.back()).lead = Positive<TravelPerAngle>::of(10_mm_per_rev);
  CHECK(bought(machine, PurchaseKind::screw).size() == 2);
}

TEST_CASE("the supply is bought once for all axes") {
  const auto supplies = bought(two_alike(), PurchaseKind::supply);
  REQUIRE(supplies.size() == 1);
  CHECK(supplies.front().count == 1);
}

TEST_CASE("the sheet has every field of every part, every result and every limit") {
  const Machine machine = ordinary_router();
  const SheetContent sheet = sheet_of(machine);
  REQUIRE(sheet.axes.size() == 1);
  const SheetAxis& axis = sheet.axes.front();
  REQUIRE(axis.inputs.size() == std::size(axis_slots));
  for (const SheetInputs& part : axis.inputs) {
    // With one screw nothing is said of what two would do to each other.
    const std::size_t silent = part.slot == PartSlot::sides ? 1 : 0;
    CHECK(part.fields.size() + silent == fields_of(machine, 0, part.slot).size());
  }
  CHECK(axis.results.size() == result_descriptors().size());
  CHECK(axis.limits.size() + axis.not_applying.size() == limit_count);
}

TEST_CASE("the feed limits stand from the lowest up and the first one governs") {
  const SheetAxis axis = sheet_of(ordinary_router()).axes.front();
  REQUIRE(axis.governing);
  CHECK(axis.limits.front().id == *axis.governing);
  for (std::size_t i = 1; i < axis.limits.size(); ++i) {
    const Limit& before = axis.limits[i - 1];
    const Limit& limit = axis.limits[i];
    if (descriptor(limit.id).scale == LimitScale::feed && limit.reached && before.reached) {
      CHECK(before.reached->si <= limit.reached->si);
    }
  }
}

TEST_CASE("a limit without a value stands below those with one") {
  Machine machine = ordinary_router();
  machine.controller.step_rate_limit.reset();
  const SheetAxis axis = sheet_of(machine).axes.front();
  bool seen_open = false;
  for (const Limit& limit : axis.limits) {
    if (descriptor(limit.id).scale == LimitScale::feed) {
      CHECK_FALSE((seen_open && limit.reached));
      seen_open = seen_open || !limit.reached;
    }
  }
  CHECK(seen_open);
}

TEST_CASE("up to the top feed the motor gives the acceleration of the set-up") {
  for (const double wanted : {0.3, 0.5, 1.0, 2.0}) {
    Machine machine = ordinary_router();
    Targets& targets = machine.axes.front().targets;
    targets.acceleration = Positive<Acceleration>::of(from_si<Acceleration>(wanted));
    const SetUp figures = sheet_of(machine).axes.front().set_up;
    REQUIRE(figures.top_feed);
    REQUIRE(figures.acceleration);
    CHECK(figures.acceleration_as_wanted);
    targets.feed = Positive<Velocity>::of(typed<Velocity>(*figures.top_feed));
    const AxisResults there = size_axis(machine, machine.axes.front());
    REQUIRE(there.acceleration_available);
    CHECK(si_value(*there.acceleration_available) >= figures.acceleration->si * (1.0 - 1e-6));
    for (const LimitDescriptor& about : limit_descriptors()) {
      const Limit& limit = there.limit(about.id);
      if (about.scale == LimitScale::feed && limit.applies && limit.margin) {
        CHECK(*limit.margin >= clear_margin * (1.0 - 1e-9));
      }
    }
  }
}

TEST_CASE("without a wanted acceleration the set-up gives what there is") {
  Machine machine = ordinary_router();
  machine.axes.front().targets.acceleration.reset();
  const SetUp figures = sheet_of(machine).axes.front().set_up;
  CHECK_FALSE(figures.acceleration_as_wanted);
  CHECK(figures.acceleration ==
        descriptor(ResultId::acceleration_available).get(size_axis(machine, machine.axes.front())));
}

TEST_CASE("the lowest margin is that of no limit lower") {
  const Machine machine = ordinary_router();
  const AxisResults results = size_axis(machine, machine.axes.front());
  const auto lowest = lowest_margin(results);
  REQUIRE(lowest);
  for (const Limit& limit : results.limits) {
    if (limit.applies && limit.margin) {
      CHECK(*limit.margin >= lowest->margin);
    }
  }
  CHECK(results.limit(lowest->limit).margin == lowest->margin);
}

TEST_CASE("the sheet's first page wants of the axial force what its own limit is held against") {
  Machine machine = ordinary_router();
  LoadCase heavy; // slow, so the motor has no trouble with it
  heavy.thrust = NonNegative<Force>::of(400_N);
  machine.axes.front().duty.load_cases = {heavy};
  const AxisResults results = size_axis(machine, machine.axes.front());
  REQUIRE(results.governing_thrust_limit);
  const Limit& limit = results.limit(*results.governing_thrust_limit);
  REQUIRE(limit.wanted->si != Approx(si_value(*results.axial_load)));
  const SheetContent sheet = sheet_of(machine);
  CHECK(sheet.summary.front().thrust == limit.reached);
  CHECK(sheet.summary.front().thrust_wanted == limit.wanted);
  CHECK(sheet.axes.front().governing_thrust == results.governing_thrust_limit);
}

TEST_CASE("where limits of force have targets of their own, what governs stands first") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes.front();
  BeltLoopDrive loop;
  loop.belt_teeth = 250;
  axis.transmission = loop;
  axis.sides.layout = DriveLayout::one_motor; // the motor pushes both screws, each its half
  const SheetAxis page = sheet_of(machine).axes.front();
  std::vector<Limit> forces;
  std::ranges::copy_if(page.limits, std::back_inserter(forces), [](const Limit& limit) {
    return descriptor(limit.id).scale == LimitScale::thrust && limit.margin;
  });
  REQUIRE(forces.size() > 2);
  REQUIRE(std::ranges::any_of(
      forces, [&](const Limit& limit) { return limit.wanted->si != forces.front().wanted->si; }));
  CHECK(forces.front().id == page.governing_thrust);
  CHECK(std::ranges::is_sorted(forces, {}, [](const Limit& limit) { return *limit.margin; }));
}

TEST_CASE("some limit is over when more feed is wanted than the screw can turn") {
  Machine machine = ordinary_router();
  CHECK_FALSE(any_limit_over(size_axis(machine, machine.axes.front())));
  machine.axes.front().targets.feed = Positive<Velocity>::of(60_m_per_min);
  CHECK(any_limit_over(size_axis(machine, machine.axes.front())));
}

TEST_CASE("every result that is computed has its working on the sheet") {
  const SheetAxis axis = sheet_of(ordinary_router()).axes.front();
  for (const ResultId id : {ResultId::whip_feed, ResultId::buckling_thrust,
                            ResultId::motor_torque_feed, ResultId::inertia_match}) {
    INFO(descriptor(id).name);
    CHECK(std::ranges::any_of(axis.working,
                              [id](const WorkingStep& step) { return step.result == id; }));
  }
}

TEST_CASE("the sheet has what all axes ask at once, and every answer with its axis") {
  Machine machine = two_alike();
  machine.answers = {{AnswerTo::limit, "bus_voltage", "", "a resistor is fitted", "", "", {}}};
  machine.axes.back().answers = {
      {AnswerTo::finding, "long_open_screw", "drive", "covered", "900 mm", "", {}}};
  const SheetContent sheet = sheet_of(machine);
  CHECK(sheet.together.motors == 2);
  CHECK(sheet.together.axes.size() == 2);
  CHECK(sheet.answers == machine.answers);
  CHECK(sheet.axes.front().answers.empty());
  CHECK(sheet.axes.back().answers == machine.axes.back().answers);
}

TEST_CASE("the set-up of one axis is the one on its sheet") {
  const Machine machine = ordinary_router();
  const SetUp alone = set_up_of(machine, 0, size_axis(machine, machine.axes.front()));
  const SetUp printed = sheet_of(machine).axes.front().set_up;
  CHECK(alone.steps_per_length == printed.steps_per_length);
  CHECK(alone.top_feed == printed.top_feed);
  CHECK(alone.acceleration == printed.acceleration);
}
