// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_preload.h"
#include "mechanics/screw_thread.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("drag of a preloaded ball nut agrees with a catalogue", "[published]") {
  // from memory: THK ball screw catalogue, preload torque: 3000 N, lead 10 mm, Ø 40 mm, lead angle
  // about 4°22': 865 N·mm
  const double tangent = std::tan((4.0 + 22.0 / 60.0) * pi / 180.0);
  CHECK(near(Torque(ball_preload_drag(3000_N, per_turn(10_mm), tangent)), 865_N_mm, 3e-3));
}

TEST_CASE("collar friction agrees with Shigley", "[published]") {
  // from memory: Shigley, Mechanical Engineering Design, Ex. 8-1: 6.4 kN, mean collar Ø 40 mm, μ_c
  // 0.08: 10.24 N·m; with the thread 26.18 N·m up, 9.77 N·m down, efficiency 0.311
  const Torque collar = collar_torque(0.08, 6400_N, 40_mm);
  CHECK(near(collar, 10.24_N_m));
  const double tangent = lead_angle_tangent(8_mm, 30_mm);
  const double up = thread_efficiency(tangent, ball_friction_angle(0.08));
  const double back = thread_back_efficiency(tangent, ball_friction_angle(0.08));
  const TravelPerAngle travel = per_turn(8_mm);
  const Torque raise = thread_torque(6400_N, travel, up, back) + collar;
  CHECK(near(raise, 26.18_N_m, 3e-4));
  const Torque lower = thread_torque(Force(-6400_N), travel, up, back) + collar;
  CHECK(near(lower, 9.77_N_m, 1e-3));
  CHECK(6400_N * travel / raise == Approx(0.311).epsilon(2e-3));
}

TEST_CASE("collar friction agrees with a textbook trapezoidal screw", "[published]") {
  // V. B. Bhandari, Design of Machine Elements, Ex. 6.6: Tr 52×8 (mean 48), 2 kN, μ 0.15, collar
  // Ø 100/60 mm with μ_c 0.12, 30 rpm: collar 9600 N·mm; 0.061838 kW, efficiency 12.937 % (the book
  // takes the axial flank angle, the program the normal one: < 0.1 %)
  const Torque collar = collar_torque(0.12, 2000_N, 80_mm);
  CHECK(near(collar, 9600_N_mm));
  const double tangent = lead_angle_tangent(8_mm, 48_mm);
  const double up = thread_efficiency(tangent, trapezoidal_friction_angle(0.15, tangent));
  const Torque torque = thread_torque(2000_N, per_turn(8_mm), up, 0.0) + collar;
  CHECK(near(Power(torque * AngularVelocity(30_rpm)), 61.838_W, 1e-3));
  CHECK(2000_N * per_turn(8_mm) / torque == Approx(0.12937).epsilon(1e-3));
}
