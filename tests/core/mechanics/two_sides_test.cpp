// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/two_sides.h"
#include "support/near.h"

#include <algorithm>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

template <class Q>
Traced<Q> traced(const Q& q) {
  return {q, tracing::literal(si_value(q))};
}

} // namespace

TEST_CASE("worst side share is the largest reaction while the load travels across") {
  // independent computation: moments about the left side, load at every place of its travel
  for (const double travel : {0.1, 0.4, 0.75}) {
    const double spacing = 0.9;
    double worst = 0.0;
    for (int i = 0; i <= 100; ++i) {
      const double y = travel * (i / 100.0 - 0.5);
      const double right = (spacing / 2.0 + y) / spacing;
      worst = std::max({worst, right, 1.0 - right});
    }
    CHECK(double(worst_side_share(from_si<Length>(travel), from_si<Length>(spacing))) ==
          Approx(worst).epsilon(1e-12));
  }
}

TEST_CASE("couple force balances the moment of the load") {
  const Force n = couple_force(300_N, 250_mm, 180_mm);
  CHECK(si_value(n) * 0.180 == Approx(300.0 * 0.250).epsilon(1e-12));
}

TEST_CASE("skew agrees with four blocks turned until they hold the couple") {
  // independent computation: two rails, blocks at ± b/2, each k; the turn that gives the moment F
  // y, by bisection
  const double k = 80e6;
  const double b = 0.2;
  const double moment = 400.0 * 0.15;
  double low = 0.0;
  double high = 0.1;
  for (int i = 0; i < 200; ++i) {
    const double turn = (low + high) / 2.0;
    double held = 0.0;
    for (int block = 0; block < 4; ++block) {
      const double at = block % 2 == 0 ? b / 2.0 : -b / 2.0;
      held += k * (turn * at) * at;
    }
    (held < moment ? low : high) = turn;
  }
  const Length skew =
      skew_of_blocks(Force(couple_force(400_N, 150_mm, 200_mm)), 80_N_per_um, 0.7_m, 200_mm);
  CHECK(near(skew, from_si<Length>(low * 0.7), 1e-9));
}

TEST_CASE("traced equations of two sides give the plain figures") {
  CHECK(double(worst_side_share(traced(600_mm), traced(800_mm)).value) == Approx(0.875));
  const auto n = couple_force(traced(300_N), traced(250_mm), traced(180_mm));
  CHECK(near(Force(n.value), Force(couple_force(300_N, 250_mm, 180_mm)), 1e-14));
  CHECK(near(Length(skew_of_blocks(n, traced(80_N_per_um), traced(700_mm), traced(180_mm)).value),
             Length(skew_of_blocks(Force(n.value), 80_N_per_um, 700_mm, 180_mm)), 1e-14));
}
