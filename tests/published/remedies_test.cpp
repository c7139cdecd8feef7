// SPDX-License-Identifier: GPL-3.0-or-later

// Published examples solved backwards: asked for what the example reaches, the remedy must give
// the example's dimension.

#include "core/choosing/choosing_support.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::by_field;
using feedwright::testing::remedies_of;
using feedwright::testing::screw_of;
using feedwright::testing::si_after;

namespace {

/// A screw alone: nothing rubs, nothing weighs.
Machine bare_screw(Length core, Length span, Length travel) {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  axis.basics.travel = Positive<Length>::of(travel);
  axis.guides.friction = NonNegative<double>::of(0.0);
  axis.guides.seal_drag = NonNegative<Force>::of(Force());
  axis.targets.acceleration = Positive<Acceleration>::of(from_si<Acceleration>(1e-6));
  Screw& screw = screw_of(axis);
  screw.core_diameter = Positive<Length>::of(core);
  screw.nominal_diameter = Positive<Length>::of(core * 1.2);
  screw.pitch_diameter = Positive<Length>::of(core * 1.1);
  screw.span = Positive<Length>::of(span);
  return machine;
}

} // namespace

TEST_CASE("the longest span at a catalogue's permissible speed is the catalogue's", "[published]") {
  // Source: from memory, ball-screw catalogues: core 17.5 mm, 1100 mm, fixed-supported: 2180 rpm
  // permissible, the factor 0.8 inside.
  Machine machine = bare_screw(17.5_mm, 1600_mm, 400_mm);
  Screw& screw = screw_of(machine.axes[0]);
  screw.lead = Positive<TravelPerAngle>::of(from_si<TravelPerAngle>(0.010 / (2.0 * pi)));
  machine.axes[0].targets.feed = Positive<Velocity>::of(from_si<Velocity>(2180.0 / 60.0 * 0.010));
  const auto found = remedies_of(machine, LimitId::whip);
  const Remedy* span = by_field(found, PartSlot::drive, "span");
  REQUIRE(span != nullptr);
  // The speed is printed to three digits; the length goes with its root.
  CHECK(si_after(*span) == Approx(1.100).epsilon(0.003));
}

TEST_CASE("the span at which a textbook column carries its load is the textbook's", "[published]") {
  // Source: C. R. Wentzell, Machine Design, Ex. 3.5: pinned, Ø 5/8 in, 30 in, E 30e6 psi, S_y 42
  // ksi: critical load 2464 lbf. With its nut centred at the far end of 20 in of travel the loaded
  // length is (span + 20 in)/2, so 30 in means a span of 40 in.
  Machine machine = bare_screw(0.625_in, 50_in, 20_in);
  Screw& screw = screw_of(machine.axes[0]);
  screw.motor_end = EndSupport::supported;
  screw.far_end = EndSupport::supported;
  screw.buckling_safety = Positive<double>::of(1.0);
  screw.elastic_modulus = Positive<Pressure>::of(30e6_psi);
  screw.yield_strength = Positive<Pressure>::of(42e3_psi);
  machine.axes[0].targets.thrust = Positive<Force>::of(2464.16_lbf);
  const auto found = remedies_of(machine, LimitId::buckling);
  const Remedy* span = by_field(found, PartSlot::drive, "span");
  REQUIRE(span != nullptr);
  CHECK(si_after(*span) <= si_value(40_in) * (1.0 + 1e-4));
  CHECK(si_after(*span) == Approx(si_value(40_in)).epsilon(1.5e-3)); // 1 mm and its rounding
}

TEST_CASE("the fastest feed at a catalogue's speed limit of balls is the catalogue's") {
  // common practice, no source: D·n up to 70 000 mm·rpm; definition of lead and speed. A 20 mm
  // ball circle then turns at 3500 rpm, with a lead of 5 mm 17.5 m/min.
  Machine machine = bare_screw(16_mm, 500_mm, 300_mm);
  Screw& screw = screw_of(machine.axes[0]);
  screw.pitch_diameter = Positive<Length>::of(20_mm);
  machine.axes[0].targets.feed = Positive<Velocity>::of(25_m_per_min);
  const auto found = remedies_of(machine, LimitId::ball_speed);
  const Remedy* feed = by_field(found, PartSlot::targets, "feed");
  REQUIRE(feed != nullptr);
  CHECK(feed->nature == RemedyNature::asks_less);
  CHECK(feed->changes[0].text == "17.5 m/min");
}

TEST_CASE("the step rate a feed asks for is steps per length times feed") {
  // independent computation: 200 steps by 8, 5 mm, 1 to 1, 3 m/min: 16 000 steps a second
  Machine machine = testing::ordinary_router();
  machine.controller.step_rate_limit = Positive<Frequency>::of(from_si<Frequency>(10e3));
  const auto found = remedies_of(machine, LimitId::step_rate);
  const Remedy* rate = by_field(found, PartSlot::controller, "step_rate_limit");
  REQUIRE(rate != nullptr);
  CHECK(rate->sense == ChangeSense::at_least);
  CHECK(rate->changes[0].text == "16 kHz");
  const Remedy* microsteps = by_field(found, PartSlot::motor, "microsteps");
  REQUIRE(microsteps != nullptr);
  CHECK(microsteps->changes[0].after == FieldValue(std::int64_t{4}));
}
