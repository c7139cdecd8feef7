// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"

namespace feedwright {

/// Whether somebody or the machine may come to harm, or the axis cannot do its work at all.
bool is_grave(FindingCode code);

} // namespace feedwright
