// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "machine/parts_list.h"

class QWidget;

namespace feedwright {

/// Puts a listed part in its place of the chosen axis, as one step that Undo takes back. A material
/// goes to the load case at hand in the form, and starts one where there is none.
void take_listed(MachineDocument& document, PartSlot slot, const ListedPart& part,
                 const QWidget& form);

} // namespace feedwright
