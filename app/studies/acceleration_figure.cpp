// SPDX-License-Identifier: GPL-3.0-or-later

// Acceleration over feed: what the motor can reach, what is wanted.

#include "sizing/envelopes.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"

namespace feedwright {

namespace {

class AccelerationMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    set_x(tr("feed"), feed_unit());
    set_y(tr("acceleration"), acceleration_unit());
    StudyCurve curve{tr("the motor can reach")};
    std::vector<double> clear;
    for (const AccelerationPoint& point :
         acceleration_over_feed(subject_.machine, axis_, points, last_feed())) {
      curve.x.push_back(in_unit(point.feed, feed_unit()));
      curve.y.push_back(in_unit(point.acceleration, acceleration_unit()));
      clear.push_back(in_unit(point.clear, acceleration_unit()));
    }
    panel().curves.push_back(std::move(curve));
    add_margin_bands(clear);
    const Targets& targets = axis_.targets;
    if (targets.feed && targets.acceleration) {
      panel().marks.push_back(
          {tr("wanted %1 at %2")
               .arg(text(**targets.acceleration, acceleration_unit()),
                    text(**targets.feed, feed_unit())),
           in_unit(Velocity(**targets.feed), feed_unit()),
           in_unit(Acceleration(**targets.acceleration), acceleration_unit()),
           at_feed(results_.limit(LimitId::acceleration).verdict, **targets.feed), true});
    }
    fit();
    add_stop_line();
    out_.summary = summary();
    return std::move(out_);
  }

private:
  QString summary() const {
    const Targets& targets = axis_.targets;
    if (!targets.feed) {
      return tr("Acceleration against feed; give a feed to read it off.");
    }
    const QString feed = text(**targets.feed, feed_unit());
    if (!results_.acceleration_available) {
      return tr("The motor's curve ends before the wanted feed of %1.").arg(feed);
    }
    const QString has = text(*results_.acceleration_available, acceleration_unit());
    return with_stop(targets.acceleration
                         ? tr("At %1 the motor can accelerate with %2; wanted is %3.")
                               .arg(feed, has, text(**targets.acceleration, acceleration_unit()))
                         : tr("At %1 the motor can accelerate with %2.").arg(feed, has),
                     **targets.feed);
  }
};

} // namespace

StudyFigure acceleration_figure(const StudySubject& subject) {
  return AccelerationMaker(subject).make();
}

} // namespace feedwright
