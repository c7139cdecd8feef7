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

void set_monotone_slopes(std::vector<Knot>& k) {
  assert(k.size() >= 2);
  const std::size_t last = k.size() - 1;
  const auto step = [&](std::size_t i) { return k[i + 1].x - k[i].x; };
  const auto secant = [&](std::size_t i) { return (k[i + 1].y - k[i].y) / step(i); };
  if (last == 1) {
    k[0].slope = k[1].slope = secant(0);
    return;
  }
  k[0].slope = end_slope(step(0), step(1), secant(0), secant(1));
  for (std::size_t i = 1; i < last; ++i) {
    k[i].slope = inner_slope(step(i - 1), step(i), secant(i - 1), secant(i));
  }
  k[last].slope = end_slope(step(last - 1), step(last - 2), secant(last - 1), secant(last - 2));
}

double hermite_value(const std::vector<Knot>& knots, double x) {
  if (x <= knots.front().x) {
    return knots.front().y;
  }
  if (x >= knots.back().x) {
    return knots.back().y;
  }
  const auto above = std::upper_bound(knots.begin(), knots.end(), x,
                                      [](double at, const Knot& knot) { return at < knot.x; });
  const Knot& high = *above;
  const Knot& low = *(above - 1);
  const double h = high.x - low.x;
  const double t = (x - low.x) / h;
  const double u = 1.0 - t;
  return (1.0 + 2.0 * t) * u * u * low.y + t * t * (3.0 - 2.0 * t) * high.y +
         h * t * u * (u * low.slope - t * high.slope);
}

} // namespace feedwright
