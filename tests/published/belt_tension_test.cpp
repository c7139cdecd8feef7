// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_tension.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

TEST_CASE("static pull is what a belt maker asks for", "[published]") {
  // Siegling/Forbo, Calculation methods: F_V ≥ 0.5 F_U max for two pulleys, ≥ F_U max for a linear
  // drive; static shaft load 2 F_V at half a turn of wrap
  const double half = tight_share(200_mm, 200_mm);
  CHECK(near(static_pull(300_N, half, 0.0), 150_N, 1e-14));
  const double far = tight_share(4000_mm, 0.001_mm);
  CHECK(near(static_pull(300_N, far, 0.0), 300_N, 1e-6));
  CHECK(near(static_shaft_load(150_N, 180_deg), 300_N, 1e-14));
}

TEST_CASE("span frequency and pull agree with tension meter makers' formula", "[published]") {
  // from memory: Gates, SDP/SI: T = 4 m w L² f² · 10⁻⁹, m g/m for 1 mm of width, w and L in mm
  struct Row {
    double mass, width, length, frequency;
  };
  for (const Row& row : {Row{3.9, 15.0, 200.0, 103.3623}, Row{2.8, 9.0, 150.0, 162.65}}) {
    const double meter =
        4.0 * row.mass * row.width * row.length * row.length * row.frequency * row.frequency * 1e-9;
    const LinearDensity mass = from_si<LinearDensity>(row.mass * row.width * 1e-3);
    const Length span = from_si<Length>(row.length * 1e-3);
    const Frequency tone = from_si<Frequency>(row.frequency);
    CHECK(near(pull_of_frequency(tone, mass, span), from_si<Force>(meter), 1e-12));
    CHECK(near(span_frequency(from_si<Force>(meter), mass, span), tone, 1e-12));
  }
}

TEST_CASE("a belt at its allowable pull lengthens as its maker's table says", "[published]") {
  // Elatech catalogue, 2012 edition distributed by Goodyear, open-ended belts: allowable pull,
  // c_sp. from memory: steel-cord belts are rated at 4 mm of lengthening a metre
  struct Row {
    Force pull, specific_stiffness;
  };
  for (const Row& row : {Row{360_N, 90000_N}, Row{900_N, 225000_N}, Row{1320_N, 330000_N},
                         Row{5060_N, 1265000_N}, Row{1100_N, 275000_N}}) {
    // the other side so long that it does nothing
    const Stiffness side = belt_stiffness(row.specific_stiffness, 1_m, 1e12_m);
    CHECK(near(Length(row.pull / side), 4_mm, 1e-9));
  }
}
