// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "working/write_working.h"

#include <catch2/catch.hpp>

using namespace feedwright;
using feedwright::testing::ordinary_router;

namespace {

WrittenStep written(const Machine& machine, ResultId id, DecimalMark mark = DecimalMark::point) {
  Working working;
  size_axis(machine, machine.axes[0], working);
  const WorkingStep* step = working.find(id);
  REQUIRE(step != nullptr);
  return write_step(*step, machine, 0, mark);
}

} // namespace

TEST_CASE("a working is written in symbols, in numbers and as a result") {
  const WrittenStep travel = written(ordinary_router(), ResultId::screw_travel);
  CHECK(travel.symbol == "r_s");
  CHECK(travel.formula == "l / (2π)");
  CHECK(travel.with_numbers == "5 mm / (2π)");
  CHECK(travel.value == "0.7958 mm/rad");
}

TEST_CASE("brackets stand where a looser part is in a tighter one, and only there") {
  const WrittenStep whip = written(ordinary_router(), ResultId::whip_speed);
  CHECK(whip.formula == "(λ / L_w)² · d_r / 4 · √(E / ρ)");
  CHECK(whip.with_numbers == "(3.9266 / (900 mm))² · 13.2 mm / 4 · √(206 GPa / (7850 kg/m³))");
}

TEST_CASE("each symbol is listed once with its value and where it came from") {
  Machine machine = ordinary_router();
  const AnyQuantity core{Kind::length, 0.013};
  REQUIRE(
      set_field(machine, 0, PartSlot::drive, "core_diameter", core, {"13 mm", Origin::part_list}));
  const WrittenStep whip = written(machine, ResultId::whip_speed);
  REQUIRE(whip.terms.size() == 5);
  CHECK(whip.terms[0].symbol == "λ");
  CHECK_FALSE(whip.terms[0].input);
  CHECK(whip.terms[2].symbol == "d_r");
  CHECK(whip.terms[2].value == "13 mm");
  CHECK(whip.terms[2].origin == Origin::part_list);
  CHECK(whip.terms[2].input == input_ref(PartSlot::drive, "core_diameter"));
  CHECK(whip.terms[3].origin == Origin::preset);
}

TEST_CASE("a result that enters another is named as such") {
  const WrittenStep feed = written(ordinary_router(), ResultId::whip_feed);
  REQUIRE(feed.terms.size() == 2);
  CHECK(feed.terms[0].result == ResultId::whip_allowed_speed);
  CHECK(feed.terms[1].result == ResultId::screw_travel);
}

TEST_CASE("what is found by solving says by which equation") {
  CHECK(written(ordinary_router(), ResultId::motor_torque_feed).solved == "curve_ends_above_need");
  CHECK(written(ordinary_router(), ResultId::belt_centre_distance).formula ==
        "f(z_1; z_2; p; z_b)");
}

TEST_CASE("numbers are written with the mark that is asked for") {
  CHECK(written(ordinary_router(), ResultId::screw_travel, DecimalMark::comma).value ==
        "0,7958 mm/rad");
}

TEST_CASE("every step names all its symbols and has a number for each") {
  Machine machine = ordinary_router();
  testing::screw_of(machine.axes[0]).static_rating = Positive<Force>::of(from_si<Force>(12e3));
  machine.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 6.0));
  Working working;
  size_axis(machine, machine.axes[0], working);
  CHECK(working.steps().size() > 50);
  for (const WorkingStep& step : working.steps()) {
    const WrittenStep text = write_step(step, machine, 0, DecimalMark::point);
    INFO(text.symbol << " = " << text.formula << " = " << text.with_numbers);
    CHECK_FALSE(text.value.empty());
    for (const WrittenTerm& term : text.terms) {
      CHECK_FALSE(term.symbol.empty());
      CHECK_FALSE(term.value.empty());
      CHECK(text.formula.find(term.symbol) != std::string::npos);
    }
  }
}
