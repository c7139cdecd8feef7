// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/kept_text.h"

#include <catch2/catch.hpp>

#include <random>
#include <string>

using namespace feedwright;

namespace {

std::string kept(const std::string& typed, Kind kind, const Unit& unit) {
  const auto read = read_quantity(typed, kind, &unit);
  INFO(typed);
  REQUIRE(read);
  return kept_text(typed, *read);
}

std::string random_sum(std::mt19937& dice, int depth) {
  const auto number = [&] { return std::to_string(1 + dice() % 4000); };
  if (depth == 0 || dice() % 3 == 0) {
    return dice() % 4 == 0 ? number() + "." + number() : number();
  }
  const char* const signs[] = {"+", " - ", "*", "/", " × "};
  const std::string made =
      random_sum(dice, depth - 1) + signs[dice() % 5] + random_sum(dice, depth - 1);
  return dice() % 2 == 0 ? "(" + made + ")" : made;
}

} // namespace

TEST_CASE("what is kept of a text says its unit") {
  const Unit& mm = *find_unit(Kind::length, "mm");
  CHECK(kept("5", Kind::length, mm) == "5 mm");
  CHECK(kept("5 in", Kind::length, mm) == "5 in");
  CHECK(kept("1200+400", Kind::length, mm) == "(1200+400) mm");
  CHECK(kept("(1200+400)", Kind::length, mm) == "(1200+400) mm");
  CHECK(kept("(20+5)/2", Kind::length, mm) == "((20+5)/2) mm");
  CHECK(kept("3*5", Kind::length, mm) == "3*5 mm");
  CHECK(kept("-(3+4)", Kind::length, mm) == "-(3+4) mm");
  CHECK(kept("50 %", Kind::number, si_unit(Kind::number)) == "50 %");
  CHECK(kept("-40+10", Kind::temperature, *find_unit(Kind::temperature, "°C")) == "(-40+10) °C");
}

TEST_CASE("what is kept of a text reads back to the same bits without being told the unit") {
  std::mt19937 dice(20261126);
  constexpr int rounds = 4000;
  int read_at_all = 0;
  for (int i = 0; i < rounds; ++i) {
    const auto kind = static_cast<Kind>(dice() % static_cast<unsigned>(Kind::compound));
    const auto units = units_of(kind);
    const Unit& unit = units[dice() % units.size()];
    const std::string typed = random_sum(dice, 3);
    const auto read = read_quantity(typed, kind, &unit);
    if (!read) {
      continue; // divided by nothing, or beyond what a value may be
    }
    ++read_at_all;
    const std::string text = kept_text(typed, *read);
    INFO(typed << " kept as " << text);
    const auto again = read_quantity(text, kind);
    REQUIRE(again);
    CHECK(again->value.si == read->value.si);
  }
  CHECK(read_at_all > rounds / 2);
}
