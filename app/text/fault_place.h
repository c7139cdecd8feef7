// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where a fault is, in the window's words. A file's reader gets line and path instead; see
// fault_text.

#include "machine/fault.h"
#include "machine/machine.h"

#include <QString>

namespace feedwright::words {

/// "Axis X, Screw, travel: The travel must be …"; the sentence alone where it is of no part.
QString fault_in_machine(const Fault& fault, const Machine& machine);

} // namespace feedwright::words
