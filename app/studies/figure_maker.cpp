// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/figure_maker.h"

#include "text/text_of.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

QString FigureMaker::text(const AnyQuantity& value, const Unit& unit, int digits) {
  return words::quantity(value, unit.symbol, digits);
}

void FigureMaker::set_x(const QString& name, const Unit& unit) {
  out_.x_name = name;
  out_.x_unit = text_of(unit.symbol);
}

void FigureMaker::set_y(const QString& name, const Unit& unit) {
  panel().y_name = name;
  panel().y_unit = text_of(unit.symbol);
}

std::optional<Velocity> FigureMaker::last_feed() const {
  constexpr double beyond = 2.0;
  Velocity most;
  for (const auto& feed : {axis_.targets.feed, axis_.targets.cutting_feed}) {
    most = feed ? std::max(most, Velocity(**feed)) : most;
  }
  most = results_.governing_feed ? std::max(most, *results_.governing_feed) : most;
  return most > Velocity() ? std::optional(Velocity(most * beyond)) : std::nullopt;
}

void FigureMaker::fit() {
  constexpr double headroom = 1.1;
  double x_end = 0.0;
  double y_end = 0.0;
  const auto take = [](double& most, const std::vector<double>& values) {
    for (const double value : values) {
      most = std::max(most, value);
    }
  };
  for (const StudyCurve& curve : panel().curves) {
    take(x_end, curve.x);
    take(y_end, curve.y);
  }
  for (const StudyMark& mark : panel().marks) {
    take(x_end, {mark.x});
    take(y_end, {mark.y});
  }
  out_.x_end = x_end > 0.0 ? x_end * 1.03 : 1.0;
  panel().y_end = y_end > 0.0 ? y_end * headroom : 1.0;
}

QString FigureMaker::verdict_label(Verdict verdict) {
  return tr("%1 %2", "sign, word of a margin")
      .arg(words::verdict_sign(verdict), words::verdict_word(verdict));
}

void FigureMaker::add_margin_bands(const std::vector<double>& clear) {
  const StudyCurve& curve = panel().curves.front();
  panel().bands = {
      {verdict_label(Verdict::clear), curve.x, std::vector<double>(clear.size(), 0.0), clear,
       StudyBand::Ground::plain},
      {verdict_label(Verdict::close), curve.x, clear, curve.y, StudyBand::Ground::hatched}};
  panel().over_word = verdict_label(Verdict::over);
}

} // namespace feedwright
