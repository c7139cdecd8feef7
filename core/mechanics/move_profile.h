// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/quantities.h"

#include <array>
#include <optional>

namespace feedwright {

/// What a move must not exceed, the same in both directions; all above zero.
struct MoveLimits {
  Velocity velocity;
  Acceleration acceleration;
  std::optional<Jerk> jerk; ///< nothing: acceleration may jump
};

/// A stretch of constant jerk.
struct MoveSegment {
  Time duration;
  Jerk jerk;
  Acceleration acceleration_at_start;
  Velocity velocity_at_start;
  Length position_at_start;
};

/// A move in seven segments: acceleration rises, holds, falls; cruise; deceleration rises, holds,
/// falls. Segments that a move does without have no duration; without a jerk limit only the second,
/// fourth and sixth have one.
struct MoveProfile {
  std::array<MoveSegment, 7> segments;
  Time total;
  Velocity peak_velocity;
  Acceleration peak_acceleration; ///< largest size, speeding up or slowing down
  Length distance;
  Velocity end_velocity;
};

struct MoveState {
  Length position;
  Velocity velocity;
  Acceleration acceleration;
  Jerk jerk;
};

/// Quickest move from rest to rest. Closed form. distance ≥ 0; nothing if it is negative, a limit
/// is not above zero, or a value is not finite.
/// Source: L. Biagiotti, C. Melchiorri, Trajectory Planning for Automatic Machines and Robots, ch.
/// 3.
std::optional<MoveProfile> least_time_move(Length distance, const MoveLimits& limits);

/// Quickest move that starts and ends at given velocities, at no acceleration, without turning
/// back. The peak velocity is found by bisection. Velocities between zero and the limit; nothing
/// outside that, and where the distance is too short to change from one velocity to the other.
std::optional<MoveProfile> least_time_move(Length distance, const MoveLimits& limits,
                                           Velocity start, Velocity end);

/// State so long after the start of a segment; not beyond its end.
MoveState state_in(const MoveSegment& segment, Time since);

/// State at a time from the start of the move; before and after it, the state it starts from or
/// ends in.
MoveState state_at(const MoveProfile& profile, Time time);

} // namespace feedwright
