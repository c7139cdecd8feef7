// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_axis.h"

#include "sizing/pipeline.h"

namespace feedwright {

AxisResults size_axis(const Machine& machine, const Axis& axis) {
  return size_axis(machine, axis, AxisPreparation(machine, axis));
}

AxisResults size_axis(const Machine& machine, const Axis& axis, const AxisPreparation& ready) {
  NoWorking none;
  return run_sizing(machine, axis, ready, none);
}

AxisResults size_axis(const Machine& machine, const Axis& axis, Working& working) {
  return run_sizing(machine, axis, AxisPreparation(machine, axis), working);
}

} // namespace feedwright
