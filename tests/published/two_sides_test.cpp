// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/two_sides.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("side shares agree with the reaction of a simple beam", "[published]") {
  // from memory: Gere & Goodno, Mechanics of Materials, simple beam with one load P at a from the
  // left: right reaction P a/L. Sides 800 mm apart, load 300 mm either way: a = 700 mm.
  CHECK(double(worst_side_share(600_mm, 800_mm)) == Approx(700.0 / 800.0).epsilon(1e-13));
}

TEST_CASE("a load that stays in the middle is halved") {
  // common practice, no source
  CHECK(double(worst_side_share(0_mm, 800_mm)) == Approx(0.5).epsilon(1e-13));
  // a load that travels to the very side is carried by it alone
  CHECK(double(worst_side_share(800_mm, 800_mm)) == Approx(1.0).epsilon(1e-13));
}

TEST_CASE("blocks twice as far apart take half the couple force") {
  // common practice, no source: 500 N off the drive by 200 mm, blocks 250 mm apart: 400 N
  CHECK(near(Force(couple_force(500_N, 200_mm, 250_mm)), 400_N));
  CHECK(near(Force(couple_force(500_N, 200_mm, 500_mm)), 200_N));
}
