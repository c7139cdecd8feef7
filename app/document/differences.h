// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/typed_place.h"

#include <QString>

#include <string>
#include <vector>

namespace feedwright {

/// One thing in which two machines differ.
struct Difference {
  enum class What : std::uint8_t {
    field,      ///< `member` of the part
    type,       ///< another type of part in the slot
    notes,      ///< the part's source, or members this program does not know
    axis_added, ///<
    axis_removed,
    axis_moved,
    machine, ///< the machine's own name, notes, or members this program does not know
  };
  What what{};
  std::size_t axis = 0; ///< in the second machine; of a removed axis, in the first
  PartSlot slot = PartSlot::axis;
  std::string member;
  std::string letter; ///< of the axis; empty for the machine's own parts
};

/// Part by part, in the machine's order. Empty if, and only if, the machines are the same. Axes
/// are told apart by their letters where these say which is which, else by their order.
std::vector<Difference> differences(const Machine& before, const Machine& after);

/// Which axis of `before` is which of `after`, told in the same way. Where letters are in doubt and
/// axes come or go, only those in front of the first that differs are told.
AxisPlaces axis_places(const Machine& before, const Machine& after);

/// "X: lead", "axis Y added".
QString difference_name(const Difference& difference);

/// "3 things differ: X: lead, X: span, notes."
QString differences_sentence(const std::vector<Difference>& all);

} // namespace feedwright
