// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

const Stiffness stiffness = 45_N / 1_um;

#ifdef MUST_NOT_COMPILE
const Force force = stiffness;
#else
const Force force = stiffness * 1_um;
#endif
