// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The words of the drawing that say how an axis is driven and what it does.

#include "machine/machine.h"

#include <QString>

namespace feedwright {

/// An axis of a machine, whose fields are shown as they were typed.
struct ShownAxis {
  const Machine& machine;
  std::size_t number;

  const Axis& axis() const { return machine.axes.at(number); }
  /// Empty if the part has no such field, or none is given.
  QString shown(PartSlot slot, std::string_view member) const;
};

namespace train_words {

QString title(const ShownAxis& axis);
QString screw(const ShownAxis& axis);        ///< "Ø 16 mm × 5 mm, core 13.2 mm"
QString hauling_belt(const ShownAxis& axis); ///< profile, width, length, teeth
QString nut(const Screw& screw);             ///< "nut turns"; empty if it is an ordinary one
QString sides(const ShownAxis& axis);        ///< "2 screws, 800 mm apart, 2 motors"
QString opposed();                           ///< what two screws do to each other
QString duty(const DutyCycle& duty);         ///< "duty: load cases 2, moves 1"
QString carriage(const ShownAxis& axis);     ///< mass, brake, counterbalance, a line each
QString transmission(const ShownAxis& axis);

} // namespace train_words
} // namespace feedwright
