// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the steps of sizing hand on. Each step is a template over the recorder: the same lines
// compute plain quantities or leave a working behind.

#include "sizing/axis_preparation.h"
#include "sizing/results.h"

namespace feedwright {

/// The least and the greatest distance of the nut (or the carriage on its belt) from the motor-end
/// bearing (or the driving pulley) at which the axis is looked at.
struct NutReach {
  Length nearest, farthest;
};

template <class W>
struct SizingState {
  template <class Q>
  using N = typename W::template Number<Q>;

  const Machine& machine;
  const Axis& axis;
  const AxisPreparation& ready;
  W& working;
  AxisResults& out;
  const MotorCurve& motor = ready.motor;
  /// One of the two is there.
  const Screw* screw = std::get_if<Screw>(&axis.drive);
  const HaulingBelt* haul = std::get_if<HaulingBelt>(&axis.drive);
  bool two_motors = axis.sides.layout == DriveLayout::two_motors;
  /// Screws (or hauling belts) that one motor drives.
  double screws_each = axis.sides.layout == DriveLayout::one_motor ? 2.0 : 1.0;
  /// Where the nut stands, if the axis is not looked at over the whole travel.
  std::optional<NutReach> standing = {};

  // From kinematics on
  N<double> reduction{};
  N<TravelPerAngle> screw_travel{}; ///< of the final drive's shaft
  N<TravelPerAngle> motor_travel{};
  N<double> stage_efficiency{};
  // From the thread on
  N<double> tangent{}; ///< of the lead angle; of a screw only
  N<double> efficiency{};
  N<double> back_efficiency{};
  // From shares on
  N<double> side_share{};   ///< of a force at the tool that the harder-loaded motor pushes
  N<double> screw_share{};  ///< of its motor's force that the harder-loaded screw carries
  N<Mass> mass{};           ///< that the harder-loaded motor moves
  N<Mass> resisting_mass{}; ///< the same with the guides' friction under the couple of acceleration
  // From inertias on
  N<Inertia> motor_side_inertia{}; ///< everything that turns with one motor
  N<Inertia> screw_side_inertia{}; ///< everything that turns with its screws
  // From loads on; all of the harder-loaded motor
  N<Force> gravity{};  ///< magnitude along the axis
  N<Force> friction{}; ///< against the motion
  N<Torque> drag{};    ///< at its screws

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
  template <class Q, class... Operands>
  auto solved(std::string_view name, const Q& value, const Operands&... operands) const {
    return N<Q>(working.solved(name, value, operands...));
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

/// A result kept before, with its value.
#define FEEDWRIGHT_EARLIER(state, name) (state).earlier(ResultId::name, *(state).out.name)

} // namespace feedwright
