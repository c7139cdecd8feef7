// SPDX-License-Identifier: GPL-3.0-or-later

// What length does to a belt that hauls: its give over the travel.

#include "sizing/longer_axis.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"

#include <algorithm>

namespace feedwright {

namespace {

class BeltStretchMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
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
    return std::move(out_);
  }

private:
  QString span_text(Length span) const { return text(span, length_unit(), 4); }

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
};

} // namespace

StudyFigure belt_stretch_figure(const StudySubject& subject) {
  return BeltStretchMaker(subject).make();
}

} // namespace feedwright
