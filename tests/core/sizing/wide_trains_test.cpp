// SPDX-License-Identifier: GPL-3.0-or-later

// What each kind of train must do, beyond the one screw on one motor.

#include "machine/machine_file.h"
#include "mechanics/stepper_torque.h"
#include "sizing/concerns.h"
#include "sizing/limits.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "support/near.h"

#include <algorithm>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;
using feedwright::testing::screw_of;

namespace {

AxisResults sized(const Machine& machine) {
  REQUIRE(faults_of(machine).empty());
  return size_axis(machine, machine.axes[0]);
}

bool warns(const AxisResults& results, FindingCode code) {
  return std::ranges::any_of(results.findings,
                             [&](const Finding& finding) { return finding.code == code; });
}

Machine gantry(DriveLayout layout) {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  axis.sides.layout = layout;
  axis.sides.spacing = Positive<Length>::of(0.8_m);
  if (layout == DriveLayout::one_motor) {
    axis.transmission = BeltLoopDrive();
  }
  return machine;
}

Machine upright(Length lead) {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  axis.basics.incline = Finite<Angle>::of(90_deg);
  axis.transmission = Coupling();
  screw_of(axis).lead = Positive<TravelPerAngle>::of(per_turn(lead));
  return machine;
}

} // namespace

TEST_CASE("two motors with nothing crossing carry half each") {
  const AxisResults one = sized(testing::ordinary_router());
  const AxisResults two = sized(gantry(DriveLayout::two_motors));
  CHECK(near(*two.worst_side_mass, 10_kg));
  CHECK(near(*two.rapid_force, Force(*one.rapid_force / 2.0)));
  CHECK(near(*two.cutting_force, Force(*one.cutting_force / 2.0)));
  CHECK(near(*two.carriage_inertia, Inertia(*one.carriage_inertia / 2.0)));
  CHECK(near(*two.screw_inertia, *one.screw_inertia));
  CHECK(*two.thrust_available > 1.99 * *one.thrust_available);
}

TEST_CASE(
    "the worst side of two takes the crossing mass and the cut at the end of the cross travel") {
  Machine machine = gantry(DriveLayout::two_motors);
  Sides& sides = machine.axes[0].sides;
  sides.crossing_mass = NonNegative<Mass>::of(8_kg);
  sides.cross_travel = NonNegative<Length>::of(0.4_m);
  const AxisResults r = sized(machine);
  // statics: ½ + 0.2/0.8 of what crosses, half of the other 12 kg
  CHECK(number(*r.worst_side_share) == Approx(0.75));
  CHECK(near(*r.worst_side_mass, 12_kg));
  CHECK(near(*r.cutting_force, Force(0.75 * 150_N + *r.side_friction)));
  CHECK(warns(r, FindingCode::sides_can_skew));
  // one rotor tooth of fifty lets a 5 mm lead slip by 0.1 mm
  CHECK(near(*r.skew_per_slip, 0.1_mm));
}

TEST_CASE("one motor on two screws turns both, and each carries its share") {
  Machine machine = gantry(DriveLayout::one_motor);
  machine.axes[0].sides.cross_travel = NonNegative<Length>::of(0.4_m);
  const AxisResults r = sized(machine);
  CHECK(near(*r.axial_load, Force(0.75 * *r.cutting_force)));
  // the whole mass at the motor, and twice one screw's inertia through the reduction of 1
  CHECK(near(*r.carriage_inertia, Inertia(20_kg * square(*r.motor_travel))));
  Machine light = machine;
  screw_of(light.axes[0]).density = Positive<Density>::of(1e-6_kg_per_m3);
  CHECK(near(Inertia(*r.load_inertia - *sized(light).load_inertia), Inertia(2.0 * *r.screw_inertia),
             1e-6));
  CHECK(r.loop.size() == 3);
}

TEST_CASE("a tool off a single screw presses the guides with its couple, and they rub") {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  axis.sides.cross_travel = NonNegative<Length>::of(0.3_m);
  axis.sides.crossing_mass = NonNegative<Mass>::of(5_kg);
  axis.sides.spacing = Positive<Length>::of(0.5_m);
  axis.guides.block_spacing = Positive<Length>::of(0.15_m);
  axis.guides.block_stiffness = Positive<Stiffness>::of(100_N_per_um);
  const AxisResults r = sized(machine);
  // 150 N at 150 mm over 150 mm: 150 N each way, friction 2·0.005·150 N
  CHECK(near(*r.couple_force, 150_N));
  const AxisResults plain = sized(testing::ordinary_router());
  CHECK(near(Force(*r.cutting_force - *plain.cutting_force), 1.5_N, 1e-6));
  // 150 N / 100 N/µm · 500/150
  CHECK(near(*r.skew, from_si<Length>(5e-6)));
}

TEST_CASE("a preloaded pair has no lost motion and pays with drag and life") {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  screw_of(axis).dynamic_rating = Positive<Force>::of(13_kN);
  screw_of(axis).static_rating = Positive<Force>::of(30_kN);
  screw_of(axis).nut_stiffness = Positive<Stiffness>::of(300_N_per_um);
  screw_of(axis).bearing_stiffness = Positive<Stiffness>::of(100_N_per_um);
  axis.duty.load_cases.emplace_back();
  const AxisResults single = sized(machine);
  screw_of(axis).nuts = NutArrangement::preloaded_pair;
  screw_of(axis).preload = Positive<Force>::of(800_N);
  const AxisResults pair = sized(machine);
  CHECK(*pair.lost_motion == Length());
  CHECK(*pair.drag_torque > *single.drag_torque);
  CHECK(*pair.life_turns < *single.life_turns);
  CHECK(*pair.nut_stiffness > *single.nut_stiffness);
  CHECK(*pair.static_thrust <= *single.static_thrust);
  CHECK(near(*pair.preload_holds_to, from_si<Force>(800.0 * 2.0 * std::sqrt(2.0))));
  CHECK_FALSE(warns(pair, FindingCode::preload_lost));
  screw_of(axis).preload = Positive<Force>::of(20_N);
  CHECK(warns(sized(machine), FindingCode::preload_lost));
}

TEST_CASE("two screws wound against each other are as stiff as two and drag by their thread") {
  Machine machine = gantry(DriveLayout::one_motor);
  Axis& axis = machine.axes[0];
  axis.sides.pairing = Pairing::opposed;
  screw_of(axis).preload = Positive<Force>::of(500_N);
  screw_of(axis).dynamic_rating = Positive<Force>::of(13_kN);
  std::get<BeltLoopDrive>(axis.transmission).specific_stiffness = Positive<Force>::of(330_kN);
  screw_of(axis).nut_stiffness = Positive<Stiffness>::of(300_N_per_um);
  screw_of(axis).bearing_stiffness = Positive<Stiffness>::of(100_N_per_um);
  const AxisResults r = sized(machine);
  CHECK(near(*r.axis_stiffness, Stiffness(2.0 * *r.drive_stiffness)));
  const double loss = 1.0 / *r.forward_efficiency - *r.back_driving_efficiency;
  CHECK(near(*r.drag_torque, Torque(500_N * *r.screw_travel * loss)));
  // each screw has the preload and what ISO 3408-5 adds to the loaded one
  CHECK(*r.axial_load > 500_N);
  CHECK(*r.axial_load < 500_N + *r.cutting_force);
  CHECK(*r.lost_motion == Length());
}

TEST_CASE("a single-start sliding thread holds by itself and is never trusted, four starts fall") {
  Machine machine = upright(4_mm);
  Axis& axis = machine.axes[0];
  screw_of(axis).thread = ThreadForm::trapezoidal;
  screw_of(axis).nominal_diameter = Positive<Length>::of(16_mm);
  screw_of(axis).core_diameter = Positive<Length>::of(11.5_mm);
  screw_of(axis).pitch_diameter = Positive<Length>::of(14_mm);
  screw_of(axis).thread_friction = Share::of(0.12);
  const AxisResults single = sized(machine);
  CHECK(*single.back_driving_efficiency < 0.0);
  CHECK(*single.falling_acceleration == Acceleration());
  CHECK(warns(single, FindingCode::self_locking_not_promised));
  CHECK(*single.lowering_torque > Torque());
  screw_of(axis).starts = 4;
  screw_of(axis).lead = Positive<TravelPerAngle>::of(16_mm_per_rev);
  const AxisResults quick = sized(machine);
  CHECK(near(*quick.thread_pitch, 4_mm));
  CHECK(*quick.back_driving_efficiency > 0.0);
  CHECK(warns(quick, FindingCode::axis_can_fall));
}

TEST_CASE("a thrust washer costs driving and helps holding") {
  Machine machine = upright(5_mm);
  const AxisResults plain = sized(machine);
  screw_of(machine.axes[0]).collar_friction = NonNegative<double>::of(0.1);
  screw_of(machine.axes[0]).collar_diameter = NonNegative<Length>::of(20_mm);
  const AxisResults washed = sized(machine);
  CHECK(*washed.forward_efficiency < *plain.forward_efficiency);
  CHECK(*washed.back_driving_efficiency < *plain.back_driving_efficiency);
  CHECK(near(Torque(*washed.thread_torque - *plain.thread_torque),
             from_si<Torque>(0.1 * si_value(*washed.rapid_force) * 0.01)));
}

TEST_CASE("a hauling belt moves by its pulley's teeth") {
  Machine machine = testing::ordinary_router();
  HaulingBelt belt;
  belt.pulley_teeth = 20;
  belt.tension = Positive<Force>::of(100_N);
  const Length run = (2_m - 100_mm) / 2.0;
  const Length near_end = (run - 750_mm) / 2.0;
  machine.axes[0].drive = belt;
  machine.axes[0].transmission = Coupling();
  const AxisResults r = sized(machine);
  CHECK(near(Length(*r.screw_travel * 2.0 * pi * radian), 100_mm));
  CHECK_FALSE(r.limit(LimitId::whip).applies);
  CHECK_FALSE(r.limit(LimitId::buckling).applies);
  CHECK(r.limit(LimitId::haul_pull).applies);
  CHECK(near(*r.haul_rim_force, *r.axial_load));
  // carriage near the driving pulley, 100 mm of the 1900 mm of free belt: pulled the long way round
  CHECK(near(*r.haul_tension_needed,
             Force(*r.haul_rim_force * (1.0 - si_value(near_end) / (2.0 * si_value(run))))));
}

TEST_CASE("a brake stops the caution of falling, a counterbalance the fall") {
  Machine machine = upright(10_mm);
  const AxisResults bare = sized(machine);
  CHECK(warns(bare, FindingCode::axis_can_fall));
  CHECK(*bare.falling_acceleration > Acceleration());
  CHECK(*bare.falling_acceleration < standard_gravity);
  CHECK(*bare.braking_torque < Torque());
  Machine braked = machine;
  braked.axes[0].carriage.brake = true;
  const AxisResults held = sized(braked);
  CHECK_FALSE(warns(held, FindingCode::axis_can_fall));
  // A tick says nothing of its strength.
  const auto told = std::ranges::find(held.findings, FindingCode::brake_not_judged, &Finding::code);
  REQUIRE(told != held.findings.end());
  CHECK(told->actual->si == si_value(*held.holding_torque_needed));
  CHECK_FALSE(warns(bare, FindingCode::brake_not_judged));
  Machine hung = machine;
  hung.axes[0].carriage.counterbalance = NonNegative<Force>::of(20_kg * standard_gravity);
  const AxisResults r = sized(hung);
  CHECK(abs(*r.gravity_force) < from_si<Force>(1e-9));
  CHECK(*r.falling_acceleration == Acceleration());
}

TEST_CASE("a turning nut leaves its screw still: no whip limit, no screw inertia") {
  Machine machine = testing::ordinary_router();
  Screw& screw = screw_of(machine.axes[0]);
  screw.span = Positive<Length>::of(3_m);
  screw.driven = DrivenMember::nut;
  screw.nut_inertia = NonNegative<Inertia>::of(2_kg_cm2);
  const AxisResults r = sized(machine);
  CHECK_FALSE(r.limit(LimitId::whip).applies);
  CHECK(near(*r.screw_inertia, 2_kg_cm2));
  CHECK_FALSE(r.torsion_stiffness);
  CHECK(warns(r, FindingCode::nut_near_shaft_frequency));
}

TEST_CASE("a bore makes a screw whip later and carry less") {
  Machine machine = testing::ordinary_router();
  const AxisResults solid = sized(machine);
  screw_of(machine.axes[0]).bore = NonNegative<Length>::of(8_mm);
  const AxisResults hollow = sized(machine);
  const double ratio = std::sqrt(13.2 * 13.2 + 8.0 * 8.0) / 13.2;
  CHECK(near(*hollow.whip_speed, AngularVelocity(*solid.whip_speed * ratio)));
  CHECK(*hollow.core_stress_thrust < *solid.core_stress_thrust);
  CHECK(*hollow.screw_inertia < *solid.screw_inertia);
}

TEST_CASE("a motor that corrects its position has no load angle in its errors") {
  Machine machine = testing::ordinary_router();
  const AxisResults open = sized(machine);
  std::get<StepperByPoints>(machine.axes[0].motor).closed_loop = true;
  const AxisResults closed = sized(machine);
  CHECK(*open.friction_load_angle > Length());
  CHECK(*closed.friction_load_angle == Length());
  CHECK(*closed.cutting_load_angle == Length());
}

TEST_CASE("a curve reckoned for more voltage keeps its torque to higher speeds, and says so") {
  Machine machine = testing::ordinary_router();
  auto& motor = std::get<StepperByPoints>(machine.axes[0].motor);
  motor.points_voltage = Positive<Voltage>::of(24_V);
  motor.holding_torque = Positive<Torque>::of(1.9_N_m);
  motor.rated_current = Positive<Current>::of(2.8_A);
  motor.resistance = Positive<Resistance>::of(1.13_ohm);
  const AxisResults before = sized(machine);
  CHECK(warns(before, FindingCode::curve_of_less_voltage));
  motor.reckon_for_supply = true;
  const AxisResults after = sized(machine);
  CHECK(warns(after, FindingCode::curve_reckoned_anew));
  CHECK_FALSE(warns(after, FindingCode::curve_of_less_voltage));
  CHECK(*after.usable_torque > *before.usable_torque);
}

TEST_CASE("a stretched screw does not grow with heat until its stretch is used up") {
  Machine machine = testing::ordinary_router();
  Screw& screw = screw_of(machine.axes[0]);
  screw.far_end = EndSupport::fixed;
  screw.temperature_rise = NonNegative<Temperature>::of(4_K);
  screw.grade = LeadGrade::g7;
  const AxisResults loose = sized(machine);
  // 11.5 ppm/K over 750 mm and 4 K; transport grade 7: 2·750/300·52 µm (from memory, ISO 3408-3)
  CHECK(near(*loose.heat_error, from_si<Length>(34.5e-6)));
  CHECK(near(*loose.lead_error, from_si<Length>(260e-6)));
  // held at both ends it presses with E A α ΔT until it is stretched by as much
  CHECK(near(*loose.heat_force, *loose.stretch_needed));
  CHECK(*loose.buckling_thrust < *loose.buckling_load / 2.0);
  screw.stretch = NonNegative<Force>::of(*loose.stretch_needed);
  const AxisResults stretched = sized(machine);
  CHECK(*stretched.heat_error < from_si<Length>(1e-12));
  CHECK(*stretched.heat_force < from_si<Force>(1e-6));
  CHECK(near(*stretched.buckling_thrust, Force(*stretched.buckling_load / 2.0)));
}

TEST_CASE("an error stays open while one of its terms does") {
  Machine machine = testing::ordinary_router();
  const AxisResults open = sized(machine);
  CHECK_FALSE(open.reversal_error);
  CHECK(open.limit(LimitId::reversal_error).missing == input_ref(PartSlot::drive, "backlash"));
  screw_of(machine.axes[0]).backlash = NonNegative<Length>::of(50_um);
  CHECK(sized(machine).limit(LimitId::reversal_error).missing ==
        input_ref(PartSlot::transmission, "tooth_gap"));
}

TEST_CASE("braking energy lifts the supply, and past the drives' limit it is said") {
  Machine machine = testing::ordinary_router();
  machine.supply.capacitance = Positive<Capacitance>::of(50_uF);
  machine.supply.voltage_limit = Positive<Voltage>::of(50_V);
  const AxisResults r = sized(machine);
  CHECK(*r.bus_voltage > 48_V);
  CHECK(near(Energy(50_uF * (square(*r.bus_voltage) - square(48_V)) / 2.0), *r.returned_energy,
             1e-9));
  CHECK(warns(r, FindingCode::bus_over_limit) ==
        (r.limit(LimitId::bus_voltage).verdict == Verdict::over));
}

TEST_CASE("a load case is held against every limit it meets") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].duty.load_cases.emplace_back();
  LoadCase& load = machine.axes[0].duty.load_cases[0];
  load.thrust = NonNegative<Force>::of(100_N);
  CHECK(sized(machine).limit(LimitId::load_cases).verdict == Verdict::clear);
  load.thrust = NonNegative<Force>::of(40_kN);
  const AxisResults hard = sized(machine);
  CHECK(hard.limit(LimitId::load_cases).verdict == Verdict::over);
  CHECK(hard.limit(LimitId::buckling).verdict == Verdict::over);
  CHECK(*hard.axial_load > 40_kN);
  load.thrust = NonNegative<Force>::of(1_N);
  load.feed = Positive<Velocity>::of(60_m_per_min);
  CHECK(sized(machine).limit(LimitId::load_cases).verdict == Verdict::over);
}

TEST_CASE("both fixed ends take thrust: the longer loaded length counts") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].basics.travel = Positive<Length>::of(300_mm);
  screw_of(machine.axes[0]).far_end = EndSupport::fixed;
  machine.axes[0].basics.nut_at_start = NonNegative<Length>::of(50_mm);
  const AxisResults near_motor = sized(machine);
  machine.axes[0].basics.nut_at_start = NonNegative<Length>::of(550_mm);
  const AxisResults far_off = sized(machine);
  CHECK(near(*near_motor.buckling_length, 850_mm));
  CHECK(near(*near_motor.buckling_thrust, *far_off.buckling_thrust));
}

TEST_CASE("a drive set below the rated current holds and turns with less") {
  Machine machine = testing::ordinary_router();
  auto& motor = std::get<StepperByPoints>(machine.axes[0].motor);
  motor.rated_current = Positive<Current>::of(2.8_A);
  motor.drive_current = Positive<Current>::of(2.8_A);
  const AxisResults whole = sized(machine);
  motor.drive_current = Positive<Current>::of(1.4_A);
  const AxisResults half = sized(machine);
  CHECK(near(*half.usable_torque, Torque(*whole.usable_torque / 2.0)));
  CHECK(*half.motor_resonance < *whole.motor_resonance);
}

TEST_CASE("stiffness stays open while the coupling's is not known") {
  Machine machine = testing::ordinary_router();
  Screw& screw = screw_of(machine.axes[0]);
  screw.nut_stiffness = Positive<Stiffness>::of(300_N_per_um);
  screw.bearing_stiffness = Positive<Stiffness>::of(100_N_per_um);
  screw.dynamic_rating = Positive<Force>::of(13_kN);
  Coupling coupling;
  machine.axes[0].transmission = coupling;
  CHECK_FALSE(sized(machine).axis_stiffness);
  coupling.stiffness = Positive<TorsionalStiffness>::of(800_N_m_per_rad);
  machine.axes[0].transmission = coupling;
  CHECK(sized(machine).axis_stiffness);
}

TEST_CASE("sizing with what was made ready before gives the same") {
  for (const DriveLayout layout :
       {DriveLayout::one, DriveLayout::two_motors, DriveLayout::one_motor}) {
    const Machine machine = gantry(layout);
    const AxisPreparation ready(machine, machine.axes[0]);
    const AxisResults a = size_axis(machine, machine.axes[0]);
    const AxisResults b = size_axis(machine, machine.axes[0], ready);
    for (const ResultDescriptor& result : result_descriptors()) {
      CHECK(result.si_of(a) == result.si_of(b));
    }
  }
}

TEST_CASE("an upright axis that only detent holds keeps a caution until a brake or balance holds") {
  // 3 kg on a 5 mm lead: m g l/(2π) = 0.0234 N·m before losses, under a detent of 0.07 N·m
  Machine machine = upright(5_mm);
  Axis& axis = machine.axes[0];
  axis.carriage.mass = Positive<Mass>::of(3_kg);
  std::get<StepperByPoints>(axis.motor).detent_torque = NonNegative<Torque>::of(0.07_N_m);
  const AxisResults light = sized(machine);
  CHECK(*light.holding_torque_needed < 0.0234_N_m);
  CHECK(*light.holding_torque_needed > 0.02_N_m);
  CHECK_FALSE(warns(light, FindingCode::axis_can_fall));
  CHECK(warns(light, FindingCode::held_unpowered_by_detent));
  // Every list of cautions is made from the same findings.
  const MachineResults together = size_machine(machine, std::vector{light});
  const auto all = concerns_of(machine, std::vector{light}, together).list;
  CHECK(std::ranges::count_if(all, [](const Concern& concern) {
          return concern.code() == "held_unpowered_by_detent" && !concern.grave &&
                 concern.member == "brake";
        }) == 1);
  // A shorter lead or a stronger detent never silences it.
  for (const Length& lead : {1_mm, 2_mm, 3_mm, 10_mm, 20_mm}) {
    screw_of(axis).lead = Positive<TravelPerAngle>::of(per_turn(lead));
    const AxisResults r = sized(machine);
    CHECK(warns(r, FindingCode::axis_can_fall) + warns(r, FindingCode::held_unpowered_by_detent) ==
          1);
    CHECK(warns(r, FindingCode::axis_can_fall) == (*r.holding_torque_needed > 0.07_N_m));
  }
  axis.carriage.brake = true;
  CHECK_FALSE(warns(sized(machine), FindingCode::held_unpowered_by_detent));
  axis.carriage.brake = false;
  axis.carriage.counterbalance = NonNegative<Force>::of(3_kg * standard_gravity);
  screw_of(axis).lead = Positive<TravelPerAngle>::of(5_mm_per_rev);
  CHECK_FALSE(warns(sized(machine), FindingCode::axis_can_fall));
}

TEST_CASE("a screw shorter than travel, nut and run-out is told, with the length it wants") {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  const auto found = [&]() -> std::optional<Finding> {
    const AxisResults r = sized(machine);
    const auto at = std::ranges::find(r.findings, FindingCode::screw_too_short, &Finding::code);
    return at != r.findings.end() ? std::optional(*at) : std::nullopt;
  };
  CHECK_FALSE(found());
  // 870 mm, a usual nut of 2 (16 + 5) mm, a turn of 5 mm at either end: 922 mm
  axis.basics.travel = Positive<Length>::of(870_mm);
  REQUIRE(found());
  CHECK(near(typed<Length>(*found()->actual), 900_mm));
  CHECK(near(typed<Length>(*found()->allowed), 922_mm));
  screw_of(axis).nut_length = Positive<Length>::of(20_mm);
  CHECK_FALSE(found()); // 870 + 20 + 10 = 900
  screw_of(axis).nut_length = Positive<Length>::of(21_mm);
  CHECK(found());
  // Set off to the far end, a short travel runs into the bearing as well.
  axis.basics.travel = Positive<Length>::of(500_mm);
  axis.basics.nut_at_start = NonNegative<Length>::of(390_mm);
  REQUIRE(found());
  CHECK(near(typed<Length>(*found()->allowed), 905.5_mm));
}

TEST_CASE("usual nuts are about as long as the estimate that stands in for their length") {
  // from memory: single flanged nuts of rolled screws, 16 × 5: 42 mm, 16 × 10: 57 mm, 20 × 5: 51
  // mm, 25 × 10: 80 mm, 32 × 10: 85 mm
  for (const auto& [diameter, lead, length] :
       {std::array{16.0, 5.0, 42.0}, std::array{16.0, 10.0, 57.0}, std::array{20.0, 5.0, 51.0},
        std::array{25.0, 10.0, 80.0}, std::array{32.0, 10.0, 85.0}}) {
    Machine machine = testing::ordinary_router();
    Screw& screw = screw_of(machine.axes[0]);
    screw.nominal_diameter = Positive<Length>::of(from_si<Length>(diameter * 1e-3));
    screw.lead = Positive<TravelPerAngle>::of(per_turn(from_si<Length>(lead * 1e-3)));
    screw.span = Positive<Length>::of(751_mm);
    const AxisResults r = sized(machine);
    const auto at = std::ranges::find(r.findings, FindingCode::screw_too_short, &Finding::code);
    REQUIRE(at != r.findings.end());
    CHECK(at->allowed->si * 1e3 - 750.0 - 2.0 * lead == Approx(length).epsilon(0.2));
  }
}

TEST_CASE("a shaft shorter than the length between its bearings is told") {
  Machine machine = testing::ordinary_router();
  screw_of(machine.axes[0]).overall_length = Positive<Length>::of(960_mm);
  CHECK_FALSE(warns(sized(machine), FindingCode::overall_below_span));
  screw_of(machine.axes[0]).span = Positive<Length>::of(1300_mm);
  const AxisResults r = sized(machine);
  const auto at = std::ranges::find(r.findings, FindingCode::overall_below_span, &Finding::code);
  REQUIRE(at != r.findings.end());
  CHECK(near(typed<Length>(*at->actual), 960_mm));
  CHECK(near(typed<Length>(*at->allowed), 1300_mm));
  // The screw is at least as long as what it spans.
  Machine open = machine;
  screw_of(open.axes[0]).overall_length.reset();
  CHECK(*sized(open).screw_inertia == *r.screw_inertia);
}

TEST_CASE("a cutting feed past the motor's curve wants the curve, not the cutting feed") {
  Machine machine = testing::ordinary_router();
  CHECK(sized(machine).limit(LimitId::motor_thrust).reached);
  machine.axes[0].targets.cutting_feed = Positive<Velocity>::of(from_si<Velocity>(5.0));
  const Limit past = sized(machine).limit(LimitId::motor_thrust);
  CHECK_FALSE(past.reached);
  CHECK(past.missing == input_ref(PartSlot::motor, "points"));
  machine.axes[0].targets.cutting_feed.reset();
  CHECK(sized(machine).limit(LimitId::motor_thrust).missing ==
        input_ref(PartSlot::targets, "cutting_feed"));
}

TEST_CASE("a pitch diameter at or below the core is refused") {
  Machine machine = testing::ordinary_router();
  screw_of(machine.axes[0]).pitch_diameter = Positive<Length>::of(10_mm);
  const auto faults = faults_of(machine);
  REQUIRE(faults.size() == 1);
  CHECK(faults[0].code == FaultCode::pitch_not_above_core);
  CHECK(faults[0].member == "pitch_diameter");
}

TEST_CASE("where the curve ends above the need its end governs, not torque") {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  const AxisResults r = sized(machine);
  // 60 % of the last point, 0.35 N·m at 1800 rpm: 9 m/min at 5 mm lead
  REQUIRE(*r.rapid_torque < 0.21_N_m);
  const Limit& torque = r.limit(LimitId::motor_torque);
  CHECK(torque.at_least);
  CHECK(torque.verdict == Verdict::clear);
  CHECK(near(typed<Velocity>(*torque.reached), 9_m_per_min));
  CHECK(r.governing == LimitId::motor_speed);
  CHECK(near(*r.governing_feed, 9_m_per_min));
  for (const LimitId id : near_tie(r, LimitScale::feed).limits) {
    CHECK(id != LimitId::motor_torque);
  }
  Working working;
  size_axis(machine, axis, working);
  const WorkingStep* step = working.find(ResultId::motor_torque_feed);
  REQUIRE(step != nullptr);
  CHECK(step->how->operands[0]->name == "curve_ends_above_need");
  // Near the end torque is not what is close,
  axis.targets.feed = Positive<Velocity>::of(8.5_m_per_min);
  const AxisResults near_end = sized(machine);
  CHECK(near_end.limit(LimitId::motor_speed).verdict == Verdict::close);
  CHECK(near_end.limit(LimitId::motor_torque).verdict == Verdict::clear);
  // past it nothing is known of torque,
  axis.targets.feed = Positive<Velocity>::of(9.5_m_per_min);
  const AxisResults past = sized(machine);
  CHECK(past.limit(LimitId::motor_speed).verdict == Verdict::over);
  CHECK(past.limit(LimitId::motor_torque).verdict == Verdict::open);
  CHECK_FALSE(past.limit(LimitId::motor_torque).margin);
  CHECK(past.limit(LimitId::motor_torque).missing == input_ref(PartSlot::motor, "points"));
  // and with more asked the two meet on the curve, where torque governs.
  axis.targets.acceleration = Positive<Acceleration>::of(5_m_per_s2);
  const AxisResults hard = sized(machine);
  CHECK_FALSE(hard.limit(LimitId::motor_torque).at_least);
  CHECK(hard.governing == LimitId::motor_torque);
}

TEST_CASE(
    "a curve taken at more volts than the supply gives promises no torque that is not there") {
  // The winding itself is the judge. Source: P. P. Acarnley, Stepping Motors, ch. 5, as checked in
  // the tests of its pull-out torque.
  const StepperWinding winding{50.0,
                               torque_constant(1.9_N_m, 2.8_A),
                               1.13_ohm,
                               from_si<Inductance>(3.6e-3),
                               2.8_A * std::numbers::sqrt2,
                               48_V};
  StepperByPoints motor;
  for (int rpm = 0; rpm <= 1800; rpm += 25) {
    const auto speed = from_si<AngularVelocity>(rpm * pi / 30.0);
    motor.points.push_back(testing::torque_point(speed, pull_out_torque(winding, speed)));
  }
  motor.points_voltage = Positive<Voltage>::of(48_V);
  motor.rated_current = Positive<Current>::of(2.8_A);
  motor.resistance = Positive<Resistance>::of(1.13_ohm);
  for (const Voltage& volts : {12_V, 24_V, 36_V}) {
    Supply supply;
    supply.voltage = Positive<Voltage>::of(volts);
    const MotorCurve curve(motor, supply);
    StepperWinding there = winding;
    there.voltage_limit = volts;
    CHECK(*curve.last_speed() < from_si<AngularVelocity>(60.0 * pi * number(volts / 48_V)));
    for (double share = 0.0; share <= 1.0; share += 0.02) {
      const AngularVelocity speed = share * *curve.last_speed();
      CHECK(si_value(*curve.torque(speed, Duty::short_time)) <=
            si_value(pull_out_torque(there, speed)) * 1.002 + 1e-6);
    }
  }
  Supply more;
  more.voltage = Positive<Voltage>::of(60_V);
  CHECK(near(*MotorCurve(motor, more).last_speed(), 1800_rpm));
}

TEST_CASE("at a quarter of the curve's voltage nothing reads clear that was so at the whole") {
  Machine machine = testing::ordinary_router();
  machine.supply.voltage = Positive<Voltage>::of(12_V);
  const AxisResults r = sized(machine);
  // 9 m/min · 12/48
  CHECK(near(*r.motor_speed_feed, 2.25_m_per_min));
  CHECK(r.limit(LimitId::motor_speed).verdict == Verdict::over);
  CHECK(r.limit(LimitId::motor_torque).verdict != Verdict::clear);
  CHECK(warns(r, FindingCode::points_at_other_voltage));
}

TEST_CASE("a stepper known by its ratings drags its own detent along") {
  StepperByRatings motor;
  motor.detent_torque = NonNegative<Torque>::of(0.07_N_m);
  Supply supply;
  supply.voltage = Positive<Voltage>::of(48_V);
  const MotorCurve curve(motor, supply);
  // Where current alone limits the motor makes its holding torque, less what the rotor drags.
  CHECK(near(*curve.torque(10_rpm, Duty::short_time), 1.83_N_m));
  CHECK(near(*curve.holding_torque(), 1.9_N_m));
  motor.detent_torque = NonNegative<Torque>::of(1.95_N_m);
  CHECK(*MotorCurve(motor, supply).torque(10_rpm, Duty::short_time) == Torque());
}

TEST_CASE("the reserve of the load cases and its working are one figure") {
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  LoadCase cut;
  cut.feed = Positive<Velocity>::of(1_m_per_min);
  cut.thrust = NonNegative<Force>::of(300_N);
  LoadCase quick;
  quick.feed = Positive<Velocity>::of(8_m_per_min);
  quick.thrust = NonNegative<Force>::of(1_N);
  const auto check = [&](double expected) {
    Working working;
    const AxisResults r = size_axis(machine, axis, working);
    const WorkingStep* step = working.find(ResultId::load_case_reserve);
    REQUIRE(step != nullptr);
    CHECK(step->value.si == r.limit(LimitId::load_cases).reached->si);
    CHECK(step->how->form == Expression::Form::divide);
    CHECK(step->value.si == Approx(expected).epsilon(1e-9));
  };
  axis.duty.load_cases = {quick, cut};
  check(9.0 / 8.0); // the governing feed over the quicker case's
  axis.duty.load_cases = {cut};
  const AxisResults r = sized(machine);
  // 200 rpm: between the points' 1.6 N·m at 150 and 1.45 N·m at 300 rpm
  const MotorCurve curve(axis.motor, machine.supply);
  CHECK(*curve.torque(200_rpm, Duty::continuous) < 1.6_N_m);
  CHECK(*curve.torque(200_rpm, Duty::continuous) > 1.45_N_m);
  check(std::min(9.0,
                 si_value(*curve.usable(200_rpm, Duty::continuous)) / si_value(r.cases[0].torque)));
}
