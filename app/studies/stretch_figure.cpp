// SPDX-License-Identifier: GPL-3.0-or-later

// What length does: every limit of feed over the length of a screw, the give of a hauling belt over
// the travel.

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
};

class StretchMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    screw_ != nullptr ? make_screw() : make_belt();
    return std::move(out_);
  }

private:
  void make_screw() {
    set_x(tr("length between bearings"), length_unit());
    set_y(tr("allowed feed"), feed_unit());
    const bool whips = screw_->driven == DrivenMember::screw;
    const auto& feed = axis_.targets.feed;
    const auto longest = whips && feed ? longest_span_at(axis_, **feed) : std::nullopt;
    const auto [from, to] = range(longest);
    out_.x_start = in_unit(from, length_unit());
    out_.x_end = in_unit(to, length_unit());
    panel().y_end = top();
    if (whips) {
      add_whip_curves(from, to);
    }
    add_other_curves(from, to);
    add_lines(longest);
    out_.summary = whips ? whip_summary(longest)
                         : tr("The screw stands still and does not whip; the other limits hardly "
                              "change with its length.");
  }

  struct Range {
    Length from, to;
  };
  Range range(const std::optional<Length>& longest) const {
    const Length span = *screw_->span;
    Range made{span * 0.45, span * 1.6};
    if (longest && *longest > span && *longest < span * 4.0) {
      made.to = std::max(made.to, Length(*longest * 1.15));
    }
    if (longest && *longest < span) {
      made.from = std::min(made.from, Length(*longest * 0.8));
    }
    return made;
  }

  double top() const {
    const auto& reached = results_.whip_feed ? results_.whip_feed : results_.governing_feed;
    double most = reached ? in_unit(*reached, feed_unit()) * 1.3 : 0.0;
    if (axis_.targets.feed) {
      most = std::max(most, in_unit(Velocity(**axis_.targets.feed), feed_unit()) * 1.8);
    }
    return most > 0.0 ? most : 1.0;
  }

  static QString pair_name(const Pair& pair) {
    const auto name = [](EndSupport end) {
      return words::choice_name("motor_end",
                                fields::Names<EndSupport>::list[static_cast<std::size_t>(end)]);
    };
    return tr("%1–%2", "supports at the two ends of a screw").arg(name(pair.a), name(pair.b));
  }

  void add_whip_curves(Length from, Length to) {
    using enum EndSupport;
    constexpr Pair pairs[] = {
        {fixed, free}, {supported, supported}, {fixed, supported}, {fixed, fixed}};
    const Pair own{screw_->motor_end, screw_->far_end};
    int dash = 1;
    for (const Pair& pair : pairs) {
      const bool turned = own.a == pair.b && own.b == pair.a;
      const bool present = turned || (own.a == pair.a && own.b == pair.b);
      const Pair drawn = present ? own : pair;
      StudyCurve curve{tr("whip, %1", "supports at the two ends").arg(pair_name(drawn))};
      curve.present = present;
      curve.dash = present ? 0 : dash++;
      for (const WhipPoint& point : whip_over_span(axis_, drawn.a, drawn.b, from, to, points)) {
        curve.x.push_back(in_unit(point.span, length_unit()));
        curve.y.push_back(in_unit(point.feed, feed_unit()));
      }
      panel().curves.push_back(std::move(curve));
    }
  }

  /// Limits that run together are drawn once, under both names; those above the scale not at all.
  void add_other_curves(Length from, Length to) {
    constexpr int coarse = (points - 1) / 4 + 1; // every fourth of the whip curves' points
    int dash = 4;
    const std::size_t first = panel().curves.size();
    for (const FeedOverSpan& limit :
         feed_limits_over_span(subject_.machine, axis_, from, to, coarse)) {
      StudyCurve curve{words::limit_name(limit.id)};
      for (const SpanFeed& point : limit.points) {
        curve.x.push_back(in_unit(point.span, length_unit()));
        curve.y.push_back(in_unit(point.feed, feed_unit()));
      }
      if (*std::ranges::min_element(curve.y) > panel().y_end || joins(first, curve)) {
        continue;
      }
      curve.present = false;
      curve.dash = dash++;
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

  void add_lines(const std::optional<Length>& longest) {
    panel().lines.push_back({tr("as it is, %1").arg(span_text(*screw_->span)),
                             in_unit(Length(*screw_->span), length_unit()), true, false});
    if (!axis_.targets.feed) {
      return;
    }
    const Velocity feed = **axis_.targets.feed;
    panel().lines.push_back(
        {tr("wanted %1").arg(text(feed, feed_unit())), in_unit(feed, feed_unit()), false, true});
    if (longest) {
      panel().marks.push_back(
          {tr("longest at %1: %2").arg(text(feed, feed_unit()), span_text(*longest)),
           in_unit(*longest, length_unit()), in_unit(feed, feed_unit()),
           results_.limit(LimitId::whip).verdict, false});
    }
  }

  QString whip_summary(const std::optional<Length>& longest) const {
    if (!results_.whip_feed) {
      return tr("These end supports do not hold the screw.");
    }
    const QString span = span_text(*screw_->span);
    const QString allowed = text(*results_.whip_feed, feed_unit());
    if (!axis_.targets.feed) {
      return tr("At %1 between bearings whip allows %2.").arg(span, allowed);
    }
    const QString feed = text(**axis_.targets.feed, feed_unit());
    return longest ? tr("At %1 between bearings whip allows %2; the longest for %3 is %4.")
                         .arg(span, allowed, feed, span_text(*longest))
                   : tr("At %1 between bearings whip allows %2; no length that holds the travel "
                        "allows %3.")
                         .arg(span, allowed, feed);
  }

  void make_belt() {
    const Unit& small = unit(Kind::length, "µm");
    set_x(tr("travel"), length_unit());
    set_y(tr("give of the drive"), small);
    const Length travel = *axis_.basics.travel;
    StudyCurve reversal{tr("on reversal, from friction")};
    StudyCurve cut{tr("under the wanted cut")};
    reversal.dash = 1;
    for (const GiveOverTravel& point :
         give_over_travel(subject_.machine, axis_, travel * 0.4, travel * 2.0, points / 2)) {
      const auto add = [&](StudyCurve& curve, const std::optional<Length>& give) {
        if (give) {
          curve.x.push_back(in_unit(point.travel, length_unit()));
          curve.y.push_back(in_unit(*give, small));
        }
      };
      add(reversal, point.on_reversal);
      add(cut, point.under_cut);
    }
    panel().curves = {std::move(reversal), std::move(cut)};
    fit();
    out_.x_start = in_unit(Length(travel * 0.4), length_unit());
    out_.x_end = in_unit(Length(travel * 2.0), length_unit());
    panel().lines.push_back(
        {tr("as it is, %1").arg(span_text(travel)), in_unit(travel, length_unit()), true, false});
    if (axis_.targets.cutting_error) {
      const Length allowed = **axis_.targets.cutting_error;
      panel().lines.push_back({tr("allowed under cut %1").arg(text(allowed, small)),
                               in_unit(allowed, small), false, true});
      panel().y_end = std::max(panel().y_end, in_unit(allowed, small) * 1.3);
    }
    out_.summary = belt_summary(small);
  }

  QString belt_summary(const Unit& small) const {
    if (results_.cutting_deflection) {
      return tr("A belt that hauls the carriage does not whip; it gives: %1 under the wanted cut "
                "at this travel, and more the longer it is.")
          .arg(text(*results_.cutting_deflection, small));
    }
    if (results_.windup_error) {
      return tr("A belt that hauls the carriage does not whip; it gives: %1 on reversal at this "
                "travel, and more the longer it is.")
          .arg(text(*results_.windup_error, small));
    }
    return tr("A belt that hauls the carriage does not whip; it gives, and more the longer it is. "
              "How much is open without the specific stiffness of each belt or the stiffness of "
              "the coupling.");
  }

  const Screw* screw_ = std::get_if<Screw>(&axis_.drive);
};

} // namespace

StudyFigure stretch_figure(const StudySubject& subject) {
  return StretchMaker(subject).make();
}

} // namespace feedwright
