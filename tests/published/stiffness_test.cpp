// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/rotor.h"
#include "mechanics/stiffness.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

Area round_area(Length diameter) {
  return square(diameter) * (pi / 4.0);
}

} // namespace

TEST_CASE("elements of an axis add up as a catalogue adds them", "[published]") {
  // LMTS ball screw catalogue, p. 53: 1/K = 1/K_S + 1/K_N + 1/K_B, E 2.06e5 N/mm², area of the root
  const Stiffness shaft = shaft_stiffness_one_end(round_area(17.2_mm), 206_GPa, 500_mm);
  const Stiffness nut = 200_N_per_um;
  const Stiffness bearing = 150_N_per_um;
  const double flexibility = 1.0 / si_value(shaft) + 1.0 / 200e6 + 1.0 / 150e6;
  CHECK(near(Stiffness(in_series(in_series(shaft, nut), bearing)),
             from_si<Stiffness>(1.0 / flexibility)));
}

TEST_CASE("a shaft held at both ends is softest at midspan by the catalogues' formula",
          "[published]") {
  // from memory: ball screw catalogues, minimum 4 A E/L at midspan
  const Area area = round_area(17.2_mm);
  const Stiffness least = area * 206_GPa * 4.0 / 1000_mm;
  CHECK(near(Stiffness(shaft_stiffness_both_ends(area, 206_GPa, 1000_mm, 500_mm)), least));
  for (double x = 50.0; x < 1000.0; x += 50.0) {
    CHECK(shaft_stiffness_both_ends(area, 206_GPa, 1000_mm, from_si<Length>(x * 1e-3)) >=
          0.999999 * least);
  }
}

TEST_CASE("nut stiffness is the catalogue's at the catalogue's loads but for a fifth",
          "[published]") {
  // from memory: THK, NSK and HIWIN catalogues, K = 0.8 K_cat at 0.3 C_a without and at 0.1 C_a
  // with preload
  CHECK(near(nut_stiffness_at(540_N_per_um, 3000_N, 30_kN, true), 432_N_per_um));
  CHECK(near(nut_stiffness_at(540_N_per_um, 9000_N, 30_kN, false), 432_N_per_um));
}

TEST_CASE("nut stiffness goes with the third root of the preload", "[published]") {
  // Steinmeyer, drive technology pages, rigidity: with the third root of the preload
  const Stiffness light = nut_stiffness_at(540_N_per_um, 1000_N, 30_kN, true);
  CHECK(near(nut_stiffness_at(540_N_per_um, 8000_N, 30_kN, true), Stiffness(2.0 * light)));
  // derived: 0.8·540·(1000/3000)^(1/3) N/µm
  CHECK(near(light, 299.532_N_per_um, 1e-5));
}

TEST_CASE("two discs on a shaft agree with a textbook in torsion", "[published]") {
  // Grover, Mechanical Vibrations, Ex. 5.3.3: discs 500 kg Ø 1.25 m and 1000 kg Ø 1.9 m, shaft Ø
  // 0.1 × 3 m, G 0.83e11 N/m²: 58.1659 rad/s, 9.257 Hz
  const TorsionalStiffness shaft = shaft_torsional_stiffness(83_GPa, 0.1_m, 3_m);
  CHECK(near(shaft, 271616.9_N_m_per_rad, 1e-6));
  const Inertia one = from_si<Inertia>(500.0 * 1.25 * 1.25 / 8.0);
  const Inertia other = from_si<Inertia>(1000.0 * 1.9 * 1.9 / 8.0);
  const Frequency f = torsional_frequency(shaft, one, other);
  CHECK(near(f, 9.257_Hz, 1e-4));
  CHECK(2.0 * pi * si_value(f) == Approx(58.1659).epsilon(1e-5));
}

TEST_CASE("axial frequencies and stiffnesses agree with a separate calculation") {
  // derived: f = √(k/m)/2π; root Ø 17.2 mm, E 206 GPa
  CHECK(near(Frequency(axial_frequency(45_N_per_um, 40_kg)), 168.809_Hz, 1e-5));
  CHECK(near(Frequency(axial_frequency(100_N_per_um, 200_kg)), 112.540_Hz, 1e-5));
  const Area area = round_area(17.2_mm);
  const Stiffness one_end = shaft_stiffness_one_end(area, 206_GPa, 500_mm);
  CHECK(near(one_end, 95.729_N_per_um, 1e-5));
  CHECK(near(Stiffness(shaft_stiffness_both_ends(area, 206_GPa, 1000_mm, 500_mm)), 191.458_N_per_um,
             1e-5));
  CHECK(near(Stiffness(in_series(in_series(one_end, 200_N_per_um), 150_N_per_um)), 45.223_N_per_um,
             1e-4));
}
