// SPDX-License-Identifier: GPL-3.0-or-later

// What length does to a screw: every limit of feed over it, and the lowest of them all.

#include "sizing/envelopes.h"
#include "sizing/longer_axis.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

namespace {

struct Pair {
  EndSupport a, b;
  int dash; ///< its own, whatever the axis has
};

constexpr Pair pairs[] = {{EndSupport::fixed, EndSupport::free, 1},
                          {EndSupport::supported, EndSupport::supported, 2},
                          {EndSupport::fixed, EndSupport::supported, 3},
                          {EndSupport::fixed, EndSupport::fixed, 4}};

/// Each limit its own, after those of the supports.
int dash_of(LimitId id) {
  int dash = int(std::size(pairs));
  for (const LimitDescriptor& about : limit_descriptors()) {
    dash += about.scale == LimitScale::feed && about.id != LimitId::whip ? 1 : 0;
    if (about.id == id) {
      break;
    }
  }
  return dash;
}

class StretchMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  StretchMaker(const StudySubject& subject, const Screw& screw)
      : FigureMaker(subject), screw_(screw) {
    if (axis_.targets.feed) {
      longest_ = longest_screw_at(subject_.machine, axis_, **axis_.targets.feed);
    }
  }

  StudyFigure make() {
    set_x(tr("length between bearings"), length_unit());
    set_y(tr("allowed feed"), feed_unit());
    const auto [from, to] = range();
    out_.x_start = in_unit(before(from), length_unit());
    out_.x_end = in_unit(to, length_unit());
    panel().y_end = top();
    const FeedsOverSpan feeds = feed_limits_over_span(subject_.machine, axis_, from, to, points);
    add_lowest(feeds.lowest);
    if (turns()) {
      add_whip_curves(from, to);
    }
    add_other_curves(feeds.limits);
    add_lines();
    out_.summary = summary();
    return std::move(out_);
  }

private:
  bool turns() const { return screw_.driven == DrivenMember::screw; }

  struct Range {
    Length from, to;
  };
  /// No shorter than the travel, which must have room between the bearings.
  Range range() const {
    const Length span = *screw_.span;
    const Length travel = *axis_.basics.travel;
    Range made{span * 0.45, std::max(Length(span * 1.6), Length(travel * 1.3))};
    if (longest_ && longest_->span) {
      const Length longest = *longest_->span;
      if (longest > span && longest < span * 4.0) {
        made.to = std::max(made.to, Length(longest * 1.15));
      }
      if (longest < span) {
        made.from = std::min(made.from, Length(longest * 0.8));
      }
    }
    made.from = std::max(made.from, travel);
    return made;
  }

  /// Where the scale begins: a little before a travel that bounds the curves, and before a screw
  /// that is too short for it.
  Length before(Length from) const {
    constexpr double a_little = 0.96;
    return from > *axis_.basics.travel ? from
                                       : Length(std::min(from, Length(*screw_.span)) * a_little);
  }

  /// Holds what governs and what is wanted, and whip while it is not far above.
  double top() const {
    constexpr double far_above = 2.5;
    const auto& governing = results_.governing_feed;
    double most = governing ? in_unit(*governing, feed_unit()) * 1.6 : 0.0;
    if (results_.whip_feed && (!governing || *results_.whip_feed < *governing * far_above)) {
      most = std::max(most, in_unit(*results_.whip_feed, feed_unit()) * 1.3);
    }
    if (axis_.targets.feed) {
      most = std::max(most, in_unit(Velocity(**axis_.targets.feed), feed_unit()) * 1.8);
    }
    return most > 0.0 ? most : 1.0;
  }

  template <class Point>
  void take(StudyCurve& curve, const std::vector<Point>& over) const {
    for (const Point& point : over) {
      curve.x.push_back(in_unit(point.span, length_unit()));
      curve.y.push_back(in_unit(point.feed, feed_unit()));
    }
  }

  void add_lowest(const std::vector<SpanFeed>& lowest) {
    if (!lowest.empty()) {
      StudyCurve curve{open_limits().isEmpty() ? tr("lowest of all limits")
                                               : tr("lowest of the known limits")};
      curve.at_edge = true;
      take(curve, lowest);
      panel().curves.push_back(std::move(curve));
    }
  }

  static QString pair_name(const Pair& pair) {
    const auto name = [](EndSupport end) {
      return words::choice_name("motor_end",
                                fields::Names<EndSupport>::list[static_cast<std::size_t>(end)]);
    };
    return tr("%1–%2", "supports at the two ends of a screw").arg(name(pair.a), name(pair.b));
  }

  void add_whip_curves(Length from, Length to) {
    for (const Pair& pair : pairs) {
      Pair drawn = pair;
      const bool turned = screw_.motor_end == pair.b && screw_.far_end == pair.a;
      const bool own = turned || (screw_.motor_end == pair.a && screw_.far_end == pair.b);
      if (turned) {
        std::swap(drawn.a, drawn.b);
      }
      StudyCurve curve{(own ? tr("whip as it is, %1", "supports at the two ends")
                            : tr("whip, %1", "supports at the two ends"))
                           .arg(pair_name(drawn))};
      curve.present = false;
      curve.dash = pair.dash;
      // Inside the frame, names of curves that run so close could be any one's.
      curve.at_edge = true;
      curve.spare = !own;
      curve.caption =
          own ? tr("whip, %1", "supports at the two ends").arg(pair_name(drawn)) : pair_name(drawn);
      take(curve, whip_over_span(axis_, drawn.a, drawn.b, from, to, points));
      panel().curves.push_back(std::move(curve));
    }
  }

  /// Limits that run together are drawn once, under both names; those above the scale not at all.
  void add_other_curves(const std::vector<FeedOverSpan>& limits) {
    const std::size_t first = panel().curves.size();
    for (const FeedOverSpan& limit : limits) {
      if (limit.id == LimitId::whip) {
        continue;
      }
      StudyCurve curve{words::limit_name(limit.id)};
      take(curve, limit.points);
      if (*std::ranges::min_element(curve.y) > panel().y_end || joins(first, curve)) {
        continue;
      }
      curve.present = false;
      curve.dash = dash_of(limit.id);
      curve.at_edge = true;
      panel().curves.push_back(std::move(curve));
    }
  }

  bool joins(std::size_t first, const StudyCurve& curve) {
    constexpr double alike = 0.01;
    for (std::size_t i = first; i < panel().curves.size(); ++i) {
      StudyCurve& other = panel().curves[i];
      const auto near = [](double a, double b) {
        return std::abs(a - b) <= alike * std::max(std::abs(a), std::abs(b));
      };
      if (std::ranges::equal(other.y, curve.y, near)) {
        other.label =
            tr("%1, %2", "names of limits that run together").arg(other.label, curve.label);
        return true;
      }
    }
    return false;
  }

  QString span_text(Length span) const { return text(span, length_unit(), 4); }

  void add_lines() {
    panel().lines.push_back({tr("as it is, %1").arg(span_text(*screw_.span)),
                             in_unit(Length(*screw_.span), length_unit()), true, false});
    const double travel = in_unit(Length(*axis_.basics.travel), length_unit());
    if (travel > out_.x_start) {
      panel().lines.push_back(
          {tr("travel %1").arg(span_text(*axis_.basics.travel)), travel, true, false});
    }
    if (!axis_.targets.feed) {
      return;
    }
    const Velocity feed = **axis_.targets.feed;
    const QString wanted = text(feed, feed_unit());
    const bool never = longest_ && !longest_->span && !longest_->stops.empty();
    panel().lines.push_back({never ? tr("%1 wanted %2, not reached with this travel", "sign, feed")
                                         .arg(words::verdict_sign(Verdict::over), wanted)
                                   : tr("wanted %1").arg(wanted),
                             in_unit(feed, feed_unit()), false, true});
    if (longest_ && longest_->span) {
      panel().marks.push_back(
          {tr("longest at %1: %2, then %3", "feed, length, limits that are lower, or over, beyond")
               .arg(wanted, span_text(*longest_->span), names_of_stops()),
           in_unit(*longest_->span, length_unit()), in_unit(feed, feed_unit()), Verdict::open,
           false});
    }
  }

  QString names_of_stops() const {
    QStringList names;
    for (const FeedStop& stop : longest_->stops) {
      names << words::limit_name(stop.id);
    }
    if (names.isEmpty()) {
      for (const LimitId other : longest_->others) {
        names << words::limit_name(other);
      }
    }
    return names.join(QStringLiteral(", "));
  }

  QString where_it_stops() const {
    QStringList said;
    for (const FeedStop& stop : longest_->stops) {
      said << tr("%1 stops at %2", "name of a limit, feed")
                  .arg(words::limit_name(stop.id), text(stop.feed, feed_unit()));
    }
    return said.join(QStringLiteral(", "));
  }

  /// Limits of feed that may be lower than those drawn.
  QString open_limits() const {
    QStringList names;
    for (const LimitDescriptor& about : limit_descriptors()) {
      const Limit& limit = results_.limit(about.id);
      if (about.scale == LimitScale::feed && limit.applies && !limit.reached) {
        names << words::limit_name(about.id);
      }
    }
    return names.join(QStringLiteral(", "));
  }

  QString summary() const {
    if (turns() && !results_.whip_feed) {
      return tr("These end supports do not hold the screw.");
    }
    QString said = results_.governing ? said_of_lowest() : QString();
    if (!turns()) {
      said = tr("%1 %2", "two sentences")
                 .arg(tr("The screw stands still and does not whip; the other limits hardly "
                         "change with its length."),
                      said)
                 .trimmed();
      if (may_shake()) {
        said = tr("%1 %2", "two sentences")
                   .arg(said, tr("But at the wanted feed the turning nut may shake the still "
                                 "screw, the longer the more: read the cautions."));
      }
    }
    const QString open = open_limits();
    return open.isEmpty()
               ? said
               : tr("%1 Not known yet: %2.", "sentence, names of limits").arg(said, open);
  }

  bool may_shake() const {
    return std::ranges::any_of(results_.findings, [](const Finding& finding) {
      return finding.code == FindingCode::nut_near_shaft_frequency;
    });
  }

  QString said_of_lowest() const {
    const QString span = span_text(*screw_.span);
    const QString limit = words::limit_name(*results_.governing);
    const QString allowed = text(*results_.governing_feed, feed_unit());
    if (!longest_) {
      return tr("At %1 between bearings %2 is the lowest limit, %3.",
                "length, name of a limit, feed")
          .arg(span, limit, allowed);
    }
    const QString now =
        tr("At %1 between bearings %2 is the lowest limit, %3", "length, name of a limit, feed")
            .arg(span, limit, allowed);
    const QString feed = text(**axis_.targets.feed, feed_unit());
    if (longest_->span) {
      return (longest_->stops.empty()
                  ? tr("%1; the longest screw for %2 is %3, beyond it %4 would be over.",
                       "what governs now, feed, length, names of limits of another kind")
                  : tr("%1; the longest screw for %2 is %3, then %4 stops it.",
                       "what governs now, feed, length, names of limits"))
          .arg(now, feed, span_text(*longest_->span), names_of_stops());
    }
    return longest_->stops.empty()
               ? tr("%1; no known limit keeps a longer one from %2.", "what governs now, feed")
                     .arg(now, feed)
               : tr("%1; no length that still holds the travel of %2 reaches %3: %4.",
                    "what governs now, length, feed, what each limit allows at the most")
                     .arg(now, span_text(*axis_.basics.travel), feed, where_it_stops());
  }

  const Screw& screw_;
  std::optional<LongestScrew> longest_; ///< at the wanted feed
};

} // namespace

StudyFigure stretch_figure(const StudySubject& subject) {
  const auto* screw = std::get_if<Screw>(&subject.machine.axes.at(subject.axis).drive);
  return screw != nullptr ? StretchMaker(subject, *screw).make() : belt_stretch_figure(subject);
}

} // namespace feedwright
