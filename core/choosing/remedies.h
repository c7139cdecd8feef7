// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What would do: for a limit that is over or close, every single change that would reach it.

#include "choosing/remedy.h"
#include "machine/parts_list.h"
#include "sheet/file_units.h"

#include <span>

namespace feedwright {

/// Limits of an axis that are over or close, those over first, the lowest margin first.
std::vector<LimitId> limits_in_trouble(const AxisResults& results);

/// For a limit that is over, the least single changes that bring it to what is wanted; for one that
/// is close, those that make it clear. Each is computed in full. Empty for a limit that is clear or
/// open, and where no single change would do.
///
/// Numbers change by steps a builder can work to, on the safe side, in the unit their field was
/// typed in; what comes in sizes by the next size; screws, motors and other parts by whole rows of
/// `parts`. Safety factors are left alone, and so are brakes. The machine must be sound; what would
/// make it unsound is left out. Those that make all well come first, then by how small a change;
/// those that only ask less, and those that move the trouble elsewhere, last.
std::vector<Remedy> remedies(const Machine& machine, std::size_t axis, LimitId limit,
                             std::span<const ListedPart> parts, const FileUnits& units);

/// The machine with the remedy taken, every changed field with its text and origin. `parts` are
/// those it was found with. Nothing if the machine no longer takes it.
std::optional<Machine> with_remedy(const Machine& machine, std::size_t axis, const Remedy& remedy,
                                   std::span<const ListedPart> parts);

/// The machine with those fields of an axis changed, each with its text and origin. Nothing if it
/// does not take one of them.
std::optional<Machine> with_changes(const Machine& machine, std::size_t axis,
                                    std::span<const FieldChange> changes);

} // namespace feedwright
