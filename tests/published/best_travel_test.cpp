// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/best_travel.h"
#include "mechanics/rotor.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("best reduction agrees with servo makers' formula", "[published]") {
  // from memory: servo makers' selection guides: i = √(J_L/J_M) without load torque; with it
  // i = T_L/T + √((T_L/T)² + J_L/J_M)
  CHECK(best_reduction(2_N_m, 0_N_m, 4_kg_cm2, 1_kg_cm2) == Approx(2.0).epsilon(1e-13));
  // T_L/T = 0.5: 0.5 + √4.25 = 2.5616
  CHECK(best_reduction(2_N_m, 1_N_m, 4_kg_cm2, 1_kg_cm2) == Approx(2.5616).epsilon(2e-5));
}

TEST_CASE("best travel without load matches the inertias", "[published]") {
  // from memory: servo makers' selection guides: greatest acceleration where the reflected inertia
  // equals the motor's
  const TravelPerAngle best = best_motor_travel(2_N_m, 0_N, 1.0, 0.5_kg_cm2, 20_kg);
  CHECK(near(Inertia(carried_inertia(20_kg, best)), 0.5_kg_cm2));
}
