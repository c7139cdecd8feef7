// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/swap_parts.h"

namespace feedwright {

/// Makes the swap on the axis without asking whether the machine is sound with it; parts of this
/// session are taken again if `remember`. False where no belt goes round.
bool make_swap(Machine& machine, std::size_t axis, const Swap& swap, const SwapAids& aids,
               bool remember);

} // namespace feedwright
