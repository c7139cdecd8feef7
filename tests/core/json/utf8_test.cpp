// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/utf8.h"

#include <catch2/catch.hpp>

#include <string>

namespace {

using namespace feedwright;

std::string encoded(char32_t c) {
  const auto byte = [](char32_t bits) { return static_cast<char>(bits); };
  if (c < 0x80) {
    return {byte(c)};
  }
  if (c < 0x800) {
    return {byte(0xC0 | (c >> 6U)), byte(0x80 | (c & 0x3F))};
  }
  if (c < 0x10000) {
    return {byte(0xE0 | (c >> 12U)), byte(0x80 | ((c >> 6U) & 0x3F)), byte(0x80 | (c & 0x3F))};
  }
  return {byte(0xF0 | (c >> 18U)), byte(0x80 | ((c >> 12U) & 0x3F)),
          byte(0x80 | ((c >> 6U) & 0x3F)), byte(0x80 | (c & 0x3F))};
}

} // namespace

TEST_CASE("every code point but the surrogates is well-formed UTF-8") {
  for (char32_t c = 0; c < 0x110400; ++c) {
    const std::string text = encoded(c);
    const bool good = c < 0x110000 && (c < 0xD800 || c > 0xDFFF);
    if (utf8_sequence(text, 0) != (good ? text.size() : 0)) {
      FAIL("code point " << static_cast<unsigned>(c));
    }
  }
}

TEST_CASE("overlong and cut-off sequences are ill-formed at their first byte") {
  // Source: RFC 3629, section 10 (C0 80 for NUL, 2F C0 AE 2E 2F) and section 3 (F5 to FF never).
  CHECK(first_ill_formed("\xC0\x80") == 0);
  CHECK(first_ill_formed("\x2F\xC0\xAE\x2E\x2F") == 1);
  CHECK(first_ill_formed("ab\xF5\x80\x80\x80") == 2);
  CHECK(first_ill_formed("\xE0\x9F\xBF") == 0);
  CHECK(first_ill_formed("\xF0\x8F\xBF\xBF") == 0);
  CHECK(first_ill_formed("a\x80") == 1);
  CHECK(first_ill_formed("\xE2\x82") == 0);
  CHECK(first_ill_formed("") == 0);
  // Source: RFC 3629, section 7: the encodings of A<NOT IDENTICAL TO><ALPHA>. and of "Nihongo".
  CHECK(first_ill_formed("\x41\xE2\x89\xA2\xCE\x91\x2E") == 7);
  CHECK(code_points("\x41\xE2\x89\xA2\xCE\x91\x2E") == 4);
  CHECK(code_points("\xE6\x97\xA5\xE6\x9C\xAC\xE8\xAA\x9E") == 3);
}
