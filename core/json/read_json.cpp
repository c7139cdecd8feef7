// SPDX-License-Identifier: GPL-3.0-or-later
// The library's lexer turns decimals into doubles by the locale and asserts that it understood
// them, which fails where the decimal sign is more than one byte. Its value is not used here (see
// json_number), so the assertion is switched off, for a class of this file only.
#define JSON_ASSERT(x) static_cast<void>(0)
#include <nlohmann/json.hpp>

#include "json/read_json.h"

#include "json/json_feed.h"
#include "json/json_tokens.h"
#include "json/open_value.h"
#include "json/text_place.h"
#include "json/utf8.h"

#include <optional>

namespace feedwright {
namespace {

using Bytes = std::string_view;

/// An own type makes the library's classes this file's own, so that the assertion stays on
/// elsewhere.
struct OwnBinary : std::vector<std::uint8_t> {
  using std::vector<std::uint8_t>::vector;
};
using Library =
    nlohmann::basic_json<std::map, std::vector, std::string, bool, std::int64_t, std::uint64_t,
                         double, std::allocator, nlohmann::adl_serializer, OwnBinary>;

constexpr Bytes byte_order_mark = "\xEF\xBB\xBF";

/// Takes the library's events, guards the limits, and builds the tree. An event says that one token
/// was read; where it stands follows from where the last one ended.
class TreeBuilder {
public:
  TreeBuilder(Bytes source, const JsonFeed& feed, const JsonLimits& limits)
      : source_(source), feed_(feed), limits_(limits) {
    if (source.starts_with(byte_order_mark)) {
      place_.at = byte_order_mark.size();
    }
  }

  bool null() { return word(JsonNode::Type::null, "null", false); }
  bool boolean(bool value) {
    return word(JsonNode::Type::boolean, value ? "true" : "false", value);
  }
  bool number_integer(std::int64_t /*unused*/) { return number(); }
  bool number_unsigned(std::uint64_t /*unused*/) { return number(); }
  bool number_float(double /*unused*/, const std::string& /*unused*/) { return number(); }
  bool string(std::string& value);
  bool binary(Library::binary_t& /*unused*/) { return false; } // not in a text
  bool key(std::string& name);
  bool start_object(std::size_t /*unused*/) { return open(JsonNode::Type::object); }
  bool start_array(std::size_t /*unused*/) { return open(JsonNode::Type::array); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }
  bool parse_error(std::size_t read, const std::string& last, const nlohmann::detail::exception& e);

  /// The library takes a NUL for the end of the text; this looks whether more follows.
  void check_end();
  tl::expected<JsonNode, std::vector<JsonError>> result() &&;

private:
  void go_to_token();
  JsonNode token(JsonNode::Type type);
  bool word(JsonNode::Type type, Bytes spelling, bool value);
  bool number();
  bool open(JsonNode::Type type);
  bool close();
  bool put(JsonNode node);
  bool counted();
  bool stop(JsonFault fault, Bytes found);
  void report(JsonFault fault, std::string found);

  Bytes source_;
  const JsonFeed& feed_;
  const JsonLimits& limits_;
  TextPlace place_;
  char separator_ = '\0'; ///< what may stand before the next token
  std::size_t values_ = 0;
  std::vector<OpenValue> open_;
  std::optional<JsonNode> root_;
  std::vector<JsonError> errors_;
};

void TreeBuilder::go_to_token() {
  std::size_t at = after_white_space(source_, place_.at);
  if (separator_ != '\0' && at < source_.size() && source_[at] == separator_) {
    at = after_white_space(source_, at + 1);
  }
  place_.advance(source_, at);
}

/// The node of the token at the place, which moves behind it.
JsonNode TreeBuilder::token(JsonNode::Type type) {
  JsonNode node;
  node.type = type;
  node.line = place_.line;
  node.column = place_.column;
  node.begin = place_.at;
  node.end = token_end(source_, place_.at);
  place_.advance(source_, node.end);
  return node;
}

bool TreeBuilder::word(JsonNode::Type type, Bytes spelling, bool value) {
  go_to_token();
  const Bytes found = source_.substr(place_.at, token_end(source_, place_.at) - place_.at);
  if (found != spelling) {
    return stop(JsonFault::unreadable, found);
  }
  JsonNode node = token(type);
  node.boolean = value;
  return put(std::move(node));
}

bool TreeBuilder::number() {
  go_to_token();
  const Bytes found = source_.substr(place_.at, token_end(source_, place_.at) - place_.at);
  if (found.size() > limits_.text) {
    return stop(JsonFault::text_too_long, found);
  }
  const std::optional<double> value = json_number(found);
  if (!value) {
    return stop(out_of_range(found) ? JsonFault::number_out_of_range : JsonFault::unreadable,
                found);
  }
  JsonNode node = token(JsonNode::Type::number);
  node.number = *value;
  node.text = found;
  return put(std::move(node));
}

bool TreeBuilder::string(std::string& value) {
  go_to_token();
  if (value.size() > limits_.text) {
    return stop(JsonFault::text_too_long, value);
  }
  JsonNode node = token(JsonNode::Type::string);
  node.text = std::move(value);
  return put(std::move(node));
}

bool TreeBuilder::key(std::string& name) {
  go_to_token();
  if (name.size() > limits_.text) {
    return stop(JsonFault::text_too_long, name);
  }
  OpenValue& object = open_.back();
  object.name = name;
  if (!object.seen.insert(name).second) {
    report(JsonFault::duplicate_member, excerpt(name));
    if (errors_.size() >= limits_.errors) {
      return false;
    }
  }
  token(JsonNode::Type::string);
  separator_ = ':';
  return true;
}

bool TreeBuilder::open(JsonNode::Type type) {
  go_to_token();
  if (open_.size() >= limits_.depth) {
    return stop(JsonFault::too_deep, source_.substr(place_.at, 1));
  }
  if (!counted()) {
    return false;
  }
  open_.push_back({token(type), std::nullopt, {}});
  separator_ = '\0';
  return true;
}

bool TreeBuilder::close() {
  go_to_token();
  JsonNode node = std::move(open_.back().node);
  open_.pop_back();
  place_.advance(source_, place_.at + 1);
  node.end = place_.at;
  --values_; // counted when it was opened
  return put(std::move(node));
}

bool TreeBuilder::counted() {
  if (values_ >= limits_.values) {
    return stop(JsonFault::too_many_values, {});
  }
  ++values_;
  return true;
}

bool TreeBuilder::put(JsonNode node) {
  if (!counted()) {
    return false;
  }
  separator_ = open_.empty() ? '\0' : ',';
  if (open_.empty()) {
    root_ = std::move(node);
  } else if (OpenValue& parent = open_.back(); parent.node.type == JsonNode::Type::array) {
    parent.node.items.push_back(std::move(node));
  } else {
    parent.node.members.emplace_back(std::move(*parent.name), std::move(node));
    parent.name.reset();
  }
  return true;
}

bool TreeBuilder::parse_error(std::size_t read, const std::string& /*unused*/,
                              const nlohmann::detail::exception& /*unused*/) {
  go_to_token();
  const std::size_t begin = place_.at;
  const std::size_t end = token_end(source_, begin);
  const Bytes found = source_.substr(begin, end - begin);
  if (root_) {
    return stop(JsonFault::trailing_text, found);
  }
  if (out_of_range(found)) {
    return stop(JsonFault::number_out_of_range, found);
  }
  if (read > feed_.handed_on()) { // the library counts the end of the text as read
    return stop(JsonFault::unfinished, found);
  }
  const bool inside_a_string =
      found.starts_with('"') && feed_.at() > begin + 1 && feed_.at() != end;
  if (inside_a_string) {
    place_.advance(source_, feed_.at() - 1);
    return stop(JsonFault::unreadable,
                source_.substr(place_.at, token_end(source_, place_.at) - place_.at));
  }
  return stop(JsonFault::unreadable, found);
}

void TreeBuilder::check_end() {
  go_to_token();
  if (place_.at < source_.size()) {
    stop(JsonFault::trailing_text, source_.substr(place_.at, 1));
  }
}

bool TreeBuilder::stop(JsonFault fault, Bytes found) {
  report(fault, excerpt(found));
  return false;
}

void TreeBuilder::report(JsonFault fault, std::string found) {
  errors_.push_back({fault, place_.line, place_.column, std::move(found), json_pointer(open_)});
}

tl::expected<JsonNode, std::vector<JsonError>> TreeBuilder::result() && {
  if (!errors_.empty() || !root_) {
    return tl::unexpected(std::move(errors_));
  }
  return std::move(*root_);
}

tl::unexpected<std::vector<JsonError>> only(JsonFault fault, const TextPlace& place,
                                            std::string found) {
  return tl::unexpected(
      std::vector<JsonError>{{fault, place.line, place.column, std::move(found), {}}});
}

} // namespace

tl::expected<JsonNode, std::vector<JsonError>> read_json(std::string_view source,
                                                         const JsonLimits& limits) {
  TextPlace place;
  if (source.size() > limits.bytes) {
    return only(JsonFault::too_large, place, {});
  }
  if (source.starts_with(byte_order_mark)) {
    place.at = byte_order_mark.size();
  }
  const std::size_t ill_formed = first_ill_formed(source);
  if (ill_formed < source.size()) {
    place.advance(source, ill_formed);
    return only(JsonFault::not_utf8, place, excerpt(source.substr(ill_formed, 1)));
  }
  if (after_white_space(source, place.at) == source.size()) {
    return only(JsonFault::empty, place, {});
  }
  JsonFeed feed(source);
  TreeBuilder builder(source, feed, limits);
  if (Library::sax_parse(JsonFeed::Iterator(feed), JsonFeed::Iterator(), &builder)) {
    builder.check_end();
  }
  return std::move(builder).result();
}

} // namespace feedwright
