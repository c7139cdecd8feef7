// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/kept_text.h"

#include "units/write_quantity.h"

#include <fmt/format.h>

namespace feedwright {

std::string kept_text(std::string_view typed, const ReadQuantity& read) {
  if (!read.bare || read.unit == nullptr || read.unit->symbol.empty()) {
    return std::string(typed);
  }
  const std::string plain = fmt::format("{} {}", typed, read.unit->symbol);
  const std::string bracketed = fmt::format("({}) {}", typed, read.unit->symbol);
  for (const std::string* text : {&plain, &bracketed}) {
    const auto again = read_quantity(*text, read.value.kind);
    if (again && again->value.si == read.value.si) {
      return *text;
    }
  }
  return write_exact(read.value, *read.unit);
}

} // namespace feedwright
