// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/longer_axis.h"

#include "sizing/limits.h"
#include "sizing/size_axis.h"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>

namespace feedwright {

namespace {

Length along(Length from, Length to, int i, int count) {
  return from + (to - from) * (double(i) / double(count - 1));
}

/// Whether the screw could be stretched so.
bool stretch(Screw& screw, const Screw& given, Length span) {
  const auto made = Positive<Length>::make(span);
  if (!made) {
    return false;
  }
  screw.span = *made;
  if (given.overall_length) {
    const auto whole = Positive<Length>::make(Length(**given.overall_length + span - *given.span));
    if (!whole) {
      return false;
    }
    screw.overall_length = *whole;
  }
  return true;
}

/// Limits of feed that are known to stop it, the lowest first.
std::vector<FeedStop> known_stops(const AxisResults& results) {
  std::vector<FeedStop> stops;
  for (const LimitDescriptor& about : limit_descriptors()) {
    const Limit& limit = results.limit(about.id);
    if (about.scale == LimitScale::feed && limit.applies && limit.reached && !limit.at_least) {
      stops.push_back({about.id, typed<Velocity>(*limit.reached)});
    }
  }
  std::ranges::stable_sort(stops, {}, &FeedStop::feed);
  return stops;
}

void take_feeds(FeedsOverSpan& curves, const std::vector<FeedStop>& stops, Length span) {
  for (const FeedStop& stop : stops) {
    const auto curve = std::ranges::find(curves.limits, stop.id, &FeedOverSpan::id);
    curve->points.push_back({span, stop.feed});
  }
  if (!stops.empty()) {
    curves.lowest.push_back({span, stops.front().feed});
  }
}

/// An axis with its screw as long as one asks.
class StretchedAxis {
public:
  StretchedAxis(const Machine& machine, const Axis& axis, const Screw& given)
      : machine_(machine), given_(given), ready_(machine, axis), longer_(axis) {}

  /// Nothing where the screw could not be so long.
  std::optional<std::vector<FeedStop>> stops(Length span) {
    if (!stretch(std::get<Screw>(longer_.drive), given_, span)) {
      return std::nullopt;
    }
    return known_stops(size_axis(machine_, longer_, ready_));
  }

  /// How far the lowest limit is from being over, as a margin; boundless where none is known.
  double excess(double span, Velocity feed) {
    // As verdicts are given: what is wanted to the digit is met.
    constexpr double edge = 1.0 - 1e-9;
    constexpr double boundless = 1e9;
    const auto found = stops(from_si<Length>(span));
    return found && !found->empty() ? number(found->front().feed / feed) - edge : boundless;
  }

private:
  const Machine& machine_;
  const Screw& given_;
  AxisPreparation ready_;
  Axis longer_;
};

std::vector<FeedStop> below(std::vector<FeedStop> stops, Velocity feed) {
  std::erase_if(stops, [&](const FeedStop& stop) {
    return verdict_of(number(stop.feed / feed)) != Verdict::over;
  });
  return stops;
}

} // namespace

FeedsOverSpan feed_limits_over_span(const Machine& machine, const Axis& axis, Length from,
                                    Length to, int count) {
  FeedsOverSpan curves;
  const auto* given = std::get_if<Screw>(&axis.drive);
  if (given == nullptr) {
    return curves;
  }
  for (const LimitDescriptor& about : limit_descriptors()) {
    if (about.scale == LimitScale::feed) {
      curves.limits.push_back({about.id, {}});
    }
  }
  StretchedAxis longer(machine, axis, *given);
  for (int i = 0; i < count; ++i) {
    const Length span = along(from, to, i, count);
    if (const auto stops = longer.stops(span)) {
      take_feeds(curves, *stops, span);
    }
  }
  std::erase_if(curves.limits, [](const FeedOverSpan& curve) { return curve.points.empty(); });
  return curves;
}

std::optional<LongestScrew> longest_screw_at(const Machine& machine, const Axis& axis,
                                             Velocity feed) {
  const auto* given = std::get_if<Screw>(&axis.drive);
  if (given == nullptr) {
    return std::nullopt;
  }
  StretchedAxis longer(machine, axis, *given);
  // The nut's whole travel must fit between the bearings.
  double held = si_value(*axis.basics.travel);
  if (longer.excess(held, feed) < 0.0) {
    return LongestScrew{std::nullopt, below(*longer.stops(from_si<Length>(held)), feed)};
  }
  constexpr double longest = 1000.0; // m, beyond any screw
  constexpr double stride = 1.25;    // longer is never quicker: the first that is too long bounds
  double beyond = held;
  while (longer.excess(beyond, feed) >= 0.0) {
    held = beyond;
    beyond *= stride;
    if (beyond > longest) {
      return LongestScrew{};
    }
  }
  std::uintmax_t rounds = 100;
  const auto bracket = boost::math::tools::toms748_solve(
      [&](double span) { return longer.excess(span, feed); }, held, beyond,
      boost::math::tools::eps_tolerance<double>(48), rounds);
  constexpr double past = 1.0 + 1e-6; // what is just met there falls short of the feed
  return LongestScrew{from_si<Length>(bracket.first),
                      below(*longer.stops(from_si<Length>(bracket.second * past)), feed)};
}

std::vector<GiveOverTravel> give_over_travel(const Machine& machine, const Axis& axis, Length from,
                                             Length to, int count) {
  std::vector<GiveOverTravel> points;
  const auto* given = std::get_if<HaulingBelt>(&axis.drive);
  if (given == nullptr) {
    return points;
  }
  const AxisPreparation ready(machine, axis);
  Axis longer = axis;
  for (int i = 0; i < count; ++i) {
    const Length travel = along(from, to, i, count);
    const auto made = Positive<Length>::make(travel);
    const auto belt =
        Positive<Length>::make(Length(*given->belt_length + 2.0 * (travel - *axis.basics.travel)));
    if (!made || !belt) {
      continue;
    }
    longer.basics.travel = *made;
    std::get<HaulingBelt>(longer.drive).belt_length = *belt;
    const AxisResults results = size_axis(machine, longer, ready);
    points.push_back({travel, results.windup_error, results.cutting_deflection});
  }
  return points;
}

} // namespace feedwright
