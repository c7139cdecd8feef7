// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/json_tokens.h"

#include "json/utf8.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

namespace feedwright {
namespace {

constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

constexpr bool in_word(char c) {
  return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '+' || c == '-' ||
         c == '.' || c == '_';
}

bool digits(std::string_view& rest) {
  std::size_t count = 0;
  while (count < rest.size() && is_digit(rest[count])) {
    ++count;
  }
  rest.remove_prefix(count);
  return count > 0;
}

bool take(std::string_view& rest, std::string_view any_of) {
  if (rest.empty() || any_of.find(rest.front()) == std::string_view::npos) {
    return false;
  }
  rest.remove_prefix(1);
  return true;
}

/// RFC 8259, section 6.
bool is_number(std::string_view rest) {
  take(rest, "-");
  if (!take(rest, "0") && !digits(rest)) {
    return false;
  }
  if (take(rest, ".") && !digits(rest)) {
    return false;
  }
  if (take(rest, "eE")) {
    take(rest, "+-");
    if (!digits(rest)) {
      return false;
    }
  }
  return rest.empty();
}

bool has_nonzero_digit(std::string_view number) {
  const std::string_view mantissa = number.substr(0, number.find_first_of("eE"));
  return mantissa.find_first_of("123456789") != std::string_view::npos;
}

} // namespace

std::size_t after_white_space(std::string_view source, std::size_t at) {
  const std::size_t found = source.find_first_not_of(" \t\n\r", at);
  return found == std::string_view::npos ? source.size() : found;
}

std::size_t token_end(std::string_view source, std::size_t begin) {
  if (begin >= source.size()) {
    return source.size();
  }
  std::size_t at = begin + 1;
  if (source[begin] == '"') {
    while (at < source.size() && source[at] != '"') {
      at += source[at] == '\\' ? 2 : 1;
    }
    return at < source.size() ? at + 1 : source.size();
  }
  if (in_word(source[begin])) {
    while (at < source.size() && in_word(source[at])) {
      ++at;
    }
    return at;
  }
  const std::size_t length = utf8_sequence(source, begin);
  return begin + (length == 0 ? 1 : length);
}

std::optional<double> json_number(std::string_view text) {
  if (!is_number(text)) {
    return std::nullopt;
  }
  double value = 0.0;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool whole = fault == std::errc{} && end == text.data() + text.size();
  // Some libraries hand back a plain zero for a number too small for a double.
  if (!whole || !std::isfinite(value) || (value == 0.0 && has_nonzero_digit(text))) {
    return std::nullopt;
  }
  return value;
}

bool out_of_range(std::string_view text) {
  return is_number(text) && !json_number(text).has_value();
}

std::string excerpt(std::string_view text) {
  constexpr int most = 40;
  std::string out;
  std::size_t at = 0;
  for (int count = 0; count < most && at < text.size(); ++count) {
    const auto byte = static_cast<unsigned char>(text[at]);
    const std::size_t length = utf8_sequence(text, at);
    if (length == 0) {
      out += fmt::format("\\x{:02X}", byte);
    } else if (byte < 0x20 || byte == 0x7F) {
      out += fmt::format("\\u{:04X}", byte);
    } else {
      out += text.substr(at, length);
    }
    at += length == 0 ? 1 : length;
  }
  return out;
}

} // namespace feedwright
