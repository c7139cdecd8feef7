// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Reads quantities as people write them.
//
//   5 mm   0.2in   1/2 in   1 1/4 in   1-1/4 in   3*5 mm   12,5 mm   5' 3 1/2"   190 oz in
//   1.9 kgf cm   2400 rpm   3 m/min   120 g cm²   20 µm   -40 °C   (1 in + 3 mm)/2
//
// Decimal rule: there are no digit-group separators, ever. "." and "," both mean decimal and at
// most one may stand in a number. So "1,250" and "1.250" are both 1.25, in every locale;
// "1,000.5" and "1 234" are errors that name the place.
//
// Units stand at numbers, or at a bracket in which none has one: "(1200+400) mm". In a sum either
// every term has a unit or none has. A sign binds the whole compound: "-1 1/2 in" is -1.5 in.
// "1/2 in" is half an inch.

#include "units/unit_table.h"

#include <tl/expected.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace feedwright {

enum class ReadFault {
  empty,
  not_a_number,
  two_decimal_marks,
  grouped_digits,
  unknown_unit,
  wrong_kind,
  unit_missing,
  bare_number_in_sum,
  product_of_units,
  division_by_zero,
  out_of_range,
  unbalanced_bracket,
  unexpected_text,
};

struct ReadError {
  ReadFault fault;
  std::size_t position = 0; ///< bytes into the text
  std::size_t length = 0;
  std::string found;              ///< the text at fault
  std::optional<Kind> found_kind; ///< what a wrong unit measures
  Kind wanted = Kind::number;
};

struct ReadQuantity {
  AnyQuantity value;
  const Unit* unit; ///< the first unit typed, or the one a bare number was read in
  bool bare;        ///< no unit was typed
};

/// `bare_unit` is what a number without a unit means; without one a unit is required, except for
/// pure numbers. Texts over 256 bytes are refused.
tl::expected<ReadQuantity, ReadError> read_quantity(std::string_view text, Kind wanted,
                                                    const Unit* bare_unit = nullptr);

} // namespace feedwright
