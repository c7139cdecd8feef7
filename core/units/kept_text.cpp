// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/kept_text.h"

#include "units/write_quantity.h"

namespace feedwright {

std::string kept_text(std::string_view typed, const ReadQuantity& read) {
  if (!read.bare || read.unit == nullptr || read.unit->symbol.empty()) {
    return std::string(typed);
  }
  const std::string unit = " " + std::string(read.unit->symbol);
  const std::string plain = std::string(typed) + unit;
  const std::string bracketed = "(" + std::string(typed) + ")" + unit;
  for (const std::string& text : {plain, bracketed}) {
    const auto again = read_quantity(text, read.value.kind);
    if (again && again->value.si == read.value.si) {
      return text;
    }
  }
  return write_exact(read.value, *read.unit);
}

} // namespace feedwright
