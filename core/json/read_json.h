// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Reads a JSON text (RFC 8259) from anywhere, hostile texts included, in bounded time and memory.

#include "json/json_node.h"

#include <tl/expected.hpp>

#include <cstdint>

namespace feedwright {

enum class JsonFault : std::uint8_t {
  too_large,           ///< more bytes than the limit; `found` is empty
  empty,               ///< nothing but white space
  not_utf8,            ///< `found` is the ill-formed byte, as \xHH
  unreadable,          ///< not JSON here; `found` is what stands there
  unfinished,          ///< the text ends before the value does
  trailing_text,       ///< something follows the value
  too_deep,            ///< more arrays and objects inside each other than the limit
  too_many_values,     ///<
  text_too_long,       ///< a string, member name or number longer than the limit
  number_out_of_range, ///< beyond a double, or so small that it would become zero
  duplicate_member,    ///< `found` is the name; the place is that of the second name
};

struct JsonError {
  JsonFault fault{};
  std::size_t line = 1;   ///< 1-based
  std::size_t column = 1; ///< 1-based, in code points
  std::string found;      ///< the start of the offending text, control characters as \uHHHH
  std::string path;       ///< JSON Pointer (RFC 6901); empty at the root, or if over 1 KiB

  friend bool operator==(const JsonError&, const JsonError&) = default;
};

struct JsonLimits {
  std::size_t bytes = std::size_t{8} << 20U;
  std::size_t depth = 64;                    ///< arrays and objects inside each other
  std::size_t values = 200'000;              ///< arrays and objects count too, member names don't
  std::size_t text = std::size_t{64} << 10U; ///< bytes of one string, name or number
  std::size_t errors = 100;                  ///< duplicates reported before reading stops
};

/// The text's value, or every fault in source order: all duplicate members, and the first fault of
/// any other sort, which ends the reading. A UTF-8 byte order mark at the start is dropped
/// (RFC 8259, 8.1, allows it); offsets still count its bytes, columns don't.
tl::expected<JsonNode, std::vector<JsonError>> read_json(std::string_view source,
                                                         const JsonLimits& limits = {});

} // namespace feedwright
