// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/bus_energy.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("turning energy agrees with a drive maker's formula", "[published]") {
  // Yaskawa, SGM7D manual, p. 311, and Fagor: E_s = J n²/182, J kg·m², n rpm (182 rounded from
  // 182.378)
  for (const double rpm : {100.0, 1500.0, 3000.0}) {
    const AngularVelocity speed = from_si<AngularVelocity>(rpm * pi / 30.0);
    CHECK(near(turning_energy(2.49_kg_cm2, speed), from_si<Energy>(2.49e-4 * rpm * rpm / 182.0),
               2.2e-3));
  }
}

TEST_CASE("turning energy agrees with a drive maker's energy of a stop", "[published]") {
  // Mitsubishi, MR-JE manual, p. 222: E = (0.1047/2) V T t, V rpm, T N·m, t s. A stop from 3000 rpm
  // in 0.2 s of 5 kg·cm² takes T = J ω/t.
  const double torque = 5e-4 * 3000.0 * pi / 30.0 / 0.2;
  CHECK(near(turning_energy(5_kg_cm2, 3000_rpm),
             from_si<Energy>(0.1047 / 2.0 * 3000.0 * torque * 0.2), 3e-4));
}

TEST_CASE("energy a bus takes up agrees with a drive maker's formula", "[published]") {
  // Fagor, BCSD manual, p. 15: E_c = 0.5 C (U_1² − U_2²), with U_1 380 V on 200 V mains; here
  // 820 µF from 283 V, worked by the difference of squares: 26.367 J
  CHECK(near(capacitor_energy(820_uF, 283_V, 380_V), from_si<Energy>(0.5 * 820e-6 * 97.0 * 663.0),
             1e-12));
}
