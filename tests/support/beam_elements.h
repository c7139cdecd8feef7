// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A beam of cubic Hermite elements, for checks that share no formula with the program.

#include "parts/screw.h"

namespace feedwright::testing {

struct Beam {
  Length length, diameter;
  Pressure modulus;
  Density density;
  int elements;
};

/// Lowest lateral natural angular velocity with consistent mass.
AngularVelocity first_critical_speed(const Beam& beam, EndSupport a, EndSupport b);

/// Lowest buckling load with the consistent geometric stiffness.
Force first_buckling_load(const Beam& beam, EndSupport a, EndSupport b);

} // namespace feedwright::testing
