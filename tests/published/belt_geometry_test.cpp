// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_geometry.h"
#include "support/near.h"

#include <array>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

Length diameter(int teeth, Length pitch) {
  return pulley_pitch_diameter(double(teeth), pitch);
}

/// Length of the taut loop round two circles as the perimeter of their convex hull, support
/// function integrated numerically: ∮ h(θ) dθ (Cauchy). Shares nothing with the program's formula.
double hull_perimeter(double r1, double r2, double distance, int steps) {
  double sum = 0.0;
  for (int i = 0; i < steps; ++i) {
    const double angle = 2.0 * pi * (i + 0.5) / steps;
    sum += std::max(r1, r2 + distance * std::cos(angle));
  }
  return sum * 2.0 * pi / steps;
}

} // namespace

TEST_CASE("centre distance agrees with a textbook drive", "[published]") {
  // C. R. Wentzell, Machine Design, Ex. 14.2: pulleys 4 and 6 in, belt 54 in: C 19.12 in, wrap
  // 174.01°
  const auto distance = centre_distance(4_in, 6_in, 54_in);
  REQUIRE(distance);
  CHECK(near(*distance, 19.12_in, 3e-4));
  CHECK(si_value(smaller_pulley_wrap(4_in, 6_in, *distance)) * 180.0 / pi ==
        Approx(174.01).epsilon(1e-4));
}

TEST_CASE("pitch diameter is teeth times pitch over pi") {
  // ISO 5296, definition; H section, 20 teeth of 12.7 mm: 80.85 mm
  CHECK(near(diameter(20, 12.7_mm), 80.85_mm, 1e-4));
}

TEST_CASE("open belt length agrees with the perimeter of the convex hull") {
  // independent computation: numeric integration of the belt path's support function
  struct Drive {
    int z1, z2;
    Length pitch, distance;
  };
  for (const Drive& d : {Drive{20, 40, 5_mm, 174.272751_mm}, Drive{15, 30, 5_mm, 90_mm},
                         Drive{20, 20, 3_mm, 120_mm}, Drive{60, 12, 8_mm, 140_mm}}) {
    const Length d1 = diameter(d.z1, d.pitch);
    const Length d2 = diameter(d.z2, d.pitch);
    const double integral =
        hull_perimeter(si_value(d1) / 2.0, si_value(d2) / 2.0, si_value(d.distance), 2'000'000);
    CHECK(near(open_belt_length(d1, d2, d.distance), from_si<Length>(integral), 1e-9));
  }
}

TEST_CASE("centre distance undoes the belt length") {
  for (int z1 = 10; z1 <= 80; z1 += 7) {
    for (int z2 = 10; z2 <= 80; z2 += 9) {
      const Length d1 = diameter(z1, 5_mm);
      const Length d2 = diameter(z2, 5_mm);
      for (const Length& c : {(d1 + d2) * 0.5 + 0.1_mm, (d1 + d2) * 1.5, d1 + d2 + 3000_mm}) {
        const auto found = centre_distance(d1, d2, open_belt_length(d1, d2, c));
        REQUIRE(found);
        CHECK(near(*found, c, 1e-12));
      }
    }
  }
}

TEST_CASE("exact centre distance lies near the catalogue approximation", "[published]") {
  // technical section of belt catalogues: C = K + √(K² − (d2−d1)²/8), K = L/4 − 0.392699 (d1+d2)
  const Length d1 = diameter(20, 5_mm);
  const Length d2 = diameter(40, 5_mm);
  const double k = 0.5 / 4.0 - 0.392699 * si_value(d1 + d2);
  const double approximate = k + std::sqrt(k * k - std::pow(si_value(d2 - d1), 2) / 8.0);
  CHECK(near(*centre_distance(d1, d2, 500_mm), from_si<Length>(approximate), 1e-5));
}

TEST_CASE("equal pulleys leave half of what the belt has beyond one pulley") {
  CHECK(near(*centre_distance(diameter(20, 3_mm), diameter(20, 3_mm), 300_mm), 120_mm, 1e-14));
}

TEST_CASE("a belt too short to go round is refused") {
  CHECK_FALSE(centre_distance(50_mm, 50_mm, 200_mm));
}
