// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

#ifdef MUST_NOT_COMPILE
const Torque torque = 500_N * 5_mm;
#else
const Torque torque = 500_N * 5_mm_per_rev;
#endif
