// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace feedwright {

/// A JSON string with its quotes: escaped no more than RFC 8259 demands, UTF-8 kept, ill-formed
/// bytes replaced by U+FFFD.
std::string json_string(std::string_view text);

/// The shortest spelling that reads back to the same bits. `number` must be finite (asserted).
std::string json_number_text(double number);

/// Writes JSON in one canonical form: members in the order given, one a line, two spaces of
/// indent, LF, a final newline. An array of scalars stays on its line if it fits in 100 columns.
/// Calls that would not make one whole JSON value are programmer's errors and assert.
class JsonWriter {
public:
  static constexpr std::size_t columns = 100;

  JsonWriter& begin_object();
  JsonWriter& end_object();
  JsonWriter& begin_array();
  JsonWriter& end_array();
  /// Names the next value. The caller sees to it that no name comes twice in an object.
  JsonWriter& member(std::string_view name);

  JsonWriter& value(std::string_view text) { return scalar(json_string(text)); }
  JsonWriter& value(const char* text) { return value(std::string_view(text)); }
  JsonWriter& value(const std::string& text) { return value(std::string_view(text)); }
  JsonWriter& value(double number) { return scalar(json_number_text(number)); }
  JsonWriter& value(std::same_as<bool> auto truth) { return scalar(truth ? "true" : "false"); }
  JsonWriter& value(std::integral auto number) requires(!std::same_as<decltype(number), bool> &&
                                                        !std::same_as<decltype(number), char>) {
    return scalar(integer(number));
  }
  JsonWriter& null() { return scalar("null"); }

  /// A value kept from a source (JsonNode's [begin, end)), written byte for byte.
  JsonWriter& raw(std::string_view slice);

  /// The whole text; everything begun must have been ended (asserted).
  std::string finish() &&;

private:
  struct Open {
    bool array = false;
    bool spread = false;              ///< its first element has gone out, on a line of its own
    bool named = false;               ///< a member's name awaits its value
    std::vector<std::string> pending; ///< scalars of an array that may yet fit on one line
  };

  static std::string integer(std::signed_integral auto number) {
    return integer_text(std::int64_t{number});
  }
  static std::string integer(std::unsigned_integral auto number) {
    return integer_text(std::uint64_t{number});
  }
  static std::string integer_text(std::int64_t number);
  static std::string integer_text(std::uint64_t number);

  JsonWriter& scalar(std::string text);
  void before_value();
  void element_line(Open& open);
  void spread_out(Open& open);
  bool fits(const Open& open) const;
  void begin(char bracket, bool array);
  void end(char bracket, bool array);

  std::string out_;
  std::vector<Open> open_;
  bool done_ = false;
};

} // namespace feedwright
