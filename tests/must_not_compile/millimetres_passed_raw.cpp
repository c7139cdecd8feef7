// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

Area area(Length diameter) {
  return diameter * diameter;
}

#ifdef MUST_NOT_COMPILE
const auto wrong = area(16.0);
#else
const auto right = area(16_mm);
#endif
