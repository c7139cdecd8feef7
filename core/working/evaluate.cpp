// SPDX-License-Identifier: GPL-3.0-or-later
#include "working/evaluate.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace feedwright {

namespace {

constexpr std::array<RecordedFunction, 6> functions = {{
    {"sqrt", [](double x) { return std::sqrt(x); }, [](double x) { return 0.5 / std::sqrt(x); }},
    {"tan", [](double x) { return std::tan(x); },
     [](double x) { return 1.0 + std::tan(x) * std::tan(x); }},
    {"atan", [](double x) { return std::atan(x); }, [](double x) { return 1.0 / (1.0 + x * x); }},
    {"sin", [](double x) { return std::sin(x); }, [](double x) { return std::cos(x); }},
    {"cos", [](double x) { return std::cos(x); }, [](double x) { return -std::sin(x); }},
    {"floor", [](double x) { return std::floor(x); }, [](double) { return 0.0; }},
}};

class Evaluation {
public:
  explicit Evaluation(const std::map<const Expression*, double>& leaves) : leaves_(leaves) {}

  std::optional<double> of(const Expression& e) const {
    if (e.operands.empty()) {
      const auto given = leaves_.find(&e);
      return given != leaves_.end() ? given->second : e.value.si;
    }
    const std::optional<double> first = of(*e.operands[0]);
    return first ? with_first(e, *first) : std::nullopt;
  }

private:
  std::optional<double> with_first(const Expression& e, double first) const {
    switch (e.form) {
    case Expression::Form::negate: return -first;
    case Expression::Form::square: return first * first;
    case Expression::Form::function: {
      const RecordedFunction* function = recorded_function(e.name);
      return function != nullptr ? std::optional(function->value(first)) : std::nullopt;
    }
    case Expression::Form::solved: return std::nullopt;
    default: break;
    }
    const std::optional<double> second = of(*e.operands[1]);
    return second ? of_two(e.form, first, *second) : std::nullopt;
  }

  static std::optional<double> of_two(Expression::Form form, double first, double second) {
    switch (form) {
    case Expression::Form::add: return first + second;
    case Expression::Form::subtract: return first - second;
    case Expression::Form::multiply: return first * second;
    case Expression::Form::divide: return first / second;
    default: return std::nullopt;
    }
  }

  const std::map<const Expression*, double>& leaves_;
};

} // namespace

const RecordedFunction* recorded_function(std::string_view name) {
  const auto* const found = std::ranges::find(functions, name, &RecordedFunction::name);
  return found != functions.end() ? found : nullptr;
}

std::optional<double> evaluate(const Expression& whole,
                               const std::map<const Expression*, double>& leaves) {
  return Evaluation(leaves).of(whole);
}

} // namespace feedwright
