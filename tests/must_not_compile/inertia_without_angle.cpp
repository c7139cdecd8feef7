// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

const auto mass = 20_kg;

#ifdef MUST_NOT_COMPILE
const Inertia inertia = mass * 5_mm * 5_mm;
#else
const Inertia inertia = mass * 5_mm_per_rev * 5_mm_per_rev;
#endif
