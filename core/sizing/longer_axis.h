// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What more length does, all else as it is: each point is the whole sizing of the axis so
// stretched.

#include "machine/machine.h"
#include "sizing/feed_stops.h"
#include "sizing/results.h"

#include <optional>
#include <vector>

namespace feedwright {

struct SpanFeed {
  Length span;
  Velocity feed;
};
struct FeedOverSpan {
  LimitId id;
  std::vector<SpanFeed> points;
};
struct FeedsOverSpan {
  std::vector<FeedOverSpan> limits; ///< each that is known somewhere
  std::vector<SpanFeed> lowest;     ///< of all that are known at that length
};
/// Every limit of feed over the length between a screw's bearings; the shaft beyond them stays as
/// long as it is. One that is only known to lie at a feed or above is left out: it stops nothing.
/// Empty without a screw.
FeedsOverSpan feed_limits_over_span(const Machine&, const Axis&, Length from, Length to, int count);

struct LongestScrew {
  std::optional<Length> span; ///< between bearings; nothing where no length is the last
  /// What is below the feed from there on, the lowest first: without a span at every length that
  /// holds the travel, or, if empty, at none.
  std::vector<FeedStop> stops;
  /// Limits of another kind, such as buckling, that are over from there on, though not on the
  /// shortest screw that holds the travel; none without a span.
  std::vector<LimitId> others;
};
/// The longest screw that every known limit allows the feed, and that brings no other limit over
/// what is wanted, all else as it is; nothing without a screw.
std::optional<LongestScrew> longest_screw_at(const Machine&, const Axis&, Velocity feed);

struct GiveOverTravel {
  Length travel;
  std::optional<Length> on_reversal; ///< wind-up by friction, one way and then the other
  std::optional<Length> under_cut;   ///< deflection under the wanted thrust
};
/// How far a hauling belt gives with the travel, twice as much longer as that. Empty for a screw.
std::vector<GiveOverTravel> give_over_travel(const Machine&, const Axis&, Length from, Length to,
                                             int count);

} // namespace feedwright
