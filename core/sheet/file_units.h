// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The units a machine's file speaks in, so that results can be given in the same.

#include "machine/machine.h"
#include "units/unit_table.h"

#include <array>

namespace feedwright {

class FileUnits {
public:
  /// Nothing typed: the usual units.
  FileUnits() = default;
  explicit FileUnits(const Machine& machine);

  /// The unit for a value that is usually given in `usual`: the first one typed in the file for a
  /// value of its kind, targets first. Of lengths and leads only inches count so, for millimetres
  /// and micrometres are the same system and each has its place.
  const Unit& unit_of(Kind kind, std::string_view usual) const;
  /// The unit a quantity's field was typed in; where none was, that of its kind.
  const Unit& unit_of(const FieldView& field) const;

private:
  void take(const Machine& machine, std::size_t axis, PartSlot slot);

  std::array<const Unit*, static_cast<std::size_t>(Kind::compound) + 1> typed_{};
};

} // namespace feedwright
