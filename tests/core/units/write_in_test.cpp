// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace feedwright;

namespace {

constexpr int kind_count = static_cast<int>(Kind::compound);

double read_back(const std::string& text, Kind kind) {
  INFO(text);
  const auto read = read_quantity(text, kind);
  REQUIRE(read);
  return read->value.si;
}

} // namespace

TEST_CASE("a value said in any unit of its kind reads back to the same bits") {
  std::mt19937_64 random(20240611);
  std::uniform_real_distribution<double> mantissa(1.0, 10.0);
  std::uniform_int_distribution<int> exponent(-9, 9);
  std::uniform_int_distribution<int> any_kind(0, kind_count - 1);
  constexpr int tries = 10000;
  for (int i = 0; i < tries; ++i) {
    const auto kind = static_cast<Kind>(any_kind(random));
    const double sign = i % 5 == 0 ? -1.0 : 1.0;
    const AnyQuantity value{kind, sign * mantissa(random) * std::pow(10.0, exponent(random))};
    for (const Unit& unit : units_of(kind)) {
      for (const DecimalMark mark : {DecimalMark::point, DecimalMark::comma}) {
        const auto text = write_in(value, unit, mark);
        INFO(value.si << ' ' << unit.symbol);
        if (unit.offset != 0.0 && value.si < unit.offset) {
          continue; // the sign of a temperature below zero costs bits; none is asked for
        }
        REQUIRE(text);
        CHECK(read_back(*text, kind) == value.si);
        CHECK(text->ends_with(unit.symbol));
      }
    }
  }
}

TEST_CASE("whole millimetres can all be said in inches and back") {
  // Source: 1 in = 25.4 mm exactly, international yard and pound agreement of 1959 (NIST SP 811,
  // appendix B). One in ten of them is no product of a double and 0.0254.
  const Unit& inch = *find_unit(Kind::length, "in");
  for (int millimetres = 1; millimetres <= 3000; ++millimetres) {
    const AnyQuantity value{Kind::length, millimetres * 1e-3};
    const auto text = write_in(value, inch);
    REQUIRE(text);
    CHECK(read_back(*text, Kind::length) == value.si);
  }
  CHECK(write_in({Kind::length, 0.0127}, inch) == "0.5 in");
}

TEST_CASE("digits beyond a double's do not change what fewer say") {
  CHECK(read_back("5.00000000000000000000 mm", Kind::length) == read_back("5 mm", Kind::length));
  CHECK(read_back("0.50000000000000000000 in", Kind::length) == read_back("1/2 in", Kind::length));
  CHECK(read_back("1 1/4 in", Kind::length) == Approx(0.03175));
  // The rest of one number is not that of the next.
  CHECK(read_back("0.33333333333333333333 in + 1/4 in", Kind::length) ==
        Approx(0.0254 * 7.0 / 12.0).epsilon(1e-15));
}
