// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "json/json_tokens.h"

#include <cstddef>
#include <iterator>
#include <string_view>

namespace feedwright {

/// Hands a text to the library byte by byte and knows how far it has read. Only the first byte of
/// each run of white space is handed on: for its error messages the library spells out all of
/// them, which in a hostile text takes seconds and hundreds of megabytes.
class JsonFeed {
public:
  explicit JsonFeed(std::string_view source) : source_(source) {}

  std::size_t at() const { return at_; }               ///< offset of the next byte
  std::size_t handed_on() const { return handed_on_; } ///< bytes so far

  class Iterator {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = char;

    Iterator() = default; ///< the end
    explicit Iterator(JsonFeed& feed) : feed_(&feed) {}
    char operator*() const { return feed_->source_[feed_->at_]; }
    Iterator& operator++() {
      feed_->step();
      return *this;
    }
    friend bool operator==(const Iterator& a, const Iterator& b) { return a.ended() == b.ended(); }

  private:
    bool ended() const { return feed_ == nullptr || feed_->at_ >= feed_->source_.size(); }
    JsonFeed* feed_ = nullptr;
  };

private:
  void step() {
    const char c = source_[at_++];
    ++handed_on_;
    if (in_string_) {
      in_string_ = escaped_ || c != '"';
      escaped_ = !escaped_ && c == '\\';
    } else if (c == '"') {
      in_string_ = true;
    } else if (after_white_space(source_, at_ - 1) != at_ - 1) {
      at_ = after_white_space(source_, at_);
    }
  }

  std::string_view source_;
  std::size_t at_ = 0;
  std::size_t handed_on_ = 0;
  bool in_string_ = false;
  bool escaped_ = false;
};

} // namespace feedwright
