// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/pipeline.h"

namespace feedwright {

/// The train and its loads, computed once for everything that is asked over a range: curves, moves,
/// shares. `out` has no result beyond the loads.
struct PreparedAxis {
  AxisPreparation ready;
  AxisResults out;
  NoWorking none;
  SizingState<NoWorking> state;

  PreparedAxis(const Machine& machine, const Axis& axis)
      : ready(machine, axis), state{machine, axis, ready, none, out} {
    train_and_loads(state);
  }
  PreparedAxis(const PreparedAxis&) = delete;
  PreparedAxis& operator=(const PreparedAxis&) = delete;
};

} // namespace feedwright
