// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/new_machine.h"

#include <algorithm>

namespace feedwright {

namespace {

bool has_letter(const Machine& machine, const std::string& letter) {
  return std::ranges::any_of(machine.axes,
                             [&](const Axis& axis) { return axis.basics.letter == letter; });
}

/// ISO 841 names linear axes X, Y, Z, then U, V, W.
std::string unused_letter(const Machine& machine) {
  constexpr std::string_view usual = "XYZUVWABCDEFGHIJKLMNOPQRST";
  for (const char letter : usual) {
    std::string name(1, letter);
    if (!has_letter(machine, name)) {
      return name;
    }
  }
  std::string name(2, usual.front());
  while (has_letter(machine, name)) {
    name += usual.front();
  }
  return name;
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

Axis guest_axis(const Machine& machine, Axis axis) {
  if (has_letter(machine, axis.basics.letter)) {
    axis.basics.letter = unused_letter(machine);
  }
  return axis;
}

} // namespace feedwright
