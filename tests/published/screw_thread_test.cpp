// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/rotor.h"
#include "mechanics/screw_thread.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

double efficiency(Length lead, Length pitch_diameter, double friction) {
  return thread_efficiency(lead_angle_tangent(lead, pitch_diameter), ball_friction_angle(friction));
}

double back_efficiency(Length lead, Length pitch_diameter, double friction) {
  return thread_back_efficiency(lead_angle_tangent(lead, pitch_diameter),
                                ball_friction_angle(friction));
}

} // namespace

TEST_CASE("screw torque agrees with a textbook lift", "[published]") {
  // C. R. Wentzell, Machine Design, Ex. 18.4: T = 0.177 F L, F 2900 lbf, lead 0.5 in, η 0.9: 256.65
  // in·lbf
  const TravelPerAngle travel = per_turn(0.5_in);
  CHECK(near(thread_torque(2900_lbf, travel, 0.9, 0.9),
             from_si<Torque>(256.65 * 4.4482216152605 * 0.0254), 1e-3));
}

TEST_CASE("square thread efficiency agrees with a textbook power screw", "[published]") {
  // C. R. Wentzell, Machine Design, Ex. 18.2: lead angle 4.48°, friction 0.15: efficiency 33.91 %,
  // self-locking. A square thread's friction angle is that of a ball thread's formula: atan μ.
  const double tangent = std::tan(4.48 * pi / 180.0);
  CHECK(thread_efficiency(tangent, ball_friction_angle(0.15)) == Approx(0.3391).epsilon(2e-3));
  CHECK(thread_back_efficiency(tangent, ball_friction_angle(0.15)) < 0.0);
}

TEST_CASE("double square thread agrees with Shigley", "[published]") {
  // from memory: Shigley, Mechanical Engineering Design, Ex. 8-1: d_m 30 mm, lead 8 mm, μ 0.08,
  // 6.4 kN: raising 15.94 N·m, lowering −0.466 N·m, collar friction aside
  const TravelPerAngle travel = per_turn(8_mm);
  const double up = efficiency(8_mm, 30_mm, 0.08);
  const double back = back_efficiency(8_mm, 30_mm, 0.08);
  CHECK(near(thread_torque(6400_N, travel, up, back), 15.94_N_m, 1e-3));
  // lowering: the load pulls along the motion, the thread gives torque back
  CHECK(near(thread_torque(Force(-6400_N), travel, up, back), Torque(-0.466_N_m), 2e-3));
}

TEST_CASE("ball screw efficiencies agree with a catalogue's two formulas", "[published]") {
  // from memory: catalogues' form η = (1 − μ tan β)/(1 + μ/tan β), η_r = (1 − μ/tan β)/(1 + μ tan
  // β)
  const Length lead = 5_mm;
  for (const Length& d : {16.75_mm, 20.75_mm, 25.75_mm, 32.75_mm}) {
    for (const double mu : {0.003, 0.005, 0.01}) {
      const double t = double(lead_angle_tangent(lead, d));
      CHECK(efficiency(lead, d, mu) == Approx((1.0 - mu * t) / (1.0 + mu / t)).epsilon(1e-13));
      CHECK(back_efficiency(lead, d, mu) == Approx((1.0 - mu / t) / (1.0 + mu * t)).epsilon(1e-13));
    }
  }
}

TEST_CASE("trapezoidal thread agrees with a textbook power screw", "[published]") {
  // V. B. Bhandari, Design of Machine Elements, Ex. 6.6: Tr 52×8 (mean 48), 2 kN, μ 0.15: thread
  // torque 10 083.5 N·mm (the book takes the axial flank angle, the program the normal one: < 0.1
  // %)
  const auto tangent = lead_angle_tangent(8_mm, 48_mm);
  const auto angle = trapezoidal_friction_angle(0.15, tangent);
  const double up = thread_efficiency(tangent, angle);
  CHECK(near(thread_torque(2000_N, per_turn(8_mm), up, 0.0), 10083.54_N_mm, 1e-3));
}

TEST_CASE("a trapezoidal thread locks at the friction the geometry says") {
  // derived: self-locking from μ = tan φ·cos α_n; Tr 12×3 (mean 10.5): tan φ·cos 15° = 0.08785
  const auto tangent = lead_angle_tangent(3_mm, 10.5_mm);
  CHECK(thread_back_efficiency(tangent, trapezoidal_friction_angle(0.0875, tangent)) > 0.0);
  CHECK(thread_back_efficiency(tangent, trapezoidal_friction_angle(0.0883, tangent)) < 0.0);
}

TEST_CASE("power never comes out of friction in either direction") {
  for (double force = -2000.0; force <= 2000.0; force += 250.0) {
    for (const double mu : {0.002, 0.01, 0.1, 0.3}) {
      const Force f = from_si<Force>(force);
      const TravelPerAngle r = per_turn(5_mm);
      const Torque torque =
          thread_torque(f, r, efficiency(5_mm, 16_mm, mu), back_efficiency(5_mm, 16_mm, mu));
      const AngularVelocity speed = 10_rad_per_s;
      const Power loss = torque * speed - f * (speed * r);
      CHECK(loss >= from_si<Power>(-1e-12));
    }
  }
}

TEST_CASE("a stage loses power whichever way it flows") {
  CHECK(near(through_stage(2_N_m, 2.0, 0.8), 1.25_N_m));
  CHECK(near(through_stage(Torque(-2_N_m), 2.0, 0.8), Torque(-0.8_N_m)));
}

TEST_CASE("screw and carriage inertia agree with a drive maker's worked axis", "[published]") {
  // Yaskawa servo selection example, ball screw behind a 1/2 gear: 250 kg on a lead of 10 mm:
  // J_L1 1.58e-4 kg·m²; screw 1.0 m, Ø 20 mm, 7870 kg/m³: J_B 0.31e-4 kg·m², both at the motor
  CHECK(near(carried_inertia(250_kg, TravelPerAngle(per_turn(10_mm) / 2.0)),
             from_si<Inertia>(1.58e-4), 3e-3));
  CHECK(near(Inertia(cylinder_inertia(7870_kg_per_m3, 1_m, 20_mm) / 4.0), from_si<Inertia>(0.31e-4),
             4e-3));
  // Oriental Motor technical reference, ball screw Ø 15×600 mm, 7900 kg/m³: 0.236e-4 kg·m² (from
  // memory)
  CHECK(near(cylinder_inertia(7900_kg_per_m3, 600_mm, 15_mm), from_si<Inertia>(0.236e-4), 3e-3));
}
