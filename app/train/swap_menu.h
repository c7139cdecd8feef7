// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/swap_bench.h"

class QMenu;

namespace feedwright {

/// The menu's part that puts other parts in place of one: what stands is marked, what cannot be
/// done says why.
void add_swaps(QMenu& menu, MachineDocument& document, SwapBench& bench, PartSlot slot);

} // namespace feedwright
