// SPDX-License-Identifier: GPL-3.0-or-later
#include "working/write_working.h"

#include "sheet/file_units.h"
#include "units/read_quantity.h"
#include "working/elasticity.h"
#include "working/evaluate.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace feedwright {

namespace {

constexpr int digits_of_terms = 6;
constexpr int digits_of_results = 4;

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

using Form = Notation::Form;

Notation leaf(Form form, std::string text, std::string unit = {}) {
  Notation made;
  made.form = form;
  made.text = std::move(text);
  made.unit = std::move(unit);
  return made;
}

Notation around(Form form, Notation inner, std::string text = {}) {
  Notation made = leaf(form, std::move(text));
  made.parts.push_back(std::move(inner));
  return made;
}

/// A symbol's value as it was written, taken apart into digits and unit.
Notation written_number(const std::string& value, std::string_view unit) {
  if (!unit.empty() && value.ends_with(unit)) {
    std::string digits = value.substr(0, value.size() - unit.size());
    if (digits.ends_with(' ')) {
      digits.pop_back();
    }
    return leaf(Form::number, std::move(digits), std::string(unit));
  }
  return leaf(Form::number, value);
}

class StepWriter {
public:
  StepWriter(const Machine& machine, std::size_t axis, DecimalMark mark)
      : machine_(machine), axis_(axis), mark_(mark), units_(machine) {}

  WrittenStep write(const WorkingStep& step) {
    const ResultDescriptor& about = descriptor(step.result);
    out_.result = step.result;
    out_.symbol = about.symbol;
    out_.symbol_notation = leaf(Form::symbol, out_.symbol);
    out_.formula_notation = notation_of(*step.how);
    out_.formula = write_line(out_.formula_notation);
    out_.numbers_notation = in_numbers(out_.formula_notation, values_);
    out_.with_numbers = write_line(out_.numbers_notation);
    write_value(about, step.value);
    write_in_si(about, *step.how, step.value);
    share_out(*step.how);
    return std::move(out_);
  }

private:
  void write_value(const ResultDescriptor& about, const AnyQuantity& value) {
    // The kind is the result's own: an expression knows only the dimension.
    const AnyQuantity named{about.kind, value.si};
    const Unit& unit = units_.unit_of(about.kind, about.unit);
    out_.value = write_quantity(named, unit, digits_of_results, mark_);
    out_.value_notation = written_number(out_.value, unit.symbol);
    const Unit& coherent = si_unit(about.kind);
    if (coherent.factor != unit.factor || coherent.offset != unit.offset) {
      out_.si_value = write_quantity(named, coherent, digits_of_results, mark_);
      out_.si_notation = written_number(out_.si_value, coherent.symbol);
    }
  }

  /// What goes into a calculator for a figure in that unit; it takes degrees as they are.
  static double as_typed(double si, const Unit& unit) {
    return unit.kind == Kind::angle ? si : (si - unit.offset) / unit.factor;
  }

  /// A reader who multiplies "909 rpm · 0.796 mm/rad" out does not get metres a minute.
  void write_in_si(const ResultDescriptor& about, const Expression& how, const AnyQuantity& value) {
    constexpr double close_enough = 1e-6;
    const auto gives = [&](const std::map<const Expression*, double>& leaves, double wanted) {
      const std::optional<double> found = evaluate(how, leaves);
      return found && std::abs(*found - wanted) <= close_enough * std::abs(wanted);
    };
    const Unit& unit = units_.unit_of(about.kind, about.unit);
    if (!gives(shown_, as_typed(value.si, unit)) && gives({}, value.si)) {
      out_.si_numbers_notation = in_numbers(out_.formula_notation, si_values_);
      out_.with_si_numbers = write_line(out_.si_numbers_notation);
    }
  }

  static const Unit& usual_unit(Kind kind) {
    const auto units = units_of(kind);
    return units.empty() ? si_unit(kind) : units.front();
  }

  Notation literal(double value) const {
    const auto of_pi = multiple_of_pi(value);
    return leaf(Form::number, of_pi ? *of_pi : write_number(value, digits_of_terms, mark_));
  }

  /// Keeps a term the first time it is met. `unit`: what `value` is in; null of a count.
  Notation term(const Expression& how, WrittenTerm term, const AnyQuantity& quantity,
                const Unit* unit, Notation value, Form form = Form::symbol) {
    if (unit != nullptr) {
      shown_[&how] = as_typed(quantity.si, *unit);
    }
    const auto same = [&](const WrittenTerm& other) {
      return other.symbol == term.symbol && other.value == term.value &&
             other.input == term.input && other.result == term.result;
    };
    const auto found = std::ranges::find_if(out_.terms, same);
    const auto index = static_cast<std::size_t>(found - out_.terms.begin());
    Notation made = form == Form::symbol ? leaf(form, term.symbol) : value;
    made.term = index;
    if (found == out_.terms.end()) {
      value.term = index;
      si_values_.push_back(unit != nullptr ? in_si(quantity) : value);
      si_values_.back().term = index;
      values_.push_back(std::move(value));
      out_.terms.push_back(std::move(term));
    }
    term_of_[&how] = index;
    return made;
  }

  /// An angle stays in degrees, which any calculator takes.
  Notation in_si(const AnyQuantity& quantity) const {
    const Unit& unit =
        quantity.kind == Kind::angle ? usual_unit(Kind::angle) : si_unit(quantity.kind);
    return written_number(write_quantity(quantity, unit, digits_of_terms, mark_), unit.symbol);
  }

  /// An input in the unit it was typed in.
  const Unit& unit_of_field(const FieldView& field) const {
    if (!field.note.text.empty()) {
      const auto read = read_quantity(field.note.text, field.info.kind);
      if (read && read->unit != nullptr && !read->bare) {
        return *read->unit;
      }
    }
    return units_.unit_of(field.info.kind, field.info.unit);
  }

  Notation input(const Expression& how) {
    const auto slot = static_cast<PartSlot>(how.subject);
    const auto field = field_of(machine_, axis_, slot, how.name);
    if (!field) {
      return literal(how.value.si);
    }
    WrittenTerm made;
    made.symbol = field->info.symbol;
    const Unit* unit = nullptr;
    AnyQuantity quantity;
    if (const auto* given = std::get_if<AnyQuantity>(&field->value)) {
      quantity = *given;
      unit = &unit_of_field(*field);
      made.value = write_quantity(quantity, *unit, digits_of_terms, mark_);
    } else if (const auto* count = std::get_if<std::int64_t>(&field->value)) {
      made.value = write_number(static_cast<double>(*count), 12);
    }
    made.input = InputRef{how.subject, field->info.member};
    made.origin = field->note.origin;
    Notation value =
        written_number(made.value, unit != nullptr ? unit->symbol : std::string_view());
    return term(how, std::move(made), quantity, unit, std::move(value));
  }

  Notation constant(const Expression& how) {
    const bool bare_number = how.name == "0" || how.name == "1";
    if (bare_number) {
      return leaf(Form::number, std::string(how.name));
    }
    const Unit& unit = units_.unit_of(how.value.kind, usual_unit(how.value.kind).symbol);
    WrittenTerm made;
    made.symbol = how.name;
    made.value = write_quantity(how.value, unit, digits_of_terms, mark_);
    Notation value = written_number(made.value, unit.symbol);
    if (how.name.front() < '0' || how.name.front() > '9') {
      return term(how, std::move(made), how.value, &unit, std::move(value));
    }
    // "100 km" is its own symbol.
    const std::size_t space = how.name.find(' ');
    Notation itself = leaf(Form::number, std::string(how.name.substr(0, space)));
    if (space != how.name.npos) {
      itself.unit = how.name.substr(space + 1);
    }
    return term(how, std::move(made), how.value, &unit, std::move(itself), Form::number);
  }

  Notation earlier(const Expression& how) {
    const ResultDescriptor& about = descriptor(static_cast<ResultId>(how.subject));
    const Unit& unit = units_.unit_of(about.kind, about.unit);
    WrittenTerm made;
    made.symbol = about.symbol;
    const AnyQuantity named{about.kind, how.value.si};
    made.value = write_quantity(named, unit, digits_of_terms, mark_);
    made.result = about.id;
    Notation value = written_number(made.value, unit.symbol);
    return term(how, std::move(made), named, &unit, std::move(value));
  }

  Notation solved(const Expression& how) {
    out_.solved = how.name;
    Notation made = leaf(Form::solved, "f");
    for (const ExpressionPtr& operand : how.operands) {
      made.parts.push_back(notation_of(*operand));
    }
    return made;
  }

  Notation notation_of(const Expression& how) {
    using Recorded = Expression::Form;
    const auto operand = [&](std::size_t i) { return notation_of(*how.operands[i]); };
    switch (how.form) {
    case Recorded::literal: return literal(how.value.si);
    case Recorded::constant: return constant(how);
    case Recorded::input: return input(how);
    case Recorded::result: return earlier(how);
    case Recorded::function: {
      Notation inner = operand(0);
      return how.name == "sqrt" ? around(Form::root, std::move(inner))
                                : around(Form::function, std::move(inner), std::string(how.name));
    }
    case Recorded::negate: return around(Form::negative, operand(0));
    case Recorded::square: return around(Form::square, operand(0));
    case Recorded::solved: return solved(how);
    default: break;
    }
    // In order: a term is listed where it is first read.
    Notation left = operand(0);
    Notation right = operand(1);
    switch (how.form) {
    case Recorded::add: return notation::sum(std::move(left), std::move(right));
    case Recorded::subtract: return notation::difference(std::move(left), std::move(right));
    case Recorded::divide: return notation::fraction(std::move(left), std::move(right));
    default: return notation::product(std::move(left), std::move(right));
    }
  }

  /// The same tree with each symbol's value in its place.
  static Notation in_numbers(const Notation& symbols, const std::vector<Notation>& values) {
    if (symbols.term) {
      return values[*symbols.term];
    }
    Notation made = symbols;
    for (Notation& part : made.parts) {
      part = in_numbers(part, values);
    }
    return made;
  }

  void share_out(const Expression& how) {
    for (const LeafShare& leaf : leaf_shares(how)) {
      if (const auto found = term_of_.find(leaf.leaf); found != term_of_.end()) {
        std::optional<double>& share = out_.terms[found->second].share;
        share = share.value_or(0.0) + leaf.share;
      }
    }
    for (const Expression* leaf : hidden_leaves(how)) {
      if (const auto found = term_of_.find(leaf); found != term_of_.end()) {
        out_.terms[found->second].share.reset();
      }
    }
    for (const SumShare& part : sum_shares(how)) {
      const auto found = term_of_.find(part.part);
      out_.parts.push_back({notation_of(*part.part),
                            found != term_of_.end() ? std::optional(found->second) : std::nullopt,
                            part.share});
    }
  }

  const Machine& machine_;
  std::size_t axis_;
  DecimalMark mark_;
  FileUnits units_;
  WrittenStep out_;
  std::vector<Notation> values_;              ///< of each term
  std::vector<Notation> si_values_;           ///< the same in SI units
  std::map<const Expression*, double> shown_; ///< a leaf's number in the unit it is shown in
  std::map<const Expression*, std::size_t> term_of_;
};

} // namespace

bool numbers_say_more(const WrittenStep& step) {
  return step.with_numbers != step.formula && step.with_numbers != step.value;
}

std::vector<Notation> right_sides(const WrittenStep& step) {
  std::vector<Notation> sides{step.formula_notation};
  if (numbers_say_more(step)) {
    sides.push_back(step.numbers_notation);
  }
  const bool mixed = !step.with_si_numbers.empty();
  if (mixed) {
    sides.push_back(step.si_numbers_notation);
  }
  Notation value = step.value_notation;
  if (!step.si_value.empty()) {
    // After a line in SI units its result comes first.
    value = leaf(Form::relation, "=");
    value.parts = mixed ? std::vector{step.si_notation, step.value_notation}
                        : std::vector{step.value_notation, step.si_notation};
  }
  // A figure taken as it stands has no further line of the same.
  if (step.formula != step.value || !step.si_value.empty()) {
    sides.push_back(std::move(value));
  }
  return sides;
}

WrittenStep write_step(const WorkingStep& step, const Machine& machine, std::size_t axis,
                       DecimalMark mark) {
  return StepWriter(machine, axis, mark).write(step);
}

} // namespace feedwright
