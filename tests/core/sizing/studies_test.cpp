// SPDX-License-Identifier: GPL-3.0-or-later

// What studies are drawn from agrees with the results it stands beside, and with sums made here.

#include "core/sizing/random_trains.h"
#include "sizing/envelopes.h"
#include "sizing/error_budget.h"
#include "sizing/longer_axis.h"
#include "sizing/motor_needs.h"
#include "sizing/move_over_time.h"
#include "sizing/size_axis.h"
#include "sizing/thrust_at_tool.h"
#include "support/near.h"

#include <algorithm>
#include <numeric>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::Dice;
using feedwright::testing::near;
using feedwright::testing::ordinary_router;
using feedwright::testing::random_train;
using feedwright::testing::screw_of;

namespace {

constexpr int trains = 400;

AxisResults sized(const Machine& machine) {
  return size_axis(machine, machine.axes[0]);
}

void want(Axis& axis, Velocity feed, Acceleration acceleration, Force thrust) {
  axis.targets.feed = Positive<Velocity>::of(feed);
  axis.targets.cutting_feed = Positive<Velocity>::of(feed);
  axis.targets.acceleration = Positive<Acceleration>::of(acceleration);
  axis.targets.thrust = Positive<Force>::of(thrust);
}

Machine wanting_train(Dice& dice) {
  Machine machine = random_train(dice, {});
  want(machine.axes[0], from_si<Velocity>(dice.in(0.01, 0.1)),
       from_si<Acceleration>(dice.in(0.05, 2.0)), from_si<Force>(dice.in(1.0, 400.0)));
  return machine;
}

const MotorNeed* need_of(const std::vector<MotorNeed>& needs, MotorState state) {
  const auto found = std::ranges::find(needs, state, &MotorNeed::state);
  return found != needs.end() ? &*found : nullptr;
}

Torque summed(const MotorNeed& need) {
  return std::accumulate(need.shares.begin(), need.shares.end(), Torque());
}

/// An axis without any loss, so that all work is friction and lifting.
Machine lossless(Angle incline) {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  axis.transmission = Coupling();
  axis.basics.incline = Finite<Angle>::of(incline);
  Screw& screw = screw_of(axis);
  screw.efficiency = Share::of(1.0);
  screw.bearing_drag = NonNegative<Torque>::of(Torque());
  return machine;
}

/// ∫ T ω dt by straight lines between the moments: exact where torque is constant and speed linear.
Energy work(const MoveOverTime& move, TravelPerAngle motor_travel, bool up) {
  Energy sum{};
  for (std::size_t i = 1; i < move.moments.size(); ++i) {
    const MoveMoment& a = move.moments[i - 1];
    const MoveMoment& b = move.moments[i];
    const Torque torque = up ? Torque((a.up + b.up) / 2.0) : Torque((a.down + b.down) / 2.0);
    const Angle turned = (a.feed + b.feed) / 2.0 * (b.time - a.time) / motor_travel;
    sum += torque * turned;
  }
  return sum;
}

} // namespace

TEST_CASE("shares of the motor's torque add up to the results' torque on random trains") {
  Dice dice(20);
  int holding = 0;
  for (int i = 0; i < trains; ++i) {
    const Machine machine = wanting_train(dice);
    const AxisResults results = sized(machine);
    const auto needs = motor_needs(machine, machine.axes[0]);
    const MotorNeed* accelerating = need_of(needs, MotorState::accelerating);
    const MotorNeed* cutting = need_of(needs, MotorState::cutting);
    REQUIRE(accelerating != nullptr);
    REQUIRE(cutting != nullptr);
    REQUIRE(near(summed(*accelerating), *results.rapid_torque, 1e-12));
    REQUIRE(near(summed(*cutting), *results.cutting_torque, 1e-12));
    REQUIRE(near(accelerating->torque, *results.rapid_torque, 1e-12));
    if (const MotorNeed* held = need_of(needs, MotorState::holding)) {
      REQUIRE(near(summed(*held), *results.holding_torque_needed, 1e-9));
      ++holding;
    }
  }
  CHECK(holding > trains / 20);
}

TEST_CASE("shares of a level lossless axis are each what Newton says") {
  const Machine machine = lossless(Angle());
  const AxisResults results = sized(machine);
  const auto needs = motor_needs(machine, machine.axes[0]);
  const MotorNeed* need = need_of(needs, MotorState::accelerating);
  REQUIRE(need != nullptr);
  const TravelPerAngle travel = *screw_of(machine.axes[0]).lead;
  CHECK(near(need->share(TorqueShare::mass), Torque(20_kg * 0.5_m_per_s2 * travel), 1e-12));
  CHECK(near(need->share(TorqueShare::guides), Torque(*results.friction_force * travel), 1e-12));
  CHECK(need->share(TorqueShare::gravity) == Torque());
  CHECK(need->share(TorqueShare::thrust) == Torque());
  CHECK(abs(need->share(TorqueShare::thread_loss)) < from_si<Torque>(1e-12));
  CHECK(abs(need->share(TorqueShare::stage_loss)) < from_si<Torque>(1e-12));
}

TEST_CASE("the motor has enough up to the feed of the results, and less just beyond") {
  Dice dice(21);
  for (int i = 0; i < trains; ++i) {
    const Machine machine = wanting_train(dice);
    const AxisResults results = sized(machine);
    const auto needs = motor_needs(machine, machine.axes[0]);
    const MotorNeed* need = need_of(needs, MotorState::accelerating);
    REQUIRE(need != nullptr);
    REQUIRE(near(need->up_to_feed, *results.motor_torque_feed, 1e-9));
    const bool enough = results.usable_torque && *results.usable_torque >= *results.rapid_torque;
    REQUIRE((need->verdict != Verdict::over) == enough);
  }
}

TEST_CASE("a move over time takes as long as a servo maker's example", "[published]") {
  // Source: Yaskawa, servo selection example, horizontal ball screw: 0.275 m at 15 m/min, 0.1 s to
  // speed: 1.2 s
  Machine machine = ordinary_router();
  want(machine.axes[0], 15_m_per_min, 15_m_per_min / 0.1_s, 100_N);
  const auto move = move_over_time(machine, machine.axes[0], 0.275_m, 150);
  REQUIRE(move);
  CHECK(near(move->least_time, 1.2_s, 1e-12));
  CHECK(move->feed_reached);
  CHECK(near(move->moments.back().time, 1.2_s, 1e-9));
  CHECK(near(move->moments.back().position, 0.275_m, 1e-9));
}

TEST_CASE("without loss the motor's work over a move is friction and lifting, up and down") {
  for (const double degrees : {0.0, 20.0, 90.0}) {
    INFO(degrees);
    const Machine machine = lossless(from_si<Angle>(degrees * pi / 180.0));
    const AxisResults results = sized(machine);
    const Length distance = 200_mm;
    const auto move = move_over_time(machine, machine.axes[0], distance, 150);
    REQUIRE(move);
    const auto done = [&](double up) {
      return Energy((*results.friction_force + up * *results.gravity_force) * distance);
    };
    CHECK(near(work(*move, *results.motor_travel, true), done(1.0), 1e-9));
    CHECK(near(work(*move, *results.motor_travel, false), done(-1.0), 1e-9));
    CHECK(move->sloping == (degrees > 0.0));
  }
}

TEST_CASE("with losses a move takes more work than it leaves, and jerk makes it longer") {
  Machine machine = ordinary_router();
  const AxisResults results = sized(machine);
  const auto move = move_over_time(machine, machine.axes[0], 200_mm, 150);
  REQUIRE(move);
  CHECK(work(*move, *results.motor_travel, true) > Energy(*results.friction_force * 200_mm));
  machine.axes[0].duty.jerk = Positive<Jerk>::of(5_m_per_s3);
  const auto smooth = move_over_time(machine, machine.axes[0], 200_mm, 150);
  REQUIRE(smooth);
  CHECK(smooth->least_time > move->least_time);
}

TEST_CASE("the hardest moment of a long level move is the results' at the wanted feed") {
  Machine machine = ordinary_router();
  for (const double acceleration : {0.2, 0.5, 4.0}) {
    want(machine.axes[0], 3_m_per_min, from_si<Acceleration>(acceleration), 100_N);
    const AxisResults results = sized(machine);
    const auto move = move_over_time(machine, machine.axes[0], 700_mm, 120);
    REQUIRE(move);
    const double reserve = number(*results.usable_torque / *results.rapid_torque);
    CHECK(near(move->reserve, as_ratio(reserve), 1e-9));
    CHECK((move->verdict == Verdict::over) ==
          (results.limit(LimitId::acceleration).verdict == Verdict::over));
  }
}

TEST_CASE("a move lacks and stalls in the first moment that asks more, or in none") {
  Machine machine = ordinary_router();
  machine.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(0.5));
  int lacked = 0;
  int stalled = 0;
  // Without a counterbalance going up is harder, with one far too strong going down.
  for (const double counterbalance : {0.0, 600.0}) {
    machine.axes[0].carriage.counterbalance =
        NonNegative<Force>::of(from_si<Force>(counterbalance));
    for (const double acceleration : {0.5, 4.0, 8.0, 40.0}) {
      INFO(counterbalance << " N, " << acceleration << " m/s²");
      want(machine.axes[0], 3_m_per_min, from_si<Acceleration>(acceleration), 100_N);
      const auto move = move_over_time(machine, machine.axes[0], 700_mm, 120);
      REQUIRE(move);
      const auto first = [&](std::optional<Torque> MoveMoment::*has) {
        return std::ranges::find_if(move->moments,
                                    [has](const MoveMoment& at) {
                                      return std::max(abs(at.up), abs(at.down)) > *(at.*has);
                                    }) -
               move->moments.begin();
      };
      const auto at = [&](const std::optional<PressedMoment>& pressed) {
        return pressed ? std::ptrdiff_t(pressed->at) : std::ssize(move->moments);
      };
      CHECK(at(move->lacks) == first(&MoveMoment::usable));
      CHECK(at(move->stalls) == first(&MoveMoment::whole));
      CHECK(move->lacks.has_value() == (move->verdict == Verdict::over));
      CHECK((!move->lacks || move->lacks->upwards == (counterbalance == 0.0)));
      lacked += move->lacks ? 1 : 0;
      stalled += move->stalls ? 1 : 0;
    }
  }
  CHECK(stalled > 0);
  CHECK(lacked > stalled);
}

TEST_CASE("past the end of the motor's curve a move is open, not stalled") {
  Machine machine = ordinary_router();
  const AxisResults results = sized(machine);
  const Velocity end = typed<Velocity>(*results.limit(LimitId::motor_speed).reached);
  want(machine.axes[0], end * 1.1, 0.1_m_per_s2, 1_N);
  const auto move = move_over_time(machine, machine.axes[0], 4_m, 120);
  REQUIRE(move);
  REQUIRE(move->unknown);
  CHECK(move->moments[*move->unknown].feed > end);
  CHECK_FALSE(move->stalls);
  CHECK(move->verdict == (move->lacks ? Verdict::over : Verdict::open));
}

TEST_CASE("a move wants a feed and an acceleration, and a way") {
  Machine machine = ordinary_router();
  CHECK_FALSE(move_over_time(machine, machine.axes[0], Length(), 100));
  machine.axes[0].targets.acceleration.reset();
  CHECK_FALSE(move_over_time(machine, machine.axes[0], 100_mm, 100));
}

TEST_CASE("what reads clear ends where the limits' margin is 1.2") {
  Machine machine = ordinary_router();
  machine.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(0.3));
  Targets& targets = machine.axes[0].targets;
  const auto thrust = thrust_over_feed(machine, machine.axes[0], 41);
  const auto acceleration = acceleration_over_feed(machine, machine.axes[0], 41);
  targets.cutting_feed = Positive<Velocity>::of(thrust[10].feed);
  targets.thrust = Positive<Force>::of(thrust[10].clear);
  targets.feed = Positive<Velocity>::of(acceleration[10].feed);
  targets.acceleration = Positive<Acceleration>::of(acceleration[10].clear);
  const AxisResults results = sized(machine);
  CHECK(*results.limit(LimitId::motor_thrust).margin == Approx(1.2).epsilon(1e-9));
  CHECK(*results.limit(LimitId::acceleration).margin == Approx(1.2).epsilon(1e-9));
}

TEST_CASE("a limit of thrust brought to the tool is the cut that just meets it") {
  Dice dice(22);
  int met = 0;
  for (int i = 0; i < trains; ++i) {
    Machine machine = wanting_train(dice);
    machine.axes[0].duty.load_cases.clear();
    for (const ThrustAtTool& limit :
         thrust_limits_at_tool(machine, machine.axes[0], sized(machine))) {
      if (limit.thrust <= Force()) {
        continue;
      }
      machine.axes[0].targets.thrust = Positive<Force>::of(limit.thrust);
      const AxisResults results = sized(machine);
      if (*results.rapid_force > *results.cutting_force) {
        continue;
      }
      REQUIRE(*results.limit(limit.id).margin == Approx(1.0).epsilon(1e-9));
      ++met;
    }
  }
  CHECK(met > trains / 4);
}

TEST_CASE("load cases stand where they were reckoned, the least reserve being the results'") {
  Machine machine = ordinary_router();
  LoadCase light;
  light.feed = Positive<Velocity>::of(1_m_per_min);
  LoadCase heavy = light;
  heavy.feed = Positive<Velocity>::of(4_m_per_min);
  machine.axes[0].duty.load_cases = {light, heavy};
  const AxisResults results = sized(machine);
  const auto points = load_case_points(machine, machine.axes[0], results);
  REQUIRE(points.size() == 2);
  CHECK(points[0].feed == 1_m_per_min);
  CHECK(near(std::min(points[0].reserve, points[1].reserve), *results.load_case_reserve, 1e-12));
}

TEST_CASE("limits over the length pass through the results, and a longer screw is no quicker") {
  Machine machine = ordinary_router();
  want(machine.axes[0], 3_m_per_min, 4_m_per_s2, 100_N); // so that torque meets need on the curve
  const AxisResults results = sized(machine);
  const auto curves = feed_limits_over_span(machine, machine.axes[0], 800_mm, 1000_mm, 3);
  REQUIRE(curves.limits.size() >= 4);
  for (const FeedOverSpan& curve : curves.limits) {
    INFO(int(curve.id));
    REQUIRE(curve.points.size() == 3);
    CHECK(near(curve.points[1].feed, typed<Velocity>(*results.limit(curve.id).reached), 1e-12));
    CHECK(curve.points[2].feed <= curve.points[0].feed);
  }
  const auto torque = std::ranges::find(curves.limits, LimitId::motor_torque, &FeedOverSpan::id);
  REQUIRE(torque != curves.limits.end());
  CHECK(torque->points[2].feed < torque->points[0].feed);
}

TEST_CASE("the lowest over the length is what governs a screw of that length") {
  Dice dice(23);
  for (int i = 0; i < trains; ++i) {
    const Machine machine = wanting_train(dice);
    const auto* screw = std::get_if<Screw>(&machine.axes[0].drive);
    if (screw == nullptr) {
      continue;
    }
    const AxisResults results = sized(machine);
    const Length span = *screw->span;
    const auto lowest = feed_limits_over_span(machine, machine.axes[0], span, span, 2).lowest;
    REQUIRE(lowest.empty() != results.governing_feed.has_value());
    CHECK((lowest.empty() || near(lowest.front().feed, *results.governing_feed, 1e-12)));
  }
}

// Pulses a second over pulses a turn are turns a second, each a lead long: kinematics alone.
TEST_CASE("no length makes a screw quicker than its pulses, and what stops it is named") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  want(axis, 3_m_per_min, 1_m_per_s2, 50_N);
  const AxisResults before = sized(machine);
  const Velocity pulses = typed<Velocity>(*before.limit(LimitId::step_rate).reached);
  const double slower = 2.0 / 60.0 / si_value(pulses);
  machine.controller.step_rate_limit =
      Positive<Frequency>::of(Frequency(**machine.controller.step_rate_limit * slower));
  const auto longest = longest_screw_at(machine, axis, 3_m_per_min);
  REQUIRE(longest);
  CHECK_FALSE(longest->span);
  REQUIRE(longest->stops.size() == 1);
  CHECK(longest->stops.front().id == LimitId::step_rate);
  CHECK(near(longest->stops.front().feed, 2_m_per_min, 1e-12));
  // At what the pulses give to the digit the length counts again.
  CHECK(longest_screw_at(machine, axis, longest->stops.front().feed)->span);
}

// Euler: a slender screw twice as long buckles under a quarter of the force. The margin of one so
// gives the length at which what is wanted buckles it.
TEST_CASE("the longest screw is none that buckles, and buckling is named") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  want(axis, 0.2_m_per_min, 0.1_m_per_s2, 900_N);
  auto& screw = std::get<Screw>(axis.drive);
  screw.span = Positive<Length>::of(2.5_m);
  const double margin = *sized(machine).limit(LimitId::buckling).margin;
  const Length loaded = *sized(machine).buckling_length;
  // The travel stands in the middle of the span: its far end moves out by half of what is added.
  const Length beyond_middle = loaded - *screw.span / 2.0;
  const auto longest = longest_screw_at(machine, axis, 0.2_m_per_min);
  REQUIRE(longest->span);
  CHECK(longest->stops.empty());
  REQUIRE(longest->others == std::vector{LimitId::buckling});
  screw.span = Positive<Length>::of(*longest->span);
  CHECK(*sized(machine).limit(LimitId::buckling).margin == Approx(1.0).epsilon(1e-6));
  CHECK(si_value(*longest->span / 2.0 + beyond_middle) ==
        Approx(si_value(loaded) * std::sqrt(margin)).epsilon(1e-6));
}

TEST_CASE("a motor's curve that ends above the need stops no length") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  want(axis, 3_m_per_min, 1_m_per_s2, 10_N);
  const AxisResults results = sized(machine);
  REQUIRE(results.limit(LimitId::motor_torque).at_least);
  const Velocity end = typed<Velocity>(*results.limit(LimitId::motor_torque).reached);
  const auto curves = feed_limits_over_span(machine, axis, 300_mm, 320_mm, 2);
  CHECK(std::ranges::find(curves.limits, LimitId::motor_torque, &FeedOverSpan::id) ==
        curves.limits.end());
  const auto longest = longest_screw_at(machine, axis, 3_m_per_min);
  REQUIRE(longest->span);
  CHECK(longest->stops.front().id == LimitId::whip);
  CHECK(longest->stops.front().feed < end);
}

TEST_CASE("a longer hauling belt gives more, as the springs of its two ways say") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  HaulingBelt belt;
  belt.specific_stiffness = Positive<Force>::of(from_si<Force>(2e5));
  belt.belt_length = Positive<Length>::of(2.0_m);
  axis.drive = belt;
  Coupling rigid;
  rigid.stiffness = Positive<TorsionalStiffness>::of(from_si<TorsionalStiffness>(1e12));
  axis.transmission = rigid;
  const auto points = give_over_travel(machine, axis, 750_mm, 1500_mm, 2);
  REQUIRE(points.size() == 2);
  CHECK(near(*points[0].under_cut, *sized(machine).cutting_deflection, 1e-12));
  // Two springs side by side: F/(c/a + c/b), the carriage at the far end of its travel.
  const auto give = [&](double travel, double whole) {
    const double run = (whole - 20.0 * 5e-3) / 2.0;
    const double far = (run - travel) / 2.0 + travel;
    const double other = 2.0 * run - far;
    return from_si<Length>(150.0 / (2e5 / far + 2e5 / other));
  };
  CHECK(near(*points[0].under_cut, give(0.75, 2.0), 1e-6));
  CHECK(near(*points[1].under_cut, give(1.5, 3.5), 1e-6));
}

TEST_CASE("an error budget adds up to the results, and an open term names a field there is") {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  for (const bool known : {false, true}) {
    if (known) {
      Screw& screw = screw_of(axis);
      screw.backlash = NonNegative<Length>::of(20_um);
      screw.nut_stiffness = Positive<Stiffness>::of(from_si<Stiffness>(1e8));
      screw.bearing_stiffness = Positive<Stiffness>::of(from_si<Stiffness>(1e8));
      screw.dynamic_rating = Positive<Force>::of(10_kN);
      screw.grade = LeadGrade::g7;
      screw.temperature_rise = NonNegative<Temperature>::of(from_si<Temperature>(10.0));
      auto& belt = std::get<BeltStage>(axis.transmission);
      belt.tooth_gap = NonNegative<Length>::of(50_um);
      belt.specific_stiffness = Positive<Force>::of(from_si<Force>(2e5));
    }
    const AxisResults results = sized(machine);
    const auto columns = error_budget(axis, results);
    REQUIRE(columns.size() == 3);
    for (const ErrorColumn& column : columns) {
      for (const ErrorTerm& term : column.terms) {
        INFO(descriptor(term.id).name);
        CHECK((term.size.has_value() == known || term.missing.member.empty()));
        if (!term.size && !term.missing.member.empty()) {
          CHECK(
              field_of(machine, 0, static_cast<PartSlot>(term.missing.slot), term.missing.member));
        }
      }
      CHECK(column.sum.has_value() == known);
      if (column.sum) {
        CHECK(near(column.known, *column.sum, 1e-12));
        CHECK(*column.root <= *column.sum);
      }
    }
  }
}
