// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_preload.h"
#include "mechanics/screw_thread.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

template <class Q>
Traced<Q> traced(const Q& q) {
  return {q, tracing::literal(si_value(q))};
}

} // namespace

TEST_CASE("opposed thread drag is what two nuts against each other ask of the screw") {
  // independent computation: one nut pushes with F along the motion, the other is pushed by F
  for (const double mu : {0.003, 0.01, 0.05, 0.15, 0.25}) {
    const double tangent = lead_angle_tangent(4_mm, 14_mm);
    const double up = thread_efficiency(tangent, ball_friction_angle(mu));
    const double back = thread_back_efficiency(tangent, ball_friction_angle(mu));
    const TravelPerAngle travel = per_turn(4_mm);
    const Torque both =
        thread_torque(800_N, travel, up, back) + thread_torque(Force(-800_N), travel, up, back);
    CHECK(near(Torque(2.0 * opposed_thread_drag(800_N, travel, up, back)), both, 1e-9));
    CHECK(both > Torque());
  }
}

TEST_CASE("opposed thread drag agrees with two inclined planes") {
  // independent computation: blocks on slopes φ, F tan(φ + ρ) up the one and F tan(φ − ρ) given
  // back by the other, at half the mean diameter. At μ 0.2 the thread locks, so both cost torque.
  for (const double mu : {0.02, 0.08, 0.2}) {
    const double slope = std::atan(4.0 / (pi * 14.0));
    const double friction = std::atan(mu);
    const double up = 800.0 * 0.007 * std::tan(slope + friction);
    const double down = 800.0 * 0.007 * std::tan(slope - friction);
    const double tangent = std::tan(slope);
    const Torque drag =
        opposed_thread_drag(800_N, per_turn(4_mm), thread_efficiency(tangent, friction),
                            thread_back_efficiency(tangent, friction));
    CHECK(near(drag, from_si<Torque>((up - down) / 2.0), 1e-9));
  }
}

TEST_CASE("opposed threads without friction drag nothing") {
  CHECK(opposed_thread_drag(800_N, per_turn(4_mm), 1.0, 1.0) == Torque());
}

TEST_CASE("ball preload drag goes with the preload and falls with the root of the lead angle") {
  const TravelPerAngle travel = per_turn(5_mm);
  const Torque once = ball_preload_drag(500_N, travel, 0.1);
  CHECK(near(Torque(ball_preload_drag(1000_N, travel, 0.1)), Torque(2.0 * once)));
  CHECK(near(Torque(ball_preload_drag(500_N, travel, 0.4)), Torque(0.5 * once)));
}

TEST_CASE("ball preload drag stays within what opposed ball threads of usual friction cost") {
  // independent computation: two opposed threads with μ 0.002 to 0.01 enclose the empirical rule
  for (const Length& d : {16.75_mm, 20.75_mm, 32.75_mm}) {
    const double tangent = lead_angle_tangent(5_mm, d);
    const auto both = [&](double mu) {
      return Torque(2.0 *
                    opposed_thread_drag(1000_N, per_turn(5_mm),
                                        thread_efficiency(tangent, ball_friction_angle(mu)),
                                        thread_back_efficiency(tangent, ball_friction_angle(mu))));
    };
    const Torque rule = ball_preload_drag(1000_N, per_turn(5_mm), tangent);
    CHECK(rule > both(0.002));
    CHECK(rule < both(0.015));
  }
}

TEST_CASE("collar torque agrees with friction gathered over a worn-in ring") {
  // independent computation: pressure ∝ 1/radius between Ø 20 and Ø 40 mm, by rings
  constexpr int rings = 2000;
  double force = 0.0;
  double torque = 0.0;
  for (int i = 0; i < rings; ++i) {
    const double r = 0.010 + 0.010 * (i + 0.5) / rings;
    const double on_ring = 1.0 / r * 2.0 * pi * r;
    force += on_ring;
    torque += 0.12 * on_ring * r;
  }
  CHECK(near(Torque(collar_torque(0.12, 500_N, 30_mm)), from_si<Torque>(500.0 * torque / force),
             1e-9));
}

TEST_CASE("traced preload equations give the plain figures") {
  const auto force = traced(800_N);
  const auto travel = traced(5_mm_per_rev);
  CHECK(near(Torque(ball_preload_drag(force, travel, traced(0.1)).value),
             Torque(ball_preload_drag(800_N, 5_mm_per_rev, 0.1)), 1e-14));
  CHECK(near(Torque(opposed_thread_drag(force, travel, traced(0.5), traced(0.2)).value),
             Torque(opposed_thread_drag(800_N, 5_mm_per_rev, 0.5, 0.2)), 1e-14));
  CHECK(near(Torque(collar_torque(traced(0.1), force, traced(20_mm)).value),
             Torque(collar_torque(0.1, 800_N, 20_mm)), 1e-14));
}
