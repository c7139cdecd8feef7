// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_life.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("cubic mean load agrees with a catalogue's transfer axis", "[published]") {
  // from memory: THK ball screw catalogue, example of a horizontal transfer: 550 N over 75 mm, 17 N
  // over 850 mm, 516 N over 75 mm, nothing on the 1000 mm back: F_m 225 N. Revolutions go with
  // distance, lead 40 mm.
  CubicMeanLoad mean;
  mean.add(550_N, 75.0 / 40.0);
  mean.add(17_N, 850.0 / 40.0);
  mean.add(516_N, 75.0 / 40.0);
  mean.add(0_N, 1000.0 / 40.0);
  CHECK(near(mean.value(), 225_N, 1e-3));
}

TEST_CASE("screw life agrees with a catalogue's transfer axis", "[published]") {
  // from memory: the same THK example, C_a 5400 N, f_w 1.5, F_m 225 N, 400 rpm: 4.1e9 revolutions,
  // 171 000 h
  const auto life = rated_revolutions(5400_N, 1.5, 225_N);
  REQUIRE(life);
  CHECK(*life == Approx(4.1e9).epsilon(2e-3));
  CHECK(*life / (60.0 * 400.0) == Approx(171000.0).epsilon(3e-3));
}

TEST_CASE("screw life agrees with the catalogue for the larger nut", "[published]") {
  // from memory: the same THK example with C_a 6600 N: 7.48e9 revolutions, 311 600 h
  const auto life = rated_revolutions(6600_N, 1.5, 225_N);
  REQUIRE(life);
  CHECK(*life == Approx(7.48e9).epsilon(1e-3));
  CHECK(*life / (60.0 * 400.0) == Approx(311600.0).epsilon(1e-3));
}

TEST_CASE("a preloaded pair keeps both halves loaded to nearly three times the preload",
          "[published]") {
  // THK ball screw catalogue, text on preload: effective up to about three times the preload
  CHECK(near(preload_holds_to(1000_N), 3000_N, 0.06));
}

TEST_CASE("reliability factors agree with the standard's table", "[published]") {
  // from memory: ISO 281:2007, a_1 of 90, 95, 96, 97, 98, 99 and 99.9 %
  CHECK(reliability_factor(0.90) == Approx(1.0));
  CHECK(reliability_factor(0.95) == Approx(0.64));
  CHECK(reliability_factor(0.96) == Approx(0.55));
  CHECK(reliability_factor(0.97) == Approx(0.47));
  CHECK(reliability_factor(0.98) == Approx(0.37));
  CHECK(reliability_factor(0.99) == Approx(0.25));
  CHECK(reliability_factor(0.999) == Approx(0.093));
}

TEST_CASE("reliability factors agree with the distribution behind the table", "[published]") {
  // from memory: ISO/TR 1281-2, three-parameter Weibull, slope 1.5, no failure before 0.05 L10:
  // a_1 = 0.95 (ln S/ln 0.9)^(2/3) + 0.05. The table is this, rounded to two figures.
  for (const double s : {0.90, 0.95, 0.96, 0.97, 0.98, 0.99, 0.992, 0.994, 0.996, 0.998, 0.999,
                         0.9992, 0.9994, 0.9995}) {
    INFO("reliability " << s);
    const double weibull = 0.95 * std::pow(std::log(s) / std::log(0.9), 2.0 / 3.0) + 0.05;
    CHECK(reliability_factor(s) == Approx(weibull).epsilon(0.025));
  }
}
