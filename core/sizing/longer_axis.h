// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What more length does, all else as it is: each point is the whole sizing of the axis so
// stretched.

#include "machine/machine.h"
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
/// Every limit of feed but whip over the length between a screw's bearings; the shaft beyond them
/// stays as long as it is. Empty without a screw.
std::vector<FeedOverSpan> feed_limits_over_span(const Machine&, const Axis&, Length from, Length to,
                                                int count);

struct GiveOverTravel {
  Length travel;
  std::optional<Length> on_reversal; ///< wind-up by friction, one way and then the other
  std::optional<Length> under_cut;   ///< deflection under the wanted thrust
};
/// How far a hauling belt gives with the travel, twice as much longer as that. Empty for a screw.
std::vector<GiveOverTravel> give_over_travel(const Machine&, const Axis&, Length from, Length to,
                                             int count);

} // namespace feedwright
