// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/column_buckling.h"
#include "support/beam_elements.h"
#include "support/near.h"

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

constexpr auto fixed = EndSupport::fixed;
constexpr auto supported = EndSupport::supported;
constexpr auto free_end = EndSupport::free;

Force euler(double constant, Pressure modulus, Length diameter, Length length) {
  return euler_load(constant, modulus, round_area(diameter), slenderness_ratio(length, diameter));
}

} // namespace

TEST_CASE("Euler load agrees with a textbook pinned column", "[published]") {
  // C. R. Wentzell, Machine Design, Ex. 3.5: pinned, Ø 5/8 in, 30 in, E 30e6 psi, S_y 42 ksi:
  // slenderness 192, transition 118.74, critical load 2464 lbf
  CHECK(double(slenderness_ratio(30_in, 0.625_in)) == Approx(192.0).epsilon(1e-12));
  CHECK(double(slenderness_transition(1.0, 30e6_psi, 42e3_psi)) == Approx(118.74).epsilon(1e-4));
  CHECK(near(euler(1.0, 30e6_psi, 0.625_in, 30_in), 2464.16_lbf, 1e-4));
}

TEST_CASE("Johnson load agrees with a textbook short column", "[published]") {
  // C. R. Wentzell, Machine Design, Ex. 3.6: effective slenderness 67.08, A 2.26 in², S_y 36 ksi,
  // E 30e6 psi, safety 2: 35 117 lbf
  const Area area = from_si<Area>(2.26 * 0.0254 * 0.0254);
  const double slenderness = 39.0 / std::sqrt(0.764 / 2.26);
  CHECK(near(Force(johnson_load(1.0, 30e6_psi, 36e3_psi, area, slenderness) / 2.0), 35116.52_lbf,
             1e-4));
}

TEST_CASE("allowed load agrees with the catalogue form in kgf", "[published]") {
  // ball-screw catalogue (HSK technical pages 01-04): P = m·d⁴/L²·10³ kgf with half the critical
  // load allowed, E 2.1e4 kgf/mm², m 5.1, 10.2, 20.3 (1.3 fixed-free, rounded)
  const Pressure modulus = from_si<Pressure>(2.1e4 * 9.80665e6);
  const auto m = [&](double constant) {
    return si_value(euler(constant, modulus, 10_mm, 1000_mm)) / 2.0 / 9.80665 * 1e6 / 1e4 / 1e3;
  };
  CHECK(m(1.0) == Approx(5.1).epsilon(3e-3));
  CHECK(m(2.0) == Approx(10.2).epsilon(3e-3));
  CHECK(m(4.0) == Approx(20.3).epsilon(3e-3));
  CHECK(m(0.25) == Approx(1.3).epsilon(2.5e-2));
}

TEST_CASE("allowed load agrees with a catalogue example", "[published]") {
  // from memory: ball-screw catalogue, fixed-fixed, d 17.5 mm, L 1100 mm: 15 500 N
  CHECK(near(Force(euler(4.0, 206_GPa, 17.5_mm, 1100_mm) / 2.0), 15500_N, 5e-3));
}

TEST_CASE("Euler's constants agree with beam finite elements") {
  // independent computation; the catalogues' 2 for fixed-supported lies below the exact 2.0457
  const testing::Beam beam{1000_mm, 13.2_mm, 206_GPa, 7850_kg_per_m3, 24};
  const Force unit = euler(1.0, beam.modulus, beam.diameter, beam.length);
  const auto constant = [&](EndSupport a, EndSupport b) {
    return double(testing::first_buckling_load(beam, a, b) / unit);
  };
  CHECK(constant(supported, supported) ==
        Approx(*buckling_constant(supported, supported)).epsilon(1e-5));
  CHECK(constant(fixed, fixed) == Approx(*buckling_constant(fixed, fixed)).epsilon(1e-5));
  CHECK(constant(fixed, free_end) == Approx(*buckling_constant(fixed, free_end)).epsilon(1e-5));
  CHECK(constant(fixed, supported) == Approx(2.0457).epsilon(1e-4));
  CHECK(*buckling_constant(fixed, supported) <= constant(fixed, supported));
}

TEST_CASE("Johnson's and Euler's loads and their slopes meet at the transition") {
  const Area area = round_area(13.2_mm);
  const double s = double(slenderness_transition(2.0, 206_GPa, 300_MPa));
  const auto at = [&](double slenderness) {
    return si_value(johnson_load(2.0, 206_GPa, 300_MPa, area, slenderness)) -
           si_value(euler_load(2.0, 206_GPa, area, slenderness));
  };
  CHECK(std::abs(at(s)) < 1e-9 * si_value(area * 300_MPa));
  CHECK(std::abs(at(s * 1.001) - at(s * 0.999)) < 1e-5 * si_value(area * 300_MPa));
  // common practice, no source: at the transition the load is half of yield
  CHECK(near(Force(euler_load(2.0, 206_GPa, area, s)), Force(area * 150_MPa)));
}

TEST_CASE("a longer column never carries more") {
  Force before = 1e12_N;
  for (int mm = 20; mm < 3000; mm += 20) {
    const double s = double(slenderness_ratio(from_si<Length>(mm * 1e-3), 13.2_mm));
    const double limit = double(slenderness_transition(2.0, 206_GPa, 300_MPa));
    const Area area = round_area(13.2_mm);
    const Force load = s > limit ? euler_load(2.0, 206_GPa, area, s)
                                 : johnson_load(2.0, 206_GPa, 300_MPa, area, s);
    CHECK(load < before);
    before = load;
  }
}
