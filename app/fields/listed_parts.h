// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "machine/parts_list.h"

namespace feedwright {

/// Puts a listed part in its place of the chosen axis, as one step that Undo takes back. A material
/// goes to that load case, and starts one where there is none.
void take_listed(MachineDocument& document, PartSlot slot, const ListedPart& part,
                 std::size_t load_case);

} // namespace feedwright
