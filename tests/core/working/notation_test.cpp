// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "working/write_working.h"

#include <catch2/catch.hpp>

using namespace feedwright;
using feedwright::testing::ordinary_router;
using Form = Notation::Form;

namespace {

Notation symbol(const char* text) {
  Notation made;
  made.form = Form::symbol;
  made.text = text;
  return made;
}

Notation squared(Notation inner) {
  Notation made;
  made.form = Form::square;
  made.parts.push_back(std::move(inner));
  return made;
}

Notation minus(Notation inner) {
  Notation made;
  made.form = Form::negative;
  made.parts.push_back(std::move(inner));
  return made;
}

} // namespace

TEST_CASE("a sum in a sum and a product in a product are one") {
  const Notation sum = notation::sum(notation::sum(symbol("a"), symbol("b")), symbol("c"));
  CHECK(sum.parts.size() == 3);
  CHECK(write_line(sum) == "a + b + c");
  const Notation product =
      notation::product(symbol("a"), notation::product(symbol("b"), symbol("c")));
  CHECK(product.parts.size() == 3);
}

TEST_CASE("a fraction over something is one fraction over the product") {
  const Notation made =
      notation::fraction(notation::fraction(symbol("a"), symbol("b")), symbol("c"));
  CHECK(write_line(made) == "a / (b · c)");
}

TEST_CASE("what is taken away keeps its brackets, what is added does not need them") {
  const Notation sum = notation::sum(symbol("b"), symbol("c"));
  CHECK(write_line(notation::difference(symbol("a"), sum)) == "a − (b + c)");
  CHECK(write_line(notation::sum(symbol("a"), sum)) == "a + b + c");
  CHECK(write_line(notation::sum(symbol("a"), minus(symbol("b")))) == "a − b");
  CHECK(write_line(notation::difference(symbol("a"), minus(symbol("b")))) == "a − (−b)");
  CHECK(write_line(notation::product(sum, symbol("a"))) == "(b + c) · a");
  CHECK(write_line(notation::product(minus(symbol("a")), symbol("b"))) == "(−a) · b");
}

TEST_CASE("a square holds tighter than a product, a fraction or a value with its unit") {
  Notation value;
  value.text = "5";
  value.unit = "mm";
  CHECK(write_line(squared(value)) == "(5 mm)²");
  CHECK(write_line(squared(symbol("a"))) == "a²");
  CHECK(write_line(squared(symbol("tan φ"))) == "(tan φ)²");
  CHECK(write_line(squared(squared(symbol("a")))) == "(a²)²");
  const Notation ratio = notation::fraction(symbol("a"), symbol("b"));
  CHECK(write_line(squared(ratio)) == "(a / b)²");
  CHECK(wants_brackets(squared(ratio), 0, false));
  CHECK_FALSE(
      wants_brackets(notation::fraction(notation::sum(symbol("a"), symbol("b")), value), 0, false));
}

TEST_CASE("digits and power of ten, letters and subscript are told apart") {
  CHECK(number_parts("1.15e-5").exponent == "-5");
  CHECK(number_parts("12").exponent.empty());
  CHECK(symbol_parts("v_w,L").subscript == "w,L");
  CHECK(symbol_parts("λ").subscript.empty());
}

TEST_CASE("MathML has the fraction, the root and the subscript as elements") {
  Working working;
  const Machine machine = ordinary_router();
  size_axis(machine, machine.axes[0], working);
  const WrittenStep step =
      write_step(*working.find(ResultId::whip_speed), machine, 0, DecimalMark::point);
  const std::string made = write_mathml(step.formula_notation);
  CHECK(made.find("<msqrt><mfrac><mi>E</mi><mi>ρ</mi></mfrac></msqrt>") != made.npos);
  CHECK(made.find("<msub><mi>L</mi><mi mathvariant=\"normal\">w</mi></msub>") != made.npos);
  CHECK(made.find("<mo>(</mo>") != made.npos);
  CHECK(write_mathml(symbol("<&>")).find("&lt;&amp;&gt;") != std::string::npos);
}
