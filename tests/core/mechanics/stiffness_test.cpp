// SPDX-License-Identifier: GPL-3.0-or-later
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

/// Stiffness at a node of a bar held at both ends, of two pieces: the sections' forces R_1, R_2
/// hold the load 1 and stretch by the same amount, R_1 x = R_2 (L − x).
double two_bars(double area, double modulus, double span, double x) {
  const double first = (span - x) / span; // R_1, from both conditions
  const double deflection = first * x / (area * modulus);
  return 1.0 / deflection;
}

/// Second polar moment of a round section, by rings.
double polar_moment(double diameter) {
  constexpr int rings = 4000;
  double sum = 0.0;
  for (int i = 0; i < rings; ++i) {
    const double r = (i + 0.5) / rings * diameter / 2.0;
    sum += 2.0 * pi * r * r * r * (diameter / 2.0 / rings);
  }
  return sum;
}

/// Time from full swing to the first passage through zero, by small steps, times four.
double swing_period(double stiffness, double mass) {
  const double dt = 1e-7;
  double x = 1.0;
  double v = 0.0;
  double t = 0.0;
  while (x > 0.0) {
    v -= stiffness / mass * x * dt;
    x += v * dt;
    t += dt;
  }
  return 4.0 * t;
}

} // namespace

TEST_CASE("shaft held at both ends agrees with two bars") {
  // independent computation: compatibility of two bars
  const Area area = from_si<Area>(2.3e-4);
  for (double x = 0.05; x < 1.2; x += 0.05) {
    CHECK(near(Stiffness(shaft_stiffness_both_ends(area, 206_GPa, 1.2_m, from_si<Length>(x))),
               from_si<Stiffness>(two_bars(2.3e-4, 206e9, 1.2, x)), 1e-12));
  }
}

TEST_CASE("shaft held at both ends is stiffer than held at either") {
  const Area area = from_si<Area>(2.3e-4);
  const Stiffness both = shaft_stiffness_both_ends(area, 206_GPa, 1.2_m, 0.3_m);
  const Stiffness near_end = shaft_stiffness_one_end(area, 206_GPa, 0.3_m);
  const Stiffness far_end = shaft_stiffness_one_end(area, 206_GPa, 0.9_m);
  CHECK(near(both, Stiffness(near_end + far_end), 1e-12));
}

TEST_CASE("shaft torsion agrees with the rings of its section") {
  // independent computation: polar moment by numeric integration
  const TorsionalStiffness k = shaft_torsional_stiffness(79_GPa, 17.2_mm, 0.8_m);
  CHECK(near(k, from_si<TorsionalStiffness>(79e9 * polar_moment(0.0172) / 0.8), 1e-6));
}

TEST_CASE("two shafts one after the other twist like one of both lengths") {
  const TorsionalStiffness whole = shaft_torsional_stiffness(79_GPa, 16_mm, 1.0_m);
  const TorsionalStiffness a = shaft_torsional_stiffness(79_GPa, 16_mm, 0.35_m);
  const TorsionalStiffness b = shaft_torsional_stiffness(79_GPa, 16_mm, 0.65_m);
  CHECK(near(TorsionalStiffness(in_series(a, b)), whole, 1e-12));
  // different sizes: the twists add up under the same torque
  const TorsionalStiffness thick = shaft_torsional_stiffness(79_GPa, 25_mm, 0.5_m);
  const double twist = 1.0 / si_value(a) + 1.0 / si_value(thick);
  CHECK(near(TorsionalStiffness(in_series(a, thick)), from_si<TorsionalStiffness>(1.0 / twist),
             1e-12));
}

TEST_CASE("springs one after the other are softer than the softest") {
  CHECK(near(Stiffness(in_series(100_N_per_um, 100_N_per_um)), 50_N_per_um));
  CHECK(Stiffness(in_series(10_N_per_um, 1000_N_per_um)) < 10_N_per_um);
}

TEST_CASE("a torsional spring stores the same energy along the axis") {
  // independent computation: ½ k_t φ² = ½ k (r φ)²
  const TorsionalStiffness torsional = 2500_N_m_per_rad;
  const TravelPerAngle travel = 5_mm_per_rev;
  const Stiffness axial = along_the_axis(torsional, travel);
  const double angle = 0.01;
  const double way = si_value(travel) * angle;
  CHECK(si_value(torsional) * angle * angle == Approx(si_value(axial) * way * way).epsilon(1e-12));
}

TEST_CASE("nut stiffness follows from a contact that yields with the two thirds power") {
  // independent computation: δ = c F^(2/3); the slope dF/dδ by differences, scaled to 0.8 K at the
  // reference load
  const auto slope = [](double f) {
    const double h = f * 1e-5;
    return 2.0 * h / (std::pow(f + h, 2.0 / 3.0) - std::pow(f - h, 2.0 / 3.0));
  };
  for (const double f : {100.0, 700.0, 2500.0}) {
    const Force load = from_si<Force>(f);
    CHECK(near(nut_stiffness_at(300_N_per_um, load, 20_kN, true),
               from_si<Stiffness>(240e6 * slope(f) / slope(2000.0)), 1e-7));
    CHECK(near(nut_stiffness_at(300_N_per_um, load, 20_kN, false),
               from_si<Stiffness>(240e6 * slope(f) / slope(6000.0)), 1e-7));
  }
}

TEST_CASE("axial frequency agrees with a mass let go") {
  // independent computation: motion in small steps
  const Frequency f = axial_frequency(45_N_per_um, 40_kg);
  CHECK(near(f, from_si<Frequency>(1.0 / swing_period(45e6, 40.0)), 5e-4));
}

TEST_CASE("torsional frequency is where the two inertias swing freely") {
  // independent computation: det(K − ω² M) changes sign there and not in between
  const double k = 800.0;
  const double one = 3e-5;
  const double other = 2.2e-4;
  const auto determinant = [=](double w) {
    return (k - w * w * one) * (k - w * w * other) - k * k;
  };
  const double w = 2.0 * pi *
                   si_value(torsional_frequency(800_N_m_per_rad, from_si<Inertia>(one),
                                                from_si<Inertia>(other)));
  CHECK(determinant(w * 0.9999) < 0.0);
  CHECK(determinant(w * 1.0001) > 0.0);
  for (double share = 0.01; share < 0.999; share += 0.01) {
    CHECK(determinant(w * share) < 0.0);
  }
}

TEST_CASE("traced stiffness equations give the plain figures") {
  const auto area = traced(from_si<Area>(2.3e-4));
  const auto modulus = traced(206_GPa);
  const auto k = shaft_stiffness_both_ends(area, modulus, traced(1.2_m), traced(0.3_m));
  CHECK(near(Stiffness(k.value),
             Stiffness(shaft_stiffness_both_ends(area.value, modulus.value, 1.2_m, 0.3_m)), 1e-14));
  const auto one_end = shaft_stiffness_one_end(area, modulus, traced(0.3_m));
  CHECK(near(Stiffness(in_series(k, one_end).value), Stiffness(in_series(k.value, one_end.value)),
             1e-14));
  const auto torsional = shaft_torsional_stiffness(traced(79_GPa), traced(16_mm), traced(1_m));
  CHECK(near(TorsionalStiffness(torsional.value),
             TorsionalStiffness(shaft_torsional_stiffness(79_GPa, 16_mm, 1_m)), 1e-14));
  CHECK(near(Stiffness(along_the_axis(torsional, traced(5_mm_per_rev)).value),
             Stiffness(along_the_axis(torsional.value, 5_mm_per_rev)), 1e-14));
  CHECK(near(Frequency(axial_frequency(k, traced(40_kg)).value),
             Frequency(axial_frequency(k.value, 40_kg)), 1e-14));
}
