// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace feedwright {

/// First offset from `at` on that is not JSON's white space.
std::size_t after_white_space(std::string_view source, std::size_t at);

/// End of what a reader would call one token: a string with its quotes, a run of letters, digits,
/// signs and points, or else one character.
std::size_t token_end(std::string_view source, std::size_t begin);

/// The value of a number of JSON's grammar, whatever the locale; nothing if `text` is none, or if
/// a double cannot hold it (see `out_of_range`).
std::optional<double> json_number(std::string_view text);

/// Whether `text` is a number whose size no double has, over or under.
bool out_of_range(std::string_view text);

/// The first 40 code points of `text`, control characters as \uHHHH, ill-formed bytes as \xHH.
std::string excerpt(std::string_view text);

} // namespace feedwright
