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
    {LimitId::whip, "whip", feed, R::whip_feed, "feed", false, S::screw, "span"},
    {LimitId::ball_speed, "ball_speed", feed, R::ball_speed_feed, "feed", false, S::screw,
     "ball_speed_limit"},
    {LimitId::screw_speed, "screw_speed", feed, R::screw_speed_feed, "feed", false, S::screw,
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
    {LimitId::buckling, "buckling", thrust, R::buckling_thrust, "thrust", false, S::screw,
     "core_diameter"},
    {LimitId::core_stress, "core_stress", thrust, R::core_stress_thrust, "thrust", false, S::screw,
     "core_diameter"},
    {LimitId::static_capacity, "static_capacity", thrust, R::static_thrust, "thrust", false,
     S::screw, "static_rating"},
    {LimitId::bearing_thrust, "bearing_thrust", thrust, R::bearing_thrust, "thrust", false,
     S::screw, "bearing_thrust_limit"},
    {LimitId::motor_thrust, "motor_thrust", thrust, R::motor_thrust, "thrust", false, S::motor,
     "usable_share"},
    {LimitId::acceleration, "acceleration", other, R::acceleration_available, "acceleration", false,
     S::motor, "usable_share"},
    {LimitId::inertia_match, "inertia_match", other, R::inertia_match, "inertia_match", true,
     S::motor, "rotor_inertia"},
    {LimitId::resolution, "resolution", other, R::resolution, "resolution", true, S::screw, "lead"},
    {LimitId::lost_motion, "lost_motion", other, R::lost_motion, "lost_motion", true, S::screw,
     "backlash"},
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
                                         "typical_figures"};

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
