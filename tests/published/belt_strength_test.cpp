// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_strength.h"
#include "support/near.h"

#include <array>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

Stiffness newtons_per_cm(double value) {
  return from_si<Stiffness>(value * 100.0);
}

/// Speeds of the maker's table and its loads for one tooth, N/cm: Elatech catalogue, 2012 edition
/// distributed by Goodyear, technical data of HTD 5M.
const std::array<ToothLoadPoint, 7> htd_5m = {{{0_rpm, newtons_per_cm(36.80)},
                                               {100_rpm, newtons_per_cm(34.52)},
                                               {500_rpm, newtons_per_cm(29.31)},
                                               {1000_rpm, newtons_per_cm(26.05)},
                                               {2000_rpm, newtons_per_cm(21.91)},
                                               {3000_rpm, newtons_per_cm(19.23)},
                                               {5000_rpm, newtons_per_cm(15.64)}}};

} // namespace

TEST_CASE("rim force agrees with a belt maker's two forms", "[published]") {
  // Siegling/Forbo, Calculation methods: F_U = 2·10³ T/d₀ (N·m, mm) and 19.1·10⁶ P/(n d₀)
  // (kW, 1/min, mm)
  for (const double torque : {0.4, 2.0, 35.0}) {
    for (const double diameter : {15.92, 31.83, 80.85}) {
      const Force pull = rim_force(from_si<Torque>(torque), from_si<Length>(diameter * 5e-4));
      CHECK(near(pull, from_si<Force>(2e3 * torque / diameter), 1e-12));
      const double kilowatt = torque * si_value(1450_rpm) / 1e3;
      CHECK(near(pull, from_si<Force>(19.1e6 * kilowatt / (1450.0 * diameter)), 1e-4));
    }
  }
}

TEST_CASE("the mesh factor is one from six teeth and loses a fifth a tooth below", "[published]") {
  // ISO 5295:2023, summary: 1 for six teeth and more; from memory: 0.8, 0.6, 0.4, 0.2 below
  CHECK(*mesh_factor(6.0) == 1.0);
  CHECK(*mesh_factor(23.0) == 1.0);
  CHECK(*mesh_factor(5.0) == Approx(0.8).epsilon(1e-14));
  CHECK(*mesh_factor(4.0) == Approx(0.6).epsilon(1e-14));
  CHECK(*mesh_factor(3.0) == Approx(0.4).epsilon(1e-14));
  CHECK(*mesh_factor(2.0) == Approx(0.2).epsilon(1e-14));
}

TEST_CASE("teeth loads come out as a maker's table prints them", "[published]") {
  // the table above; HTD 5M, 15 mm wide, 10 teeth in mesh, 1000 1/min: 26.05 N/cm · 10 · 1.5 cm
  for (const ToothLoadPoint& row : htd_5m) {
    CHECK(near(*tooth_load_at(htd_5m, row.speed), row.load, 1e-12));
  }
  CHECK(near(tooth_load_pull(*tooth_load_at(htd_5m, 1000_rpm), 10.0, 15_mm), 390.75_N, 1e-12));
  // ten teeth and twenty carry as twelve do at most when the belt is open, as six when welded
  CHECK(counted_teeth(10.0, 12) == 10.0);
  CHECK(counted_teeth(20.0, 12) == 12.0);
  CHECK(counted_teeth(10.0, 6) == 6.0);
}

TEST_CASE("the standard's power of H belts agrees with worked values", "[published]") {
  // from memory: ISO 5295: P = (k_z k_w T_a − (b/b₀) m v²) v, H: b₀ 76.2 mm, T_a 2100.85 N,
  // m 0.448 kg/m. derived: 20 teeth (Ø 80.85 mm) at 1450 1/min: 6.1383 m/s, P₀ 12.792 kW; the
  // short form P = k_w P₀, which scales the centrifugal pull with k_w too, gives 5.25 kW at 34.89
  // mm
  const Velocity speed = per_radian(80.85_mm / 2.0) * 1450_rpm;
  CHECK(near(speed, 6.1383_m_per_s, 1e-5));
  const auto power = [&](Length width) {
    const auto mass = mass_at_width(0.448_kg_per_m, width, 76.2_mm);
    const Force pull = iso_allowed_pull(1.0, width_factor(width, 76.2_mm), 2100.85_N,
                                        centrifugal_pull(mass, speed));
    return belt_power(pull, speed);
  };
  CHECK(near(power(76.2_mm), 12792_W, 1e-4));
  CHECK(near(Power(width_factor(34.89_mm, 76.2_mm) * 12792_W), 5250_W, 2e-4));
  // (k_w − b/b₀) m v³ apart: 0.0474 · 0.448 · 231.28 = 4.9 W
  CHECK(near(power(34.89_mm), 5245.4_W, 2e-4));
}

TEST_CASE("the width factor agrees with the standard's width classes", "[published]") {
  // from memory: ISO 5295 and makers' tables of width factors, H 100 against H 300: 0.29 (rounded)
  CHECK(width_factor(25.4_mm, 76.2_mm) == Approx(0.29).epsilon(0.02));
  CHECK(width_factor(25.4_mm, 25.4_mm) == 1.0);
}

TEST_CASE("the standard's power of three profiles agrees with worked values") {
  // derived from the base values of ISO 5295 (from memory), at 10 m/s and base width:
  // XL 50.17 N, 0.022 kg/m: 0.4797 kW; L 244.46 N, 0.095 kg/m: 2.3496 kW; H: 20.5605 kW
  struct Row {
    Force pull;
    LinearDensity mass;
    Power power;
  };
  for (const Row& row :
       {Row{50.17_N, 0.022_kg_per_m, 479.7_W}, Row{244.46_N, 0.095_kg_per_m, 2349.6_W},
        Row{2100.85_N, 0.448_kg_per_m, 20560.5_W}}) {
    const Force pull = iso_allowed_pull(1.0, 1.0, row.pull, centrifugal_pull(row.mass, 10_m_per_s));
    CHECK(near(belt_power(pull, 10_m_per_s), row.power, 1e-5));
  }
}
