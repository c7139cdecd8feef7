// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/cautions.h"

#include "text/words.h"

#include <algorithm>

namespace feedwright {

namespace {

int weight(FindingCode code) {
  switch (code) {
  case FindingCode::axis_can_fall: return 0;
  case FindingCode::whip_beyond_critical: return 1;
  case FindingCode::hold_beyond_motor: return 2;
  case FindingCode::near_whip: return 3;
  case FindingCode::stall_at_rest: return 4;
  case FindingCode::self_locking_not_promised: return 5;
  case FindingCode::long_open_screw: return 6;
  case FindingCode::few_teeth_in_mesh: return 7;
  case FindingCode::motor_curve_ends: return 8;
  case FindingCode::points_at_other_voltage: return 9;
  case FindingCode::typical_figures: return 10;
  }
  return 10;
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
      cautions.push_back(
          {subject, text, weight(finding.code) <= weight(FindingCode::stall_at_rest)});
    }
  }
  return cautions;
}

} // namespace feedwright
