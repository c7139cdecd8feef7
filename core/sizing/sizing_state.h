// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the steps of sizing hand on. Each step is a template over the recorder: the same lines
// compute plain quantities or leave a working behind.

#include "sizing/motor_curve.h"
#include "sizing/results.h"

namespace feedwright {

template <class W>
struct SizingState {
  template <class Q>
  using N = typename W::template Number<Q>;

  const Machine& machine;
  const Axis& axis;
  const MotorCurve& motor;
  W& working;
  AxisResults& out;

  // From kinematics on
  N<double> reduction{};
  N<TravelPerAngle> screw_travel{};
  N<TravelPerAngle> motor_travel{};
  N<double> stage_efficiency{};
  // From the thread on
  N<double> efficiency{};
  N<double> back_efficiency{};
  // From inertias on
  N<Inertia> motor_side_inertia{}; ///< everything that turns with the motor
  N<Inertia> screw_side_inertia{}; ///< everything that turns with the screw
  // From loads on
  N<Force> gravity{};  ///< magnitude along the axis
  N<Force> friction{}; ///< against the motion
  N<Torque> drag{};    ///< at the screw

  /// A field's value, remembered as such.
  template <class Q>
  auto in(PartSlot slot, std::string_view member, const Q& value) const {
    return N<Q>(working.input(input_ref(slot, member), value));
  }
  template <class Q>
  auto constant(std::string_view symbol, const Q& value) const {
    return N<Q>(working.constant(symbol, value));
  }
  /// A result kept before.
  template <class Q>
  auto earlier(ResultId id, const Q& value) const {
    return N<Q>(working.earlier(id, value));
  }
};

/// Keeps a result under its name; later equations see it as one symbol.
template <class W, class Value, class Q>
auto keep(SizingState<W>& state, ResultId id, std::optional<Q>& place, const Value& value) {
  static_assert(NumberOf<Value, Q>, "the result is declared with another quantity");
  auto named = state.working.result(id, value);
  place = value_of(named);
  return named;
}

#define FEEDWRIGHT_KEEP(state, name, value) keep(state, ResultId::name, (state).out.name, value)

} // namespace feedwright
