// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

AngularVelocity twice(AngularVelocity speed) {
  return speed * 2.0;
}

#ifdef MUST_NOT_COMPILE
const auto wrong = twice(40_Hz);
#else
const auto right = twice(40_rpm);
#endif
