// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/move_profile.h"
#include "support/near.h"

#include <random>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

constexpr int cases = 10'000;

/// Random moves over several decades, so that every degenerate shape comes up.
class RandomMoves {
public:
  Length distance() { return from_si<Length>(decade(-4.0, 1.0)); }
  MoveLimits limits(bool jerk) {
    return {from_si<Velocity>(decade(-2.0, 0.7)), from_si<Acceleration>(decade(-1.0, 1.5)),
            jerk ? std::optional(from_si<Jerk>(decade(-1.0, 4.0))) : std::nullopt};
  }
  double share() { return std::uniform_real_distribution<double>(0.0, 1.0)(random_); }

private:
  double decade(double low, double high) {
    return std::pow(10.0, std::uniform_real_distribution<double>(low, high)(random_));
  }
  std::mt19937 random_{42};
};

MoveProfile sure(const std::optional<MoveProfile>& profile) {
  REQUIRE(profile);
  return *profile;
}

/// Position and velocity at a time by adding up small steps of the acceleration the profile states,
/// midpoint rule in each segment.
struct Summed {
  double position = 0.0, velocity = 0.0;
};

Summed summed(const MoveProfile& profile, double start, int steps, double until) {
  Summed at{0.0, start};
  double time = 0.0;
  for (const MoveSegment& segment : profile.segments) {
    const double duration = std::min(si_value(segment.duration), until - time);
    const double dt = duration / steps;
    for (int i = 0; i < steps; ++i) {
      const auto middle = state_at(profile, from_si<Time>(time + (i + 0.5) * dt));
      const double gained = si_value(middle.acceleration) * dt;
      at.position += (at.velocity + gained / 2.0) * dt;
      at.velocity += gained;
    }
    time += duration;
  }
  return at;
}

Summed summed(const MoveProfile& profile, double start, int steps) {
  return summed(profile, start, steps, si_value(profile.total));
}

/// Least time without a jerk limit from the phase plane: ∫ dx/v under the curves v = √(2ax),
/// √(2a(h − x)) and the limit; x = h sin²(φ/2) takes the ends' singularity away.
double phase_plane_time(double h, double v, double a, int steps) {
  double sum = 0.0;
  for (int i = 0; i < steps; ++i) {
    const double angle = pi * (i + 0.5) / steps;
    const double x = h * std::pow(std::sin(angle / 2.0), 2);
    const double highest = std::min({v, std::sqrt(2.0 * a * x), std::sqrt(2.0 * a * (h - x))});
    sum += h * std::sin(angle) / 2.0 * pi / steps / highest;
  }
  return sum;
}

} // namespace

TEST_CASE("moves of each shape take the derived time") {
  // derived: h/v + v/a + a/j with both limits reached, h/v + v/a without jerk; 2√(h/a) if the
  // velocity is missed; 4∛(h/2j) if both are
  const auto total = [](Length h, const MoveLimits& l) {
    return sure(least_time_move(h, l)).total;
  };
  CHECK(near(total(100_mm, {0.2_m_per_s, 2_m_per_s2, std::nullopt}), 0.6_s));
  CHECK(near(total(100_mm, {0.2_m_per_s, 2_m_per_s2, 40_m_per_s3}), 0.65_s));
  CHECK(near(total(10_mm, {0.2_m_per_s, 2_m_per_s2, std::nullopt}),
             from_si<Time>(2.0 * std::sqrt(0.005))));
  CHECK(near(total(10_mm, {10_m_per_s, 100_m_per_s2, 40_m_per_s3}),
             from_si<Time>(4.0 * std::cbrt(0.01 / 80.0))));
}

TEST_CASE("a move whose acceleration is added up ends at its distance and at rest") {
  // independent computation: small steps
  RandomMoves random;
  for (int i = 0; i < cases; ++i) {
    const Length distance = random.distance();
    const auto move = sure(least_time_move(distance, random.limits(i % 4 != 0)));
    const Summed end = summed(move, 0.0, 20);
    CHECK(std::abs(end.position / si_value(distance) - 1.0) < 1e-3);
    CHECK(std::abs(end.velocity) < 1e-9 * si_value(move.peak_velocity));
    if (i < 50) {
      CHECK(std::abs(summed(move, 0.0, 2000).position / si_value(distance) - 1.0) < 1e-7);
    }
  }
}

TEST_CASE("position and velocity on the way are the sums of the acceleration so far") {
  // independent computation: small steps, from the start of each move to a random time
  RandomMoves random;
  for (int i = 0; i < 500; ++i) {
    const auto move = sure(least_time_move(random.distance(), random.limits(i % 4 != 0)));
    const double until = random.share() * si_value(move.total);
    const Summed at = summed(move, 0.0, 500, until);
    const MoveState stated = state_at(move, from_si<Time>(until));
    CHECK(std::abs(at.position - si_value(stated.position)) < 1e-5 * si_value(move.distance));
    CHECK(std::abs(at.velocity - si_value(stated.velocity)) < 1e-9 * si_value(move.peak_velocity));
  }
}

TEST_CASE("a move keeps its limits and reaches what it says") {
  RandomMoves random;
  for (int i = 0; i < cases; ++i) {
    const Length distance = random.distance();
    const MoveLimits limits = random.limits(i % 4 != 0);
    const auto move = sure(least_time_move(distance, limits));
    double velocity = 0.0;
    double acceleration = 0.0;
    for (int k = 0; k <= 200; ++k) {
      const MoveState at = state_at(move, move.total * (k / 200.0));
      velocity = std::max(velocity, si_value(at.velocity));
      acceleration = std::max(acceleration, std::abs(si_value(at.acceleration)));
      CHECK(si_value(at.velocity) >= -1e-9 * si_value(move.peak_velocity));
      if (limits.jerk) {
        CHECK(abs(at.jerk) <= *limits.jerk);
      }
    }
    constexpr double slack = 1.0 + 1e-12;
    CHECK(velocity <= si_value(move.peak_velocity) * slack);
    CHECK(velocity >= 0.97 * si_value(move.peak_velocity));
    CHECK(acceleration <= si_value(move.peak_acceleration) * slack);
    CHECK(move.peak_velocity <= limits.velocity * slack);
    CHECK(move.peak_acceleration <= limits.acceleration * slack);
  }
}

TEST_CASE("a move is continuous from segment to segment") {
  RandomMoves random;
  for (int i = 0; i < cases; ++i) {
    const MoveLimits limits = random.limits(i % 4 != 0);
    const auto move = sure(least_time_move(random.distance(), limits));
    const Time apart = 1e-9 * move.total;
    Time boundary{};
    for (const MoveSegment& segment : move.segments) {
      boundary += segment.duration;
      const MoveState before = state_at(move, boundary - apart);
      const MoveState after = state_at(move, boundary + apart);
      CHECK(abs(after.position - before.position) <
            2.1 * apart * move.peak_velocity + 1e-12 * move.distance);
      CHECK(abs(after.velocity - before.velocity) <
            2.1 * apart * move.peak_acceleration + 1e-12 * move.peak_velocity);
      if (limits.jerk) {
        CHECK(abs(after.acceleration - before.acceleration) <
              2.1 * apart * *limits.jerk + 1e-10 * move.peak_acceleration);
      }
    }
  }
}

TEST_CASE("no move is quicker with a jerk limit than without") {
  RandomMoves random;
  for (int i = 0; i < cases; ++i) {
    const Length distance = random.distance();
    MoveLimits limits = random.limits(true);
    const auto limited = sure(least_time_move(distance, limits));
    limits.jerk = from_si<Jerk>(1e15);
    const auto hardly = sure(least_time_move(distance, limits));
    limits.jerk.reset();
    const auto free = sure(least_time_move(distance, limits));
    CHECK(limited.total > free.total);
    CHECK(near(hardly.total, free.total, 1e-6));
  }
}

TEST_CASE("raising a limit never makes a move slower") {
  RandomMoves random;
  for (int i = 0; i < cases; ++i) {
    const Length distance = random.distance();
    const MoveLimits limits = random.limits(i % 4 != 0);
    const Time total = sure(least_time_move(distance, limits)).total;
    const double by = 1.0 + random.share();
    MoveLimits raised[3] = {limits, limits, limits};
    raised[0].velocity *= by;
    raised[1].acceleration *= by;
    if (raised[2].jerk) {
      *raised[2].jerk *= by;
    }
    for (const MoveLimits& l : raised) {
      CHECK(sure(least_time_move(distance, l)).total <= total * (1.0 + 1e-12));
    }
    CHECK(sure(least_time_move(distance * by, limits)).total >= total * (1.0 - 1e-12));
  }
}

TEST_CASE("a move without a jerk limit takes the phase plane's least time") {
  // independent computation: ∫ dx/v along the highest velocity each point allows
  RandomMoves random;
  for (int i = 0; i < 300; ++i) {
    const Length distance = random.distance();
    const MoveLimits limits = random.limits(false);
    const double wanted = phase_plane_time(si_value(distance), si_value(limits.velocity),
                                           si_value(limits.acceleration), 4000);
    CHECK(near(sure(least_time_move(distance, limits)).total, from_si<Time>(wanted), 1e-5));
  }
}

TEST_CASE("what is left of a quickest move is itself a quickest move") {
  // Bellman's principle, from the start of the cruise, where the acceleration is nil
  RandomMoves random;
  for (int i = 0; i < cases; ++i) {
    const MoveLimits limits = random.limits(i % 4 != 0);
    const auto move = sure(least_time_move(random.distance(), limits));
    const MoveSegment& cruise = move.segments[3];
    const Length left = move.distance - cruise.position_at_start;
    const Time used =
        move.segments[0].duration + move.segments[1].duration + move.segments[2].duration;
    const auto rest =
        sure(least_time_move(left * (1.0 + 1e-12), limits, cruise.velocity_at_start, 0_m_per_s));
    CHECK(near(Time(used + rest.total), move.total, 1e-6));
  }
}

TEST_CASE("a move between two velocities ends where and as it should inside its limits") {
  RandomMoves random;
  int possible = 0;
  for (int i = 0; i < cases; ++i) {
    const Length distance = random.distance();
    const MoveLimits limits = random.limits(i % 4 != 0);
    const Velocity start = limits.velocity * random.share();
    const Velocity end = limits.velocity * random.share();
    const auto move = least_time_move(distance, limits, start, end);
    if (!move) {
      // too short even for the change alone, which without jerk takes |v1² − v0²|/2a
      const double bare = std::abs(std::pow(si_value(end), 2) - std::pow(si_value(start), 2)) /
                          2.0 / si_value(limits.acceleration);
      CHECK((limits.jerk || si_value(distance) <= bare * (1.0 + 1e-9)));
      continue;
    }
    ++possible;
    const Summed at = summed(*move, si_value(start), 20);
    CHECK(std::abs(at.position / si_value(distance) - 1.0) < 1e-3);
    CHECK(std::abs(at.velocity - si_value(end)) < 1e-9 * si_value(limits.velocity));
    CHECK(move->peak_velocity <= limits.velocity);
    CHECK(move->peak_acceleration <= limits.acceleration * (1.0 + 1e-12));
    CHECK(state_at(*move, 0_s).velocity == start);
    CHECK(state_at(*move, move->total).velocity == end);
    CHECK(near(sure(least_time_move(distance, limits, end, start)).total, move->total, 1e-9));
  }
  CHECK(possible > cases / 4);
}

TEST_CASE("no distance takes no time and stays put") {
  for (const std::optional<Jerk>& jerk : {std::optional<Jerk>(), std::optional<Jerk>(5_m_per_s3)}) {
    const auto move = sure(least_time_move(0_m, {1_m_per_s, 1_m_per_s2, jerk}));
    CHECK(move.total == 0_s);
    CHECK(move.peak_velocity == 0_m_per_s);
    CHECK(state_at(move, 0_s).position == 0_m);
    CHECK(state_at(move, 1_s).acceleration == 0_m_per_s2);
  }
}

TEST_CASE("before and after a move the axis stands") {
  const auto move = sure(least_time_move(1_m, {1_m_per_s, 1_m_per_s2, 5_m_per_s3}));
  CHECK(state_at(move, Time(-1_s)).position == 0_m);
  CHECK(state_at(move, Time(-1_s)).velocity == 0_m_per_s);
  CHECK(state_at(move, 100_s).position == 1_m);
  CHECK(state_at(move, 100_s).velocity == 0_m_per_s);
}

TEST_CASE("an impossible move is none") {
  const double nan = std::nan("");
  const MoveLimits good{1_m_per_s, 1_m_per_s2, 5_m_per_s3};
  CHECK_FALSE(least_time_move(Length(-1_m), good));
  CHECK_FALSE(least_time_move(from_si<Length>(nan), good));
  CHECK_FALSE(least_time_move(1_m, {0_m_per_s, 1_m_per_s2, std::nullopt}));
  CHECK_FALSE(least_time_move(1_m, {1_m_per_s, from_si<Acceleration>(nan), std::nullopt}));
  CHECK_FALSE(least_time_move(1_m, {1_m_per_s, 1_m_per_s2, 0_m_per_s3}));
  CHECK_FALSE(least_time_move(1_m, good, 2_m_per_s, 0_m_per_s));
  CHECK_FALSE(least_time_move(1_m, good, Velocity(-1_m_per_s), 0_m_per_s));
  CHECK_FALSE(least_time_move(1_mm, good, 1_m_per_s, 0_m_per_s));
}
