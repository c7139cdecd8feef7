// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Adding, copying and removing axes, each one undoable step.

#include "document/machine_document.h"

namespace feedwright {

void add_axis(MachineDocument& document);
void copy_axis(MachineDocument& document);
void remove_axis(MachineDocument& document);

} // namespace feedwright
