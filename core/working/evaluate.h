// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A recorded expression worked out again from other numbers than it was recorded with: to see
// whether a line in mixed units is arithmetic as it stands.

#include "working/traced.h"

#include <map>
#include <optional>

namespace feedwright {

/// A function that equations are recorded with.
struct RecordedFunction {
  std::string_view name;
  double (*value)(double);
  double (*slope)(double); ///< d f(x)/dx; of a step function 0
};

/// Nothing if no equation is recorded with a function of that name.
const RecordedFunction* recorded_function(std::string_view name);

/// The expression with these numbers for its leaves; a leaf that is not among them counts with its
/// recorded SI value. Nothing where a value was found by solving, or a function is not known.
std::optional<double> evaluate(const Expression& whole,
                               const std::map<const Expression*, double>& leaves);

} // namespace feedwright
