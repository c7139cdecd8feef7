// SPDX-License-Identifier: GPL-3.0-or-later
#include "working/write_working.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace feedwright {

namespace {

constexpr int digits_of_terms = 6;
constexpr int digits_of_results = 4;

/// How tightly a written part holds together; brackets go where a looser part stands in a tighter.
enum class Grip : std::uint8_t { sum, product, power, whole };

struct Piece {
  std::string symbols;
  std::string numbers;
  Grip symbols_grip = Grip::whole;
  Grip numbers_grip = Grip::whole;
};

std::string bracketed(const std::string& text, Grip grip, Grip least) {
  return grip < least ? "(" + text + ")" : text;
}

/// "2π", "π/4", "π²" for what is a small multiple of a power of π; nothing for other numbers.
std::optional<std::string> multiple_of_pi(double value) {
  constexpr std::array<std::string_view, 2> names = {"π", "π²"};
  constexpr std::array<double, 2> powers = {pi, pi * pi};
  constexpr double rounding = 1e-12;
  for (std::size_t i = 0; i < names.size(); ++i) {
    const double times = value / powers[i];
    const double whole = std::round(times);
    if (whole < 1.0 || whole > 64.0 || std::abs(times - whole) > rounding * whole) {
      continue;
    }
    return (whole == 1.0 ? std::string() : write_number(whole, 3)) + std::string(names[i]);
  }
  return std::nullopt;
}

class StepWriter {
public:
  StepWriter(const Machine& machine, std::size_t axis, DecimalMark mark)
      : machine_(machine), axis_(axis), mark_(mark) {}

  WrittenStep write(const WorkingStep& step) {
    const ResultDescriptor& about = descriptor(step.result);
    const Piece whole = piece(*step.how);
    out_.result = step.result;
    out_.symbol = about.symbol;
    out_.formula = whole.symbols;
    out_.with_numbers = whole.numbers;
    out_.value = in_unit(step.value, about.unit, digits_of_results);
    return std::move(out_);
  }

private:
  std::string in_unit(const AnyQuantity& value, std::string_view unit, int digits) const {
    const Unit* found = find_unit(value.kind, unit);
    return write_quantity(value, found != nullptr ? *found : usual_unit(value.kind), digits, mark_);
  }

  static const Unit& usual_unit(Kind kind) {
    const auto units = units_of(kind);
    return units.empty() ? si_unit(kind) : units.front();
  }

  Piece literal(double value) const {
    const auto of_pi = multiple_of_pi(value);
    const std::string text = of_pi ? *of_pi : write_number(value, digits_of_terms, mark_);
    // "2π" below a stroke wants brackets; "π" alone does not.
    const bool product = of_pi && of_pi->front() >= '0' && of_pi->front() <= '9';
    const Grip grip = value < 0.0 ? Grip::sum : product ? Grip::product : Grip::whole;
    return {text, text, grip, grip};
  }

  Piece term(WrittenTerm term) {
    // A value with a unit is written as a product would be: "5 mm" squared wants brackets.
    const bool spaced = term.value.find(' ') != std::string::npos || term.value.starts_with('-');
    Piece written{term.symbol, term.value, Grip::whole, spaced ? Grip::product : Grip::whole};
    const auto same = [&](const WrittenTerm& other) { return other.symbol == term.symbol; };
    if (std::ranges::none_of(out_.terms, same)) {
      out_.terms.push_back(std::move(term));
    }
    return written;
  }

  std::string input_value(const FieldView& field) const {
    if (const auto* quantity = std::get_if<AnyQuantity>(&field.value)) {
      return in_unit(*quantity, field.info.unit, digits_of_terms);
    }
    if (const auto* count = std::get_if<std::int64_t>(&field.value)) {
      return write_number(static_cast<double>(*count), 12);
    }
    return {};
  }

  Piece input(const Expression& how) {
    const auto slot = static_cast<PartSlot>(how.subject);
    const auto field = field_of(machine_, axis_, slot, how.name);
    if (!field) {
      return literal(how.value.si);
    }
    WrittenTerm made;
    made.symbol = field->info.symbol;
    made.value = input_value(*field);
    made.input = InputRef{how.subject, field->info.member};
    made.origin = field->note.origin;
    return term(std::move(made));
  }

  Piece constant(const Expression& how) {
    const bool bare_number = how.name == "0" || how.name == "1";
    if (bare_number) {
      return {std::string(how.name), std::string(how.name)};
    }
    WrittenTerm made;
    made.symbol = how.name;
    made.value = in_unit(how.value, {}, digits_of_terms);
    return term(std::move(made));
  }

  Piece earlier(const Expression& how) {
    const ResultDescriptor& about = descriptor(static_cast<ResultId>(how.subject));
    WrittenTerm made;
    made.symbol = about.symbol;
    made.value = in_unit({about.kind, how.value.si}, about.unit, digits_of_terms);
    made.result = about.id;
    return term(std::move(made));
  }

  Piece joined(const Expression& how, const char* sign, Grip grip) {
    const Piece left = piece(*how.operands[0]);
    const Piece right = piece(*how.operands[1]);
    // a − (b + c), a/(b·c): the right side must hold tighter than the sign does.
    const bool strict =
        how.form == Expression::Form::subtract || how.form == Expression::Form::divide;
    const auto next = static_cast<Grip>(static_cast<int>(grip) + 1);
    const Grip right_least = strict ? next : grip;
    return {bracketed(left.symbols, left.symbols_grip, grip) + sign +
                bracketed(right.symbols, right.symbols_grip, right_least),
            bracketed(left.numbers, left.numbers_grip, grip) + sign +
                bracketed(right.numbers, right.numbers_grip, right_least),
            grip, grip};
  }

  Piece negated(const Expression& how) {
    const Piece inner = piece(*how.operands[0]);
    return {"−" + bracketed(inner.symbols, inner.symbols_grip, Grip::product),
            "−" + bracketed(inner.numbers, inner.numbers_grip, Grip::product), Grip::sum,
            Grip::sum};
  }

  Piece squared(const Expression& how) {
    const Piece inner = piece(*how.operands[0]);
    return {bracketed(inner.symbols, inner.symbols_grip, Grip::whole) + "²",
            bracketed(inner.numbers, inner.numbers_grip, Grip::whole) + "²", Grip::power,
            Grip::power};
  }

  Piece called(const Expression& how) {
    const std::string name = how.name == "sqrt" ? "√" : std::string(how.name);
    const Piece inner = piece(*how.operands[0]);
    return {name + "(" + inner.symbols + ")", name + "(" + inner.numbers + ")"};
  }

  Piece solved(const Expression& how) {
    out_.solved = how.name;
    Piece made{"f(", "f("};
    const char* between = "";
    for (const ExpressionPtr& operand : how.operands) {
      const Piece inner = piece(*operand);
      made.symbols += between + inner.symbols;
      made.numbers += between + inner.numbers;
      between = "; ";
    }
    made.symbols += ")";
    made.numbers += ")";
    return made;
  }

  Piece piece(const Expression& how) {
    using enum Expression::Form;
    switch (how.form) {
    case literal: return this->literal(how.value.si);
    case constant: return this->constant(how);
    case input: return this->input(how);
    case result: return earlier(how);
    case add: return joined(how, " + ", Grip::sum);
    case subtract: return joined(how, " − ", Grip::sum);
    case multiply: return joined(how, " · ", Grip::product);
    case divide: return joined(how, " / ", Grip::product);
    case negate: return negated(how);
    case square: return squared(how);
    case function: return called(how);
    case solved: break;
    }
    return this->solved(how);
  }

  const Machine& machine_;
  std::size_t axis_;
  DecimalMark mark_;
  WrittenStep out_;
};

} // namespace

WrittenStep write_step(const WorkingStep& step, const Machine& machine, std::size_t axis,
                       DecimalMark mark) {
  return StepWriter(machine, axis, mark).write(step);
}

} // namespace feedwright
