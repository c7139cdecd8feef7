// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The errors of the results, column by column with what each is made of.

#include "machine/machine.h"
#include "sizing/results.h"

#include <optional>
#include <vector>

namespace feedwright {

enum class ErrorPlace : std::uint8_t { on_reversal, over_travel, under_cut };

struct ErrorTerm {
  ResultId id;
  std::optional<Length> size;
  /// What an open term waits for; no member where no single input is missing.
  InputRef missing;
};

struct ErrorColumn {
  ErrorPlace place;
  std::vector<ErrorTerm> terms;
  Length known;               ///< sum of the terms that are not open
  std::optional<Length> sum;  ///< of all; open with any of them
  std::optional<Length> root; ///< root of the sum of their squares
  std::optional<Length> wanted;
  Verdict verdict = Verdict::open; ///< of the sum against what is wanted
};

/// On reversal, over the travel (a screw's only), under cut.
std::vector<ErrorColumn> error_budget(const Axis&, const AxisResults&);

} // namespace feedwright
