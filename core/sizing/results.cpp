// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/results.h"

namespace feedwright {

namespace {

template <class Q>
std::optional<double> in_si(const std::optional<Q>& value) {
  return value ? std::optional(si_value(*value)) : std::nullopt;
}

constexpr ResultDescriptor results[] = {
#define RESULT(name, type, symbol, unit, publication)                                              \
  {ResultId::name,                                                                                 \
   #name,                                                                                          \
   symbol,                                                                                         \
   kind_of<type>::value,                                                                           \
   unit,                                                                                           \
   publication,                                                                                    \
   [](const AxisResults& r) { return in_si(r.name); }},
#include "sizing/results.def"
#undef RESULT
};

using enum LimitScale;
using R = ResultId;
using S = PartSlot;
constexpr LimitDescriptor limits[limit_count] = {
    {LimitId::whip, "whip", feed, R::whip_feed, "feed", false, S::drive, "span"},
    {LimitId::ball_speed, "ball_speed", feed, R::ball_speed_feed, "feed", false, S::drive,
     "ball_speed_limit"},
    {LimitId::screw_speed, "screw_speed", feed, R::screw_speed_feed, "feed", false, S::drive,
     "speed_limit"},
    {LimitId::motor_torque, "motor_torque", feed, R::motor_torque_feed, "feed", false, S::motor,
     "usable_share"},
    {LimitId::motor_speed, "motor_speed", feed, R::motor_speed_feed, "feed", false, S::motor,
     "points"},
    {LimitId::step_rate, "step_rate", feed, R::step_rate_feed, "feed", false, S::controller,
     "step_rate_limit"},
    {LimitId::belt_speed, "belt_speed", feed, R::belt_speed_feed, "feed", false, S::transmission,
     "speed_limit"},
    {LimitId::guide_speed, "guide_speed", feed, R::guide_speed_feed, "feed", false, S::guides,
     "speed_limit"},
    {LimitId::buckling, "buckling", thrust, R::buckling_thrust, "thrust", false, S::drive,
     "core_diameter"},
    {LimitId::core_stress, "core_stress", thrust, R::core_stress_thrust, "thrust", false, S::drive,
     "core_diameter"},
    {LimitId::static_capacity, "static_capacity", thrust, R::static_thrust, "thrust", false,
     S::drive, "static_rating"},
    {LimitId::bearing_thrust, "bearing_thrust", thrust, R::bearing_thrust, "thrust", false,
     S::drive, "bearing_thrust_limit"},
    {LimitId::motor_thrust, "motor_thrust", thrust, R::motor_thrust, "thrust", false, S::motor,
     "usable_share"},
    {LimitId::acceleration, "acceleration", other, R::acceleration_available, "acceleration", false,
     S::motor, "usable_share"},
    {LimitId::inertia_match, "inertia_match", other, R::inertia_match, "inertia_match", true,
     S::motor, "rotor_inertia"},
    {LimitId::resolution, "resolution", other, R::resolution, "resolution", true, S::drive, "lead"},
    {LimitId::lost_motion, "lost_motion", other, R::lost_motion, "lost_motion", true, S::drive,
     "backlash"},
    {LimitId::belt_pull, "belt_pull", other, R::belt_pull_allowed, "belt_rim_force", false,
     S::transmission, "allowable_pull"},
    {LimitId::haul_pull, "haul_pull", other, R::haul_pull_allowed, "haul_rim_force", false,
     S::drive, "allowable_pull"},
    {LimitId::coupling_torque, "coupling_torque", other, R::coupling_torque_limit,
     "coupling_torque", false, S::transmission, "torque_limit"},
    {LimitId::rms_torque, "rms_torque", other, R::continuous_torque, "rms_torque", false, S::motor,
     "continuous_torque"},
    {LimitId::reversal_error, "reversal_error", other, R::reversal_error, "reversal_error", true,
     S::drive, "backlash"},
    {LimitId::cutting_error, "cutting_error", other, R::cutting_error, "cutting_error", true,
     S::drive, "core_diameter"},
    {LimitId::life, "life", other, R::life_time, "life", false, S::drive, "dynamic_rating"},
    {LimitId::supply_power, "supply_power", other, R::supply_power, "power", true, S::supply,
     "power"},
    {LimitId::bus_voltage, "bus_voltage", other, R::bus_voltage, "voltage_limit", true, S::supply,
     "voltage_limit"},
    {LimitId::load_cases, "load_cases", other, R::load_case_reserve, "", false, S::duty,
     "load_cases"},
};

constexpr std::string_view verdicts[] = {"clear", "close", "over", "open"};
constexpr std::string_view findings[] = {"axis_can_fall",
                                         "self_locking_not_promised",
                                         "near_whip",
                                         "whip_beyond_critical",
                                         "stall_at_rest",
                                         "motor_curve_ends",
                                         "points_at_other_voltage",
                                         "few_teeth_in_mesh",
                                         "long_open_screw",
                                         "hold_beyond_motor",
                                         "typical_figures",
                                         "nut_near_shaft_frequency",
                                         "preload_lost",
                                         "slack_belt",
                                         "too_few_pulley_teeth",
                                         "curve_reckoned_anew",
                                         "cut_capped_by_spindle",
                                         "guard_moving_belt",
                                         "sides_can_skew",
                                         "bus_over_limit",
                                         "held_unpowered_by_detent",
                                         "screw_too_short",
                                         "brake_not_judged",
                                         "overall_below_span",
                                         "preset_figures",
                                         "torque_from_ratings",
                                         "curve_of_less_voltage",
                                         "lifting_axis_flat",
                                         "axis_can_rise"};

} // namespace

std::span<const ResultDescriptor> result_descriptors() {
  return results;
}
const ResultDescriptor& descriptor(ResultId id) {
  return results[static_cast<std::size_t>(id)];
}
std::span<const LimitDescriptor> limit_descriptors() {
  return limits;
}
const LimitDescriptor& descriptor(LimitId id) {
  return limits[static_cast<std::size_t>(id)];
}
std::string_view verdict_name(Verdict verdict) {
  return verdicts[static_cast<std::size_t>(verdict)];
}
std::string_view finding_name(FindingCode code) {
  return findings[static_cast<std::size_t>(code)];
}

} // namespace feedwright
