// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/screw_accuracy.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("lead variation of grade 3 agrees with a screw maker", "[published]") {
  // Steinmeyer, drive technology pages, lead error per 300 mm: P3, v_300 12 µm
  REQUIRE(lead_variation_per_300(3));
  CHECK(near(*lead_variation_per_300(3), 12_um));
}

TEST_CASE("lead variation of rolled grades agrees with a screw maker", "[published]") {
  // ABBA ball screw catalogue: C7 0.05 mm, C10 0.21 mm per 300 mm. C7 is JIS's, ISO 7 is 52 µm.
  REQUIRE(lead_variation_per_300(7));
  REQUIRE(lead_variation_per_300(10));
  CHECK(near(*lead_variation_per_300(7), 50_um, 0.04));
  CHECK(near(*lead_variation_per_300(10), 210_um));
}

TEST_CASE("lead variation of the ground grades agrees with the standard", "[published]") {
  // from memory: ISO 3408-3, v_300p of grades 1, 2, 4, 5 and 7
  CHECK(near(lead_variation_per_300(1).value_or(Length()), 6_um));
  CHECK(near(lead_variation_per_300(2).value_or(Length()), 8_um));
  CHECK(near(lead_variation_per_300(4).value_or(Length()), 16_um));
  CHECK(near(lead_variation_per_300(5).value_or(Length()), 23_um));
  CHECK(near(lead_variation_per_300(7).value_or(Length()), 52_um));
}

TEST_CASE("travel deviation of a transport screw agrees with the standard", "[published]") {
  // from memory: ISO 3408-3, transport screws: e_p = 2 l_u/300 v_300p; 900 mm of grade 7: 312 µm
  CHECK(near(Length(transport_travel_error(52_um, 900_mm)), 312_um));
}

TEST_CASE("thermal growth agrees with a catalogue", "[published]") {
  // from memory: THK ball screw catalogue: 12 µm per metre and kelvin, 1000 mm warmed by 3 K: 36 µm
  const Expansion steel = from_si<Expansion>(12e-6);
  CHECK(near(Length(thermal_growth(steel, 1000_mm, 3_K)), 36_um));
}

TEST_CASE("stretch for heat agrees with a separate calculation") {
  // derived: strain 36e-6 on a root of Ø 17.2 mm at 206 GPa: 1723.1 N
  const Area root = square(17.2_mm) * (pi / 4.0);
  CHECK(
      near(Force(stretch_for_heat(206_GPa, root, from_si<Expansion>(12e-6), 3_K)), 1723.1_N, 1e-4));
}
