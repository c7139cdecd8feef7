// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/move_profile.h"
#include "mechanics/root_mean_square.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

Torque value(const RmsTorque& rms) {
  const auto v = rms.value();
  REQUIRE(v);
  return *v;
}

} // namespace

TEST_CASE("RMS torque agrees with a servo maker's cutting cycle", "[published]") {
  // FANUC AC servo motor alpha i series, Descriptions B-65262EN/03, p. 59: T_a 83.2, T_m = T_o =
  // 3.0 N·m, t_1 .08, t_2 2.0, t_3 3.0 s: 15.0 N·m
  RmsTorque rms;
  rms.add(83.2_N_m + 3.0_N_m, 0.08_s);
  rms.add(3.0_N_m, 2.0_s);
  rms.add(3.0_N_m - 83.2_N_m, 0.08_s);
  rms.add(3.0_N_m, 3.0_s);
  CHECK(near(value(rms), 15.0_N_m, 4e-3));
}

TEST_CASE("RMS torque agrees with a servo maker's feed cycle", "[published]") {
  // from memory: Yaskawa, servo selection example, horizontal ball screw: 1.23 N·m for .1 s, 0.43
  // for 1.0 s, 0.37 for .1 s in 1.5 s: 0.483 N·m
  RmsTorque rms;
  rms.add(1.23_N_m, 0.1_s);
  rms.add(0.43_N_m, 1.0_s);
  rms.add(0.37_N_m, 0.1_s);
  rms.add(0_N_m, 0.3_s);
  CHECK(near(value(rms), 0.483_N_m, 2e-3));
}

TEST_CASE("RMS torque agrees with a geared servo axis", "[published]") {
  // from memory: Mitsubishi, HG-MR selection example: 1.84, 0.23 and −0.84 N·m for .05, .75 and
  // .05 s in 1.5 s: 0.40 N·m
  RmsTorque rms;
  rms.add(1.84_N_m, 0.05_s);
  rms.add(0.23_N_m, 0.75_s);
  rms.add(Torque(-0.84_N_m), 0.05_s);
  rms.add(0_N_m, 0.65_s);
  CHECK(near(value(rms), 0.40_N_m, 1.3e-2));
}

TEST_CASE("RMS torque agrees with a ball-screw maker's transfer axis", "[published]") {
  // from memory: THK General Catalog, selecting a ball screw, high-speed transfer: 4730, 120 and
  // −4490 N·mm for .15, .85 and .15 s, at rest 2.6 s: 1305 N·mm
  RmsTorque rms;
  rms.add(4730_N_mm, 0.15_s);
  rms.add(120_N_mm, 0.85_s);
  rms.add(Torque(-4490_N_mm), 0.15_s);
  rms.add(0_N_mm, 2.6_s);
  CHECK(near(value(rms), 1305_N_mm, 1e-3));
}

TEST_CASE("copper-loss factors of three velocity profiles agree with a handbook", "[published]") {
  // from memory: Electro-Craft, DC Motors, Speed Controls, Servo Systems: mean square acceleration
  // in (distance/time²)²: triangle 16, equal thirds 13.5, parabola 12. Torque here is 1 N·m per
  // m/s².
  const auto factor = [](const RmsTorque& rms, double distance) {
    return std::pow(si_value(value(rms)) / distance, 2) * std::pow(si_value(rms.duration()), 4);
  };
  const auto of_move = [&](Velocity limit) {
    const auto move = least_time_move(2_m, {limit, 3_m_per_s2, std::nullopt});
    REQUIRE(move);
    RmsTorque rms;
    for (const MoveSegment& s : move->segments) {
      rms.add(from_si<Torque>(si_value(s.acceleration_at_start)), s.duration);
    }
    return factor(rms, 2.0);
  };
  CHECK(of_move(100_m_per_s) == Approx(16.0).epsilon(1e-12));
  // thirds: distance = 2 v²/a
  CHECK(of_move(from_si<Velocity>(std::sqrt(3.0))) == Approx(13.5).epsilon(1e-12));
  RmsTorque parabola; // acceleration falls evenly from 6 to −6 distance/time²
  parabola.add_linear(6_N_m, Torque(-6_N_m), 1_s);
  CHECK(factor(parabola, 1.0) == Approx(12.0).epsilon(1e-12));
}
