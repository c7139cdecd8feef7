// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/buckling_shape.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace feedwright;

namespace {

constexpr std::pair<EndSupport, EndSupport> held[] = {
    {EndSupport::fixed, EndSupport::fixed},     {EndSupport::fixed, EndSupport::supported},
    {EndSupport::supported, EndSupport::fixed}, {EndSupport::supported, EndSupport::supported},
    {EndSupport::fixed, EndSupport::free},      {EndSupport::free, EndSupport::fixed}};

double second(EndSupport a, EndSupport b, double t) {
  constexpr double h = 1e-3;
  return (buckling_shape(a, b, t - h) - 2.0 * buckling_shape(a, b, t) +
          buckling_shape(a, b, t + h)) /
         (h * h);
}

} // namespace

TEST_CASE("a buckling shape bends as a pressed column does") {
  // independent computation: y'''' + k² y'' = 0, so y'' keeps its own second difference over −k²
  for (const auto& [a, b] : held) {
    const double exact = *buckling_constant(a, b) == 2.0
                             ? fixed_supported_column_root * fixed_supported_column_root
                             : *buckling_constant(a, b) * pi * pi;
    constexpr double h = 0.02;
    for (const double t : {0.2, 0.4, 0.65}) {
      const double fourth =
          (second(a, b, t - h) - 2.0 * second(a, b, t) + second(a, b, t + h)) / (h * h);
      CHECK(fourth == Approx(-exact * second(a, b, t)).epsilon(0.01).margin(0.5));
    }
  }
}

TEST_CASE("a buckling shape stands still where the column is held") {
  for (const auto& [a, b] : held) {
    if (a != EndSupport::free) {
      CHECK(std::abs(buckling_shape(a, b, 0.0)) < 1e-9);
    }
    if (b != EndSupport::free) {
      CHECK(std::abs(buckling_shape(a, b, 1.0)) < 1e-9);
    }
    constexpr double h = 1e-5;
    if (a == EndSupport::fixed) {
      CHECK(std::abs(buckling_shape(a, b, h) / h) < 1e-3);
    }
    if (b == EndSupport::fixed) {
      CHECK(std::abs(buckling_shape(a, b, 1.0 - h) / h) < 1e-3);
    }
  }
}

TEST_CASE("the root of a column fixed and supported gives the exact end constant") {
  // Source: S. P. Timoshenko, J. M. Gere, Theory of Elastic Stability, ch. 2 (from memory): 2.0457
  // times Euler's load
  const double k = fixed_supported_column_root;
  CHECK(std::tan(k) == Approx(k).epsilon(1e-9));
  CHECK(k * k / (pi * pi) == Approx(2.0457).epsilon(1e-4));
}
