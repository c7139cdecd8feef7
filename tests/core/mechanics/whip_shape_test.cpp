// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/shaft_whip.h"
#include "mechanics/whip_shape.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace feedwright;

namespace {

constexpr std::pair<EndSupport, EndSupport> held[] = {
    {EndSupport::fixed, EndSupport::fixed},     {EndSupport::fixed, EndSupport::supported},
    {EndSupport::supported, EndSupport::fixed}, {EndSupport::supported, EndSupport::supported},
    {EndSupport::fixed, EndSupport::free},      {EndSupport::free, EndSupport::fixed}};

} // namespace

TEST_CASE("a whip shape stands still at a bearing and bends as the beam equation says") {
  // independent computation: the fourth difference of the shape over the shape is λ⁴
  for (const auto& [a, b] : held) {
    const double lambda = *whip_eigenvalue(a, b);
    if (a != EndSupport::free) {
      CHECK(std::abs(whip_shape(a, b, 0.0)) < 1e-9);
    }
    if (b != EndSupport::free) {
      CHECK(std::abs(whip_shape(a, b, 1.0)) < 1e-9);
    }
    constexpr double h = 0.02;
    for (const double x : {0.3, 0.5, 0.62}) {
      const auto y = [&](double place) { return whip_shape(a, b, place); };
      const double fourth =
          (y(x - 2 * h) - 4 * y(x - h) + 6 * y(x) - 4 * y(x + h) + y(x + 2 * h)) / (h * h * h * h);
      CHECK(fourth == Approx(std::pow(lambda, 4.0) * y(x)).epsilon(0.02));
    }
  }
}

TEST_CASE("a fixed end keeps the whip shape's direction, a supported one lets it turn") {
  constexpr double h = 1e-4;
  for (const auto& [a, b] : held) {
    const double slope = std::abs(whip_shape(a, b, h) / h);
    if (a == EndSupport::fixed) {
      CHECK(slope < 0.02);
    } else if (a == EndSupport::supported) {
      CHECK(slope > 0.5);
    }
  }
}
