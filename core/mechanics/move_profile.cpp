// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/move_profile.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

/// The quickest way from one velocity to another, acceleration zero at both.
struct VelocityChange {
  Time ramp;         ///< acceleration rises, and again falls, for so long
  Time hold;         ///< and is constant for so long
  Acceleration peak; ///< never negative
  Jerk jerk;         ///< nil without a jerk limit
  Time duration() const { return 2.0 * ramp + hold; }
};

VelocityChange velocity_change(Velocity by, const MoveLimits& limits) {
  const Acceleration most = limits.acceleration;
  if (by <= Velocity()) {
    return {};
  }
  if (!limits.jerk) {
    return {Time(), by / most, most, Jerk()};
  }
  const Jerk jerk = *limits.jerk;
  if (by * jerk >= most * most) {
    const Time ramp = most / jerk;
    return {ramp, std::max(Time(), Time(by / most - ramp)), most, jerk};
  }
  const Time ramp = sqrt(by / jerk);
  return {ramp, Time(), jerk * ramp, jerk};
}

/// Distance of a velocity change: acceleration is symmetric in time, so the mean velocity is the
/// mean of its ends.
Length change_distance(Velocity from, Velocity to, const VelocityChange& change) {
  return 0.5 * (from + to) * change.duration();
}

/// Peak velocity of a move from rest to rest that no velocity limit cuts off.
Velocity free_peak(Length distance, const MoveLimits& limits) {
  const Acceleration most = limits.acceleration;
  if (!limits.jerk) {
    return sqrt(distance * most);
  }
  const Velocity corner = most * most / *limits.jerk; // from here up the acceleration is reached
  if (distance < 2.0 * corner * (most / *limits.jerk)) {
    // distance = 2 j t³ with t the four equal ramps
    const Time ramp = from_si<Time>(std::cbrt(si_value(distance / (2.0 * *limits.jerk))));
    return *limits.jerk * ramp * ramp;
  }
  // v²/a + v a/j = distance
  return 2.0 * distance * most / (corner + sqrt(corner * corner + 4.0 * distance * most));
}

Length least_distance(Velocity start, Velocity peak, Velocity end, const MoveLimits& limits) {
  return change_distance(start, peak, velocity_change(peak - start, limits)) +
         change_distance(peak, end, velocity_change(peak - end, limits));
}

/// Largest peak velocity, `low` or above, whose two changes fit into the distance.
Velocity bisected_peak(Length distance, const MoveLimits& limits, Velocity start, Velocity end) {
  Velocity low = std::max(start, end);
  Velocity high = limits.velocity;
  for (int i = 0; i < 200; ++i) {
    const Velocity middle = 0.5 * (low + high);
    if (middle <= low || middle >= high) {
      break;
    }
    (least_distance(start, middle, end, limits) <= distance ? low : high) = middle;
  }
  return low;
}

/// Writes segments one after another.
class Writer {
public:
  explicit Writer(Velocity start) { profile.segments[0].velocity_at_start = at_.velocity = start; }

  void add(Time duration, Jerk jerk, Acceleration acceleration) {
    profile.segments[next_++] = {duration, jerk, acceleration, at_.velocity, at_.position};
    const Acceleration gained = jerk * duration;
    at_.position += (at_.velocity + (0.5 * acceleration + gained / 6.0) * duration) * duration;
    at_.velocity += (acceleration + 0.5 * gained) * duration;
    profile.total += duration;
  }

  void add(const VelocityChange& change, double sign, Velocity end) {
    const Jerk jerk = sign * change.jerk;
    const Acceleration peak = sign * change.peak;
    add(change.ramp, jerk, Acceleration());
    add(change.hold, Jerk(), peak);
    add(change.ramp, -jerk, peak);
    at_.velocity = end; // not left to rounding
    profile.peak_acceleration = std::max(profile.peak_acceleration, change.peak);
  }

  MoveProfile profile{};

private:
  MoveState at_{};
  std::size_t next_ = 0;
};

std::optional<MoveProfile> assembled(Length distance, const MoveLimits& limits, Velocity start,
                                     Velocity peak, Velocity end, bool cruises) {
  const VelocityChange up = velocity_change(peak - start, limits);
  const VelocityChange down = velocity_change(peak - end, limits);
  Time cruise{};
  if (cruises && peak > Velocity()) {
    const Length changes = change_distance(start, peak, up) + change_distance(peak, end, down);
    cruise = std::max(Time(), Time((distance - changes) / peak));
  }
  Writer writer(start);
  writer.add(up, 1.0, peak);
  writer.add(cruise, Jerk(), Acceleration());
  writer.add(down, -1.0, end);
  MoveProfile& profile = writer.profile;
  profile.peak_velocity = peak;
  profile.distance = distance;
  profile.end_velocity = end;
  return std::isfinite(si_value(profile.total)) ? std::optional(profile) : std::nullopt;
}

template <class Q>
bool above_zero(Q q) {
  return q > Q() && std::isfinite(si_value(q));
}

bool sound(Length distance, const MoveLimits& limits) {
  return distance >= Length() && std::isfinite(si_value(distance)) && above_zero(limits.velocity) &&
         above_zero(limits.acceleration) && (!limits.jerk || above_zero(*limits.jerk));
}

} // namespace

std::optional<MoveProfile> least_time_move(Length distance, const MoveLimits& limits) {
  if (!sound(distance, limits)) {
    return std::nullopt;
  }
  const Velocity peak = free_peak(distance, limits);
  if (peak <= limits.velocity) {
    return assembled(distance, limits, Velocity(), peak, Velocity(), false);
  }
  return assembled(distance, limits, Velocity(), limits.velocity, Velocity(), true);
}

std::optional<MoveProfile> least_time_move(Length distance, const MoveLimits& limits,
                                           Velocity start, Velocity end) {
  const auto allowed = [&](Velocity v) { return v >= Velocity() && v <= limits.velocity; };
  if (!sound(distance, limits) || !allowed(start) || !allowed(end)) {
    return std::nullopt;
  }
  if (start == Velocity() && end == Velocity()) {
    return least_time_move(distance, limits);
  }
  if (distance < least_distance(start, std::max(start, end), end, limits)) {
    return std::nullopt;
  }
  const bool reached = least_distance(start, limits.velocity, end, limits) <= distance;
  const Velocity peak = reached ? limits.velocity : bisected_peak(distance, limits, start, end);
  return assembled(distance, limits, start, peak, end, true);
}

MoveState state_in(const MoveSegment& segment, Time since) {
  const Time t = std::min(since, segment.duration);
  const Acceleration first = segment.acceleration_at_start;
  const Acceleration gained = segment.jerk * t;
  return {segment.position_at_start +
              (segment.velocity_at_start + (0.5 * first + gained / 6.0) * t) * t,
          segment.velocity_at_start + (first + 0.5 * gained) * t, first + gained, segment.jerk};
}

MoveState state_at(const MoveProfile& profile, Time time) {
  const MoveSegment& first = profile.segments.front();
  if (!(time > Time())) {
    time = Time();
  }
  if (time >= profile.total) {
    return {profile.distance, profile.end_velocity, Acceleration(), Jerk()};
  }
  Time began{};
  const MoveSegment* in = &first;
  for (const MoveSegment& segment : profile.segments) {
    if (segment.duration > Time()) {
      in = &segment;
      if (time < began + segment.duration) {
        break;
      }
      began += segment.duration;
    }
  }
  return state_in(*in, Time(time - began));
}

} // namespace feedwright
