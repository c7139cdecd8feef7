// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A recorded expression written out: in symbols, in numbers, and each symbol with its value and
// where it came from. No sentence of a human language; symbols only.

#include "sizing/results.h"
#include "units/write_quantity.h"

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
};

struct WrittenStep {
  ResultId result{};
  std::string symbol;
  std::string formula;      ///< "l/(2π)"
  std::string with_numbers; ///< "5 mm/(2π)"
  std::string value;        ///< "0.7958 mm"
  /// Where the formula is f(…), a value found by solving: which equation.
  std::string_view solved;
  std::vector<WrittenTerm> terms; ///< each once, in the order met
};

/// `machine` and `axis` must be those the step was recorded for.
WrittenStep write_step(const WorkingStep& step, const Machine& machine, std::size_t axis,
                       DecimalMark mark);

} // namespace feedwright
