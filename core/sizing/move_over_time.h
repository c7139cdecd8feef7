// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"
#include "sizing/results.h"

#include <optional>
#include <vector>

namespace feedwright {

struct MoveMoment {
  Time time;
  Length position;
  Velocity feed;
  Acceleration acceleration; ///< below zero while slowing down
  Torque up;   ///< at the harder-loaded motor, moving up the slope; below zero where it brakes
  Torque down; ///< the same moving down the slope; on a level axis the same
  std::optional<Torque> usable; ///< for a moment at that speed; nothing past the motor's curve
  std::optional<Torque> whole;  ///< of which that is the usable share: with more asked it stalls
};

/// A moment by its place in the list, and the way in which the motor is harder pressed there.
struct PressedMoment {
  std::size_t at = 0;
  bool upwards = true;
};

/// The quickest move that the axis' targets allow.
struct MoveOverTime {
  Time least_time;
  Velocity peak_feed;
  Acceleration peak_acceleration;
  bool feed_reached;                   ///< the wanted feed, not cut off by a short way
  bool sloping;                        ///< up and down differ
  std::vector<MoveMoment> moments;     ///< time rises; where acceleration jumps, two at one time
  PressedMoment hardest;               ///< with the least usable torque to spare
  Ratio reserve;                       ///< usable torque over what is asked, there
  std::optional<PressedMoment> lacks;  ///< the first in which more is asked than is usable
  std::optional<PressedMoment> stalls; ///< the first in which more is asked than there is at all
  std::optional<std::size_t> unknown;  ///< the first past the end of the motor's curve
  Verdict verdict = Verdict::open;     ///< open where nothing lacks but something is not known
};

/// A move from rest to rest over a distance above zero, with the wanted feed and acceleration and
/// the jerk of the duty, sampled at about `count` times. Nothing while one of the two is open.
std::optional<MoveOverTime> move_over_time(const Machine&, const Axis&, Length distance, int count);

} // namespace feedwright
