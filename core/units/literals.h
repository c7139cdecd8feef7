// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Literals for defaults and tests: 5_mm, 2400_rpm, 1.9_N_m.

#include "units/quantities.h"

namespace feedwright::literals {

#define FEEDWRIGHT_LITERAL(suffix, Q, factor)                                                      \
  constexpr Q operator""_##suffix(long double v) {                                                 \
    return from_si<Q>(static_cast<double>(v) * (factor));                                          \
  }                                                                                                \
  constexpr Q operator""_##suffix(unsigned long long v) {                                          \
    return from_si<Q>(static_cast<double>(v) * (factor));                                          \
  }

FEEDWRIGHT_LITERAL(m, Length, 1.0)
FEEDWRIGHT_LITERAL(mm, Length, 1e-3)
FEEDWRIGHT_LITERAL(um, Length, 1e-6)
FEEDWRIGHT_LITERAL(in, Length, 0.0254)
FEEDWRIGHT_LITERAL(kg, Mass, 1.0)
FEEDWRIGHT_LITERAL(s, Time, 1.0)
FEEDWRIGHT_LITERAL(N, Force, 1.0)
FEEDWRIGHT_LITERAL(kN, Force, 1e3)
FEEDWRIGHT_LITERAL(lbf, Force, 4.4482216152605)
FEEDWRIGHT_LITERAL(N_m, Torque, 1.0)
FEEDWRIGHT_LITERAL(N_mm, Torque, 1e-3)
FEEDWRIGHT_LITERAL(kg_m2, Inertia, 1.0)
FEEDWRIGHT_LITERAL(kg_cm2, Inertia, 1e-4)
FEEDWRIGHT_LITERAL(g_cm2, Inertia, 1e-7)
FEEDWRIGHT_LITERAL(rad, Angle, 1.0)
FEEDWRIGHT_LITERAL(deg, Angle, std::numbers::pi / 180.0)
FEEDWRIGHT_LITERAL(rpm, AngularVelocity, std::numbers::pi / 30.0)
FEEDWRIGHT_LITERAL(rad_per_s, AngularVelocity, 1.0)
FEEDWRIGHT_LITERAL(m_per_s, Velocity, 1.0)
FEEDWRIGHT_LITERAL(m_per_min, Velocity, 1.0 / 60.0)
FEEDWRIGHT_LITERAL(mm_per_s, Velocity, 1e-3)
FEEDWRIGHT_LITERAL(m_per_s2, Acceleration, 1.0)
FEEDWRIGHT_LITERAL(m_per_s3, Jerk, 1.0)
FEEDWRIGHT_LITERAL(N_per_um, Stiffness, 1e6)
FEEDWRIGHT_LITERAL(N_m_per_rad, TorsionalStiffness, 1.0)
FEEDWRIGHT_LITERAL(W, Power, 1.0)
FEEDWRIGHT_LITERAL(J, Energy, 1.0)
FEEDWRIGHT_LITERAL(K, Temperature, 1.0)
FEEDWRIGHT_LITERAL(uF, Capacitance, 1e-6)
FEEDWRIGHT_LITERAL(GPa, Pressure, 1e9)
FEEDWRIGHT_LITERAL(MPa, Pressure, 1e6)
FEEDWRIGHT_LITERAL(psi, Pressure, 6894.757293168361)
FEEDWRIGHT_LITERAL(kg_per_m3, Density, 1.0)
FEEDWRIGHT_LITERAL(kg_per_m, LinearDensity, 1.0)
FEEDWRIGHT_LITERAL(V, Voltage, 1.0)
FEEDWRIGHT_LITERAL(A, Current, 1.0)
FEEDWRIGHT_LITERAL(ohm, Resistance, 1.0)
FEEDWRIGHT_LITERAL(mH, Inductance, 1e-3)
FEEDWRIGHT_LITERAL(Hz, Frequency, 1.0)
FEEDWRIGHT_LITERAL(kHz, Frequency, 1e3)
/// Lead of a screw, per turn.
FEEDWRIGHT_LITERAL(mm_per_rev, TravelPerAngle, 1e-3 / (2 * std::numbers::pi))
/// Ball-circle diameter times speed.
FEEDWRIGHT_LITERAL(mm_rpm, RimSpeed, 1e-3 * std::numbers::pi / 30.0)

#undef FEEDWRIGHT_LITERAL

} // namespace feedwright::literals
