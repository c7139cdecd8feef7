// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/limits.h"

#include <algorithm>

namespace feedwright {

namespace {

// Plain optionals of doubles travel in registers; of quantities with their kind they do not, and
// judging takes a third longer.

template <class C>
std::optional<double> target(const std::optional<C>& value) {
  return value ? std::optional(si_value(**value)) : std::nullopt;
}

template <class Q>
std::optional<double> in_si(const std::optional<Q>& value) {
  return value ? std::optional(si_value(*value)) : std::nullopt;
}

/// The value a limit is held against, in the SI unit of what is reached.
std::optional<double> wanted(const LimitDescriptor& limit, const Machine& machine,
                             const Targets& targets, const AxisResults& out) {
  if (limit.scale == LimitScale::feed) {
    return target(targets.feed);
  }
  switch (limit.id) {
  case LimitId::motor_thrust: return in_si(out.cutting_force);
  case LimitId::acceleration: return target(targets.acceleration);
  case LimitId::inertia_match: return *targets.inertia_match;
  case LimitId::resolution: return target(targets.resolution);
  case LimitId::lost_motion: return target(targets.lost_motion);
  case LimitId::belt_pull: return in_si(out.belt_rim_force);
  case LimitId::haul_pull: return in_si(out.haul_rim_force);
  case LimitId::coupling_torque: return in_si(out.coupling_torque);
  case LimitId::rms_torque: return in_si(out.rms_torque);
  case LimitId::reversal_error: return target(targets.reversal_error);
  case LimitId::cutting_error: return target(targets.cutting_error);
  case LimitId::life: return target(targets.life);
  case LimitId::supply_power: return target(machine.supply.power);
  case LimitId::bus_voltage: return target(machine.supply.voltage_limit);
  case LimitId::load_cases: return out.cases.empty() ? std::nullopt : std::optional(1.0);
  default: return in_si(out.axial_load);
  }
}

bool applies(LimitId id, const Axis& axis, const MotorCurve& motor) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  const bool balls = screw != nullptr && screw->thread == ThreadForm::ball;
  const bool belt = belt_of(axis.transmission) != nullptr;
  switch (id) {
  case LimitId::ball_speed:
  case LimitId::static_capacity:
  case LimitId::life: return balls;
  case LimitId::whip: return screw != nullptr && screw->driven == DrivenMember::screw;
  case LimitId::screw_speed:
  case LimitId::buckling:
  case LimitId::core_stress:
  case LimitId::bearing_thrust: return screw != nullptr;
  case LimitId::belt_speed: return belt || screw == nullptr;
  case LimitId::belt_pull: return belt;
  case LimitId::haul_pull: return screw == nullptr;
  case LimitId::coupling_torque: return !belt;
  case LimitId::rms_torque: return !motor.is_stepper();
  case LimitId::motor_speed: return motor.last_speed().has_value();
  default: return true;
  }
}

InputRef missing_for_reversal(const Axis& axis, const AxisResults& out) {
  if (!out.lost_motion) {
    return input_ref(PartSlot::drive,
                     std::holds_alternative<Screw>(axis.drive) ? "backlash" : "tooth_gap");
  }
  return out.tooth_gap_error ? missing_for_stiffness(axis)
                             : input_ref(PartSlot::transmission, "tooth_gap");
}

InputRef missing_for_cutting_error(const Axis& axis, const AxisResults& out) {
  if (!axis.targets.thrust) {
    return input_ref(PartSlot::targets, "thrust");
  }
  return out.cutting_deflection ? input_ref(PartSlot::targets, "cutting_feed")
                                : missing_for_stiffness(axis);
}

/// What keeps the demand on the motor and its belt open.
InputRef missing_for_demand(const Targets& targets) {
  return input_ref(PartSlot::targets, targets.acceleration ? "feed" : "acceleration");
}

/// What would lead past the end of what is known of the motor.
InputRef end_of_curve(const Axis& axis) {
  return input_ref(PartSlot::motor,
                   std::holds_alternative<Servo>(axis.motor) ? "top_speed" : "points");
}

/// Which input an unreached limit is waiting for.
InputRef missing_for_reached(LimitId id, const Axis& axis, const AxisResults& out) {
  const LimitDescriptor& limit = descriptor(id);
  const Targets& targets = axis.targets;
  switch (id) {
  case LimitId::motor_torque: return input_ref(PartSlot::targets, "acceleration");
  case LimitId::motor_thrust:
    return targets.cutting_feed ? end_of_curve(axis) : input_ref(PartSlot::targets, "cutting_feed");
  case LimitId::acceleration:
    if (!targets.feed) {
      return input_ref(PartSlot::targets, "feed");
    }
    return end_of_curve(axis);
  case LimitId::belt_speed:
    return input_ref(std::holds_alternative<HaulingBelt>(axis.drive) ? PartSlot::drive
                                                                     : PartSlot::transmission,
                     "speed_limit");
  case LimitId::lost_motion:
  case LimitId::reversal_error: return missing_for_reversal(axis, out);
  case LimitId::cutting_error: return missing_for_cutting_error(axis, out);
  case LimitId::life:
    return out.mean_load ? input_ref(PartSlot::drive, "dynamic_rating")
                         : input_ref(PartSlot::duty, "load_cases");
  case LimitId::supply_power:
    return out.motor_power ? input_ref(PartSlot::motor, "resistance") : missing_for_demand(targets);
  case LimitId::bus_voltage:
    return out.returned_energy ? input_ref(PartSlot::supply, "capacitance")
                               : missing_for_demand(targets);
  default: return input_ref(limit.part, limit.member);
  }
}

/// Which input a limit without something to be held against is waiting for.
InputRef missing_for_wanted(const LimitDescriptor& limit, const Targets& targets) {
  switch (limit.id) {
  case LimitId::belt_pull:
  case LimitId::haul_pull:
  case LimitId::coupling_torque: return missing_for_demand(targets);
  case LimitId::load_cases: return input_ref(PartSlot::duty, "load_cases");
  case LimitId::rms_torque:
    return targets.feed && targets.acceleration ? input_ref(PartSlot::duty, "moves")
                                                : missing_for_demand(targets);
  case LimitId::supply_power:
  case LimitId::bus_voltage: return input_ref(PartSlot::supply, limit.target);
  default: return input_ref(PartSlot::targets, limit.target);
  }
}

void judge(const LimitDescriptor& limit, const Machine& machine, const Axis& axis,
           const MotorCurve& motor, const AxisResults& out, Limit& judged) {
  judged.id = limit.id;
  judged.applies = applies(limit.id, axis, motor);
  const ResultDescriptor& result = descriptor(limit.result);
  const auto reached_si = result.si_of(out);
  const auto wanted_si = wanted(limit, machine, axis.targets, out);
  if (wanted_si) {
    judged.wanted.emplace(AnyQuantity{result.kind, *wanted_si});
  }
  if (!reached_si) {
    judged.missing = missing_for_reached(limit.id, axis, out);
    return;
  }
  judged.reached.emplace(AnyQuantity{result.kind, *reached_si});
  if (!wanted_si) {
    judged.missing = missing_for_wanted(limit, axis.targets);
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

/// Where the motor's curve ends above the need, torque limits the feed there or above: nothing is
/// over or close by it while the wanted feed lies on the curve, and nothing is known past its end.
void hold_as_bound(const Axis& axis, const MotorCurve& motor, const AxisResults& out,
                   Limit& judged) {
  if (judged.id != LimitId::motor_torque || !judged.reached || !out.rapid_torque ||
      !motor.suffices_to_end(*out.rapid_torque, Duty::short_time)) {
    return;
  }
  judged.at_least = true;
  if (!judged.margin) {
    return;
  }
  if (verdict_of(*judged.margin) == Verdict::over) {
    judged.margin.reset();
    judged.verdict = Verdict::open;
    judged.missing = end_of_curve(axis);
    return;
  }
  // A margin of torque is as good as one of feed.
  const auto there = motor.usable(*out.motor_speed, Duty::short_time);
  const double in_torque =
      there && *out.rapid_torque > Torque() ? number(*there / *out.rapid_torque) : clear_margin;
  judged.verdict = verdict_of(std::max(*judged.margin, in_torque));
}

/// Which of two limits on a scale governs: the one with less margin, for some stand for one screw
/// and some for a motor; without margins the lower one.
bool governs(const Limit& a, const Limit& b) {
  return a.margin && b.margin ? *a.margin < *b.margin : a.reached->si < b.reached->si;
}

/// The governing limit of those reached on a scale.
std::optional<LimitId> lowest(const AxisResults& out, LimitScale scale) {
  std::optional<LimitId> found;
  for (const LimitDescriptor& limit : limit_descriptors()) {
    const Limit& candidate = out.limit(limit.id);
    if (limit.scale == scale && candidate.applies && candidate.reached && !candidate.at_least &&
        (!found || governs(candidate, out.limit(*found)))) {
      found = limit.id;
    }
  }
  return found;
}

} // namespace

InputRef missing_for_stiffness(const Axis& axis) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  const auto* coupling = std::get_if<Coupling>(&axis.transmission);
  const BeltBody* belt = belt_of(axis.transmission);
  if (coupling != nullptr && !coupling->stiffness) {
    return input_ref(PartSlot::transmission, "stiffness");
  }
  if (belt != nullptr && !belt->specific_stiffness) {
    return input_ref(PartSlot::transmission, "specific_stiffness");
  }
  if (screw == nullptr) {
    return input_ref(PartSlot::drive, "specific_stiffness");
  }
  if (!screw->nut_stiffness) {
    return input_ref(PartSlot::drive, "nut_stiffness");
  }
  const bool unscaled = screw->thread == ThreadForm::ball && !screw->dynamic_rating;
  return input_ref(PartSlot::drive, unscaled ? "dynamic_rating" : "bearing_stiffness");
}

Verdict verdict_of(double margin) {
  // What is wanted to the digit is met, however the last bits of the arithmetic fall.
  constexpr double rounding = 1e-9;
  if (margin >= clear_margin - rounding) {
    return Verdict::clear;
  }
  return margin >= 1.0 - rounding ? Verdict::close : Verdict::over;
}

NearTie near_tie(const AxisResults& results, LimitScale scale) {
  constexpr double close_by = 0.05;
  NearTie tie;
  const auto governing = lowest(results, scale);
  if (!governing) {
    return tie;
  }
  const Limit& first = results.limit(*governing);
  std::vector<std::pair<double, LimitId>> near;
  for (const LimitDescriptor& about : limit_descriptors()) {
    const Limit& other = results.limit(about.id);
    if (about.scale != scale || !other.applies || !other.reached || other.at_least) {
      continue;
    }
    const double gap = first.margin && other.margin ? *other.margin / *first.margin - 1.0
                                                    : other.reached->si / first.reached->si - 1.0;
    if (about.id == *governing || gap <= close_by) {
      near.emplace_back(about.id == *governing ? -1.0 : gap, about.id);
    }
  }
  std::stable_sort(near.begin(), near.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (const auto& [gap, id] : near) {
    tie.limits.push_back(id);
    tie.gap = std::max(gap, 0.0);
  }
  return tie;
}

void judge_limit(LimitId limit, const Machine& machine, const Axis& axis,
                 const AxisPreparation& ready, AxisResults& out) {
  Limit& judged = out.limits[static_cast<std::size_t>(limit)];
  judged = Limit();
  judge(descriptor(limit), machine, axis, ready.motor, out, judged);
  hold_as_bound(axis, ready.motor, out, judged);
}

void judge_limits(const Machine& machine, const Axis& axis, const AxisPreparation& ready,
                  AxisResults& out) {
  for (const LimitDescriptor& limit : limit_descriptors()) {
    judge_limit(limit.id, machine, axis, ready, out);
  }
  out.governing = lowest(out, LimitScale::feed);
  if (out.governing) {
    out.governing_feed = typed<Velocity>(*out.limit(*out.governing).reached);
  }
  out.governing_thrust_limit = lowest(out, LimitScale::thrust);
  if (out.governing_thrust_limit) {
    out.governing_thrust = typed<Force>(*out.limit(*out.governing_thrust_limit).reached);
  }
  find_cautions(machine, axis, ready, out);
}

} // namespace feedwright
