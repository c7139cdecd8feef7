// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace feedwright;

namespace {

struct Good {
  const char* text;
  Kind kind;
  double si;
};

struct Bad {
  const char* text;
  Kind kind;
  ReadFault fault;
};

constexpr double turn = 2.0 * pi;

} // namespace

TEST_CASE("quantities are read as people write them") {
  // Factors: inch 25.4 mm and pound 0.45359237 kg exactly (international yard and pound agreement,
  // 1959); kilogram-force 9.80665 N (CGPM 1901); NIST SP 811, appendix B: psi 6894.757 Pa,
  // horsepower (550 ft·lbf/s) 745.6999 W, ozf·in 7.061552e-3 N·m
  const Good table[] = {
      {"5 mm", Kind::length, 5e-3},
      {"0.2in", Kind::length, 0.2 * 0.0254},
      {"1/2 in", Kind::length, 0.0127},
      {"1 1/4 in", Kind::length, 1.25 * 0.0254},
      {"1-1/4 in", Kind::length, 1.25 * 0.0254},
      {"-1 1/2 in", Kind::length, -1.5 * 0.0254},
      {"3/8\"", Kind::length, 0.375 * 0.0254},
      {"5' 3 1/2\"", Kind::length, 63.5 * 0.0254},
      {"3*5 mm", Kind::length, 15e-3},
      {"3 × 5 mm", Kind::length, 15e-3},
      {"20 mm/2", Kind::length, 10e-3},
      {"1 in + 3 mm", Kind::length, 28.4e-3},
      {"(1 in + 3 mm)*2", Kind::length, 56.8e-3},
      {"(1200+400) mm", Kind::length, 1.6},
      {"((20+5)/2) mm", Kind::length, 12.5e-3},
      {"-(1 in - 3 mm)", Kind::length, -22.4e-3},
      {"12,5 mm", Kind::length, 12.5e-3},
      {"1,250 mm", Kind::length, 1.25e-3},
      {"1.250 mm", Kind::length, 1.25e-3},
      {"20 µm", Kind::length, 20e-6},
      {"20 μm", Kind::length, 20e-6},
      {"20 um", Kind::length, 20e-6},
      {"1.2e3 N", Kind::force, 1200.0},
      {"5 lb", Kind::force, 5 * 4.4482216152605},
      {"190 oz in", Kind::torque, 190 * 0.27801385095378125 * 0.0254},
      {"190 oz-in", Kind::torque, 190 * 0.27801385095378125 * 0.0254},
      {"1.9 kgf cm", Kind::torque, 1.9 * 0.0980665},
      {"19 kg cm", Kind::torque, 19 * 0.0980665},
      {"1,5 Nm", Kind::torque, 1.5},
      {"1.5 N m", Kind::torque, 1.5},
      {"1.5 N·m", Kind::torque, 1.5},
      {"2400 rpm", Kind::angular_velocity, 2400 * turn / 60.0},
      {"2400 1/min", Kind::angular_velocity, 2400 * turn / 60.0},
      {"2400 min⁻¹", Kind::angular_velocity, 2400 * turn / 60.0},
      {"3 m/min", Kind::velocity, 0.05},
      {"100 ipm", Kind::velocity, 100 * 0.0254 / 60.0},
      {"120 g cm²", Kind::inertia, 120e-7},
      {"120 g·cm2", Kind::inertia, 120e-7},
      {"120 gcm^2", Kind::inertia, 120e-7},
      {"-40 °C", Kind::temperature, 233.15},
      {"-40 °F", Kind::temperature, 233.15},
      {"5 mm", Kind::lead, 5e-3 / turn},
      {"5 mm/rev", Kind::lead, 5e-3 / turn},
      {"0.2 in", Kind::lead, 0.2 * 0.0254 / turn},
      {"50%", Kind::number, 0.5},
      {"0,06", Kind::number, 0.06},
      {"206 GPa", Kind::pressure, 206e9},
      {"1 psi", Kind::pressure, 6894.757293168361},
      {"1 hp", Kind::power, 745.6998715822702},
      {"70000 mm·rpm", Kind::rim_speed, 70.0 * turn / 60.0},
      {"0.5 g", Kind::acceleration, 4.903325},
      {"5.mm", Kind::length, 5e-3},
      {"90°", Kind::angle, pi / 2.0},
      {"48V", Kind::voltage, 48.0},
      {"3.6 mH", Kind::inductance, 3.6e-3},
      {"100 kHz", Kind::frequency, 1e5},
      {"60 g/m", Kind::linear_density, 0.06},
  };
  for (const Good& row : table) {
    INFO(row.text);
    const auto read = read_quantity(row.text, row.kind);
    REQUIRE(read);
    CHECK(read->value.kind == row.kind);
    CHECK(read->value.si == Approx(row.si).epsilon(1e-12));
  }
}

TEST_CASE("what cannot be read says why") {
  const Bad table[] = {
      {"", Kind::length, ReadFault::empty},
      {"   ", Kind::length, ReadFault::empty},
      {"mm", Kind::length, ReadFault::not_a_number},
      {".", Kind::length, ReadFault::not_a_number},
      {"nan mm", Kind::length, ReadFault::not_a_number},
      {"inf mm", Kind::length, ReadFault::not_a_number},
      {"1,000.5 mm", Kind::length, ReadFault::two_decimal_marks},
      {"1.234,5 mm", Kind::length, ReadFault::two_decimal_marks},
      {"1 234 mm", Kind::length, ReadFault::grouped_digits},
      {"0x10 mm", Kind::length, ReadFault::unknown_unit},
      {"5 MM", Kind::length, ReadFault::unknown_unit},
      {"5 furlong", Kind::length, ReadFault::unknown_unit},
      {"5 kg", Kind::lead, ReadFault::wrong_kind},
      {"5 kg", Kind::force, ReadFault::wrong_kind},
      {"5 J", Kind::torque, ReadFault::wrong_kind},
      {"5 Nm", Kind::force, ReadFault::wrong_kind},
      {"5", Kind::length, ReadFault::unit_missing},
      {"1 in + 3", Kind::length, ReadFault::bare_number_in_sum},
      {"(1 in + 3 mm) mm", Kind::length, ReadFault::unexpected_text},
      {"(1 + 3) kg", Kind::length, ReadFault::wrong_kind},
      {"2 mm * 3 mm", Kind::length, ReadFault::product_of_units},
      {"6/2 mm/3 mm", Kind::length, ReadFault::product_of_units},
      {"5 mm/0", Kind::length, ReadFault::division_by_zero},
      {"1/0 in", Kind::length, ReadFault::division_by_zero},
      {"1e400 mm", Kind::length, ReadFault::out_of_range},
      {"(5 mm", Kind::length, ReadFault::unbalanced_bracket},
      {"5 mm)", Kind::length, ReadFault::unbalanced_bracket},
      {"5 mm 3", Kind::length, ReadFault::unexpected_text},
      {"5 N m", Kind::force, ReadFault::wrong_kind},
  };
  for (const Bad& row : table) {
    INFO(row.text);
    const auto read = read_quantity(row.text, row.kind);
    REQUIRE_FALSE(read);
    CHECK(static_cast<int>(read.error().fault) == static_cast<int>(row.fault));
    CHECK(read.error().position <= std::string_view(row.text).size());
  }
}

TEST_CASE("a wrong unit says what it measures") {
  const auto read = read_quantity("5 kg", Kind::lead);
  REQUIRE_FALSE(read);
  CHECK(read.error().found == "5 kg");
  CHECK(read.error().found_kind == Kind::mass);
  CHECK(read.error().position == 0);
}

TEST_CASE("a bare number means the field's own unit") {
  const auto read = read_quantity("12,5", Kind::length, find_unit(Kind::length, "mm"));
  REQUIRE(read);
  CHECK(read->bare);
  CHECK(read->value.si == Approx(12.5e-3));
}

TEST_CASE("hostile texts end soon") {
  CHECK_FALSE(read_quantity(std::string(250, '('), Kind::length));
  CHECK_FALSE(read_quantity(std::string(250, '-') + "5 mm", Kind::length));
  CHECK_FALSE(read_quantity(std::string(100000, '9'), Kind::length));
  CHECK_FALSE(read_quantity(std::string("5\0 mm", 5), Kind::length));
}

TEST_CASE("every unit in the table reads back what it writes") {
  for (int k = 0; k <= static_cast<int>(Kind::compound); ++k) {
    for (const Unit& unit : units_of(static_cast<Kind>(k))) {
      INFO(unit.symbol);
      CHECK(find_unit(unit.kind, unit.symbol) == &unit);
      const auto read = read_quantity("2 " + std::string(unit.symbol), unit.kind);
      REQUIRE(read);
      CHECK(read->value.si == 2.0 * unit.factor + unit.offset);
    }
  }
}

TEST_CASE("exact text reads back to the same bits with point and comma") {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> mantissa(1.0, 10.0);
  std::uniform_int_distribution<int> exponent(-9, 9);
  for (int round = 0; round < 10000; ++round) {
    const auto kind = static_cast<Kind>(round % static_cast<int>(Kind::compound));
    const auto units = units_of(kind);
    const Unit& unit = units[random() % units.size()];
    const AnyQuantity value{kind, mantissa(random) * std::pow(10.0, exponent(random))};
    for (const DecimalMark mark : {DecimalMark::point, DecimalMark::comma}) {
      const std::string text = write_exact(value, unit, mark);
      INFO(text);
      const auto read = read_quantity(text, kind);
      REQUIRE(read);
      REQUIRE(read->value.si == value.si);
    }
  }
}

TEST_CASE("numbers are written with sensible digits") {
  CHECK(write_number(1480.3, 3) == "1480");
  CHECK(write_number(0.0132, 4) == "0.0132");
  CHECK(write_number(4.54567, 3) == "4.55");
  CHECK(write_number(4.54567, 3, DecimalMark::comma) == "4,55");
  CHECK(write_number(-0.00001, 3) == "-1e-5");
  CHECK(write_number(2.5e8, 3) == "2.5e8");
  CHECK(write_number(0.0, 4) == "0");
  CHECK(write_number(9.9996, 4) == "10");
  CHECK(write_quantity({Kind::angle, pi / 2.0}, *find_unit(Kind::angle, "°"), 4) == "90°");
}
