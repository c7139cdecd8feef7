// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

Length twice(Positive<Length> length) {
  return *length * 2.0;
}

#ifdef MUST_NOT_COMPILE
const auto wrong = twice(5_mm);
#else
const auto right = twice(Positive<Length>::of(5_mm));
#endif
