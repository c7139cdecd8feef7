// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A recorded expression written out: in symbols, in numbers, and each symbol with its value and
// where it came from. No sentence of a human language; symbols only.

#include "sizing/results.h"
#include "units/write_quantity.h"
#include "working/notation.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace feedwright {

/// One symbol of an equation.
struct WrittenTerm {
  std::string symbol; ///< `_` before a subscript
  std::string value;  ///< with its unit
  std::optional<InputRef> input;
  std::optional<ResultId> result;  ///< computed before; neither: a constant
  Origin origin = Origin::entered; ///< of an input
  /// One per cent on it, all other symbols as they are, moves the value by so many per cent.
  std::optional<double> share;
};

/// One part of the sum a value is, or is but for factors.
struct WrittenPart {
  Notation what;
  std::optional<std::size_t> term; ///< if it is a symbol alone
  double share;                    ///< of the sum of all parts' magnitudes
};

struct WrittenStep {
  ResultId result{};
  std::string symbol;
  std::string formula;      ///< "l/(2π)"
  std::string with_numbers; ///< "5 mm/(2π)"
  std::string value;        ///< "0.7958 mm"
  std::string si_value;     ///< in the coherent SI unit, where that is another; else empty
  /// "0.005 m/(2π)", where the line with numbers is no arithmetic as it stands, for its units are
  /// mixed; else empty.
  std::string with_si_numbers;
  /// The same as trees.
  Notation symbol_notation, formula_notation, numbers_notation, value_notation, si_notation;
  Notation si_numbers_notation;
  /// Where the formula is f(…), a value found by solving: which equation.
  std::string_view solved;
  std::vector<WrittenTerm> terms; ///< each once, in the order met
  /// As they stand, without what cancels; empty if it is no sum of two or more.
  std::vector<WrittenPart> parts;
};

/// Whether the line with numbers says something that the formula and the value do not.
bool numbers_say_more(const WrittenStep& step);

/// What stands after the equals signs, one below the other: the formula, the numbers in it, those
/// in SI units where the units are mixed, and the value.
std::vector<Notation> right_sides(const WrittenStep& step);

/// `machine` and `axis` must be those the step was recorded for. Values are in the units the
/// machine is typed in.
WrittenStep write_step(const WorkingStep& step, const Machine& machine, std::size_t axis,
                       DecimalMark mark);

} // namespace feedwright
