// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_life.h"
#include "support/near.h"

#include <algorithm>
#include <array>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

double revolutions(Force rating, Force load) {
  return rated_revolutions(rating, 1.0, load).value_or(0.0);
}

/// Root of a falling function in (low, high), by bisection.
template <class F>
double falling_root(F f, double low, double high) {
  for (int i = 0; i < 200; ++i) {
    const double middle = (low + high) / 2.0;
    (f(middle) > 0.0 ? low : high) = middle;
  }
  return (low + high) / 2.0;
}

/// The loaded half of a pair of ball contacts squeezed by 1 and loaded by f: deflections go with
/// F^(2/3), their sum stays.
double hertz_loaded_half(double f) {
  return falling_root(
      [f](double loaded) {
        const double relieved = std::max(loaded - f, 0.0);
        return 2.0 - std::cbrt(loaded * loaded) - std::cbrt(relieved * relieved);
      },
      f, f + 1.0);
}

/// Life that both of two halves with Weibull slope 10/9 reach with a chance of 0.9.
double weibull_life_of_both(double a, double b) {
  const double per_life = -std::log(0.9);
  return falling_root(
      [=](double x) {
        return std::exp(-per_life * std::pow(x / a, 10.0 / 9.0)) *
                   std::exp(-per_life * std::pow(x / b, 10.0 / 9.0)) -
               0.9;
      },
      0.0, std::max(a, b));
}

} // namespace

TEST_CASE("cubic mean agrees with the integral of a varying load") {
  // independent computation: F = 1 + sin: the mean of F³ over a turn is 1 + 3/2
  CubicMeanLoad wave;
  // a ramp from 200 to 1000 N: (a³ + a² b + a b² + b³)/4
  CubicMeanLoad ramp;
  constexpr int pieces = 20000;
  for (int i = 0; i < pieces; ++i) {
    const double at = (i + 0.5) / pieces;
    wave.add(from_si<Force>(1.0 + std::sin(2.0 * pi * at)), 1.0);
    ramp.add(from_si<Force>(200.0 + 800.0 * at), 0.25);
  }
  CHECK(near(wave.value(), from_si<Force>(std::cbrt(2.5)), 1e-8));
  CHECK(near(ramp.value(), from_si<Force>(std::cbrt((8e6 + 4e7 + 2e8 + 1e9) / 4.0)), 1e-8));
}

TEST_CASE("cubic mean uses up the same life as its loads one after the other") {
  // independent computation: damage adds up (Palmgren, Miner)
  struct Case {
    Force load;
    double turns;
  };
  const std::array<Case, 3> cases{{{2500_N, 10.0}, {800_N, 300.0}, {100_N, 2000.0}}};
  CubicMeanLoad mean;
  double damage = 0.0;
  double turns = 0.0;
  for (const Case& c : cases) {
    mean.add(c.load, c.turns);
    damage += c.turns / revolutions(20_kN, c.load);
    turns += c.turns;
  }
  CHECK(revolutions(20_kN, mean.value()) == Approx(turns / damage).epsilon(1e-12));
}

TEST_CASE("cubic mean of nothing turned is no load") {
  CubicMeanLoad mean;
  CHECK(mean.value() == Force());
  mean.add(500_N, 0.0);
  CHECK(mean.value() == Force());
}

TEST_CASE("screw life without load is no figure") {
  CHECK_FALSE(rated_revolutions(20_kN, 1.2, 0_N));
  CHECK_FALSE(rated_revolutions(20_kN, 1.2, Force(-5_N)));
  CHECK(rated_revolutions(20_kN, 1.0, 20_kN).value_or(0.0) == Approx(1e6));
}

TEST_CASE("pair loads balance the outer load") {
  for (double f = 0.0; f <= 4000.0; f += 50.0) {
    const Force load = from_si<Force>(f);
    const PairLoads pair = pair_loads(load, 1000_N);
    CHECK(std::abs(si_value(pair.loaded - pair.relieved - load)) < 1e-9);
    CHECK(pair.relieved >= Force());
  }
  const PairLoads idle = pair_loads(0_N, 1000_N);
  CHECK(near(idle.loaded, 1000_N));
  CHECK(near(idle.relieved, 1000_N));
}

TEST_CASE("pair loads are continuous where the relieved half lets go") {
  const Force limit = preload_holds_to(1000_N);
  const PairLoads below = pair_loads(limit * (1.0 - 1e-9), 1000_N);
  const PairLoads above = pair_loads(limit * (1.0 + 1e-9), 1000_N);
  CHECK(near(below.loaded, above.loaded, 1e-8));
  CHECK(below.relieved < 1e-5_N);
  CHECK(above.relieved == Force());
  // no preload: the loaded half carries everything
  CHECK(near(pair_loads(300_N, 0_N).loaded, 300_N));
}

TEST_CASE("the relieved half lets go where ball contacts say") {
  // independent computation: deflection ∝ F^(2/3), δ1 + δ2 constant, by bisection
  const double limit = si_value(preload_holds_to(1_N));
  CHECK(hertz_loaded_half(limit * 0.999) > limit * 0.999);
  CHECK(hertz_loaded_half(limit) == Approx(limit).epsilon(1e-9));
}

TEST_CASE("pair loads never fall below those of ball contacts and exceed them little") {
  // independent computation: as above; the standard's closed form is exact at both ends and on the
  // safe side between them
  double most = 0.0;
  for (double f = 0.02; f < 2.8; f += 0.02) {
    const double exact = hertz_loaded_half(f);
    const double standard = si_value(pair_loads(from_si<Force>(f), 1_N).loaded);
    CHECK(standard >= exact);
    most = std::max(most, standard / exact - 1.0);
  }
  CHECK(most < 0.026);
  CHECK(most > 0.01);
}

TEST_CASE("life of a pair is what both halves reach nine times out of ten") {
  // independent computation: product of two Weibull chances, by bisection
  for (const double b : {1e6, 3e6, 2e7, 1e9}) {
    const double pair = life_of_pair(1e6, b);
    CHECK(pair == Approx(weibull_life_of_both(1e6, b)).epsilon(1e-9));
    CHECK(pair < 1e6);
    CHECK(pair == Approx(life_of_pair(b, 1e6)).epsilon(1e-13));
  }
}

TEST_CASE("life of a preloaded double nut agrees with a separate calculation") {
  // derived: preload 1000 N, load 1500 N, C_a 20 kN: halves 1893.118 and 393.118 N, lives 1179.117
  // and 131 680.46, together 1173.518 million revolutions
  const PairLoads pair = pair_loads(1500_N, 1000_N);
  CHECK(near(pair.loaded, 1893.118_N, 1e-6));
  CHECK(near(pair.relieved, 393.118_N, 3e-6));
  const double a = revolutions(20_kN, pair.loaded);
  const double b = revolutions(20_kN, pair.relieved);
  CHECK(a == Approx(1179.117e6).epsilon(1e-6));
  CHECK(b == Approx(131680.46e6).epsilon(1e-6));
  CHECK(life_of_pair(a, b) == Approx(1173.518e6).epsilon(1e-6));
  CHECK(life_of_pair(a, b) == Approx(weibull_life_of_both(a, b)).epsilon(1e-9));
}

TEST_CASE("reliability factor falls steadily from one towards nothing") {
  CHECK(reliability_factor(0.5) == Approx(1.0));
  double before = reliability_factor(0.9);
  for (double s = 0.9005; s < 1.0; s += 0.0005) {
    const double now = reliability_factor(s);
    CHECK(now < before);
    CHECK(now > 0.0);
    before = now;
  }
  CHECK(reliability_factor(1.0) == 0.0);
  // past the table it never promises more than the distribution behind it
  for (const double s : {0.9996, 0.9998, 0.9999}) {
    CHECK(reliability_factor(s) < 0.95 * std::pow(std::log(s) / std::log(0.9), 2.0 / 3.0) + 0.05);
  }
}
