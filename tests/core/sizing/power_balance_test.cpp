// SPDX-License-Identifier: GPL-3.0-or-later

// Power at the motor is power at the load, losses and what goes into moving parts. The torque is
// the program's; everything it is held against is reckoned here from the machine's own figures and
// the efficiencies, in plain SI numbers.

#include "core/sizing/plain_train.h"
#include "sizing/pipeline.h"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>

using namespace feedwright;
using feedwright::testing::Dice;
using feedwright::testing::Moment;
using feedwright::testing::random_moment;
using feedwright::testing::random_train;
using feedwright::testing::Train;
using feedwright::testing::TrainWish;

namespace {

constexpr int trains = 4000;
constexpr int states_each = 8;
/// Of the largest single power in the balance.
constexpr double agreed = 1e-9;

struct Sized {
  AxisPreparation ready;
  AxisResults out;
  NoWorking none;
  SizingState<NoWorking> state;

  explicit Sized(const Machine& machine)
      : ready(machine, machine.axes[0]), state{machine, machine.axes[0], ready, none, out} {
    train_and_loads(state);
  }
  Sized(const Sized&) = delete;
  Sized& operator=(const Sized&) = delete;
};

/// Torque that bearings and preload take at the screws, nothing of it from the load.
double drag_at_screws(const Train& train, const AxisResults& out) {
  if (const auto* belt = std::get_if<HaulingBelt>(&train.axis.drive)) {
    return train.screws * si_value(*belt->bearing_drag);
  }
  const Screw& screw = std::get<Screw>(train.axis.drive);
  const double preload = screw.preload_drag        ? si_value(**screw.preload_drag)
                         : out.preload_drag_torque ? si_value(*out.preload_drag_torque)
                                                   : 0.0;
  return train.screws * (preload + si_value(*screw.bearing_drag));
}

/// All in watts.
struct Balance {
  double motor, load, stored;
  double thread_loss, stage_loss, drag_loss, yaw_loss;
  double nut;     ///< what the nut gives the carriage; below zero, takes from it
  double shaft;   ///< what the stage gives the screws' shaft
  double largest; ///< single power of them all
  double left() const {
    return motor - load - stored - thread_loss - stage_loss - drag_loss - yaw_loss;
  }
  double off() const { return std::abs(left()) / largest; }
};

/// Loss of power that goes through `forward` or backward with those efficiencies, known where it
/// comes out forward and where it goes in backward: at the load's side.
double loss(double at_load, double forward, double backward) {
  return at_load >= 0.0 ? at_load / forward * (1.0 - forward) : -at_load * (1.0 - backward);
}

Balance balance(const Sized& sized, const Train& train, const Moment& m, double torque) {
  const double v = m.speed, a = m.acceleration, turn = v / train.travel;
  Balance b{};
  b.motor = torque * turn * train.reduction;
  b.load = train.steady(m) * v;
  b.yaw_loss = train.yaw(m) * v;
  const double at_motor = train.stored_at_motor() * a * v;
  const double at_screws = train.stored_at_screws() * a * v;
  const double carriage = train.mass() * a * v;
  b.stored = at_motor + at_screws + carriage;
  b.nut = b.load + b.yaw_loss + carriage;
  b.thread_loss = loss(b.nut, *sized.out.forward_efficiency, *sized.out.back_driving_efficiency);
  b.drag_loss = drag_at_screws(train, sized.out) * turn;
  b.shaft = b.nut + b.thread_loss + b.drag_loss + at_screws;
  b.stage_loss = loss(b.shaft, train.stage_efficiency, train.stage_efficiency);
  for (const double power :
       {b.motor, b.load, b.thread_loss, b.drag_loss, b.stage_loss, at_motor, at_screws, carriage}) {
    b.largest = std::max(b.largest, std::abs(power));
  }
  return b;
}

/// The force as the program's own steps hand it on.
Force steady_force(const Sized& sized, const Moment& m) {
  return sized.state.friction + (m.up ? 1.0 : -1.0) * sized.state.gravity + from_si<Force>(m.cut);
}
Torque program_torque(const Sized& sized, const Moment& m) {
  return moving_torque(sized.state, from_si<Acceleration>(m.acceleration), steady_force(sized, m));
}

/// The classic mistake: an efficiency always divides, whichever way power flows.
Torque mistaken_torque(const Sized& sized, const Moment& m) {
  const auto& s = sized.state;
  const auto a = from_si<Acceleration>(m.acceleration);
  const Force force = s.resisting_mass * a + steady_force(sized, m);
  const Torque shaft =
      s.screw_side_inertia * (a / s.screw_travel) + force * s.screw_travel / s.efficiency + s.drag;
  return s.motor_side_inertia * (a / s.motor_travel) + shaft / (s.reduction * s.stage_efficiency);
}

template <class Visit>
void for_trains(unsigned seed, const TrainWish& wish, const Visit& visit) {
  Dice dice(seed);
  for (int i = 0; i < trains; ++i) {
    const Machine machine = random_train(dice, wish);
    const Sized sized(machine);
    const Train train(machine.axes[0]);
    for (int k = 0; k < states_each; ++k) {
      const Moment moment = random_moment(dice);
      visit(sized, train, moment);
    }
  }
}

/// Every power of the balance, and whether nothing of it is left over.
bool balances(const Sized& sized, const Train& train, const Moment& m) {
  const Balance b = balance(sized, train, m, si_value(program_torque(sized, m)));
  INFO((m.up ? "up at " : "down at ")
       << m.speed << " m/s, " << m.acceleration << " m/s², cut " << m.cut << " N: motor " << b.motor
       << " W, load " << b.load << " W, stored " << b.stored << " W, thread " << b.thread_loss
       << " W, stage " << b.stage_loss << " W, drag " << b.drag_loss << " W, yaw " << b.yaw_loss
       << " W, left over " << b.left() << " W");
  const bool closed = b.off() <= agreed;
  if (!closed) {
    FAIL_CHECK("train " << train.axis.transmission.index() << "/" << train.axis.drive.index());
  }
  return closed;
}

} // namespace

TEST_CASE("motor power is load power, losses and stored power in all four quadrants") {
  // By direction of travel, speeding up or slowing down, and which way power goes at the nut and in
  // the stage.
  std::array<int, 16> seen{};
  std::array<std::array<int, 2>, 3> kinds{};
  bool closed = true;
  for_trains(1, {}, [&](const Sized& sized, const Train& train, const Moment& m) {
    closed = closed && balances(sized, train, m);
    const Balance b = balance(sized, train, m, 0.0);
    const int place = (m.up ? 8 : 0) + (m.acceleration > 0.0 ? 4 : 0) + (b.nut > 0.0 ? 2 : 0) +
                      (b.shaft > 0.0 ? 1 : 0);
    ++seen[static_cast<std::size_t>(place)];
    ++kinds[train.axis.transmission.index()][train.axis.drive.index()];
  });
  CHECK(closed);
  for (std::size_t i = 0; i < seen.size(); ++i) {
    INFO("case " << i);
    const bool pushes_while_shaft_pulls = (i & 3U) == 2U;
    const bool speeds_up = (i & 4U) != 0U;
    if (pushes_while_shaft_pulls) { // only the screw's own slowing down can do that
      CHECK((seen[i] > 0) == !speeds_up);
    } else {
      CHECK(seen[i] >= 100);
    }
  }
  for (const auto& of_transmission : kinds) {
    for (const int count : of_transmission) {
      CHECK(count >= 1000);
    }
  }
}

TEST_CASE("no thread, stage or drag of the program's ever gives power") {
  double worst = 0.0;
  for_trains(2, {}, [&](const Sized& sized, const Train& train, const Moment& m) {
    const auto& s = sized.state;
    const double turn = m.speed / train.travel;
    const auto a = from_si<Acceleration>(m.acceleration);
    const Force force = s.resisting_mass * a + steady_force(sized, m);
    const double at_nut = si_value(force) * m.speed;
    const double to_screw = si_value(screw_torque(s, force)) * turn;
    const double to_shaft = to_screw + train.stored_at_screws() * m.acceleration * m.speed;
    const double at_motor = train.stored_at_motor() * m.acceleration * m.speed;
    const double to_stage = si_value(program_torque(sized, m)) * turn * train.reduction - at_motor;
    const double drag = si_value(s.drag) * turn;
    const double scale = std::max({std::abs(at_nut), std::abs(to_shaft), std::abs(at_motor)});
    for (const double lost : {to_screw - drag - at_nut, to_stage - to_shaft, drag}) {
      worst = std::min(worst, lost / scale);
    }
  });
  INFO("least loss over the largest power: " << worst);
  CHECK(worst >= -agreed);
}

TEST_CASE("dividing by the efficiency in both directions would break the balance") {
  int backward = 0;
  int caught = 0;
  int made_of_nothing = 0;
  for_trains(3, {}, [&](const Sized& sized, const Train& train, const Moment& m) {
    const Balance b = balance(sized, train, m, si_value(mistaken_torque(sized, m)));
    // Where the nut is pulled along and what the thread then loses is more than a trifle.
    const bool matters = b.nut < 0.0 && b.thread_loss > 1e-3 * b.largest;
    if (!matters) {
      return;
    }
    ++backward;
    caught += b.off() > 1e5 * agreed ? 1 : 0;
    made_of_nothing += b.motor - b.load - b.stored < b.stage_loss + b.drag_loss ? 1 : 0;
  });
  CHECK(backward > trains);
  CHECK(caught == backward);
  CHECK(made_of_nothing == backward);
}

TEST_CASE("a self-locking thread takes power from the motor whichever way the load pushes") {
  int locking = 0;
  int pulled = 0;
  bool closed = true;
  for_trains(4, {.yaw = false, .self_locking = true},
             [&](const Sized& sized, const Train& train, Moment m) {
               if (*sized.out.back_driving_efficiency > 0.0 || !closed) {
                 return;
               }
               ++locking;
               closed = balances(sized, train, m);
               m.acceleration = 0.0; // nothing stored then feeds the motor
               const Torque torque = program_torque(sized, m);
               pulled += steady_force(sized, m) < Force() ? 1 : 0;
               closed = closed && balances(sized, train, m) && torque >= Torque() &&
                        torque == steady_torque(sized.state, steady_force(sized, m));
             });
  CHECK(closed);
  CHECK(locking > trains);
  CHECK(pulled > trains / 2);
}

TEST_CASE("two hauling belts on one motor have the drag of both pairs of bearings") {
  int hauled = 0;
  bool closed = true;
  for_trains(5, {}, [&](const Sized& sized, const Train& train, const Moment& m) {
    if (train.screws > 1.0 && std::holds_alternative<HaulingBelt>(train.axis.drive)) {
      ++hauled;
      closed = closed && balances(sized, train, m);
    }
  });
  CHECK(closed);
  CHECK(hauled > trains / 4);
}

namespace {

/// Whether trains with the tool off the middle of one drive balance while the speed changes so.
bool off_middle_balances(unsigned seed, double sign) {
  bool closed = true;
  for_trains(seed, {.yaw = true, .self_locking = false},
             [&](const Sized& sized, const Train& train, Moment m) {
               m.acceleration = sign * std::abs(m.acceleration);
               closed = closed && balances(sized, train, m);
             });
  return closed;
}

} // namespace

TEST_CASE("a tool off the middle makes the guides rub while speeding up") {
  CHECK(off_middle_balances(6, 1.0));
}

TEST_CASE("a tool off the middle makes the guides rub while slowing down too") {
  CHECK(off_middle_balances(7, -1.0));
}

TEST_CASE("an axis that falls unpowered turns its motor with no more than the detent holds") {
  int falling = 0;
  double worst = 0.0;
  Dice dice(8);
  for (int i = 0; i < trains; ++i) {
    Machine machine = random_train(dice);
    auto& motor = std::get<StepperByPoints>(machine.axes[0].motor);
    motor.detent_torque = dice.of<NonNegative<Torque>>(0.0, 0.05);
    const Sized sized(machine);
    const auto& fall = sized.out.falling_acceleration;
    if (!fall || *fall <= Acceleration()) {
      continue;
    }
    ++falling;
    const Force lowering = *sized.out.lowering_force;
    const Torque turned = moving_torque(sized.state, *fall, lowering);
    const double largest = std::max(si_value(abs(steady_torque(sized.state, lowering))),
                                    si_value(*motor.detent_torque));
    worst = std::max(worst, std::abs(si_value(turned + *motor.detent_torque)) / largest);
  }
  CHECK(falling > 300);
  CHECK(worst < agreed);
}
