// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/at_position.h"

#include "core/sizing/random_trains.h"
#include "machine/machine_file.h"
#include "mechanics/stiffness.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;
using feedwright::testing::screw_of;

namespace {

/// The same thing missing on both sides, or as large.
template <class Q>
bool same(const std::optional<Q>& actual, const std::optional<Q>& wanted) {
  return actual.has_value() == wanted.has_value() && (!actual || near(*actual, *wanted, 1e-12));
}

Machine stiff_router() {
  Machine machine = testing::ordinary_router();
  Screw& screw = screw_of(machine.axes[0]);
  screw.nut_stiffness = Positive<Stiffness>::of(200_N_per_um);
  screw.dynamic_rating = Positive<Force>::of(9_kN);
  screw.bearing_stiffness = Positive<Stiffness>::of(150_N_per_um);
  Coupling coupling;
  coupling.stiffness = Positive<TorsionalStiffness>::of(400_N_m_per_rad);
  machine.axes[0].transmission = coupling;
  return machine;
}

Machine hauled() {
  Machine machine = testing::ordinary_router();
  HaulingBelt belt;
  belt.belt_length = Positive<Length>::of(2_m);
  belt.specific_stiffness = Positive<Force>::of(15_kN);
  machine.axes[0].drive = belt;
  Coupling coupling;
  coupling.stiffness = Positive<TorsionalStiffness>::of(400_N_m_per_rad);
  machine.axes[0].transmission = coupling;
  return machine;
}

} // namespace

TEST_CASE("with the nut at its worst place the figures are those of the sizing, for any train") {
  testing::Dice dice(20240611);
  for (int i = 0; i < 200; ++i) {
    Machine machine = testing::random_train(dice);
    Axis& axis = machine.axes[0];
    if (auto* screw = std::get_if<Screw>(&axis.drive)) {
      screw->far_end = EndSupport::supported; // then its far place is the worst of all
      screw->motor_end = EndSupport::fixed;
      screw->whip_span = WhipSpan::nut_to_bearing;
      screw->stretch = NonNegative<Force>::of(Force());
    }
    if (!faults_of(machine).empty()) {
      continue;
    }
    const AxisResults worst = size_axis(machine, axis);
    const AtPosition there = at_position(machine, axis, *axis.basics.travel);
    CHECK(same(there.buckling_thrust, worst.buckling_thrust));
    CHECK(same(there.shaft_stiffness, worst.shaft_stiffness));
    CHECK(same(there.haul_stiffness, worst.haul_stiffness));
    CHECK(same(there.axis_stiffness, worst.axis_stiffness));
    CHECK(same(there.natural_frequency, worst.natural_frequency));
    CHECK(same(there.windup_error, worst.windup_error));
    const AtPosition first = at_position(machine, axis, Length());
    CHECK((same(there.whip_feed, worst.whip_feed) || same(first.whip_feed, worst.whip_feed)));
  }
}

TEST_CASE("nowhere on the travel an axis does worse than the sizing says") {
  testing::Dice dice(7);
  for (int i = 0; i < 60; ++i) {
    const Machine machine = testing::random_train(dice);
    const Axis& axis = machine.axes[0];
    const AxisResults worst = size_axis(machine, axis);
    for (double share = 0.0; share <= 1.0; share += 0.125) {
      const AtPosition there = at_position(machine, axis, *axis.basics.travel * share);
      const auto no_less = [](const auto& at, const auto& least) {
        return !at || *at >= *least * (1.0 - 1e-12);
      };
      CHECK(no_less(there.whip_feed, worst.whip_feed));
      CHECK(no_less(there.buckling_thrust, worst.buckling_thrust));
      CHECK(no_less(there.axis_stiffness, worst.axis_stiffness));
      CHECK(no_less(there.natural_frequency, worst.natural_frequency));
      CHECK(no_less(worst.windup_error,
                    there.windup_error ? there.windup_error : worst.windup_error));
    }
  }
}

TEST_CASE("springs of an axis add up at every place as a catalogue adds them") {
  const Machine machine = stiff_router();
  const Axis& axis = machine.axes[0];
  const Screw& screw = screw_of(axis);
  const AxisResults sized = size_axis(machine, axis);
  for (const Length& along : {0_mm, 200_mm, 500_mm, 750_mm}) {
    const AtPosition there = at_position(machine, axis, along);
    const Length x = 75_mm + along;
    CHECK(near(there.place, x));
    // Source: LMTS ball screw catalogue, p. 53: 1/K = 1/K_S + 1/K_N + 1/K_B, K_S = A E/x; the
    // screw's twist and the coupling along the axis: Saint-Venant, k_t (2π/l)²
    const double area = pi / 4.0 * si_value(*screw.core_diameter) * si_value(*screw.core_diameter);
    const double shaft = area * 206e9 / si_value(x);
    const double d = si_value(*screw.core_diameter);
    const double turn = 2.0 * pi / 0.005;
    const double twist = 79e9 * pi * d * d * d * d / 32.0 / si_value(x) * turn * turn;
    const double coupling = 400.0 * turn * turn;
    const double nut = si_value(*sized.nut_stiffness);
    const double soft = 1.0 / shaft + 1.0 / twist + 1.0 / coupling + 1.0 / nut + 1.0 / 150e6;
    REQUIRE(there.axis_stiffness);
    CHECK(near(*there.axis_stiffness, from_si<Stiffness>(1.0 / soft)));
    CHECK(near(*there.natural_frequency,
               from_si<Frequency>(std::sqrt(1.0 / soft / 20.0) / (2.0 * pi))));
  }
}

TEST_CASE("a carriage on a belt is held by both its strands at every place") {
  const Machine machine = hauled();
  const Axis& axis = machine.axes[0];
  for (const Length& along : {0_mm, 300_mm, 750_mm}) {
    const AtPosition there = at_position(machine, axis, along);
    // Hooke, two strands in parallel: the direct one and the one round the far pulley
    const double whole = 2.0 - 20 * 0.005;
    const double direct = (whole / 2.0 - 0.75) / 2.0 + si_value(along);
    CHECK(near(*there.haul_stiffness, from_si<Stiffness>(15e3 / direct + 15e3 / (whole - direct))));
    CHECK(near(there.place, from_si<Length>(direct)));
  }
}

TEST_CASE("whip depends on the place only where the length between nut and bearing counts") {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  CHECK_FALSE(at_position(machine, axis, 100_mm).whip_depends);
  CHECK(near(*at_position(machine, axis, 100_mm).whip_feed, *size_axis(machine, axis).whip_feed));
  screw_of(axis).whip_span = WhipSpan::nut_to_bearing;
  const AtPosition half_way = at_position(machine, axis, 375_mm);
  CHECK(half_way.whip_depends);
  CHECK(near(*half_way.whip_length, 450_mm));
  CHECK(*half_way.whip_feed > 2.0 * *size_axis(machine, axis).whip_feed);
}

TEST_CASE("a nut right at a bearing is still a number, and no place lies beyond the travel") {
  Machine machine = stiff_router();
  Axis& axis = machine.axes[0];
  axis.basics.nut_at_start = NonNegative<Length>::of(Length());
  axis.basics.travel = Positive<Length>::of(900_mm);
  for (const EndSupport far_end : {EndSupport::fixed, EndSupport::supported}) {
    screw_of(axis).far_end = far_end;
    for (const Length& along : {Length(-1_m), 0_mm, 900_mm, 5_m}) {
      const AtPosition there = at_position(machine, axis, along);
      CHECK(there.place >= Length());
      CHECK(there.place <= 900_mm);
      CHECK(std::isfinite(si_value(*there.axis_stiffness)));
      CHECK(std::isfinite(si_value(*there.buckling_thrust)));
    }
  }
}
