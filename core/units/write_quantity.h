// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/unit_table.h"

#include <optional>
#include <string>

namespace feedwright {

enum class DecimalMark : char { point = '.', comma = ',' };

/// A number with at most so many significant digits, trailing zeros dropped; whole digits are never
/// rounded away ("1480" at three digits). An exponent only below 1e-4 or from 1e7.
std::string write_number(double value, int significant_digits,
                         DecimalMark mark = DecimalMark::point);

/// "1136 rpm", "0.0132 m". A pure number is written alone.
std::string write_quantity(const AnyQuantity& value, const Unit& unit, int significant_digits,
                           DecimalMark mark = DecimalMark::point);

/// The shortest text that read_quantity turns into the same bits; in the SI unit if the wanted one
/// cannot hold them.
std::string write_exact(const AnyQuantity& value, const Unit& unit,
                        DecimalMark mark = DecimalMark::point);

/// A text in that very unit which read_quantity turns into the same bits, with as many digits as
/// that takes. Nothing where there is none: some temperatures below zero in degrees.
std::optional<std::string> write_in(const AnyQuantity& value, const Unit& unit,
                                    DecimalMark mark = DecimalMark::point);

} // namespace feedwright
