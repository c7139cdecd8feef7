// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A whole axis made longer or shorter: everything that grows with its travel.

#include "choosing/remedy.h"
#include "sheet/file_units.h"

#include <vector>

namespace feedwright {

/// A length made longer by so much, written in `unit`; nothing for a field without a length, or
/// where none would be left.
std::optional<FieldChange> lengthened_field(PartSlot slot, const FieldView& field, Length by,
                                            const Unit& unit);

/// What changes with an axis whose travel grows by so much (shrinks, below zero): the travel, the
/// screw between its bearings and, where it is given, its whole length; of a hauling belt twice as
/// much belt. Each in the unit its field was typed in. Empty where a length would not be left, or
/// there is no such axis.
std::vector<FieldChange> lengthening(const Machine& machine, std::size_t axis, Length by,
                                     const FileUnits& units);

} // namespace feedwright
