// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>

namespace feedwright {

/// Bytes (1 to 4) of the well-formed UTF-8 sequence at `at`; 0 if it is ill-formed or cut off.
/// Source: The Unicode Standard, table 3-7 "Well-Formed UTF-8 Byte Sequences".
std::size_t utf8_sequence(std::string_view text, std::size_t at);

/// Offset of the first ill-formed byte; the text's size if there is none.
std::size_t first_ill_formed(std::string_view text);

/// Number of code points in a well-formed text.
std::size_t code_points(std::string_view text);

} // namespace feedwright
