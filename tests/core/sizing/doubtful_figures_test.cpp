// SPDX-License-Identifier: GPL-3.0-or-later

// Figures that nobody, or no supplier, has given, and an axis that lies or is balanced otherwise
// than it seems: each is said once, and no longer than it holds.

#include "machine/machine_file.h"
#include "sizing/motor_needs.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "units/read_quantity.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;

namespace {

const Finding* found(const Machine& machine, FindingCode code,
                     std::optional<PartSlot> part = std::nullopt) {
  static AxisResults results;
  results = size_axis(machine, machine.axes[0]);
  const auto finding = std::ranges::find_if(results.findings, [&](const Finding& each) {
    return each.code == code && (!part || each.subject == *part);
  });
  return finding != results.findings.end() ? &*finding : nullptr;
}

/// Gives a field the value it has, as if somebody had typed it.
void enter(Machine& machine, PartSlot slot, std::string_view member) {
  const auto field = field_of(machine, 0, slot, member);
  REQUIRE(field);
  REQUIRE(set_field(machine, 0, slot, member, field->value, {{}, Origin::entered}));
}

Machine by_points(std::string_view taken_at, std::string_view supply) {
  Machine machine = ordinary_router();
  StepperByPoints motor;
  motor.points = {testing::torque_point(0_rpm, 1_N_m), testing::torque_point(1200_rpm, 0.4_N_m)};
  machine.axes[0].motor = motor;
  const auto put = [&](PartSlot slot, std::string_view member, std::string_view text) {
    const auto read = read_quantity(text, Kind::voltage);
    REQUIRE(read);
    REQUIRE(set_field(machine, 0, slot, member, read->value, {{}, Origin::entered}));
  };
  put(PartSlot::motor, "points_voltage", taken_at);
  put(PartSlot::supply, "voltage", supply);
  return machine;
}

/// Straight up, 20 kg.
Machine upright(Force counterbalance) {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  axis.basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 2.0));
  axis.carriage.mass = Positive<Mass>::of(from_si<Mass>(20.0));
  axis.carriage.counterbalance = NonNegative<Force>::of(counterbalance);
  return machine;
}

} // namespace

TEST_CASE("figures of a part that nobody gave are counted until the last is given") {
  Machine machine = ordinary_router();
  machine.axes[0].motor = StepperByRatings();
  constexpr std::string_view figures[] = {"rotor_inertia", "holding_torque", "rated_current",
                                          "resistance",    "inductance",     "drive_current"};
  double left = double(std::size(figures));
  for (const std::string_view figure : figures) {
    const Finding* finding = found(machine, FindingCode::preset_figures, PartSlot::motor);
    INFO(figure);
    REQUIRE(finding != nullptr);
    CHECK(finding->actual->si == left);
    enter(machine, PartSlot::motor, figure);
    left -= 1.0;
  }
  CHECK(found(machine, FindingCode::preset_figures, PartSlot::motor) == nullptr);
}

TEST_CASE("a motor known by ratings says that its torque is reckoned") {
  Machine machine = ordinary_router();
  machine.axes[0].motor = StepperByRatings();
  CHECK(found(machine, FindingCode::torque_from_ratings) != nullptr);
  machine.axes[0].motor = Servo();
  CHECK(found(machine, FindingCode::torque_from_ratings) == nullptr);
  CHECK(found(by_points("48 V", "48 V"), FindingCode::torque_from_ratings) == nullptr);
}

TEST_CASE("a curve of another voltage says which way, and only if it is another") {
  using enum FindingCode;
  const auto says = [](const Machine& machine, FindingCode code) {
    return found(machine, code) != nullptr;
  };
  CHECK(says(by_points("48 V", "24 V"), points_at_other_voltage));
  CHECK_FALSE(says(by_points("48 V", "24 V"), curve_of_less_voltage));
  CHECK(says(by_points("24 V", "48 V"), curve_of_less_voltage));
  CHECK_FALSE(says(by_points("24 V", "48 V"), points_at_other_voltage));
  CHECK_FALSE(says(by_points("48 V", "48 V"), points_at_other_voltage));
  CHECK_FALSE(says(by_points("48 V", "48 V"), curve_of_less_voltage));
}

TEST_CASE("an axis called Z that lies flat is asked about") {
  Machine machine = ordinary_router();
  CHECK(found(machine, FindingCode::lifting_axis_flat) == nullptr);
  machine.axes[0].basics.letter = "Z";
  CHECK(found(machine, FindingCode::lifting_axis_flat) != nullptr);
  machine.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 2.0));
  CHECK(found(machine, FindingCode::lifting_axis_flat) == nullptr);
}

TEST_CASE("a counterbalance stronger than the weight lets the axis rise, not fall") {
  // 20 kg weigh 196.1 N
  const Machine light = upright(100_N);
  CHECK(found(light, FindingCode::axis_can_fall) != nullptr);
  CHECK(found(light, FindingCode::axis_can_rise) == nullptr);
  const Machine heavy = upright(400_N);
  CHECK(found(heavy, FindingCode::axis_can_fall) == nullptr);
  CHECK(found(heavy, FindingCode::axis_can_rise) != nullptr);
  Machine braked = heavy;
  braked.axes[0].carriage.brake = true;
  CHECK(found(braked, FindingCode::axis_can_rise) == nullptr);
  // Turned over it is the same: the counterbalance always pulls up.
  Machine turned = heavy;
  turned.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(-pi / 2.0));
  CHECK(found(turned, FindingCode::axis_can_rise) != nullptr);
}

TEST_CASE("holding at rest is judged by one figure, in the caution and among the needs") {
  Machine machine = upright(0_N);
  StepperByRatings motor;
  motor.holding_torque = Positive<Torque>::of(1_N_m);
  machine.axes[0].motor = motor;
  const auto held = [&](double share) {
    std::get<StepperByRatings>(machine.axes[0].motor).usable_share = Share::of(share);
    const auto needs = motor_needs(machine, machine.axes[0]);
    const auto need = std::ranges::find(needs, MotorState::holding, &MotorNeed::state);
    REQUIRE(need != needs.end());
    return *need;
  };
  const MotorNeed whole = held(1.0);
  REQUIRE(whole.has);
  CHECK(si_value(*held(0.5).has) == Approx(si_value(*whole.has) * 0.5));
  // just too weak by the caution is just over among the needs
  const double edge = si_value(whole.torque / *whole.has);
  CHECK(held(edge * 0.99).verdict == Verdict::over);
  CHECK(found(machine, FindingCode::hold_beyond_motor) != nullptr);
  CHECK(held(edge * 1.01).verdict != Verdict::over);
  CHECK(found(machine, FindingCode::hold_beyond_motor) == nullptr);
}
