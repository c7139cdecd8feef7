// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The units people use, by kind of quantity.

#include "units/kind.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace feedwright {

struct Unit {
  std::string_view symbol; ///< as written: "mm", "N·m", "g·cm²"
  Kind kind;
  double factor;       ///< SI per unit
  double offset = 0.0; ///< SI = value·factor + offset; for temperatures
};

/// Units of a kind, the usual ones first. The first of all is the best to show.
std::span<const Unit> units_of(Kind kind);

/// By symbol or by any accepted spelling: "Nm", "N m", "N·m"; "g cm2", "g·cm²". Nothing if unknown
/// for the kind.
const Unit* find_unit(Kind kind, std::string_view text);

/// The first kind that knows the spelling, to say what a wrong unit measures.
std::optional<Kind> kind_with_unit(std::string_view text);

/// The coherent SI unit: "m", "N·m", "kg·m²", a lead in "m/rad".
const Unit& si_unit(Kind kind);

/// A spelling without spaces, dots and dashes, with µ, superscripts and quotes written one way.
std::string plain_spelling(std::string_view text);

} // namespace feedwright
