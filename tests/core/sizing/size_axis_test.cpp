// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/envelopes.h"
#include "sizing/longer_axis.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "support/near.h"

#include <cfenv>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;
using feedwright::testing::ordinary_router;

namespace {

AxisResults sized(const Machine& machine) {
  return size_axis(machine, machine.axes.front());
}

std::map<std::string_view, double> values(const AxisResults& results) {
  std::map<std::string_view, double> all;
  for (const ResultDescriptor& result : result_descriptors()) {
    if (const auto value = result.get(results)) {
      all[result.name] = value->si;
    }
  }
  return all;
}

} // namespace

TEST_CASE("an ordinary hobby-router drive is workable below a metre") {
  // common practice, no source: 16 mm screw of 5 mm lead, 1:1 belt 5 mm × 15 mm, NEMA 23 stepper
  const AxisResults r = sized(ordinary_router());
  for (const LimitDescriptor& limit : limit_descriptors()) {
    INFO(limit.name);
    CHECK(r.limit(limit.id).verdict != Verdict::over);
  }
  CHECK(*r.governing_feed >= 3_m_per_min);
}

TEST_CASE("an inexpensive rolled screw's play shows as lost motion") {
  // common practice, no source: about 50 µm of backlash
  Machine machine = ordinary_router();
  testing::screw_of(machine.axes[0]).backlash = NonNegative<Length>::of(50_um);
  CHECK(near(*sized(machine).lost_motion, 50_um));
  machine.axes[0].targets.lost_motion = Positive<Length>::of(30_um);
  CHECK(sized(machine).limit(LimitId::lost_motion).verdict == Verdict::over);
}

TEST_CASE("a whole axis agrees with a drive maker's worked example", "[published]") {
  // Yaskawa servo selection, horizontal ball screw behind a 1/2 gear: 15 m/min, 250 kg, μ 0.2,
  // η 0.9, lead 10 mm, screw Ø 20 mm × 1.0 m of 7870 kg/m³, gear 0.40e-4 kg·m² (given at the
  // motor): 3000 rpm, friction torque 0.43 N·m, load inertia 2.29e-4 kg·m²
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  axis.carriage.mass = Positive<Mass>::of(250_kg);
  axis.guides.friction = NonNegative<double>::of(0.2);
  axis.guides.seal_drag = NonNegative<Force>::of(Force());
  axis.targets.feed = Positive<Velocity>::of(15_m_per_min);
  axis.targets.thrust = Positive<Force>::of(from_si<Force>(1e-9)); // friction alone
  testing::screw_of(axis).nominal_diameter = Positive<Length>::of(20_mm);
  testing::screw_of(axis).lead = Positive<TravelPerAngle>::of(10_mm_per_rev);
  testing::screw_of(axis).overall_length = Positive<Length>::of(1_m);
  testing::screw_of(axis).density = Positive<Density>::of(7870_kg_per_m3);
  testing::screw_of(axis).efficiency = Share::of(0.9);
  BeltStage gear;
  gear.screw_pulley_teeth = 40;
  gear.belt_teeth = 100;
  gear.efficiency = Share::of(1.0);
  gear.mass_per_length = NonNegative<LinearDensity>::of(LinearDensity());
  gear.motor_pulley_inertia = NonNegative<Inertia>::of(from_si<Inertia>(0.40e-4));
  gear.screw_pulley_inertia = NonNegative<Inertia>::of(Inertia());
  axis.transmission = gear;
  const AxisResults r = sized(machine);
  CHECK(near(*r.motor_speed, 3000_rpm, 1e-12));
  CHECK(near(*r.cutting_torque, 0.43_N_m, 1e-2));
  CHECK(near(*r.load_inertia, from_si<Inertia>(2.29e-4), 2e-3));
}

TEST_CASE("a drive maker's 80 kg axis has the printed torque and inertia", "[published]") {
  // from memory: Yaskawa servo selection, 80 kg directly on a 16 mm screw, lead 5 mm, 0.8 m, μ 0.2,
  // η 0.9, coupling 0.3 kg Ø 30 mm: 0.139 N·m, 1.25e-4 kg·m²
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  axis.carriage.mass = Positive<Mass>::of(80_kg);
  axis.guides.friction = NonNegative<double>::of(0.2);
  axis.guides.seal_drag = NonNegative<Force>::of(Force());
  axis.targets.thrust = Positive<Force>::of(from_si<Force>(1e-9));
  testing::screw_of(axis).span = Positive<Length>::of(0.79_m);
  testing::screw_of(axis).overall_length = Positive<Length>::of(0.8_m);
  testing::screw_of(axis).density = Positive<Density>::of(7870_kg_per_m3);
  testing::screw_of(axis).efficiency = Share::of(0.9);
  Coupling coupling;
  coupling.inertia = NonNegative<Inertia>::of(from_si<Inertia>(0.338e-4));
  axis.transmission = coupling;
  const AxisResults r = sized(machine);
  CHECK(near(*r.cutting_torque, 0.139_N_m, 3e-3));
  CHECK(near(*r.load_inertia, from_si<Inertia>(1.25e-4), 2e-3));
}

TEST_CASE("recording the working changes no result") {
  const Machine machine = ordinary_router();
  Working working;
  const auto plain = values(sized(machine));
  CHECK(values(size_axis(machine, machine.axes[0], working)) == plain);
}

TEST_CASE("every result that is computed in steps has a working of its own value") {
  const Machine machine = ordinary_router();
  Working working;
  const AxisResults r = size_axis(machine, machine.axes[0], working);
  for (const ResultDescriptor& result : result_descriptors()) {
    const auto value = result.get(r);
    const bool is_pick =
        result.id == ResultId::governing_feed || result.id == ResultId::governing_thrust;
    if (value && !is_pick) {
      INFO(result.name);
      const WorkingStep* step = working.find(result.id);
      REQUIRE(step != nullptr);
      CHECK(step->value.si == value->si);
      CHECK(step->how->value.si == value->si);
    }
  }
}

TEST_CASE("a lead behind a ratio is the lead over the ratio but for inertia and friction") {
  Machine through = ordinary_router();
  testing::screw_of(through.axes[0]).lead = Positive<TravelPerAngle>::of(10_mm_per_rev);
  auto& belt = std::get<BeltStage>(through.axes[0].transmission);
  belt.screw_pulley_teeth = 40;
  belt.belt_teeth = 100;
  Machine direct = ordinary_router();
  direct.axes[0].transmission = Coupling();
  const AxisResults a = sized(through);
  const AxisResults b = sized(direct);
  CHECK(near(*a.motor_travel, *b.motor_travel, 1e-12));
  CHECK(near(*a.steps_per_length, *b.steps_per_length, 1e-12));
  CHECK(near(*a.step_rate_feed, *b.step_rate_feed, 1e-12));
  CHECK(near(*a.motor_speed_feed, *b.motor_speed_feed, 1e-12));
  CHECK(near(*a.carriage_inertia, *b.carriage_inertia, 1e-12));
}

TEST_CASE("doubling all loads halves the static margins") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  testing::screw_of(axis).static_rating = Positive<Force>::of(20_kN);
  testing::screw_of(axis).bearing_thrust_limit = Positive<Force>::of(3_kN);
  const AxisResults once = sized(machine);
  axis.carriage.mass = Positive<Mass>::of(40_kg);
  axis.targets.thrust = Positive<Force>::of(300_N);
  axis.guides.seal_drag = NonNegative<Force>::of(5_N);
  const AxisResults twice = sized(machine);
  for (const LimitId id : {LimitId::buckling, LimitId::core_stress, LimitId::static_capacity,
                           LimitId::bearing_thrust}) {
    CHECK(*twice.limit(id).margin == Approx(*once.limit(id).margin / 2.0).epsilon(1e-12));
  }
}

TEST_CASE("what the motor can do it needs exactly its usable torque for") {
  Machine machine = ordinary_router();
  const AxisResults r = sized(machine);
  machine.axes[0].targets.acceleration = Positive<Acceleration>::of(*r.acceleration_available);
  CHECK(near(*sized(machine).rapid_torque, *r.usable_torque, 1e-12));
  CHECK(near(*sized(machine).motor_torque_feed, 3_m_per_min, 1e-9));
  machine.axes[0].targets.thrust = Positive<Force>::of(*r.thrust_available);
  CHECK(near(*sized(machine).cutting_torque, *r.usable_torque_cutting, 1e-12));
}

TEST_CASE("a missing input leaves its results open and names the input") {
  Machine machine = ordinary_router();
  machine.controller.step_rate_limit.reset();
  machine.axes[0].targets.acceleration.reset();
  const AxisResults r = sized(machine);
  CHECK_FALSE(r.step_rate_feed);
  CHECK(r.limit(LimitId::step_rate).verdict == Verdict::open);
  CHECK(r.limit(LimitId::step_rate).missing == input_ref(PartSlot::controller, "step_rate_limit"));
  CHECK_FALSE(r.rapid_torque);
  CHECK(r.limit(LimitId::motor_torque).missing == input_ref(PartSlot::targets, "acceleration"));
}

TEST_CASE("a level axis cannot fall, an upright one without a brake can") {
  Machine machine = ordinary_router();
  const auto falls = [&] {
    for (const Finding& finding : sized(machine).findings) {
      if (finding.code == FindingCode::axis_can_fall) {
        return true;
      }
    }
    return false;
  };
  CHECK_FALSE(falls());
  machine.axes[0].basics.incline = Finite<Angle>::of(90_deg);
  CHECK(falls());
  machine.axes[0].carriage.brake = true;
  CHECK_FALSE(falls());
  machine.axes[0].carriage.brake = false;
  machine.axes[0].carriage.counterbalance = NonNegative<Force>::of(20_kg * standard_gravity);
  CHECK_FALSE(falls());
}

TEST_CASE("holding takes less torque than lifting and lowering less than holding") {
  Machine machine = ordinary_router();
  machine.axes[0].basics.incline = Finite<Angle>::of(90_deg);
  machine.axes[0].targets.thrust = Positive<Force>::of(from_si<Force>(1e-9));
  const AxisResults r = sized(machine);
  CHECK(*r.holding_torque_needed < *r.cutting_torque);
  CHECK(*r.lowering_torque < Torque());
  CHECK(-*r.lowering_torque < *r.holding_torque_needed);
}

TEST_CASE("the nut counted as support never allows less than the whole span") {
  Machine machine = ordinary_router();
  for (const EndSupport far : {EndSupport::supported, EndSupport::fixed}) {
    for (int travel = 100; travel <= 850; travel += 50) {
      testing::screw_of(machine.axes[0]).far_end = far;
      testing::screw_of(machine.axes[0]).whip_span = WhipSpan::between_bearings;
      machine.axes[0].basics.travel = Positive<Length>::of(from_si<Length>(travel * 1e-3));
      const AxisResults r = sized(machine);
      CHECK(*r.whip_feed_nut_to_bearing >= *r.whip_feed_between_bearings);
      CHECK(near(*r.whip_feed, *r.whip_feed_between_bearings));
      testing::screw_of(machine.axes[0]).whip_span = WhipSpan::nut_to_bearing;
      CHECK(near(*sized(machine).whip_feed, *r.whip_feed_nut_to_bearing));
    }
  }
  machine.axes[0].basics.travel = Positive<Length>::of(100_mm);
  CHECK(*sized(machine).whip_feed_nut_to_bearing > *sized(machine).whip_feed_between_bearings);
}

TEST_CASE("the longest screw at a feed allows just that feed") {
  for (const WhipSpan reading : {WhipSpan::between_bearings, WhipSpan::nut_to_bearing}) {
    Machine machine = ordinary_router();
    Axis& axis = machine.axes[0];
    testing::screw_of(axis).whip_span = reading;
    const auto longest = longest_screw_at(machine, axis, 6_m_per_min);
    REQUIRE(longest);
    REQUIRE(longest->span);
    REQUIRE(longest->stops.size() == 1);
    CHECK(longest->stops.front().id == LimitId::whip);
    testing::screw_of(axis).span = Positive<Length>::of(*longest->span);
    CHECK(near(*sized(machine).whip_feed, 6_m_per_min, 1e-8));
  }
}

TEST_CASE("envelopes pass through the results at the wanted feeds") {
  const Machine machine = ordinary_router();
  const AxisResults r = sized(machine);
  const auto thrust = thrust_over_feed(machine, machine.axes[0], 2001);
  const auto nearest = std::min_element(thrust.begin(), thrust.end(), [](auto a, auto b) {
    return abs(a.feed - 1.5_m_per_min) < abs(b.feed - 1.5_m_per_min);
  });
  CHECK(near(nearest->thrust, *r.thrust_available, 2e-3));
  const auto acceleration = acceleration_over_feed(machine, machine.axes[0], 2001);
  const auto at = std::min_element(acceleration.begin(), acceleration.end(), [](auto a, auto b) {
    return abs(a.feed - 3_m_per_min) < abs(b.feed - 3_m_per_min);
  });
  CHECK(near(at->acceleration, *r.acceleration_available, 2e-3));
}

TEST_CASE("sizing raises no floating-point trap over all motors and transmissions") {
  std::feclearexcept(FE_ALL_EXCEPT);
  for (const auto motor : part_types(PartSlot::motor)) {
    for (const auto transmission : part_types(PartSlot::transmission)) {
      Machine machine = ordinary_router();
      REQUIRE(set_part_type(machine, 0, PartSlot::motor, motor));
      REQUIRE(set_part_type(machine, 0, PartSlot::transmission, transmission));
      const AxisResults r = sized(machine);
      CHECK(r.governing_feed);
      for (const auto& [name, value] : values(r)) {
        INFO(name);
        CHECK(std::isfinite(value));
      }
    }
  }
  CHECK(std::fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW) == 0);
}

TEST_CASE("a feed wanted to the digit of its limit is close, not over") {
  // 100 kHz at 10000 steps a turn of a 5 mm lead are 3 m/min, whatever the last bits say
  Machine machine = testing::ordinary_router();
  machine.axes[0].motor = Servo();
  machine.axes[0].transmission = Coupling();
  machine.axes[0].targets.feed = Positive<Velocity>::of(3_m_per_min);
  CHECK(sized(machine).limit(LimitId::step_rate).verdict == Verdict::close);
}
