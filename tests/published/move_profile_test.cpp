// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/move_profile.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

Time ramped(const MoveProfile& p, std::size_t first) {
  return p.segments[first].duration + p.segments[first + 1].duration +
         p.segments[first + 2].duration;
}

Jerk no_jerk() {
  return Jerk();
}

} // namespace

TEST_CASE("a move without a jerk limit agrees with a servo maker's example", "[published]") {
  // Yaskawa, servo selection example, horizontal ball screw: 0.275 m at 15 m/min, 0.1 s to speed:
  // 1.2 s
  const Acceleration a = 15_m_per_min / 0.1_s;
  const auto move = least_time_move(0.275_m, {15_m_per_min, a, std::nullopt});
  REQUIRE(move);
  CHECK(near(move->total, 1.2_s, 1e-12));
  CHECK(near(move->segments[3].duration, 1.0_s, 1e-12));
  CHECK(move->segments[1].jerk == no_jerk());
}

TEST_CASE("a jerk-limited move from one velocity to another agrees with Biagiotti and Melchiorri",
          "[published]") {
  // from memory: L. Biagiotti, C. Melchiorri, Trajectory Planning for Automatic Machines and
  // Robots, Ex. 3.9: 10 m, 1 m/s to rest, limits 5, 10, 30: T_a .7333, T_v 1.1433, T_d .8333, T_j
  // .3333 s
  const auto move =
      least_time_move(10_m, {5_m_per_s, 10_m_per_s2, 30_m_per_s3}, 1_m_per_s, 0_m_per_s);
  REQUIRE(move);
  CHECK(near(ramped(*move, 0), 0.7333_s, 1e-4));
  CHECK(near(move->segments[3].duration, 1.1433_s, 1e-4));
  CHECK(near(ramped(*move, 4), 0.8333_s, 1e-4));
  CHECK(near(move->segments[0].duration, 0.3333_s, 2e-4));
  CHECK(near(move->segments[6].duration, 0.3333_s, 2e-4));
}

TEST_CASE("a jerk-limited move that misses its velocity agrees with Biagiotti and Melchiorri",
          "[published]") {
  // from memory: the same, Ex. 3.10: velocity limit 10: T_a 1.0747, T_v 0, T_d 1.1747 s, peak
  // 8.4136
  const auto move =
      least_time_move(10_m, {10_m_per_s, 10_m_per_s2, 30_m_per_s3}, 1_m_per_s, 0_m_per_s);
  REQUIRE(move);
  CHECK(near(ramped(*move, 0), 1.0747_s, 1e-4));
  CHECK(near(ramped(*move, 4), 1.1747_s, 1e-4));
  CHECK(near(move->peak_velocity, 8.4136_m_per_s, 1e-5));
  CHECK(si_value(move->segments[3].duration) < 1e-12);
}

TEST_CASE("a jerk-limited move with a fast start agrees with Biagiotti and Melchiorri",
          "[published]") {
  // from memory: the same, Ex. 3.11: start at 7 m/s; the book lowers the acceleration limit of both
  // ends by 1 % at a time until the profile fits, at 6.9641: T_a .4666, T_d 1.4718, T_j .2321 s,
  // peak 8.6329
  const MoveLimits lowered{10_m_per_s, 6.9641_m_per_s2, 30_m_per_s3};
  const auto move = least_time_move(10_m, lowered, 7_m_per_s, 0_m_per_s);
  REQUIRE(move);
  CHECK(near(ramped(*move, 0), 0.4666_s, 5e-4));
  CHECK(near(ramped(*move, 4), 1.4718_s, 1e-4));
  CHECK(near(move->segments[0].duration, 0.2321_s, 2e-4));
  CHECK(near(move->peak_velocity, 8.6329_m_per_s, 1e-5));

  // only the end that misses its acceleration need give way: the least time is shorter
  const auto least =
      least_time_move(10_m, {10_m_per_s, 10_m_per_s2, 30_m_per_s3}, 7_m_per_s, 0_m_per_s);
  REQUIRE(least);
  CHECK(least->total < 0.95 * move->total);
  CHECK(near(least->peak_acceleration, 10_m_per_s2, 1e-12));
}
