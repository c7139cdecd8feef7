// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

#ifdef MUST_NOT_COMPILE
const auto w = critical_speed(pi, 1_m, 16_mm, 206_GPa, 1_kg);
#else
const auto w = critical_speed(pi, 1_m, 16_mm, 206_GPa, 7850_kg_per_m3);
#endif
