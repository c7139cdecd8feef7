// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/limits.h"

namespace feedwright {

namespace {

// Plain optionals of doubles travel in registers; of quantities with their kind they do not, and
// judging takes a third longer.

template <class C>
std::optional<double> target(const std::optional<C>& value) {
  return value ? std::optional(si_value(**value)) : std::nullopt;
}

std::optional<double> in_si(const std::optional<Force>& value) {
  return value ? std::optional(si_value(*value)) : std::nullopt;
}

/// The value a limit is held against, in the SI unit of what is reached.
std::optional<double> wanted(const LimitDescriptor& limit, const Targets& targets,
                             const AxisResults& out) {
  if (limit.scale == LimitScale::feed) {
    return target(targets.feed);
  }
  switch (limit.id) {
  case LimitId::motor_thrust: return in_si(out.cutting_force);
  case LimitId::acceleration: return target(targets.acceleration);
  case LimitId::inertia_match: return *targets.inertia_match;
  case LimitId::resolution: return target(targets.resolution);
  case LimitId::lost_motion: return target(targets.lost_motion);
  default: return in_si(out.axial_load);
  }
}

bool applies(LimitId id, const Axis& axis, const MotorCurve& motor) {
  const bool balls = axis.screw.thread == ThreadForm::ball;
  switch (id) {
  case LimitId::ball_speed:
  case LimitId::static_capacity: return balls;
  case LimitId::belt_speed: return std::holds_alternative<BeltStage>(axis.transmission);
  case LimitId::motor_speed: return motor.last_speed().has_value();
  default: return true;
  }
}

/// Which input an unreached limit is waiting for.
InputRef missing_for_reached(LimitId id, const Targets& targets) {
  const LimitDescriptor& limit = descriptor(id);
  switch (id) {
  case LimitId::motor_torque: return input_ref(PartSlot::targets, "acceleration");
  case LimitId::motor_thrust: return input_ref(PartSlot::targets, "cutting_feed");
  case LimitId::acceleration:
    return targets.feed ? input_ref(PartSlot::motor, "points")
                        : input_ref(PartSlot::targets, "feed");
  default: return input_ref(limit.part, limit.member);
  }
}

void judge(const LimitDescriptor& limit, const Axis& axis, const MotorCurve& motor,
           const AxisResults& out, Limit& judged) {
  judged.id = limit.id;
  judged.applies = applies(limit.id, axis, motor);
  const ResultDescriptor& result = descriptor(limit.result);
  const auto reached_si = result.si_of(out);
  const auto wanted_si = wanted(limit, axis.targets, out);
  if (wanted_si) {
    judged.wanted.emplace(AnyQuantity{result.kind, *wanted_si});
  }
  if (!reached_si) {
    judged.missing = missing_for_reached(limit.id, axis.targets);
    return;
  }
  judged.reached.emplace(AnyQuantity{result.kind, *reached_si});
  if (!wanted_si) {
    judged.missing = input_ref(PartSlot::targets, limit.target);
    return;
  }
  const double reached = *reached_si;
  const double asked = *wanted_si;
  const double allowed = limit.at_most ? asked : reached;
  const double needed = limit.at_most ? reached : asked;
  // Nothing asked for is met with the largest margin that can be shown.
  constexpr double boundless = 1e6;
  judged.margin = needed > allowed / boundless ? allowed / needed : boundless;
  judged.verdict = verdict_of(*judged.margin);
}

/// The lowest reached limit on a scale.
std::optional<LimitId> lowest(const AxisResults& out, LimitScale scale) {
  std::optional<LimitId> found;
  for (const LimitDescriptor& limit : limit_descriptors()) {
    const Limit& candidate = out.limit(limit.id);
    if (limit.scale == scale && candidate.applies && candidate.reached &&
        (!found || candidate.reached->si < out.limit(*found).reached->si)) {
      found = limit.id;
    }
  }
  return found;
}

} // namespace

Verdict verdict_of(double margin) {
  constexpr double clear_from = 1.2;
  if (margin >= clear_from) {
    return Verdict::clear;
  }
  return margin >= 1.0 ? Verdict::close : Verdict::over;
}

void judge_limits(const Machine& machine, const Axis& axis, const MotorCurve& motor,
                  AxisResults& out) {
  for (const LimitDescriptor& limit : limit_descriptors()) {
    judge(limit, axis, motor, out, out.limits[static_cast<std::size_t>(limit.id)]);
  }
  out.governing = lowest(out, LimitScale::feed);
  if (out.governing) {
    out.governing_feed = typed<Velocity>(*out.limit(*out.governing).reached);
  }
  out.governing_thrust_limit = lowest(out, LimitScale::thrust);
  if (out.governing_thrust_limit) {
    out.governing_thrust = typed<Force>(*out.limit(*out.governing_thrust_limit).reached);
  }
  find_cautions(machine, axis, motor, out);
}

} // namespace feedwright
