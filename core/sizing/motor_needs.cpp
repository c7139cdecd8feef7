// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/motor_needs.h"

#include "sizing/prepared_axis.h"

#include <algorithm>
#include <numeric>

namespace feedwright {

namespace {

using State = SizingState<NoWorking>;

/// Forces along the motion that add up to what the thread pushes.
struct Forces {
  Force mass, gravity, guides, thrust;
  Force all() const { return mass + gravity + guides + thrust; }
};

/// The torque of moving_torque(), share by share. Each stage's loss is what its side before has
/// over its side behind, so the shares add up in whichever direction power flows.
std::array<Torque, torque_share_count> split(const State& s, Acceleration a, const Forces& forces) {
  std::array<Torque, torque_share_count> shares{};
  const auto set = [&](TorqueShare which, Torque torque) {
    shares[static_cast<std::size_t>(which)] = torque;
  };
  const auto at_motor = [&](Force force) { return Torque(force * s.screw_travel / s.reduction); };
  set(TorqueShare::motor_side, s.motor_side_inertia * (a / s.motor_travel));
  const Torque shaft = s.screw_side_inertia * (a / s.screw_travel);
  set(TorqueShare::screw_side, shaft / s.reduction);
  set(TorqueShare::mass, at_motor(forces.mass));
  set(TorqueShare::gravity, at_motor(forces.gravity));
  set(TorqueShare::guides, at_motor(forces.guides));
  set(TorqueShare::thrust, at_motor(forces.thrust));
  set(TorqueShare::drag, s.drag / s.reduction);
  const Torque at_screw = screw_torque(s, forces.all());
  set(TorqueShare::thread_loss, Torque((at_screw - s.drag) / s.reduction) - at_motor(forces.all()));
  const Torque driven = shaft + at_screw;
  set(TorqueShare::stage_loss,
      through_stage(driven, s.reduction, s.stage_efficiency) - Torque(driven / s.reduction));
  return shares;
}

Torque sum(const std::array<Torque, torque_share_count>& shares) {
  return std::accumulate(shares.begin(), shares.end(), Torque());
}

MotorNeed need(const State& s, MotorState state, Velocity feed, Duty duty,
               const std::array<Torque, torque_share_count>& shares) {
  const AngularVelocity speed = feed / s.motor_travel;
  const Torque torque = sum(shares);
  // Held at rest the same share is left free as in motion; the caution of a load too heavy to hold
  // goes by it too.
  const auto held = s.motor.holding_torque();
  const auto has = state != MotorState::holding ? s.motor.usable(speed, duty)
                   : held ? std::optional<Torque>(*held * s.motor.usable_share())
                          : std::nullopt;
  const AngularVelocity up_to = s.motor.speed_meeting(torque, duty);
  const double margin = has && torque > Torque() ? number(*has / torque) : has ? clear_margin : 0.0;
  return {state, torque, speed, feed, has, verdict_of(margin), up_to, up_to * s.motor_travel,
          shares};
}

} // namespace

std::vector<MotorNeed> motor_needs(const Machine& machine, const Axis& axis) {
  const PreparedAxis prepared(machine, axis);
  const State& s = prepared.state;
  const Targets& targets = axis.targets;
  std::vector<MotorNeed> needs;
  if (targets.feed && targets.acceleration) {
    const Acceleration a = **targets.acceleration;
    needs.push_back(need(s, MotorState::accelerating, **targets.feed, Duty::short_time,
                         split(s, a, {accelerating_force(s, a), s.gravity, s.friction, Force()})));
  }
  if (targets.cutting_feed && targets.thrust) {
    const Force thrust = side_force(s, Force(**targets.thrust));
    needs.push_back(need(s, MotorState::cutting, **targets.cutting_feed, Duty::continuous,
                         split(s, Acceleration(), {Force(), s.gravity, s.friction, thrust})));
  }
  const Torque held = s.out.holding_torque_needed.value_or(Torque());
  if (held > Torque()) {
    // Friction helps to hold: what it takes off stands against what the weight would ask.
    std::array<Torque, torque_share_count> shares{};
    const Torque pulled = s.gravity * s.screw_travel / s.reduction;
    const Torque behind_thread = pulled * s.back_efficiency;
    shares[static_cast<std::size_t>(TorqueShare::gravity)] = pulled;
    shares[static_cast<std::size_t>(TorqueShare::thread_loss)] = behind_thread - pulled;
    shares[static_cast<std::size_t>(TorqueShare::stage_loss)] = held - behind_thread;
    needs.push_back(need(s, MotorState::holding, Velocity(), Duty::continuous, shares));
  }
  return needs;
}

} // namespace feedwright
