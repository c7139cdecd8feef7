// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/utf8.h"

namespace feedwright {
namespace {

constexpr bool between(unsigned char byte, unsigned least, unsigned most) {
  return byte >= least && byte <= most;
}

constexpr std::size_t length_from_lead(unsigned char lead) {
  if (lead < 0x80) {
    return 1;
  }
  if (between(lead, 0xC2, 0xDF)) {
    return 2;
  }
  if (between(lead, 0xE0, 0xEF)) {
    return 3;
  }
  return between(lead, 0xF0, 0xF4) ? 4 : 0;
}

/// The second byte's range shuts out overlong forms, surrogates and values past U+10FFFF.
constexpr bool second_fits(unsigned char lead, unsigned char second) {
  switch (lead) {
  case 0xE0: return between(second, 0xA0, 0xBF);
  case 0xED: return between(second, 0x80, 0x9F);
  case 0xF0: return between(second, 0x90, 0xBF);
  case 0xF4: return between(second, 0x80, 0x8F);
  default: return between(second, 0x80, 0xBF);
  }
}

} // namespace

std::size_t utf8_sequence(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[at + i]); };
  if (at >= text.size()) {
    return 0;
  }
  const std::size_t length = length_from_lead(byte(0));
  if (length <= 1) {
    return length;
  }
  if (text.size() - at < length || !second_fits(byte(0), byte(1))) {
    return 0;
  }
  for (std::size_t i = 2; i < length; ++i) {
    if (!between(byte(i), 0x80, 0xBF)) {
      return 0;
    }
  }
  return length;
}

std::size_t first_ill_formed(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = utf8_sequence(text, at);
    if (length == 0) {
      return at;
    }
    at += length;
  }
  return at;
}

std::size_t code_points(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text) {
    count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
  }
  return count;
}

} // namespace feedwright
