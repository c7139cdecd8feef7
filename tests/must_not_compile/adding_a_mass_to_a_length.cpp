// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

Length length = 5_mm;

#ifdef MUST_NOT_COMPILE
const Length sum = length += 1_kg;
#else
const Length sum = length += 1_mm;
#endif
