// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/best_travel.h"
#include "support/near.h"

#include <random>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

struct Train {
  double torque, force, efficiency, inertia, mass;
};

/// a(r) = (T − F r/η)/(J/r + m r/η)
double acceleration(const Train& t, double r) {
  return (t.torque - t.force * r / t.efficiency) / (t.inertia / r + t.mass * r / t.efficiency);
}

/// Place of the largest value of f from low to high on a geometric scale, in steps of 0.1 %.
template <class F>
double scan(F f, double low, double high) {
  double best = low;
  for (double x = low; x < high; x *= 1.001) {
    best = f(x) > f(best) ? x : best;
  }
  return best;
}

TravelPerAngle best_of(const Train& t) {
  return best_motor_travel(from_si<Torque>(t.torque), from_si<Force>(t.force), t.efficiency,
                           from_si<Inertia>(t.inertia), from_si<Mass>(t.mass));
}

} // namespace

TEST_CASE("best travel is where a scan finds the greatest acceleration") {
  // independent computation: brute force over travel per angle
  std::mt19937 random(11);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  for (int i = 0; i < 40; ++i) {
    const Train t{between(0.2, 5.0), i % 4 == 0 ? 0.0 : between(10.0, 3000.0), between(0.3, 1.0),
                  between(1e-5, 5e-4), between(2.0, 200.0)};
    const double best = si_value(best_of(t));
    const double found = scan([&](double r) { return acceleration(t, r); }, 1e-6, 1.0);
    INFO("best " << best << " scanned " << found);
    CHECK(best == Approx(found).epsilon(2e-3));
    CHECK(acceleration(t, best) >= acceleration(t, found));
    CHECK(acceleration(t, best) > 0.0);
  }
}

TEST_CASE("best travel holds where the force takes nearly everything") {
  // the difference of like numbers in the textbook form would lose these digits
  const Train t{1e-6, 1e4, 0.9, 1e-3, 1.0};
  CHECK(si_value(best_of(t)) == Approx(0.9e-6 / (2.0 * 1e4)).epsilon(1e-9));
}

TEST_CASE("best travel shrinks with the force against it") {
  const TravelPerAngle idle = best_motor_travel(2_N_m, 0_N, 0.9, 1_kg_cm2, 30_kg);
  const TravelPerAngle cutting = best_motor_travel(2_N_m, 800_N, 0.9, 1_kg_cm2, 30_kg);
  CHECK(cutting < idle);
  CHECK(cutting > TravelPerAngle());
}

TEST_CASE("no torque leaves no best travel and no best reduction") {
  CHECK(best_motor_travel(0_N_m, 10_N, 0.9, 1_kg_cm2, 30_kg) == TravelPerAngle());
  CHECK(best_motor_travel(Torque(-1_N_m), 10_N, 0.9, 1_kg_cm2, 30_kg) == TravelPerAngle());
  CHECK(best_reduction(0_N_m, 1_N_m, 4_kg_cm2, 1_kg_cm2) == 0.0);
}

TEST_CASE("best reduction is where a scan finds the greatest acceleration") {
  // independent computation: a(i) = (T i − T_L)/(J_M i² + J_L)
  for (const double load : {0.0, 0.5, 4.0, 20.0}) {
    const auto angular = [=](double i) { return (2.0 * i - load) / (1e-4 * i * i + 4e-3); };
    const double found = scan(angular, 0.01, 200.0);
    const double best =
        best_reduction(2_N_m, from_si<Torque>(load), from_si<Inertia>(4e-3), 1_kg_cm2);
    CHECK(best == Approx(found).epsilon(2e-3));
    CHECK(angular(best) >= angular(found));
  }
}
