// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/read_file.h"
#include "sizing/size_axis.h"
#include "sizing/size_machine.h"
#include "support/axes.h"
#include "support/near.h"

#include <filesystem>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;
using feedwright::testing::ordinary_router;

namespace {

std::vector<AxisResults> all_sized(const Machine& machine) {
  std::vector<AxisResults> results;
  for (const Axis& axis : machine.axes) {
    results.push_back(size_axis(machine, axis));
  }
  return results;
}

/// Three axes whose power is known, the last with two motors.
Machine three_axes() {
  Machine machine = ordinary_router();
  std::get<StepperByPoints>(machine.axes.front().motor).resistance =
      Positive<Resistance>::of(1.1_ohm);
  std::get<StepperByPoints>(machine.axes.front().motor).rated_current =
      Positive<Current>::of(2.8_A);
  for (const char* letter : {"Y", "Z"}) {
    machine.axes.push_back(machine.axes.front());
    machine.axes.back().basics.letter = letter;
  }
  machine.axes[1].targets.feed = Positive<Velocity>::of(2_m_per_min);
  machine.axes[2].sides.layout = DriveLayout::two_motors;
  return machine;
}

MachineResults together(const Machine& machine) {
  return size_machine(machine, all_sized(machine));
}

} // namespace

TEST_CASE("what the machine needs is the sum of what its axes need, over every sample") {
  const std::filesystem::path root = FEEDWRIGHT_SOURCE_DIR;
  int seen = 0;
  for (const char* folder : {"sample-machines", "tests/machines"}) {
    for (const auto& entry : std::filesystem::directory_iterator(root / folder)) {
      if (entry.path().extension() != ".feedwright") {
        continue;
      }
      INFO(entry.path().string());
      const auto text = read_file(entry.path(), std::size_t{1} << 20U);
      REQUIRE(text);
      const auto machine = read_machine(*text);
      REQUIRE(machine);
      const auto results = all_sized(*machine);
      const MachineResults sum = size_machine(*machine, results);
      double power = 0.0;
      double energy = 0.0;
      bool whole = true;
      std::int64_t motors = 0;
      for (std::size_t axis = 0; axis < results.size(); ++axis) {
        power += si_value(results[axis].supply_power.value_or(Power()));
        energy += si_value(results[axis].returned_energy.value_or(Energy()));
        whole = whole && results[axis].supply_power;
        motors += machine->axes[axis].sides.layout == DriveLayout::two_motors ? 2 : 1;
      }
      const MachineLimit& limit = sum.limit(MachineLimitId::supply_power);
      CHECK((limit.reached ? limit.reached->si : 0.0) == Approx(power));
      CHECK(si_value(sum.returned_energy.value_or(Energy())) == Approx(energy));
      CHECK(sum.motors == motors);
      if (!whole) {
        CHECK(limit.verdict != Verdict::clear);
        CHECK_FALSE(limit.missing.member.empty());
      }
      ++seen;
    }
  }
  CHECK(seen == 13);
}

TEST_CASE("a supply that is enough for each axis alone may not be for all of them") {
  Machine machine = three_axes();
  const MachineResults sum = together(machine);
  const MachineLimit& open = sum.limit(MachineLimitId::supply_power);
  REQUIRE(open.reached);
  CHECK(open.verdict == Verdict::open);
  CHECK(open.missing == input_ref(PartSlot::supply, "power"));
  CHECK_FALSE(open.open_axis);
  CHECK(open.largest == std::size_t{2});
  CHECK(sum.motors == 4);
  // half of what all need, more than what any one does
  machine.supply.power =
      Positive<Power>::of(from_si<Power>((open.reached->si + open.single->si) / 2.0));
  const auto results = all_sized(machine);
  for (const AxisResults& axis : results) {
    CHECK(axis.limit(LimitId::supply_power).verdict != Verdict::over);
  }
  const MachineResults judged = size_machine(machine, results);
  CHECK(judged.limit(MachineLimitId::supply_power).verdict == Verdict::over);
  CHECK(any_limit_over(judged));
}

TEST_CASE("a machine's supply reads clear, close and over at the margins of every limit") {
  Machine machine = three_axes();
  const double needed = together(machine).limit(MachineLimitId::supply_power).reached->si;
  const std::pair<double, Verdict> ratings[] = {{1.21, Verdict::clear},
                                                {1.2, Verdict::clear},
                                                {1.19, Verdict::close},
                                                {1.0, Verdict::close},
                                                {0.99, Verdict::over}};
  for (const auto& [share, verdict] : ratings) {
    machine.supply.power = Positive<Power>::of(from_si<Power>(needed * share));
    const MachineLimit limit = together(machine).limit(MachineLimitId::supply_power);
    INFO(share);
    CHECK(limit.verdict == verdict);
    CHECK(*limit.margin == Approx(share));
  }
}

TEST_CASE("while an axis is open the sum is a least one that can be over but never clear") {
  Machine machine = three_axes();
  machine.axes[1].targets.acceleration.reset();
  machine.axes[1].targets.cutting_feed.reset();
  const double known = together(machine).limit(MachineLimitId::supply_power).reached->si;
  machine.supply.power = Positive<Power>::of(from_si<Power>(known * 2.0));
  const MachineLimit limit = together(machine).limit(MachineLimitId::supply_power);
  CHECK(limit.partial);
  CHECK(limit.verdict == Verdict::open);
  CHECK(limit.open_axis == std::size_t{1});
  CHECK(limit.missing == input_ref(PartSlot::targets, "acceleration"));
  machine.supply.power = Positive<Power>::of(from_si<Power>(known * 0.9));
  CHECK(together(machine).limit(MachineLimitId::supply_power).verdict == Verdict::over);
}

TEST_CASE("axes that each keep the bus within its limit can lift it over together") {
  Machine machine = three_axes();
  machine.supply.capacitance = Positive<Capacitance>::of(2000_uF);
  const MachineLimit free = together(machine).limit(MachineLimitId::bus_voltage);
  REQUIRE(free.reached);
  CHECK(free.reached->si > free.single->si);
  CHECK(free.missing == input_ref(PartSlot::supply, "voltage_limit"));
  machine.supply.voltage_limit =
      Positive<Voltage>::of(from_si<Voltage>((free.reached->si + free.single->si) / 2.0));
  const auto results = all_sized(machine);
  for (const AxisResults& axis : results) {
    CHECK(axis.limit(LimitId::bus_voltage).verdict != Verdict::over);
  }
  const MachineResults judged = size_machine(machine, results);
  CHECK(judged.limit(MachineLimitId::bus_voltage).verdict == Verdict::over);
  REQUIRE(judged.findings.size() == 1);
  CHECK(judged.findings.front().code == FindingCode::bus_over_limit);
}

TEST_CASE("without a capacitance or with a limit below the supply nothing is promised of the bus") {
  Machine machine = three_axes();
  MachineResults sum = together(machine);
  CHECK_FALSE(sum.limit(MachineLimitId::bus_voltage).reached);
  CHECK(sum.limit(MachineLimitId::bus_voltage).missing ==
        input_ref(PartSlot::supply, "capacitance"));
  CHECK_FALSE(sum.capacitance_needed);
  machine.supply.voltage_limit = Positive<Voltage>::of(40_V);
  machine.supply.capacitance = Positive<Capacitance>::of(1000_uF);
  sum = together(machine);
  CHECK_FALSE(sum.capacitance_needed);
  CHECK(sum.limit(MachineLimitId::bus_voltage).verdict == Verdict::over);
}

TEST_CASE("the steps a second at the feed reached are those of the controller where it governs") {
  Machine machine = three_axes();
  machine.controller.step_rate_limit = Positive<Frequency>::of(2_kHz);
  const auto results = all_sized(machine);
  const MachineResults sum = size_machine(machine, results);
  for (std::size_t axis = 0; axis < results.size(); ++axis) {
    REQUIRE(results[axis].governing == LimitId::step_rate);
    CHECK(near(*sum.axes[axis].top_step_rate, 2_kHz, 1e-12));
  }
}

TEST_CASE("the share of the motor's torque is the larger of fast moves and cut") {
  const Machine machine = three_axes();
  const auto results = all_sized(machine);
  const MachineResults sum = size_machine(machine, results);
  const AxisResults& x = results.front();
  const double rapid = si_value(*x.rapid_torque) / si_value(*x.usable_torque);
  const double cut = si_value(*x.cutting_torque) / si_value(*x.usable_torque_cutting);
  CHECK(*sum.axes.front().torque_used == Approx(std::max(rapid, cut)));
  CHECK_FALSE(sum.axes.front().rms_used);
}

TEST_CASE("a machine without axes asks nothing") {
  Machine machine = ordinary_router();
  machine.axes.clear();
  const MachineResults sum = size_machine(machine, {});
  CHECK(sum.motors == 0);
  CHECK_FALSE(sum.current);
  CHECK_FALSE(sum.feed_any_direction);
  CHECK(sum.diagonals.empty());
  CHECK_FALSE(any_limit_over(sum));
}
