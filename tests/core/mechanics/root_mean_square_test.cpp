// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/root_mean_square.h"
#include "support/near.h"

#include <random>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("RMS torque agrees with numeric integration of random cycles") {
  // independent computation: midpoint rule over each piece
  std::mt19937 random(7);
  std::uniform_real_distribution<double> torque(-5.0, 5.0);
  std::uniform_real_distribution<double> time(0.0, 2.0);
  for (int cycle = 0; cycle < 200; ++cycle) {
    RmsTorque rms;
    double squares = 0.0;
    double total = 0.0;
    for (int piece = 0; piece < 6; ++piece) {
      const double from = torque(random);
      const double to = piece % 2 == 0 ? from : torque(random);
      const double t = time(random);
      if (piece % 2 == 0) {
        rms.add(from_si<Torque>(from), from_si<Time>(t));
      } else {
        rms.add_linear(from_si<Torque>(from), from_si<Torque>(to), from_si<Time>(t));
      }
      constexpr int steps = 2000;
      for (int i = 0; i < steps; ++i) {
        const double at = from + (to - from) * (i + 0.5) / steps;
        squares += at * at * t / steps;
      }
      total += t;
    }
    const auto value = rms.value();
    REQUIRE(value);
    CHECK(near(*value, from_si<Torque>(std::sqrt(squares / total)), 1e-6));
    CHECK(near(rms.duration(), from_si<Time>(total), 1e-12));
  }
}

TEST_CASE("RMS torque lies between the mean and the largest torque") {
  RmsTorque rms;
  rms.add(1_N_m, 1_s);
  rms.add_linear(1_N_m, 4_N_m, 2_s);
  REQUIRE(rms.value());
  CHECK(*rms.value() > 2_N_m);
  CHECK(*rms.value() < 4_N_m);
}

TEST_CASE("RMS torque of no time at all is not a figure") {
  RmsTorque rms;
  CHECK_FALSE(rms.value());
  rms.add(3_N_m, 0_s);
  rms.add(3_N_m, Time(-1_s));
  CHECK_FALSE(rms.value());
  rms.add(3_N_m, 1_s);
  CHECK(near(*rms.value(), 3_N_m));
}
