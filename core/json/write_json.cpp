// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/write_json.h"

#include "json/utf8.h"

#include <fmt/format.h>

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>

namespace feedwright {
namespace {

std::string escaped(char c) {
  switch (c) {
  case '"': return "\\\"";
  case '\\': return "\\\\";
  case '\b': return "\\b";
  case '\f': return "\\f";
  case '\n': return "\\n";
  case '\r': return "\\r";
  case '\t': return "\\t";
  default: return fmt::format("\\u{:04x}", static_cast<unsigned char>(c));
  }
}

bool must_be_escaped(char c) {
  return c == '"' || c == '\\' || static_cast<unsigned char>(c) < 0x20;
}

/// A slice that may stand on a line with others.
bool is_scalar(std::string_view slice) {
  return slice.front() != '{' && slice.front() != '[' && slice.find('\n') == std::string_view::npos;
}

} // namespace

std::string json_string(std::string_view text) {
  std::string out = "\"";
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = utf8_sequence(text, at);
    if (length == 0) {
      out += "\xEF\xBF\xBD";
      ++at;
      continue;
    }
    if (must_be_escaped(text[at])) {
      out += escaped(text[at]);
    } else {
      out += text.substr(at, length);
    }
    at += length;
  }
  return out += '"';
}

std::string json_number_text(double number) {
  assert(std::isfinite(number));
  std::array<char, 32> buffer{};
  const auto [end, fault] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number);
  assert(fault == std::errc{});
  return {buffer.data(), end};
}

std::string JsonWriter::integer_text(std::int64_t number) {
  return fmt::format_int(number).str();
}
std::string JsonWriter::integer_text(std::uint64_t number) {
  return fmt::format_int(number).str();
}

JsonWriter& JsonWriter::begin_object() {
  begin('{', false);
  return *this;
}

JsonWriter& JsonWriter::end_object() {
  end('}', false);
  return *this;
}

JsonWriter& JsonWriter::begin_array() {
  begin('[', true);
  return *this;
}

JsonWriter& JsonWriter::end_array() {
  end(']', true);
  return *this;
}

JsonWriter& JsonWriter::member(std::string_view name) {
  assert(!open_.empty() && !open_.back().array && !open_.back().named);
  element_line(open_.back());
  out_ += json_string(name) + ": ";
  open_.back().named = true;
  return *this;
}

JsonWriter& JsonWriter::raw(std::string_view slice) {
  assert(!slice.empty());
  if (is_scalar(slice)) {
    return scalar(std::string(slice));
  }
  before_value();
  out_ += slice;
  done_ = open_.empty();
  return *this;
}

std::string JsonWriter::finish() && {
  assert(done_ && open_.empty());
  out_ += '\n';
  return std::move(out_);
}

JsonWriter& JsonWriter::scalar(std::string text) {
  if (!open_.empty() && open_.back().array && !open_.back().spread) {
    open_.back().pending.push_back(std::move(text));
    return *this;
  }
  before_value();
  out_ += text;
  done_ = open_.empty();
  return *this;
}

/// Puts the writer where a value that is no pending scalar goes.
void JsonWriter::before_value() {
  assert(!done_);
  if (open_.empty()) {
    return;
  }
  Open& open = open_.back();
  if (open.array) {
    spread_out(open);
    element_line(open);
  } else {
    assert(open.named);
    open.named = false;
  }
}

/// Starts the line of the next element or member.
void JsonWriter::element_line(Open& open) {
  out_ += open.spread ? ",\n" : "\n";
  out_.append(2 * open_.size(), ' ');
  open.spread = true;
}

void JsonWriter::spread_out(Open& open) {
  for (const std::string& text : open.pending) {
    element_line(open);
    out_ += text;
  }
  open.pending.clear();
}

/// Whether the pending scalars, the closing bracket and a comma fit behind the opening bracket.
bool JsonWriter::fits(const Open& open) const {
  const std::size_t line_break = out_.rfind('\n');
  const std::size_t line = line_break == std::string::npos ? 0 : line_break + 1;
  std::size_t width = code_points(std::string_view(out_).substr(line)) + 2;
  for (const std::string& text : open.pending) {
    width += code_points(text) + 2;
  }
  return width - (open.pending.empty() ? 0 : 2) <= columns;
}

void JsonWriter::begin(char bracket, bool array) {
  before_value();
  out_ += bracket;
  open_.push_back({array, false, false, {}});
}

void JsonWriter::end(char bracket, bool array) {
  assert(!open_.empty() && open_.back().array == array && !open_.back().named);
  Open& open = open_.back();
  if (!open.spread && fits(open)) {
    for (std::size_t i = 0; i < open.pending.size(); ++i) {
      out_ += (i == 0 ? "" : ", ") + open.pending[i];
    }
  } else {
    spread_out(open);
  }
  const bool spread = open.spread;
  open_.pop_back();
  if (spread) {
    out_ += '\n';
    out_.append(2 * open_.size(), ' ');
  }
  out_ += bracket;
  done_ = open_.empty();
}

} // namespace feedwright
