// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/limits.h"
#include "sizing/motor_steps.h"
#include "sizing/screw_steps.h"
#include "sizing/train_steps.h"

namespace feedwright {

/// The steps up to the loads, which envelopes need too.
template <class W>
void train_and_loads(SizingState<W>& s) {
  kinematics(s);
  thread(s);
  inertias(s);
  loads(s);
}

/// The whole sizing, in order; each step uses what those before it left.
template <class W>
AxisResults run_sizing(const Machine& machine, const Axis& axis, W& working) {
  AxisResults out;
  const MotorCurve motor(axis.motor, machine.supply);
  SizingState<W> s{machine, axis, motor, working, out};
  train_and_loads(s);
  whip(s);
  screw_speeds(s);
  buckling(s);
  capacities(s);
  motor_at_wanted_feed(s);
  motor_at_cutting_feed(s);
  motor_feeds(s);
  other_feeds(s);
  judge_limits(machine, axis, motor, out);
  return out;
}

} // namespace feedwright
