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

void take_feeds(FeedsOverSpan& curves, const std::vector<FeedStop>& stops, Length span) {
  for (const FeedStop& stop : stops) {
    const auto curve = std::ranges::find(curves.limits, stop.id, &FeedOverSpan::id);
    curve->points.push_back({span, stop.feed});
  }
  if (!stops.empty()) {
    curves.lowest.push_back({span, stops.front().feed});
  }
}

/// Known limits of another kind than feed, by whether they are over. What an acceleration or a load
/// case lacks at the wanted feed a limit of feed says already.
std::vector<LimitId> others_that_are(const AxisResults& results, bool over) {
  std::vector<LimitId> found;
  for (const LimitDescriptor& about : limit_descriptors()) {
    const Limit& limit = results.limit(about.id);
    const bool said = about.scale == LimitScale::feed || about.id == LimitId::acceleration ||
                      about.id == LimitId::load_cases;
    if (!said && limit.margin && (limit.verdict == Verdict::over) == over) {
      found.push_back(about.id);
    }
  }
  return found;
}

/// An axis with its screw as long as one asks.
class StretchedAxis {
public:
  StretchedAxis(const Machine& machine, const Axis& axis, const Screw& given)
      : machine_(machine), given_(given), ready_(machine, axis), longer_(axis) {}

  /// Nothing where the screw could not be so long.
  std::optional<AxisResults> at(Length span) {
    if (!stretch(std::get<Screw>(longer_.drive), given_, span)) {
      return std::nullopt;
    }
    return size_axis(machine_, longer_, ready_);
  }

private:
  const Machine& machine_;
  const Screw& given_;
  AxisPreparation ready_;
  Axis longer_;
};

/// What more length takes away: the wanted feed, and what else a screw just long enough holds.
class LengthSearch {
public:
  LengthSearch(StretchedAxis& longer, Velocity feed, Length shortest)
      : longer_(longer), feed_(feed) {
    if (const auto results = longer_.at(shortest)) {
      held_ = others_that_are(*results, false);
    }
  }

  /// How far the first of them is from being over, as a margin; boundless where none is known.
  double excess(double span) {
    // As verdicts are given: what is wanted to the digit is met.
    constexpr double edge = 1.0 - 1e-9;
    double least = 1e9;
    const auto results = longer_.at(from_si<Length>(span));
    if (!results) {
      return least;
    }
    if (const auto stops = feed_stops(*results); !stops.empty()) {
      least = number(stops.front().feed / feed_) - edge;
    }
    for (const LimitId id : held_) {
      if (const auto& margin = results->limit(id).margin) {
        least = std::min(least, *margin - edge);
      }
    }
    return least;
  }

  /// Nothing of the axis but what is over at that length.
  LongestScrew what_is_over(Length span) {
    LongestScrew made;
    if (const auto results = longer_.at(span)) {
      made.stops = feed_stops(*results);
      std::erase_if(made.stops,
                    [&](const FeedStop& stop) { return verdict_at(stop, feed_) != Verdict::over; });
      made.others = others_that_are(*results, true);
      std::erase_if(made.others,
                    [&](LimitId id) { return std::ranges::find(held_, id) == held_.end(); });
    }
    return made;
  }

private:
  StretchedAxis& longer_;
  Velocity feed_;
  std::vector<LimitId> held_; ///< limits of another kind than feed
};

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
    if (const auto results = longer.at(span)) {
      take_feeds(curves, feed_stops(*results), span);
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
  const Length shortest = *axis.basics.travel;
  LengthSearch search(longer, feed, shortest);
  double held = si_value(shortest);
  if (search.excess(held) < 0.0) {
    return search.what_is_over(shortest);
  }
  constexpr double longest = 1000.0; // m, beyond any screw
  constexpr double stride = 1.25;    // longer is never better: the first that is too long bounds
  double beyond = held;
  while (search.excess(beyond) >= 0.0) {
    held = beyond;
    beyond *= stride;
    if (beyond > longest) {
      return LongestScrew{};
    }
  }
  std::uintmax_t rounds = 100;
  const auto bracket = boost::math::tools::toms748_solve(
      [&](double span) { return search.excess(span); }, held, beyond,
      boost::math::tools::eps_tolerance<double>(48), rounds);
  constexpr double past = 1.0 + 1e-6; // what is just met there falls short
  LongestScrew found = search.what_is_over(from_si<Length>(bracket.second * past));
  found.span = from_si<Length>(bracket.first);
  return found;
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
