// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/studies.h"

#include <algorithm>

using namespace feedwright;
using feedwright::testing::figure_of;
using feedwright::testing::many_machines;

TEST_CASE("what the motor has is on the scale of its shares up to three times the need") {
  int held = 0;
  for (const auto& [name, machine] : many_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const StudyFigure figure = figure_of(Study::torque, machine, axis);
      double need = 0.0;
      for (const StudyStack& stack : figure.stacks) {
        for (const StackTick& tick : stack.ticks) {
          need = tick.target ? need : std::max(need, tick.at);
        }
      }
      for (const StudyStack& stack : figure.stacks) {
        for (const StackTick& tick : stack.ticks) {
          INFO(name << " axis " << axis << " " << tick.at << " of " << need);
          if (tick.at <= 3.0 * need) {
            CHECK(tick.at < figure.panels.front().y_end);
            held += tick.target && tick.at > 2.0 * need ? 1 : 0;
          }
        }
      }
    }
  }
  CHECK(held > 0);
}
