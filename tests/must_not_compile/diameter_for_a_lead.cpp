// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

const auto force = 500_N;

#ifdef MUST_NOT_COMPILE
const auto torque = thread_torque(force, 5_mm, 0.9, 0.9);
#else
const auto torque = thread_torque(force, 5_mm_per_rev, 0.9, 0.9);
#endif
