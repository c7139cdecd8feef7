// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_machine.h"
#include "support/axes.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;
using feedwright::testing::ordinary_router;

namespace {

struct Sized {
  Machine machine = ordinary_router();
  std::vector<AxisResults> results;

  explicit Sized(std::size_t axes) {
    machine.axes.resize(axes, machine.axes.front());
    results.resize(axes);
  }
  MachineResults together() const { return size_machine(machine, results); }
};

} // namespace

TEST_CASE("the current of all axes at once is that of a drive maker's three axes", "[published]") {
  // Beckhoff, AX8000 multi-axis servo system, technical data, "Device fusing", handling system of
  // three axes: 6.90 A, 1.95 A and 0.85 A are 9.70 A together. The same page counts 0.9 of the sum
  // for machine tools, whose axes can all drive into the material at once; nothing is taken off
  // here
  constexpr double currents[] = {6.90, 1.95, 0.85};
  Sized sized(3);
  sized.machine.supply.voltage = Positive<Voltage>::of(48_V);
  for (std::size_t axis = 0; axis < 3; ++axis) {
    sized.results[axis].supply_power = 48_V * from_si<Current>(currents[axis]);
  }
  const MachineResults together = sized.together();
  REQUIRE(together.current);
  CHECK(near(*together.current, from_si<Current>(9.70), 1e-12));
  const MachineLimit& power = together.limit(MachineLimitId::supply_power);
  CHECK(power.reached->si == Approx(48.0 * 9.70));
  CHECK(power.single->si == Approx(48.0 * 6.90));
  CHECK(power.largest == std::size_t{0});
}

TEST_CASE("all axes braking at once charge the bus as one after another would") {
  // independent computation: the energies stored one by one, ½ C (V₂² − V₁²) each time, on top of
  // the voltage the one before left
  constexpr double energies[] = {3.1, 0.7, 12.4, 1.9};
  Sized sized(4);
  sized.machine.supply.voltage = Positive<Voltage>::of(60_V);
  sized.machine.supply.capacitance = Positive<Capacitance>::of(12000_uF);
  sized.machine.supply.voltage_limit = Positive<Voltage>::of(80_V);
  double voltage = 60.0;
  for (std::size_t axis = 0; axis < 4; ++axis) {
    sized.results[axis].returned_energy = from_si<Energy>(energies[axis]);
    voltage = std::sqrt(voltage * voltage + 2.0 * energies[axis] / 12000e-6);
  }
  const MachineResults together = sized.together();
  const MachineLimit& bus = together.limit(MachineLimitId::bus_voltage);
  CHECK(bus.reached->si == Approx(voltage).epsilon(1e-12));
  CHECK(bus.largest == std::size_t{2});
  CHECK(bus.single->si == Approx(std::sqrt(60.0 * 60.0 + 2.0 * 12.4 / 12000e-6)).epsilon(1e-12));
  // With the capacitance it names the bus just reaches its limit.
  REQUIRE(together.capacitance_needed);
  sized.machine.supply.capacitance = Positive<Capacitance>::of(*together.capacitance_needed);
  CHECK(sized.together().limit(MachineLimitId::bus_voltage).reached->si == Approx(80.0));
  CHECK(sized.together().limit(MachineLimitId::bus_voltage).verdict == Verdict::close);
}

TEST_CASE("a straight move at 45 degrees is as long as the diagonal of its square") {
  // independent computation: both axes stepped a second at their feeds, the ends' distance taken
  Sized sized(3);
  const Velocity feeds[] = {6_m_per_min, 8_m_per_min, 3_m_per_min};
  for (std::size_t axis = 0; axis < 3; ++axis) {
    sized.results[axis].governing_feed = feeds[axis];
  }
  const MachineResults together = sized.together();
  CHECK(near(*together.feed_any_direction, 3_m_per_min));
  REQUIRE(together.diagonals.size() == 3);
  for (const DiagonalFeed& diagonal : together.diagonals) {
    const double a = si_value(feeds[diagonal.first]);
    const double b = si_value(feeds[diagonal.second]);
    CHECK(si_value(diagonal.together) == Approx(std::hypot(a, b)).epsilon(1e-12));
    const double slower = std::min(a, b);
    CHECK(si_value(diagonal.evenly) == Approx(std::hypot(slower, slower)).epsilon(1e-12));
  }
  // 6 and 8 make 10
  CHECK(near(together.diagonals.front().together, 10_m_per_min, 1e-12));
}
