// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/rotor.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("a cylinder's inertia is the sum of its rings") {
  // independent computation: integration of ρ 2πr L r² over the radius by the midpoint rule
  const double density = 7850.0;
  const double length = 0.9;
  const double radius = 0.01;
  constexpr int rings = 20000;
  double sum = 0.0;
  for (int i = 0; i < rings; ++i) {
    const double r = radius * (i + 0.5) / rings;
    sum += density * 2.0 * pi * r * length * r * r * radius / rings;
  }
  CHECK(near(cylinder_inertia(7850_kg_per_m3, 0.9_m, 20_mm), from_si<Inertia>(sum), 1e-7));
}

TEST_CASE("a carried mass stores the same energy sliding as its inertia turning") {
  const Mass mass = 12_kg;
  const TravelPerAngle travel = 5_mm_per_rev;
  const AngularVelocity speed = 900_rpm;
  const Velocity feed = travel * speed;
  const Energy sliding = mass * feed * feed / 2.0;
  const Energy turning = carried_inertia(mass, travel) * speed * speed / 2.0;
  CHECK(near(turning, sliding, 1e-14));
}
