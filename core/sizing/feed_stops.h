// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What stops the feed of an axis, and how a verdict reads at one feed or another.

#include "sizing/results.h"

#include <optional>
#include <vector>

namespace feedwright {

struct FeedStop {
  LimitId id;
  Velocity feed;        ///< the highest it allows
  Velocity clear_up_to; ///< the highest that reads clear
};

/// Limits of feed that are known to stop it, the lowest first. One that is only known to lie at a
/// feed or above is none.
std::vector<FeedStop> feed_stops(const AxisResults& results);
/// The lowest of them that is none of the motor's, whose curve over feed shows its own.
std::optional<FeedStop> stop_beside_motor(const AxisResults& results);
/// How the stop reads at a feed above zero.
Verdict verdict_at(const FeedStop& stop, Velocity feed);
/// Of two verdicts on one thing; what is open stays so, unless the other is over.
Verdict worse_of(Verdict verdict, Verdict other);

} // namespace feedwright
