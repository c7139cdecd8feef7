// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/monotone_cubic.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace feedwright {

namespace {

double end_slope(double h0, double h1, double d0, double d1) {
  const double slope = ((2.0 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (slope * d0 <= 0.0) {
    return 0.0;
  }
  return d0 * d1 <= 0.0 && std::abs(slope) > 3.0 * std::abs(d0) ? 3.0 * d0 : slope;
}

double inner_slope(double h0, double h1, double d0, double d1) {
  if (d0 * d1 <= 0.0) {
    return 0.0;
  }
  const double w0 = 2.0 * h1 + h0;
  const double w1 = h1 + 2.0 * h0;
  return (w0 + w1) / (w0 / d0 + w1 / d1);
}

} // namespace

std::vector<double> monotone_slopes(const std::vector<double>& x, const std::vector<double>& y) {
  assert(x.size() >= 2 && x.size() == y.size());
  const std::size_t last = x.size() - 1;
  const auto step = [&](std::size_t i) { return x[i + 1] - x[i]; };
  const auto secant = [&](std::size_t i) { return (y[i + 1] - y[i]) / step(i); };
  std::vector<double> slope(x.size(), secant(0));
  if (last == 1) {
    return slope;
  }
  slope[0] = end_slope(step(0), step(1), secant(0), secant(1));
  for (std::size_t i = 1; i < last; ++i) {
    slope[i] = inner_slope(step(i - 1), step(i), secant(i - 1), secant(i));
  }
  slope[last] = end_slope(step(last - 1), step(last - 2), secant(last - 1), secant(last - 2));
  return slope;
}

double hermite_value(const std::vector<double>& x, const std::vector<double>& y,
                     const std::vector<double>& slope, double at) {
  if (at <= x.front()) {
    return y.front();
  }
  if (at >= x.back()) {
    return y.back();
  }
  const auto above = std::upper_bound(x.begin(), x.end(), at);
  const auto i = static_cast<std::size_t>(above - x.begin()) - 1;
  const double h = x[i + 1] - x[i];
  const double t = (at - x[i]) / h;
  const double u = 1.0 - t;
  return (1.0 + 2.0 * t) * u * u * y[i] + t * t * (3.0 - 2.0 * t) * y[i + 1] +
         h * t * u * (u * slope[i] - t * slope[i + 1]);
}

} // namespace feedwright
