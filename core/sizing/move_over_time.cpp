// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/move_over_time.h"

#include "sizing/prepared_axis.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr double boundless = 1e6;

MoveMoment moment(const SizingState<NoWorking>& s, Time time, const MoveState& state) {
  const auto torque = [&](double up) {
    // What is left of weight and counterbalance is kept without its sense.
    const double against = s.out.overbalanced ? -up : up;
    const Force steady = s.friction + against * s.gravity;
    return Torque(moving_torque(s, state.acceleration, steady));
  };
  return {time,
          state.position,
          state.velocity,
          state.acceleration,
          torque(1.0),
          torque(-1.0),
          s.motor.usable(state.velocity / s.motor_travel, Duty::short_time),
          s.motor.torque(state.velocity / s.motor_travel, Duty::short_time)};
}

double reserve_of(Torque usable, Torque asked) {
  return asked > usable / boundless ? number(usable / asked) : boundless;
}

void find_pressed(MoveOverTime& move) {
  double least = boundless;
  for (std::size_t i = 0; i < move.moments.size(); ++i) {
    const MoveMoment& at = move.moments[i];
    if (!at.usable || !at.whole) {
      move.unknown = move.unknown.value_or(i);
      continue;
    }
    const bool up = abs(at.up) >= abs(at.down);
    const Torque asked = abs(up ? at.up : at.down);
    const double reserve = reserve_of(*at.usable, asked);
    if (reserve < least) {
      least = reserve;
      move.hardest = {i, up};
    }
    if (!move.lacks && verdict_of(reserve) == Verdict::over) {
      move.lacks = PressedMoment{i, up};
    }
    if (!move.stalls && verdict_of(reserve_of(*at.whole, asked)) == Verdict::over) {
      move.stalls = PressedMoment{i, up};
    }
  }
  move.reserve = as_ratio(least);
  move.verdict = move.unknown && !move.lacks ? Verdict::open : verdict_of(least);
}

} // namespace

std::optional<MoveOverTime> move_over_time(const Machine& machine, const Axis& axis,
                                           Length distance, int count) {
  const PreparedAxis prepared(machine, axis);
  const auto& s = prepared.state;
  const auto limits = move_limits(s);
  const auto profile = limits ? least_time_move(distance, *limits) : std::nullopt;
  if (!profile || profile->total <= Time()) {
    return std::nullopt;
  }
  MoveOverTime move{};
  move.least_time = profile->total;
  move.peak_feed = profile->peak_velocity;
  move.peak_acceleration = profile->peak_acceleration;
  move.feed_reached = profile->peak_velocity >= limits->velocity;
  move.sloping = s.gravity != Force();
  Time began{};
  for (const MoveSegment& segment : profile->segments) {
    if (segment.duration <= Time()) {
      continue;
    }
    const double share = number(segment.duration / profile->total);
    const int steps = std::max(2, int(std::lround(share * double(count))));
    for (int i = 0; i <= steps; ++i) {
      const Time since = segment.duration * (double(i) / double(steps));
      move.moments.push_back(moment(s, Time(began + since), state_in(segment, since)));
    }
    began += segment.duration;
  }
  find_pressed(move);
  return move;
}

} // namespace feedwright
