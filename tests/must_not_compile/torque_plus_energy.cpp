// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_thread.h"
#include "mechanics/shaft_whip.h"
#include "units/constrained.h"
#include "units/literals.h"

using namespace feedwright;
using namespace feedwright::literals;

const auto torque = 1_N_m;
const Energy energy = 1_N * 1_m;

#ifdef MUST_NOT_COMPILE
const auto sum = torque + energy;
#else
const auto sum = torque + torque;
#endif
