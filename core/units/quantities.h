// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The words of the calculation. The only file that includes Boost.Units.
//
// Angle is kept as a dimension, so torque (N·m/rad) is not energy (N·m), angular
// velocity is not a frequency, and a lead is travel per angle (m/rad). Force times
// lead is then a torque, velocity over lead an angular velocity, and mass times
// lead squared an inertia, without a cast and without a stray 2π.
//
// FEEDWRIGHT_PLAIN_DOUBLES replaces every quantity by a bare double. Only the
// benchmark defines it, to time the same sources without units.

#include <cmath>
#include <numbers>
#include <type_traits>
#include <utility>

#ifdef FEEDWRIGHT_PLAIN_DOUBLES

#define FEEDWRIGHT_QUANTITY(Name, ...) using Name = double

#else

#include <boost/units/cmath.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>

#define FEEDWRIGHT_QUANTITY(Name, ...) using Name = boost::units::quantity<__VA_ARGS__>

#endif

namespace feedwright {

#ifndef FEEDWRIGHT_PLAIN_DOUBLES
namespace si = boost::units::si;
namespace unit_types {
using Length = si::length;
using Angle = si::plane_angle;
using TravelPerAngle = boost::units::divide_typeof_helper<si::length, si::plane_angle>::type;
using PerLength = boost::units::divide_typeof_helper<si::dimensionless, si::length>::type;
using Stiffness = boost::units::divide_typeof_helper<si::force, si::length>::type;
using LinearDensity = boost::units::divide_typeof_helper<si::mass, si::length>::type;
using TorquePerCurrent = boost::units::divide_typeof_helper<si::torque, si::current>::type;
using RimSpeed = boost::units::multiply_typeof_helper<si::length, si::angular_velocity>::type;
using Jerk = boost::units::divide_typeof_helper<si::acceleration, si::time>::type;
using TorsionalStiffness = boost::units::divide_typeof_helper<si::torque, si::plane_angle>::type;
using Expansion = boost::units::divide_typeof_helper<si::dimensionless, si::temperature>::type;
using SecondMoment = boost::units::multiply_typeof_helper<si::area, si::area>::type;
} // namespace unit_types
#endif

/// A pure number that came out of dividing like by like; converts to double.
FEEDWRIGHT_QUANTITY(Ratio, si::dimensionless);
FEEDWRIGHT_QUANTITY(Length, si::length);
FEEDWRIGHT_QUANTITY(Area, si::area);
FEEDWRIGHT_QUANTITY(SecondMoment, unit_types::SecondMoment);
FEEDWRIGHT_QUANTITY(Mass, si::mass);
FEEDWRIGHT_QUANTITY(Time, si::time);
FEEDWRIGHT_QUANTITY(Force, si::force);
FEEDWRIGHT_QUANTITY(Torque, si::torque);
FEEDWRIGHT_QUANTITY(Energy, si::energy);
FEEDWRIGHT_QUANTITY(Power, si::power);
FEEDWRIGHT_QUANTITY(Inertia, si::moment_of_inertia);
FEEDWRIGHT_QUANTITY(Angle, si::plane_angle);
FEEDWRIGHT_QUANTITY(AngularVelocity, si::angular_velocity);
FEEDWRIGHT_QUANTITY(AngularAcceleration, si::angular_acceleration);
FEEDWRIGHT_QUANTITY(Velocity, si::velocity);
FEEDWRIGHT_QUANTITY(Acceleration, si::acceleration);
FEEDWRIGHT_QUANTITY(Jerk, unit_types::Jerk);
FEEDWRIGHT_QUANTITY(Pressure, si::pressure);
FEEDWRIGHT_QUANTITY(Density, si::mass_density);
FEEDWRIGHT_QUANTITY(LinearDensity, unit_types::LinearDensity);
FEEDWRIGHT_QUANTITY(Stiffness, unit_types::Stiffness);
/// Torque per angle of twist.
FEEDWRIGHT_QUANTITY(TorsionalStiffness, unit_types::TorsionalStiffness);
FEEDWRIGHT_QUANTITY(Frequency, si::frequency);
FEEDWRIGHT_QUANTITY(Temperature, si::temperature);
/// Relative lengthening per degree.
FEEDWRIGHT_QUANTITY(Expansion, unit_types::Expansion);
FEEDWRIGHT_QUANTITY(Voltage, si::electric_potential);
FEEDWRIGHT_QUANTITY(Current, si::current);
FEEDWRIGHT_QUANTITY(Resistance, si::resistance);
FEEDWRIGHT_QUANTITY(Inductance, si::inductance);
FEEDWRIGHT_QUANTITY(Capacitance, si::capacitance);
FEEDWRIGHT_QUANTITY(TorquePerCurrent, unit_types::TorquePerCurrent);
/// Travel of the carriage per angle of a shaft: lead/2π of a screw, radius of a hauling pulley.
FEEDWRIGHT_QUANTITY(TravelPerAngle, unit_types::TravelPerAngle);
/// Ball-circle diameter times speed, what catalogues give as mm·rpm.
FEEDWRIGHT_QUANTITY(RimSpeed, unit_types::RimSpeed);
/// Steps per travel.
FEEDWRIGHT_QUANTITY(PerLength, unit_types::PerLength);

#ifdef FEEDWRIGHT_PLAIN_DOUBLES

template <class Q>
constexpr double si_value(const Q& q) {
  return q;
}
template <class Q>
constexpr Q from_si(double value) {
  return value;
}
using std::abs;
using std::sqrt;
inline constexpr double radian = 1.0;
inline constexpr double metre = 1.0;

#else

/// The value in coherent SI units (m, kg, s, A, K, rad). For storage, display and numerical
/// libraries only; equations are written in quantities.
template <class Unit>
constexpr double si_value(const boost::units::quantity<Unit>& q) {
  return q.value();
}
constexpr double si_value(double number) {
  return number;
}

/// A quantity from its value in coherent SI units.
template <class Q>
constexpr Q from_si(double value) {
  if constexpr (std::is_same_v<Q, double>) {
    return value;
  } else {
    return Q::from_value(value);
  }
}
using boost::units::abs;
using boost::units::sqrt;
using std::abs;
using std::sqrt;
inline const Angle radian = Angle::from_value(1.0);
inline const Length metre = Length::from_value(1.0);

#endif

/// What multiplies or divides to what; `Times<Force, Length>` is `Energy`.
template <class A, class B>
using Times = decltype(std::declval<A>() * std::declval<B>());
template <class A, class B>
using Per = decltype(std::declval<A>() / std::declval<B>());

template <class Q>
constexpr auto square(const Q& q) {
  return q * q;
}

inline constexpr double pi = std::numbers::pi;

/// Standard acceleration of free fall, exact (CGPM 1901).
inline const auto standard_gravity = from_si<Acceleration>(9.80665);

} // namespace feedwright
