// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/cutting_force.h"
#include "support/near.h"

#include <array>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

/// A constant specific force, as books on work per volume take it.
MillingForces constant_force(MillingCut cut, std::optional<Power> spindle = std::nullopt) {
  cut.exponent = 0.0;
  const auto forces = milling_forces(cut, spindle);
  REQUIRE(forces);
  return *forces;
}

} // namespace

TEST_CASE("specific cutting force agrees with a chuck maker's table", "[published]") {
  // Röhm, power chuck manual RN-1391, p. 43, k_c at 45° for f .16 to 1.6 mm, grey cast iron
  // 200-250 HB; k_c1.1 1160 and m_c .26 from memory
  struct Row {
    Length feed;
    double kn_per_mm2;
  };
  for (const Row& row : {Row{0.16_mm, 2.05}, Row{0.25_mm, 1.80}, Row{0.4_mm, 1.60},
                         Row{0.63_mm, 1.45}, Row{1.0_mm, 1.30}, Row{1.6_mm, 1.15}}) {
    const Pressure k = specific_cutting_force(1160_MPa, 0.26, row.feed * std::sin(pi / 4.0));
    CHECK(near(k, from_si<Pressure>(row.kn_per_mm2 * 1e9), 2.5e-2));
  }
}

TEST_CASE("cutting force agrees with a turning example", "[published]") {
  // P. C. Sharma, Production Engineering, Ex. 14.14: F_c = 1593 f^.85 d^.98 N, f .5, d 3.2 mm, .2
  // m/s: 1727 N/mm², .553 kW. Kienzle's force goes with the full width, d^1 for d^.98: 2.3 % more.
  const Pressure k = specific_cutting_force(1593_MPa, 0.15, 0.5_mm);
  CHECK(near(k, Pressure(1727_MPa * std::pow(3.2, 0.02)), 1e-3));
  const Force force = cutting_force(k, 3.2_mm, 0.5_mm);
  CHECK(near(Power(force * 0.2_m_per_s), 553_W, 2.5e-2));
}

TEST_CASE("power and torque of slab milling agree with a textbook", "[published]") {
  // S. Kalpakjian, S. R. Schmid, Manufacturing Engineering and Technology, Ex. 23.1: 4 in wide, 1/8
  // in deep, .01 in per tooth, 20 teeth, 100 rpm, 1.1 hp·min/in³: 11 hp, 578 lb·ft. The power does
  // not depend on the cutter's diameter.
  constexpr double horsepower = 745.69987;
  const Pressure work = from_si<Pressure>(1.1 * horsepower * 60.0 / (0.0254 * 0.0254 * 0.0254));
  const Velocity feed = from_si<Velocity>(0.01 * 20.0 * 100.0 * 0.0254 / 60.0);
  const auto forces = constant_force({.specific_force = work,
                                      .exponent = 0.0,
                                      .depth = 4_in,
                                      .width = 0.125_in,
                                      .diameter = 2_in,
                                      .teeth = 20,
                                      .spindle_speed = 100_rpm,
                                      .feed = feed});
  CHECK(near(forces.feed_per_tooth, 0.01_in, 1e-12));
  CHECK(near(forces.power, from_si<Power>(11.0 * horsepower), 1e-6));
  const double torque = si_value(forces.tangential * 1_in);
  CHECK(torque == Approx(578.0 * 4.4482216152605 * 0.3048).epsilon(1e-3));
}

TEST_CASE("power of face milling agrees with a textbook", "[published]") {
  // Kalpakjian, Schmid, the same, Ex. 23.2: aluminium, 60 mm wide, 3 mm deep, .6 m/min, 10 inserts,
  // 100 rpm, 1.1 W·s/mm³: .6 mm per tooth, 1.98 kW; the diameter does not matter
  const auto forces = constant_force({.specific_force = 1100_MPa,
                                      .exponent = 0.0,
                                      .depth = 3_mm,
                                      .width = 60_mm,
                                      .diameter = 150_mm,
                                      .teeth = 10,
                                      .spindle_speed = 100_rpm,
                                      .feed = 0.6_m_per_min});
  CHECK(near(forces.feed_per_tooth, 0.6_mm, 1e-12));
  CHECK(near(forces.power, 1980_W, 1e-12));
}

TEST_CASE("specific cutting energy and power agree with a textbook", "[published]") {
  // A. Ghosh, A. K. Mallik, Manufacturing Science, U_c = U_0 t^−0.4 J/mm³, U_0 1.4 mild steel, .81
  // cast iron. Ex. 4.16: 20 × 5 mm at 100 mm/min, t .043: 4.929, 821 W
  const Pressure steel = specific_cutting_force(1400_MPa, 0.4, 0.043_mm);
  CHECK(near(steel, 4929_MPa, 2e-4));
  CHECK(near(cutting_power(steel, 20_mm, 5_mm, 0.1_m_per_min), 821_W, 1e-3));
  // Ex. 4.15: 15 mm/min, 1 mm deep, t .0018 mm (20 mm wide, inferred): 87.70 W
  const Pressure slow = specific_cutting_force(1400_MPa, 0.4, 0.0018_mm);
  CHECK(near(cutting_power(slow, 20_mm, 1_mm, 0.015_m_per_min), 87.70_W, 1e-3));
  // Ex. 4.10, shaping cast iron: feed .25 at 30°, 4 deep, 200 mm, 60 strokes/min: 294 W;
  // a reckoning anew gives 298.8
  const Pressure iron = specific_cutting_force(810_MPa, 0.4, 0.25_mm * std::cos(pi / 6.0));
  CHECK(near(cutting_power(iron, 0.25_mm, 4_mm, 12_m_per_min), 298.8_W, 1e-3));
}

TEST_CASE("mean milling forces agree with Altintas' average forces", "[published]") {
  // from memory: Y. Altintas, Manufacturing Automation, ch. 2, with N teeth, depth a, feed per
  // tooth c: F_x = N a c/8π [K_t cos 2φ − K_r (2φ − sin 2φ)], F_y = N a c/8π [K_t (2φ − sin 2φ) +
  // K_r cos 2φ], each from entry to exit; edge forces nil
  constexpr double k = 800e6, ratio = 0.3, depth = 5e-3, tooth_feed = 0.05e-3;
  constexpr int teeth = 3;
  const auto book = [&](double entry, double exit) {
    const double c = std::cos(2.0 * exit) - std::cos(2.0 * entry);
    const double s = 2.0 * (exit - entry) - (std::sin(2.0 * exit) - std::sin(2.0 * entry));
    const double scale = teeth * depth * tooth_feed * k / (8.0 * pi);
    return std::array{scale * (c - ratio * s), scale * (s + ratio * c)};
  };
  for (const double share : {0.001, 0.05, 0.3, 0.5, 0.8, 1.0}) {
    const double arc = std::acos(1.0 - 2.0 * share);
    const auto forces = constant_force({.specific_force = 800_MPa,
                                        .exponent = 0.0,
                                        .depth = 5_mm,
                                        .width = 10_mm * share,
                                        .diameter = 10_mm,
                                        .teeth = teeth,
                                        .spindle_speed = 6000_rpm,
                                        .feed = from_si<Velocity>(tooth_feed * teeth * 100.0),
                                        .radial_ratio = ratio});
    const double slack = 1e-9 * si_value(forces.along_feed + forces.across);
    const auto up = book(0.0, arc);
    const auto down = book(pi - arc, pi);
    // the book's x is the feed, its y points to the wall when milling up, from it when down
    CHECK(std::abs(si_value(forces.up.against_feed) + up[0]) < slack);
    CHECK(std::abs(si_value(forces.up.across) + up[1]) < slack);
    CHECK(std::abs(si_value(forces.down.against_feed) + down[0]) < slack);
    CHECK(std::abs(si_value(forces.down.across) - down[1]) < slack);
  }
}

TEST_CASE("power of trimming particleboard follows from a measured specific force", "[published]") {
  // B. Pałubicki, Materials 14 (2021) 2208: 32.0 N/mm² on average; derived: 2 × 18 mm at 5 m/min
  // take 96 W
  const auto forces = constant_force({.specific_force = 32_MPa,
                                      .exponent = 0.0,
                                      .depth = 18_mm,
                                      .width = 2_mm,
                                      .diameter = 16_mm,
                                      .teeth = 2,
                                      .spindle_speed = 18000_rpm,
                                      .feed = 5_m_per_min});
  CHECK(near(forces.power, 96_W, 1e-12));
}
