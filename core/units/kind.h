// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A quantity whose kind is known only at run time: what fields, files, tables and the
// working pass about. Equations never see it.

#include "units/quantities.h"

namespace feedwright {

/// What a value measures, as a person would name it. Several kinds share a dimension
/// (a lead is asked for in lengths, not in metres per radian).
enum class Kind {
  number,
  length,
  area,
  second_moment,
  mass,
  time,
  force,
  torque,
  energy,
  power,
  inertia,
  angle,
  angular_velocity,
  angular_acceleration,
  velocity,
  acceleration,
  pressure,
  density,
  linear_density,
  stiffness,
  frequency,
  temperature,
  voltage,
  current,
  resistance,
  inductance,
  torque_per_current,
  lead,
  rim_speed,
  per_length,
  jerk,
  torsional_stiffness,
  expansion,
  capacitance,
  compound, ///< an intermediate without a name of its own; shown without a unit choice
};

template <class Q>
struct kind_of {
  static constexpr Kind value = Kind::compound;
};

#ifndef FEEDWRIGHT_PLAIN_DOUBLES
#define FEEDWRIGHT_KIND(Q, k)                                                                      \
  template <>                                                                                      \
  struct kind_of<Q> {                                                                              \
    static constexpr Kind value = Kind::k;                                                         \
  };
FEEDWRIGHT_KIND(double, number)
FEEDWRIGHT_KIND(Ratio, number)
FEEDWRIGHT_KIND(Length, length)
FEEDWRIGHT_KIND(Area, area)
FEEDWRIGHT_KIND(SecondMoment, second_moment)
FEEDWRIGHT_KIND(Mass, mass)
FEEDWRIGHT_KIND(Time, time)
FEEDWRIGHT_KIND(Force, force)
FEEDWRIGHT_KIND(Torque, torque)
FEEDWRIGHT_KIND(Energy, energy)
FEEDWRIGHT_KIND(Power, power)
FEEDWRIGHT_KIND(Inertia, inertia)
FEEDWRIGHT_KIND(Angle, angle)
FEEDWRIGHT_KIND(AngularVelocity, angular_velocity)
FEEDWRIGHT_KIND(AngularAcceleration, angular_acceleration)
FEEDWRIGHT_KIND(Velocity, velocity)
FEEDWRIGHT_KIND(Acceleration, acceleration)
FEEDWRIGHT_KIND(Pressure, pressure)
FEEDWRIGHT_KIND(Density, density)
FEEDWRIGHT_KIND(LinearDensity, linear_density)
FEEDWRIGHT_KIND(Stiffness, stiffness)
FEEDWRIGHT_KIND(Frequency, frequency)
FEEDWRIGHT_KIND(Temperature, temperature)
FEEDWRIGHT_KIND(Voltage, voltage)
FEEDWRIGHT_KIND(Current, current)
FEEDWRIGHT_KIND(Resistance, resistance)
FEEDWRIGHT_KIND(Inductance, inductance)
FEEDWRIGHT_KIND(TorquePerCurrent, torque_per_current)
FEEDWRIGHT_KIND(TravelPerAngle, lead)
FEEDWRIGHT_KIND(RimSpeed, rim_speed)
FEEDWRIGHT_KIND(PerLength, per_length)
FEEDWRIGHT_KIND(Jerk, jerk)
FEEDWRIGHT_KIND(TorsionalStiffness, torsional_stiffness)
FEEDWRIGHT_KIND(Expansion, expansion)
FEEDWRIGHT_KIND(Capacitance, capacitance)
#undef FEEDWRIGHT_KIND
#endif

/// A value with its kind, in coherent SI units (a lead in m/rad).
struct AnyQuantity {
  Kind kind = Kind::number;
  double si = 0.0;
  friend bool operator==(const AnyQuantity&, const AnyQuantity&) = default;
};

template <class Q>
constexpr AnyQuantity any(const Q& q) {
  return {kind_of<Q>::value, si_value(q)};
}

/// The typed quantity back; the kind must be that of `Q` (asserted by the caller's descriptor).
template <class Q>
constexpr Q typed(const AnyQuantity& q) {
  return from_si<Q>(q.si);
}

} // namespace feedwright
