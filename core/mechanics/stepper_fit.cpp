// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/stepper_fit.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <iterator>
#include <limits>
#include <vector>

namespace feedwright {

namespace {

/// The loss that fits best for one inductance, and the squares left over.
struct LossFit {
  double loss, squares;
};

LossFit best_loss(StepperWinding winding, double inductance, std::span<const PullOutPoint> points) {
  winding.inductance = from_si<Inductance>(inductance);
  double across = 0.0;
  double speeds = 0.0;
  for (const PullOutPoint& point : points) {
    const double speed = si_value(point.speed);
    across += (si_value(pull_out_torque(winding, point.speed)) - si_value(point.torque)) * speed;
    speeds += speed * speed;
  }
  LossFit fit{speeds > 0.0 ? std::max(0.0, across / speeds) : 0.0, 0.0};
  for (const PullOutPoint& point : points) {
    const double left = si_value(pull_out_torque(winding, point.speed)) -
                        fit.loss * si_value(point.speed) - si_value(point.torque);
    fit.squares += left * left;
  }
  return fit;
}

} // namespace

FittedStepper fit_to_points(const StepperWinding& winding, std::span<const PullOutPoint> given) {
  // Where nothing is left the loss may be any: such a point tells nothing.
  std::vector<PullOutPoint> points;
  std::ranges::copy_if(given, std::back_inserter(points),
                       [](const PullOutPoint& point) { return point.torque > Torque(); });
  if (points.empty()) {
    return {winding, {}, Torque()};
  }
  const double guess = std::log(si_value(winding.inductance));
  constexpr double reach = 3.4; // a factor of 30
  constexpr int samples = 24;
  const auto squares = [&](double log_inductance) {
    return best_loss(winding, std::exp(log_inductance), points).squares;
  };
  // The sum of squares may have more than one valley: take the deepest sample's.
  const auto at = [&](int i) { return guess + reach * (2.0 * i / double(samples) - 1.0); };
  int deepest = 0;
  double least = std::numeric_limits<double>::infinity();
  for (int i = 0; i <= samples; ++i) {
    if (const double value = squares(at(i)); value < least) {
      least = value;
      deepest = i;
    }
  }
  constexpr int bits = 30;
  std::uintmax_t rounds = 60;
  const auto [found, value] = boost::math::tools::brent_find_minima(
      squares, at(std::max(0, deepest - 1)), at(std::min(samples, deepest + 1)), bits, rounds);
  const double inductance = std::exp(value <= least ? found : at(deepest));
  const LossFit fit = best_loss(winding, inductance, points);
  FittedStepper fitted{winding, from_si<SpeedLoss>(fit.loss),
                       from_si<Torque>(std::sqrt(fit.squares / double(points.size())))};
  fitted.winding.inductance = from_si<Inductance>(inductance);
  return fitted;
}

Torque pull_out_torque(const FittedStepper& fitted, AngularVelocity speed) {
  const Torque whole = pull_out_torque(fitted.winding, speed) - fitted.loss * speed;
  return std::max(Torque(), whole);
}

} // namespace feedwright
