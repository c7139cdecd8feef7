// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/finding_weight.h"

#include <algorithm>
#include <iterator>

namespace feedwright {

namespace {

constexpr FindingCode in_order[] = {
    FindingCode::axis_can_fall,
    FindingCode::axis_can_rise,
    FindingCode::whip_beyond_critical,
    FindingCode::hold_beyond_motor,
    FindingCode::near_whip,
    FindingCode::nut_near_shaft_frequency,
    FindingCode::bus_over_limit,
    FindingCode::stall_at_rest,
    FindingCode::held_unpowered_by_detent,
    FindingCode::self_locking_not_promised,
    FindingCode::brake_not_judged,
    FindingCode::lifting_axis_flat,
    FindingCode::screw_too_short,
    FindingCode::overall_below_span,
    FindingCode::sides_can_skew,
    FindingCode::slack_belt,
    FindingCode::preload_lost,
    FindingCode::long_open_screw,
    FindingCode::guard_moving_belt,
    FindingCode::few_teeth_in_mesh,
    FindingCode::too_few_pulley_teeth,
    FindingCode::motor_curve_ends,
    FindingCode::cut_capped_by_spindle,
    FindingCode::points_at_other_voltage,
    FindingCode::curve_of_less_voltage,
    FindingCode::curve_reckoned_anew,
    FindingCode::torque_from_ratings,
    FindingCode::preset_figures,
    FindingCode::typical_figures,
};

} // namespace

int weight_of(FindingCode code) {
  return static_cast<int>(std::ranges::find(in_order, code) - std::begin(in_order));
}

bool is_grave(FindingCode code) {
  return weight_of(code) <= weight_of(FindingCode::stall_at_rest);
}

} // namespace feedwright
