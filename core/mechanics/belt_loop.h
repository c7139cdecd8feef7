// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/quantities.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <tl/expected.hpp>
#include <vector>

namespace feedwright {

/// A loop holds from 2 to this many pulleys.
inline constexpr std::size_t most_loop_pulleys = 16;

/// One pulley or idler of a loop, seen in the plane of the belt.
struct LoopPulley {
  Length x, y;
  /// Of the pitch line's circle round this pulley, > 0; for a back-face idler twice the belt's
  /// height behind the pitch line is already added.
  Length pitch_diameter;
  bool back_face = false; ///< touched by the belt's smooth back, so it turns the other way
};

struct LoopPoint {
  Length x, y;
};

/// The straight piece from one pulley to the next in belt order.
struct LoopSpan {
  LoopPoint from, to; ///< where the pitch line leaves the one pulley and meets the next
  Length length;      ///< ≥ 0
};

/// The arc of the pitch line on one pulley.
struct LoopContact {
  Angle wrap; ///< 0 to 2π
  /// Directions from the pulley's centre to the arc's ends along the belt's travel:
  /// to − from = +wrap where the pulley turns counter-clockwise, −wrap where clockwise.
  Angle from, to;
};

/// The belt's path; contact i is on pulley i, span i goes from pulley i to the next.
struct BeltLoop {
  std::vector<LoopContact> contacts;
  std::vector<LoopSpan> spans;
  Length length; ///< pitch length
};

/// The way the belt runs round its inside-face pulleys.
enum class LoopSense : std::int8_t { clockwise = -1, counter_clockwise = 1 };

enum class LoopFaultCode : std::uint8_t {
  too_few_pulleys,
  too_many_pulleys,
  not_finite,          ///< a place or diameter of pulley `first`, or a diameter not above zero
  overlap,             ///< pulleys `first` and `second` overlap
  idler_on_wrong_side, ///< the belt would not touch pulley `first` on the face it is said to be on
  crossing_spans,      ///< the straight spans that start at pulleys `first` and `second` cross
  span_through_pulley, ///< the span that starts at pulley `first` cuts pulley `second`
};

struct LoopFault {
  LoopFaultCode code;
  std::size_t first = 0, second = 0;
  friend bool operator==(const LoopFault&, const LoopFault&) = default;
};

/// The sense in which the order goes round: the sign of the area that the inside-face pulleys'
/// centres enclose; where they enclose none (two of them, or all on one line) that of all centres;
/// where these enclose none either, counter-clockwise.
LoopSense loop_sense(std::span<const LoopPulley> pulleys);

/// Path of an inextensible belt of no thickness, its pitch line, round 2 to 16 pulleys in belt
/// order: tangents between neighbours, outer between equal faces and inner between unlike ones.
/// Pulleys may touch. The loop may not cross itself. Exact. Source: plane geometry.
tl::expected<BeltLoop, LoopFault> belt_loop(std::span<const LoopPulley> pulleys);
/// The same with the sense given, for a pulley that slides across the line of the others.
tl::expected<BeltLoop, LoopFault> belt_loop(std::span<const LoopPulley> pulleys, LoopSense sense);

/// Pitch length alone, with the same faults; allocates nothing.
tl::expected<Length, LoopFault> belt_loop_length(std::span<const LoopPulley> pulleys,
                                                 LoopSense sense);

} // namespace feedwright
