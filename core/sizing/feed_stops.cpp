// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/feed_stops.h"

#include "sizing/limits.h"

#include <algorithm>

namespace feedwright {

std::vector<FeedStop> feed_stops(const AxisResults& results) {
  std::vector<FeedStop> stops;
  for (const LimitDescriptor& about : limit_descriptors()) {
    const Limit& limit = results.limit(about.id);
    if (about.scale == LimitScale::feed && limit.applies && limit.reached && !limit.at_least) {
      const auto feed = typed<Velocity>(*limit.reached);
      stops.push_back({about.id, feed, feed / clear_margin});
    }
  }
  std::ranges::stable_sort(stops, {}, &FeedStop::feed);
  return stops;
}

std::optional<FeedStop> stop_beside_motor(const AxisResults& results) {
  const std::vector<FeedStop> stops = feed_stops(results);
  const auto found = std::ranges::find_if(stops, [](const FeedStop& stop) {
    return stop.id != LimitId::motor_torque && stop.id != LimitId::motor_speed;
  });
  return found != stops.end() ? std::optional(*found) : std::nullopt;
}

Verdict verdict_at(const FeedStop& stop, Velocity feed) {
  return verdict_of(number(stop.feed / feed));
}

Verdict worse_of(Verdict verdict, Verdict other) {
  const bool less = verdict == Verdict::clear && other == Verdict::close;
  return less || other == Verdict::over ? other : verdict;
}

} // namespace feedwright
