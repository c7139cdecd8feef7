// SPDX-License-Identifier: GPL-3.0-or-later

// Cutting thrust over feed: what the motor can push, what else limits it, what is wanted.

#include "sizing/envelopes.h"
#include "sizing/feed_stops.h"
#include "sizing/thrust_at_tool.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

namespace {

class ThrustMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    set_x(tr("feed"), feed_unit());
    set_y(tr("cutting thrust"), force_unit());
    StudyCurve curve{tr("the motor can push")};
    std::vector<double> clear;
    for (const ThrustPoint& point :
         thrust_over_feed(subject_.machine, axis_, points, last_feed())) {
      curve.x.push_back(in_unit(point.feed, feed_unit()));
      curve.y.push_back(in_unit(point.thrust, force_unit()));
      clear.push_back(in_unit(point.clear, force_unit()));
    }
    panel().curves.push_back(std::move(curve));
    add_margin_bands(clear);
    keep_bands_allowed();
    add_marks();
    fit();
    add_other_limits();
    add_stop_line();
    out_.summary = summary();
    return std::move(out_);
  }

private:
  void add_marks() {
    const Targets& targets = axis_.targets;
    if (targets.cutting_feed && targets.thrust) {
      mark(tr("wanted %1 at %2"), **targets.cutting_feed, **targets.thrust,
           results_.limit(LimitId::motor_thrust).verdict, true);
    }
    int number = 0;
    for (const CasePoint& load : load_case_points(subject_.machine, axis_, results_)) {
      ++number;
      if (shares_mark(load, number)) {
        continue;
      }
      const QString label = load.capped
                                ? tr("case %1, held to the spindle's power: %2 at %3",
                                     "number of a load case, thrust, feed")
                                : tr("case %1: %2 at %3", "number of a load case, thrust, feed");
      mark(label.arg(number), load.feed, load.thrust, load.verdict, false);
    }
  }

  /// One mark for two that ask the same.
  bool shares_mark(const CasePoint& load, int number) {
    const double x = in_unit(load.feed, feed_unit());
    const double y = in_unit(load.thrust, force_unit());
    const auto same = std::ranges::find_if(
        panel().marks, [&](const StudyMark& mark) { return mark.x == x && mark.y == y; });
    if (load.capped || same == panel().marks.end()) {
      return false;
    }
    same->label = tr("%1 = case %2", "what a mark stands for, number of a load case")
                      .arg(same->label)
                      .arg(number);
    same->verdict = worse_of(same->verdict, load.verdict);
    return true;
  }

  void mark(const QString& label, Velocity feed, Force thrust, Verdict verdict, bool wanted) {
    panel().marks.push_back({label.arg(text(thrust, force_unit()), text(feed, feed_unit())),
                             in_unit(feed, feed_unit()), in_unit(thrust, force_unit()),
                             at_feed(verdict, feed), wanted});
  }

  /// Those below the top of the scale; the others have nothing to say here.
  void add_other_limits() {
    for (const ThrustAtTool& limit : thrust_limits_at_tool(subject_.machine, axis_, results_)) {
      const double at = in_unit(limit.thrust, force_unit());
      if (at < panel().y_end) {
        panel().lines.push_back(
            {tr("%1, %2 of cut", "name of a limit, cutting thrust at which it is met")
                 .arg(words::limit_name(limit.id), text(limit.thrust, force_unit())),
             at, false, false});
      }
    }
  }

  /// What another limit forbids is over, however hard the motor can push.
  void keep_bands_allowed() {
    for (const ThrustAtTool& limit : thrust_limits_at_tool(subject_.machine, axis_, results_)) {
      const double most = in_unit(limit.thrust, force_unit());
      for (StudyBand& band : panel().bands) {
        for (std::vector<double>* edge : {&band.low, &band.high}) {
          for (double& y : *edge) {
            y = std::min(y, most);
          }
        }
      }
    }
  }

  QString summary() const {
    const Targets& targets = axis_.targets;
    if (!targets.cutting_feed) {
      return tr("Cutting thrust against feed; give a cutting feed to read it off.");
    }
    const QString feed = text(**targets.cutting_feed, feed_unit());
    if (!results_.thrust_available) {
      return tr("The motor's curve ends before the cutting feed of %1.").arg(feed);
    }
    const QString has = text(*results_.thrust_available, force_unit());
    return with_stop(targets.thrust ? tr("At %1 the motor can cut with %2; wanted is %3.")
                                          .arg(feed, has, text(**targets.thrust, force_unit()))
                                    : tr("At %1 the motor can cut with %2.").arg(feed, has),
                     **targets.cutting_feed);
  }
};

} // namespace

StudyFigure thrust_figure(const StudySubject& subject) {
  return ThrustMaker(subject).make();
}

} // namespace feedwright
