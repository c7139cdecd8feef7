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
    const Force steady = s.friction + up * s.gravity;
    return Torque(moving_torque(s, state.acceleration, steady));
  };
  return {time,
          state.position,
          state.velocity,
          state.acceleration,
          torque(1.0),
          torque(-1.0),
          s.motor.usable(state.velocity / s.motor_travel, Duty::short_time)};
}

double reserve_of(const std::optional<Torque>& usable, Torque asked) {
  const Torque size = abs(asked);
  if (!usable) {
    return 0.0;
  }
  return size > *usable / boundless ? number(*usable / size) : boundless;
}

void find_hardest(MoveOverTime& move) {
  double least = boundless;
  for (std::size_t i = 0; i < move.moments.size(); ++i) {
    const MoveMoment& at = move.moments[i];
    for (const bool up : {true, false}) {
      const double reserve = reserve_of(at.usable, up ? at.up : at.down);
      if (reserve < least) {
        least = reserve;
        move.hardest = {i, up};
      }
      if (!move.stalls && verdict_of(reserve) == Verdict::over) {
        move.stalls = {i, up};
      }
    }
  }
  move.reserve = as_ratio(least);
  move.verdict = verdict_of(least);
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
  find_hardest(move);
  return move;
}

} // namespace feedwright
