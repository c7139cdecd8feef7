// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

namespace feedwright {

/// Whether a step of the document is just being undone or redone: an edit now would leave its
/// stack out of order.
bool is_stepping(MachineDocument& document);

} // namespace feedwright
