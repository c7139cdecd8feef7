// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/new_machine.h"

#include <algorithm>

namespace feedwright {

namespace {

/// ISO 841 names linear axes X, Y, Z, then U, V, W.
std::string unused_letter(const Machine& machine) {
  constexpr std::string_view usual = "XYZUVWABCDEFGHIJKLMNOPQRST";
  for (const char letter : usual) {
    std::string name(1, letter);
    if (std::ranges::none_of(machine.axes,
                             [&](const Axis& axis) { return axis.basics.letter == name; })) {
      return name;
    }
  }
  return std::string(machine.axes.size(), usual.front());
}

} // namespace

Axis new_axis(const Machine& machine) {
  Axis axis;
  axis.basics.letter = unused_letter(machine);
  axis.motor = StepperByRatings();
  axis.transmission = Coupling();
  return axis;
}

Machine new_machine() {
  Machine machine;
  machine.axes.push_back(new_axis(machine));
  return machine;
}

Axis copied_axis(const Machine& machine, std::size_t axis) {
  Axis copy = machine.axes.at(axis);
  copy.basics.letter = unused_letter(machine);
  return copy;
}

} // namespace feedwright
