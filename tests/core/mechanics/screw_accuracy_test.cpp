// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_accuracy.h"
#include "mechanics/stiffness.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

template <class Q>
Traced<Q> traced(const Q& q) {
  return {q, tracing::literal(si_value(q))};
}

} // namespace

TEST_CASE("lead variation rises with the grade") {
  Length before;
  for (const int grade : {1, 2, 3, 4, 5, 7, 10}) {
    const auto variation = lead_variation_per_300(grade);
    REQUIRE(variation);
    CHECK(*variation > before);
    before = *variation;
  }
}

TEST_CASE("a grade that does not exist has no lead variation") {
  for (const int grade : {-1, 6, 8, 11, 52}) {
    CHECK_FALSE(lead_variation_per_300(grade));
  }
}

TEST_CASE("travel deviation of a transport screw is proportional to travel") {
  CHECK(near(Length(transport_travel_error(210_um, 150_mm)), 210_um));
  CHECK(near(Length(transport_travel_error(210_um, 600_mm)),
             Length(2.0 * transport_travel_error(210_um, 300_mm))));
}

TEST_CASE("thermal growth of a screw adds up from its pieces") {
  // independent computation: a screw that is warm at one end, by short pieces at their own mean
  const Expansion steel = from_si<Expansion>(11.5e-6);
  constexpr int pieces = 1000;
  Length sum;
  for (int i = 0; i < pieces; ++i) {
    sum += thermal_growth(steel, Length(0.8_m / double(pieces)),
                          Temperature(8_K * ((i + 0.5) / pieces)));
  }
  CHECK(near(sum, Length(thermal_growth(steel, 0.8_m, 4_K)), 1e-9));
}

TEST_CASE("stretch for heat is the pull that lengthens the screw by its growth") {
  // independent computation: growth times the stiffness of the screw
  const Area root = square(17.2_mm) * (pi / 4.0);
  const Expansion steel = from_si<Expansion>(11.5e-6);
  for (const Length& length : {300_mm, 1000_mm, 2500_mm}) {
    const Force pull =
        thermal_growth(steel, length, 5_K) * shaft_stiffness_one_end(root, 206_GPa, length);
    CHECK(near(Force(stretch_for_heat(206_GPa, root, steel, 5_K)), pull, 1e-12));
  }
}

TEST_CASE("traced accuracy equations give the plain figures") {
  const auto steel = traced(from_si<Expansion>(11.5e-6));
  const auto root = traced(from_si<Area>(2.3e-4));
  CHECK(near(Length(thermal_growth(steel, traced(1_m), traced(5_K)).value), 57.5_um));
  CHECK(near(Force(stretch_for_heat(traced(206_GPa), root, steel, traced(5_K)).value),
             Force(stretch_for_heat(206_GPa, root.value, steel.value, 5_K)), 1e-14));
  CHECK(near(Length(transport_travel_error(traced(52_um), traced(300_mm)).value), 104_um));
}
