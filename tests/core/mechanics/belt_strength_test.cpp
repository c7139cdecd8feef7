// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_strength.h"
#include "support/near.h"

#include <array>
#include <limits>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

template <class Q>
Traced<Q> traced(const Q& value) {
  return {value, tracing::literal(si_value(value))};
}

const std::array<ToothLoadPoint, 3> table = {{{100_rpm, from_si<Stiffness>(3000.0)},
                                              {500_rpm, from_si<Stiffness>(2500.0)},
                                              {900_rpm, from_si<Stiffness>(2300.0)}}};

} // namespace

TEST_CASE("teeth in mesh count only when they are whole") {
  // counted one by one: tooth gaps at k·2π/z that lie within the arc
  for (int z = 8; z <= 72; ++z) {
    for (double wrap = 0.05; wrap < 6.2; wrap += 0.07) {
      int counted = 0;
      while ((counted + 1) * 2.0 * pi / z <= wrap) {
        ++counted;
      }
      CHECK(whole_teeth_in_mesh(double(z), wrap * 1_rad) == double(counted));
    }
    // half a turn of an even pulley is whole whatever the rounding
    if (z % 2 == 0) {
      CHECK(whole_teeth_in_mesh(double(z), 180_deg) == z / 2.0);
      CHECK(whole_teeth_in_mesh(double(z), Angle(180_deg * (1.0 - 1e-15))) == z / 2.0);
    }
  }
}

TEST_CASE("a pulley with less than two teeth in mesh is no drive") {
  CHECK_FALSE(mesh_factor(1.0));
  CHECK_FALSE(mesh_factor(0.0));
  CHECK_FALSE(mesh_factor(std::numeric_limits<double>::quiet_NaN()));
}

TEST_CASE("no belt hands on more than at the speed where inertia takes a third of its pull") {
  // derived: d/dv (T v − m v³) = 0 at m v² = T/3, scanned
  const LinearDensity mass = 0.448_kg_per_m;
  Velocity best;
  Power most;
  for (double v = 0.0; v < 70.0; v += 0.001) {
    const Velocity speed = from_si<Velocity>(v);
    const Power power =
        belt_power(iso_allowed_pull(1.0, 1.0, 2100_N, centrifugal_pull(mass, speed)), speed);
    if (power > most) {
      most = power;
      best = speed;
    }
  }
  CHECK(near(centrifugal_pull(mass, best), 700_N, 1e-4));
}

TEST_CASE("half the belt's width carries less than half the pull") {
  // two belts side by side stand edge losses twice
  for (const double share : {0.1, 0.25, 0.5, 0.9}) {
    CHECK(width_factor(share * 50_mm, 50_mm) < share);
  }
  CHECK(width_factor(100_mm, 50_mm) > 2.0);
  // the power of a product: k_w(a·b) = k_w(a)·k_w(b); and its exponent from a decade
  CHECK(width_factor(30_mm, 50_mm) ==
        Approx(width_factor(30_mm, 40_mm) * width_factor(40_mm, 50_mm)).epsilon(1e-13));
  CHECK(std::log10(width_factor(500_mm, 50_mm)) == Approx(1.14).epsilon(1e-13));
}

TEST_CASE("tooth loads are joined by straight lines and never guessed beyond the table") {
  CHECK(near(*tooth_load_at(table, 200_rpm), from_si<Stiffness>(2875.0), 1e-12));
  CHECK(near(*tooth_load_at(table, 700_rpm), from_si<Stiffness>(2400.0), 1e-12));
  CHECK(*tooth_load_at(table, 0_rpm) == table.front().load);
  CHECK(tooth_load_at(table, 900_rpm));
  CHECK_FALSE(tooth_load_at(table, 901_rpm));
  CHECK_FALSE(tooth_load_at(table, AngularVelocity(-1_rpm)));
  CHECK_FALSE(tooth_load_at(table, from_si<AngularVelocity>(std::nan(""))));
  CHECK_FALSE(tooth_load_at({}, 100_rpm));
}

TEST_CASE("belt strength runs alike on plain and on traced quantities") {
  const auto force = rim_force(traced(2_N_m), traced(16_mm));
  CHECK(force.value == rim_force(2_N_m, 16_mm));
  CHECK(force.how->form == Expression::Form::divide);
  const auto teeth = whole_teeth_in_mesh(traced(20.0), traced(80_deg));
  CHECK(teeth.value == whole_teeth_in_mesh(20.0, 80_deg));
  CHECK(teeth.how->name == "floor");
  CHECK(mesh_factor(teeth)->value == *mesh_factor(teeth.value));
  CHECK(mesh_factor(teeth)->how->form == Expression::Form::subtract);
  CHECK(mesh_factor(traced(9.0))->value == 1.0);
  CHECK_FALSE(mesh_factor(traced(1.0)));
  const auto width = width_factor(traced(15_mm), traced(25_mm));
  CHECK(width.value == width_factor(15_mm, 25_mm));
  CHECK(width.how->name == "exp");
  CHECK(std::exp(width.how->operands[0]->value.si) == Approx(width.value).epsilon(1e-14));
  const auto mass = mass_at_width(traced(0.1_kg_per_m), traced(15_mm), traced(25_mm));
  const auto pull = iso_allowed_pull(traced(0.8), width, traced(900_N),
                                     centrifugal_pull(mass, traced(7_m_per_s)));
  CHECK(near(pull.value,
             iso_allowed_pull(0.8, width.value, 900_N, centrifugal_pull(mass.value, 7_m_per_s))));
  CHECK(near(belt_power(pull, traced(7_m_per_s)).value, belt_power(pull.value, 7_m_per_s)));
  const auto load = from_si<Stiffness>(2600.0);
  const auto carried = tooth_load_pull(traced(load), counted_teeth(traced(15.0), 12), traced(9_mm));
  CHECK(near(carried.value, tooth_load_pull(load, 12.0, 9_mm)));
}
