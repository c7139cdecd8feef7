// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>

namespace feedwright {

/// A byte offset with its line and column (1-based, in code points; lines end with LF).
struct TextPlace {
  std::size_t at = 0;
  std::size_t line = 1;
  std::size_t column = 1;

  /// Moves forward to the offset `to`.
  void advance(std::string_view source, std::size_t to) {
    for (; at < to; ++at) {
      const auto byte = static_cast<unsigned char>(source[at]);
      if (byte == '\n') {
        ++line;
        column = 1;
      } else if ((byte & 0xC0U) != 0x80U) {
        ++column;
      }
    }
  }
};

} // namespace feedwright
