// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace feedwright {

/// One value of a JSON text, with its place in the source. Nothing of the source is lost:
/// members keep their order, numbers their spelling, and [begin, end) is the value's own slice.
struct JsonNode {
  enum class Type { null, boolean, number, string, array, object };

  Type type = Type::null;
  bool boolean = false;
  double number = 0.0; ///< finite; -0 keeps its sign
  std::string text;    ///< a string's value, or a number as spelt in the source
  std::vector<JsonNode> items;
  std::vector<std::pair<std::string, JsonNode>> members; ///< in source order; no name twice
  std::size_t line = 1;                                  ///< 1-based; lines end with LF
  std::size_t column = 1;                                ///< 1-based, in code points
  std::size_t begin = 0;                                 ///< byte offset of the value's first byte
  std::size_t end = 0;                                   ///< byte offset after its last byte

  JsonNode();
  JsonNode(const JsonNode&);
  JsonNode(JsonNode&&) noexcept;
  JsonNode& operator=(const JsonNode&);
  JsonNode& operator=(JsonNode&&) noexcept;
  ~JsonNode();

  /// The member of that name; null if there is none or this is no object.
  const JsonNode* find(std::string_view member) const;
};

// Defaulted only here, where the type is complete: within the class they would be constexpr, and
// Clang then wants the members' type complete too early.
inline JsonNode::JsonNode() = default;
inline JsonNode::JsonNode(const JsonNode&) = default;
inline JsonNode::JsonNode(JsonNode&&) noexcept = default;
inline JsonNode& JsonNode::operator=(const JsonNode&) = default;
inline JsonNode& JsonNode::operator=(JsonNode&&) noexcept = default;
inline JsonNode::~JsonNode() = default;

inline const JsonNode* JsonNode::find(std::string_view member) const {
  for (const auto& [name, value] : members) {
    if (name == member) {
      return &value;
    }
  }
  return nullptr;
}

} // namespace feedwright
