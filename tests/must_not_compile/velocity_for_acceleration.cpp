// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

Force needed(Mass mass, Acceleration a) {
  return mass * a;
}

#ifdef MUST_NOT_COMPILE
const auto wrong = needed(20_kg, 3_m_per_s);
#else
const auto right = needed(20_kg, 3_m_per_s2);
#endif
