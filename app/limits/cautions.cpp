// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/cautions.h"

#include "sizing/grave_findings.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

namespace {

/// What can hurt somebody first (see is_grave), then what breaks or loses its place, then what is
/// only to know.
constexpr FindingCode in_order[] = {
    FindingCode::axis_can_fall,
    FindingCode::whip_beyond_critical,
    FindingCode::hold_beyond_motor,
    FindingCode::near_whip,
    FindingCode::nut_near_shaft_frequency,
    FindingCode::bus_over_limit,
    FindingCode::stall_at_rest,
    FindingCode::self_locking_not_promised,
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
    FindingCode::curve_reckoned_anew,
    FindingCode::typical_figures,
};

std::ptrdiff_t weight(FindingCode code) {
  return std::ranges::find(in_order, code) - std::begin(in_order);
}

} // namespace

std::vector<Caution> cautions_of(const std::vector<Finding>& findings) {
  std::vector<Finding> ordered = findings;
  std::stable_sort(ordered.begin(), ordered.end(), [](const Finding& a, const Finding& b) {
    return weight(a.code) < weight(b.code);
  });
  std::vector<Caution> cautions;
  for (const Finding& finding : ordered) {
    const QString subject = words::part_name(finding.subject);
    const QString text = words::finding_text(finding);
    if (!cautions.empty() && cautions.back().text == text) {
      cautions.back().subjects += QStringLiteral(", ") + subject;
    } else {
      cautions.push_back({subject, text, is_grave(finding.code)});
    }
  }
  return cautions;
}

} // namespace feedwright
