// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/longer_axis.h"

#include "sizing/size_axis.h"

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

void take_feeds(std::vector<FeedOverSpan>& curves, const AxisResults& results, Length span) {
  for (FeedOverSpan& curve : curves) {
    const Limit& limit = results.limit(curve.id);
    if (limit.applies && limit.reached && !limit.at_least) {
      curve.points.push_back({span, typed<Velocity>(*limit.reached)});
    }
  }
}

} // namespace

std::vector<FeedOverSpan> feed_limits_over_span(const Machine& machine, const Axis& axis,
                                                Length from, Length to, int count) {
  std::vector<FeedOverSpan> curves;
  const auto* given = std::get_if<Screw>(&axis.drive);
  if (given == nullptr) {
    return curves;
  }
  for (const LimitDescriptor& about : limit_descriptors()) {
    if (about.scale == LimitScale::feed && about.id != LimitId::whip) {
      curves.push_back({about.id, {}});
    }
  }
  const AxisPreparation ready(machine, axis);
  Axis longer = axis;
  for (int i = 0; i < count; ++i) {
    const Length span = along(from, to, i, count);
    if (stretch(std::get<Screw>(longer.drive), *given, span)) {
      take_feeds(curves, size_axis(machine, longer, ready), span);
    }
  }
  std::erase_if(curves, [](const FeedOverSpan& curve) { return curve.points.empty(); });
  return curves;
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
