// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/grave_findings.h"

namespace feedwright {

bool is_grave(FindingCode code) {
  switch (code) {
  case FindingCode::axis_can_fall:
  case FindingCode::whip_beyond_critical:
  case FindingCode::hold_beyond_motor:
  case FindingCode::near_whip:
  case FindingCode::nut_near_shaft_frequency:
  case FindingCode::bus_over_limit:
  case FindingCode::stall_at_rest: return true;
  default: return false;
  }
}

} // namespace feedwright
