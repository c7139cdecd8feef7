// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"

namespace feedwright {

/// Place in the order of gravity: what can hurt somebody first, then what breaks or loses its
/// place, then what is only to know.
int weight_of(FindingCode code);
/// Whether somebody or the machine may come to harm, or the axis cannot do its work at all.
bool is_grave(FindingCode code);

} // namespace feedwright
