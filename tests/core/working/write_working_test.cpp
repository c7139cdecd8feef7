// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "working/evaluate.h"
#include "working/write_working.h"

#include <catch2/catch.hpp>

#include <charconv>
#include <cmath>

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

/// What a reader with a calculator gets for a number as it is written: "2π", "1.5e-6".
double as_read(const std::string& text) {
  double value = 1.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const std::string rest(error == std::errc() ? end : text.data());
  return rest == "π" ? value * pi : rest == "π²" ? value * pi * pi : value;
}

/// What he gets for a whole line.
double multiplied_out(const Notation& line) {
  const auto part = [&](std::size_t i) { return multiplied_out(line.parts[i]); };
  double value = line.form == Notation::Form::product ? 1.0 : 0.0;
  switch (line.form) {
  case Notation::Form::number: return as_read(line.text) * (line.unit == "°" ? pi / 180.0 : 1.0);
  case Notation::Form::sum:
    for (std::size_t i = 0; i < line.parts.size(); ++i) {
      value += part(i);
    }
    return value;
  case Notation::Form::product:
    for (std::size_t i = 0; i < line.parts.size(); ++i) {
      value *= part(i);
    }
    return value;
  case Notation::Form::fraction: return part(0) / part(1);
  case Notation::Form::negative: return -part(0);
  case Notation::Form::square: return part(0) * part(0);
  case Notation::Form::root: return std::sqrt(part(0));
  case Notation::Form::function: return recorded_function(line.text)->value(part(0));
  default: return std::nan("");
  }
}

} // namespace

TEST_CASE("a working is written in symbols, in numbers and as a result") {
  const WrittenStep travel = written(ordinary_router(), ResultId::screw_travel);
  CHECK(travel.symbol == "r_s");
  CHECK(travel.formula == "l / (2π)");
  CHECK(travel.with_numbers == "5 mm / (2π)");
  CHECK(travel.value == "0.7958 mm/rad");
}

TEST_CASE("numbers in mixed units are followed by the same in SI units") {
  const WrittenStep whip = written(ordinary_router(), ResultId::whip_speed);
  CHECK(whip.with_si_numbers ==
        "(3.9266 / (0.9 m))² · 0.0132 m / 4 · √(2.06e11 Pa / (7850 kg/m³))");
  const std::vector<Notation> sides = right_sides(whip);
  REQUIRE(sides.size() == 4);
  CHECK(write_line(sides[3]).find(" rad/s = ") != std::string::npos);
  CHECK(written(ordinary_router(), ResultId::screw_travel).with_si_numbers.empty());
  CHECK(written(ordinary_router(), ResultId::whip_feed).with_numbers.find("rpm · ") !=
        std::string::npos);
  CHECK(written(ordinary_router(), ResultId::whip_feed).with_si_numbers.find("rad/s · ") !=
        std::string::npos);
  CHECK(written(ordinary_router(), ResultId::belt_centre_distance).with_si_numbers.empty());
}

TEST_CASE("who takes a calculator to a written line gets what is claimed") {
  Machine machine = ordinary_router();
  machine.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 6.0));
  Working working;
  size_axis(machine, machine.axes[0], working);
  int tried = 0;
  for (const WorkingStep& step : working.steps()) {
    const WrittenStep text = write_step(step, machine, 0, DecimalMark::point);
    const bool mixed = !text.with_si_numbers.empty();
    const double got = multiplied_out(mixed ? text.si_numbers_notation : text.numbers_notation);
    if (!text.solved.empty() || std::isnan(got)) {
      continue;
    }
    const double claimed =
        multiplied_out(mixed && !text.si_value.empty() ? text.si_notation : text.value_notation);
    INFO(text.symbol << " = " << text.with_numbers << " = " << text.with_si_numbers);
    // Four digits are claimed; six of each number are written.
    CHECK(got == Approx(claimed).epsilon(1e-3));
    ++tried;
  }
  CHECK(tried > 50);
}

TEST_CASE("the functions that equations are recorded with rise as they say") {
  for (const char* name : {"sqrt", "tan", "atan", "sin", "cos"}) {
    const RecordedFunction* function = recorded_function(name);
    REQUIRE(function != nullptr);
    for (const double x : {0.2, 0.7, 1.3}) {
      constexpr double step = 1e-5;
      const double rise = (function->value(x + step) - function->value(x - step)) / (2.0 * step);
      INFO(name << " at " << x);
      CHECK(function->slope(x) == Approx(rise).epsilon(1e-7));
    }
  }
  CHECK(recorded_function("floor")->value(7.9) == 7.0);
  CHECK(recorded_function("floor")->slope(7.9) == 0.0);
  CHECK(recorded_function("sinh") == nullptr);
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
