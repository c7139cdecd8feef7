// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/content_fingerprint.h"

#include <catch2/catch.hpp>

#include <set>

using feedwright::content_fingerprint;

TEST_CASE("the fingerprint agrees with FNV-1a's published test vectors") {
  // Source: RFC 9923 "The FNV Non-Cryptographic Hash Algorithm" and the algorithm's reference
  // code, 64-bit FNV-1a of these strings without a final NUL (from memory).
  CHECK(content_fingerprint("") == "cbf29ce484222325");
  CHECK(content_fingerprint("a") == "af63dc4c8601ec8c");
  CHECK(content_fingerprint("b") == "af63df4c8601f1a5");
  CHECK(content_fingerprint("foobar") == "85944171f73967e8");
}

TEST_CASE("bytes above 127 and NUL count as what they are") {
  CHECK(content_fingerprint(std::string("\0", 1)) == "af63bd4c8601b7df");
  CHECK(content_fingerprint("\xff") != content_fingerprint("\x7f"));
}

TEST_CASE("every single-bit change of a text changes its fingerprint") {
  std::string text = "{\n  \"lead\": \"5 mm\"\n}\n";
  std::set<std::string> seen{content_fingerprint(text)};
  for (char& c : text) {
    for (unsigned bit = 0; bit < 8; ++bit) {
      const char before = c;
      c = static_cast<char>(static_cast<unsigned char>(c) ^ (1U << bit));
      seen.insert(content_fingerprint(text));
      c = before;
    }
  }
  CHECK(seen.size() == 1 + 8 * text.size());
}
