// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/finding_order.h"

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

bool is_grave(FindingCode code) {
  return weight(code) <= weight(FindingCode::stall_at_rest);
}

std::vector<Finding> by_weight(std::vector<Finding> findings) {
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    return weight(a.code) < weight(b.code);
  });
  return findings;
}

} // namespace feedwright
