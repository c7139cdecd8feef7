// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/bus_energy.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("turning and sliding energy equal the work of braking to a stop") {
  // independent computation: ∫ T ω dt and ∫ F v dt at constant braking, midpoint rule
  constexpr int steps = 1000;
  constexpr double brake = 0.75, inertia = 2.49e-4, mass = 40.0;
  double turning = 0.0;
  double sliding = 0.0;
  const double speed = 3000.0 * pi / 30.0;
  const double dt = inertia * speed / brake / steps;
  const double ds = mass * 0.5 / brake / steps;
  for (int i = 0; i < steps; ++i) {
    turning += brake * (speed - brake / inertia * (i + 0.5) * dt) * dt;
    sliding += brake * (0.5 - brake / mass * (i + 0.5) * ds) * ds;
  }
  CHECK(near(turning_energy(2.49_kg_cm2, 3000_rpm), from_si<Energy>(turning), 1e-11));
  CHECK(near(sliding_energy(40_kg, 0.5_m_per_s), from_si<Energy>(sliding), 1e-11));
}

TEST_CASE("raised bus voltage agrees with charging step by step") {
  // independent computation: C dV/dt = P/V by the classical Runge-Kutta method
  constexpr double c = 10e-3, energy = 3.605;
  constexpr int steps = 2000;
  constexpr double h = energy / steps;
  double v = 48.0;
  for (int i = 0; i < steps; ++i) {
    const auto slope = [&](double at) { return 1.0 / (c * at); };
    const double k1 = slope(v);
    const double k2 = slope(v + h / 2.0 * k1);
    const double k3 = slope(v + h / 2.0 * k2);
    const double k4 = slope(v + h * k3);
    v += h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
  }
  CHECK(near(raised_voltage(48_V, 10000_uF, 3.605_J), from_si<Voltage>(v), 1e-11));
}

TEST_CASE("voltage, energy and capacitance undo one another") {
  for (const Voltage& from : {24_V, 48_V, 283_V}) {
    for (const Energy& energy : {0.1_J, 12.3_J, 400_J}) {
      for (const Capacitance& c : {100_uF, 820_uF, 10000_uF}) {
        const Voltage to = raised_voltage(from, c, energy);
        CHECK(to > from);
        CHECK(near(capacitor_energy(c, from, to), energy, 1e-9));
        CHECK(near(wanted_capacitance(energy, from, to), c, 1e-9));
      }
    }
  }
  CHECK(raised_voltage(48_V, 820_uF, 0_J) == 48_V);
}
