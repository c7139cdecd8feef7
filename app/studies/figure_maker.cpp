// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/figure_maker.h"

#include "sizing/feed_stops.h"
#include "text/text_of.h"
#include "text/words.h"

#include <algorithm>
#include <cmath>

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

void FigureMaker::add_stop_line(double feed_of_x) {
  const auto stop = stop_beside_motor(results_);
  const double at = stop ? in_unit(stop->feed, feed_unit()) / feed_of_x : HUGE_VAL;
  if (at < out_.x_end) {
    panel().lines.push_back({tr("%1 %2", "name of a limit, value")
                                 .arg(words::limit_name(stop->id), text(stop->feed, feed_unit())),
                             at, true, false});
  }
}

Verdict FigureMaker::at_feed(Verdict verdict, Velocity feed) const {
  const auto stop = stop_beside_motor(results_);
  return stop ? worse_of(verdict, verdict_at(*stop, feed)) : verdict;
}

QString FigureMaker::with_stop(const QString& sentence, Velocity feed) const {
  const auto stop = stop_beside_motor(results_);
  return stop && verdict_at(*stop, feed) == Verdict::over
             ? tr("%1 But %2 allows no more than %3.", "sentence, name of a limit, feed")
                   .arg(sentence, words::limit_name(stop->id), text(stop->feed, feed_unit()))
             : sentence;
}

void FigureMaker::add_margin_bands(const std::vector<double>& clear) {
  const StudyCurve& curve = panel().curves.front();
  const auto stop = stop_beside_motor(results_);
  const double last = stop ? in_unit(stop->feed, feed_unit()) : HUGE_VAL;
  const double held = stop ? in_unit(stop->clear_up_to, feed_unit()) : HUGE_VAL;
  StudyBand plain{verdict_label(Verdict::clear)};
  StudyBand hatched{verdict_label(Verdict::close)};
  hatched.ground = StudyBand::Ground::hatched;
  const auto add = [&](double x, bool past) {
    const double reads_clear = past ? 0.0 : value_at(curve.x, clear, x).value_or(0.0);
    if (!past) {
      plain.x.push_back(x);
      plain.low.push_back(0.0);
      plain.high.push_back(reads_clear);
    }
    hatched.x.push_back(x);
    hatched.low.push_back(reads_clear);
    hatched.high.push_back(value_at(curve.x, curve.y, x).value_or(0.0));
  };
  const auto add_edge = [&](double x, bool past) {
    if (!curve.x.empty() && x < curve.x.back()) {
      add(x, past);
    }
  };
  for (const double x : curve.x) {
    if (x < held) {
      add(x, false);
    }
  }
  add_edge(held, false);
  add_edge(held, true);
  for (const double x : curve.x) {
    if (x >= held && x < last) {
      add(x, true);
    }
  }
  add_edge(last, true);
  panel().bands = {std::move(plain), std::move(hatched)};
  panel().over_word = verdict_label(Verdict::over);
}

} // namespace feedwright
