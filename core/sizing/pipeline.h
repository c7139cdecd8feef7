// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/belt_steps.h"
#include "sizing/duty_steps.h"
#include "sizing/error_steps.h"
#include "sizing/inertia_steps.h"
#include "sizing/limits.h"
#include "sizing/motor_steps.h"
#include "sizing/screw_steps.h"
#include "sizing/stiffness_steps.h"
#include "sizing/train_steps.h"

namespace feedwright {

/// The steps up to the loads, which envelopes need too.
template <class W>
void train_and_loads(SizingState<W>& s) {
  kinematics(s);
  thread(s);
  drags(s);
  shares(s);
  inertias(s);
  loads(s);
}

/// What a screw allows; a hauling belt has none of it.
template <class W>
void screw_allows(SizingState<W>& s) {
  if (s.screw == nullptr) {
    return;
  }
  whip(s);
  screw_speeds(s);
  buckling(s);
  whip_under_load(s);
  capacities(s);
}

/// The whole sizing, in order; each step uses what those before it left. With the nut `standing`
/// somewhere, what depends on its place is that of there, not the worst over the travel.
template <class W>
AxisResults run_sizing(const Machine& machine, const Axis& axis, const AxisPreparation& ready,
                       W& working, const std::optional<NutReach>& standing = {}) {
  AxisResults out;
  SizingState<W> s{machine, axis, ready, working, out};
  s.standing = standing;
  train_and_loads(s);
  screw_allows(s);
  motor_at_wanted_feed(s);
  motor_at_cutting_feed(s);
  motor_feeds(s);
  other_feeds(s);
  step_figures(s);
  best_for_acceleration(s);
  stage_belt(s);
  hauling_belt(s);
  coupling(s);
  stiffness(s);
  errors(s);
  cycle(s);
  braking_energy(s);
  power(s);
  judge_limits(machine, axis, ready, out);
  load_case_reserve(s); // knows the governing feed
  judge_limit(LimitId::load_cases, machine, axis, ready, out);
  return out;
}

} // namespace feedwright
