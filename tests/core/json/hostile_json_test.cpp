// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/read_json.h"

#include <catch2/catch.hpp>

#include <clocale>

namespace {

using namespace feedwright;
using Fault = JsonFault;

std::vector<JsonError> errors_of(std::string_view source, const JsonLimits& limits = {}) {
  const auto node = read_json(source, limits);
  return node ? std::vector<JsonError>{} : node.error();
}

std::string repeated(std::string_view piece, std::size_t times) {
  std::string text;
  text.reserve(piece.size() * times);
  for (std::size_t i = 0; i < times; ++i) {
    text += piece;
  }
  return text;
}

struct Row {
  std::string source;
  Fault fault;
  std::size_t line;
  std::size_t column;
  std::string found;
  std::string path;
};

void check(const Row& row) {
  INFO("source: " << row.source);
  const std::vector<JsonError> errors = errors_of(row.source);
  REQUIRE(errors.size() == 1);
  CHECK(static_cast<int>(errors[0].fault) == static_cast<int>(row.fault));
  CHECK(errors[0].line == row.line);
  CHECK(errors[0].column == row.column);
  CHECK(errors[0].found == row.found);
  CHECK(errors[0].path == row.path);
}

} // namespace

TEST_CASE("text that is no JSON is refused at the place where it goes wrong") {
  const Row rows[] = {
      {"[1 2]", Fault::unreadable, 1, 4, "2", "/1"},
      {"[1,,2]", Fault::unreadable, 1, 4, ",", "/1"},
      {"[1,]", Fault::unreadable, 1, 4, "]", "/1"},
      {"[,1]", Fault::unreadable, 1, 2, ",", "/0"},
      {"[1:2]", Fault::unreadable, 1, 3, ":", "/1"},
      {"[1}", Fault::unreadable, 1, 3, "}", "/1"},
      {"]", Fault::unreadable, 1, 1, "]", ""},
      {"{\"a\" 1}", Fault::unreadable, 1, 6, "1", "/a"},
      {"{\"a\"::1}", Fault::unreadable, 1, 6, ":", "/a"},
      {"{\"a\":}", Fault::unreadable, 1, 6, "}", "/a"},
      {"{\"a\":1,}", Fault::unreadable, 1, 8, "}", ""},
      {"{\"a\":1 \"b\":2}", Fault::unreadable, 1, 8, "\"b\"", ""},
      {"{a:1}", Fault::unreadable, 1, 2, "a", ""},
      {"{1:1}", Fault::unreadable, 1, 2, "1", ""},
      {"{'a':1}", Fault::unreadable, 1, 2, "'", ""},
      {"{\"a\":\n\n  nul}", Fault::unreadable, 3, 3, "nul", "/a"},
      {"[nulll]", Fault::unreadable, 1, 2, "nulll", "/0"},
      {"[True]", Fault::unreadable, 1, 2, "True", "/0"},
      {"[truefalse]", Fault::unreadable, 1, 2, "truefalse", "/0"},
      {"[NaN]", Fault::unreadable, 1, 2, "NaN", "/0"},
      {"[nan]", Fault::unreadable, 1, 2, "nan", "/0"},
      {"[Infinity]", Fault::unreadable, 1, 2, "Infinity", "/0"},
      {"[-Infinity]", Fault::unreadable, 1, 2, "-Infinity", "/0"},
      {"[01]", Fault::unreadable, 1, 2, "01", "/0"},
      {"[-01]", Fault::unreadable, 1, 2, "-01", "/0"},
      {"[+1]", Fault::unreadable, 1, 2, "+1", "/0"},
      {"[.5]", Fault::unreadable, 1, 2, ".5", "/0"},
      {"[5.]", Fault::unreadable, 1, 2, "5.", "/0"},
      {"[5.e3]", Fault::unreadable, 1, 2, "5.e3", "/0"},
      {"[1e]", Fault::unreadable, 1, 2, "1e", "/0"},
      {"[1e+]", Fault::unreadable, 1, 2, "1e+", "/0"},
      {"[-]", Fault::unreadable, 1, 2, "-", "/0"},
      {"[1-2]", Fault::unreadable, 1, 2, "1-2", "/0"},
      {"[1.5.2]", Fault::unreadable, 1, 2, "1.5.2", "/0"},
      {"[0x10]", Fault::unreadable, 1, 2, "0x10", "/0"},
      {"[1_000]", Fault::unreadable, 1, 2, "1_000", "/0"},
      {"[5mm]", Fault::unreadable, 1, 2, "5mm", "/0"},
      {"[1,5 mm]", Fault::unreadable, 1, 6, "mm", "/2"},
      {"[\"\\q\"]", Fault::unreadable, 1, 4, "q", "/0"},
      {"[\"a\tb\"]", Fault::unreadable, 1, 4, "\\u0009", "/0"},
      {"[\"ab\n\"]", Fault::unreadable, 1, 5, "\\u000A", "/0"},
      {"// note\n1", Fault::unreadable, 1, 1, "/", ""},
      {"[1, /* two */ 2]", Fault::unreadable, 1, 5, "/", "/1"},
      {"#!json", Fault::unreadable, 1, 1, "#", ""},
      {"\xEF\xBB\xBF\xEF\xBB\xBF{}", Fault::unreadable, 1, 1, "\xEF\xBB\xBF", ""},
      {"[\u00a0\u200b1]", Fault::unreadable, 1, 2, "\u00a0", "/0"},
      {std::string("[1,\0]", 5), Fault::unreadable, 1, 4, "\\u0000", "/1"},
      {std::string("{\0}\0", 4), Fault::unreadable, 1, 2, "\\u0000", ""},
      {"<svg/>", Fault::unreadable, 1, 1, "<", ""},
      {"\x1b[1m", Fault::unreadable, 1, 1, "\\u001B", ""},
  };
  for (const Row& row : rows) {
    check(row);
  }
}

TEST_CASE("a lone surrogate is refused") {
  for (const char* source : {R"(["\ud800"])", R"(["\udc00"])", R"(["\ud800\u0041"])",
                             R"(["\ud800x"])", R"(["\uD8"])", R"(["\uZZZZ"])"}) {
    INFO(source);
    const auto errors = errors_of(source);
    REQUIRE(errors.size() == 1);
    CHECK(errors[0].fault == Fault::unreadable);
    CHECK(errors[0].path == "/0");
    CHECK(errors[0].column >= 2);
  }
}

TEST_CASE("a text that ends too early, holds nothing or goes on is told apart") {
  const Row rows[] = {
      {"", Fault::empty, 1, 1, "", ""},
      {" \r\n\t", Fault::empty, 1, 1, "", ""},
      {"\xEF\xBB\xBF", Fault::empty, 1, 1, "", ""},
      {"[", Fault::unfinished, 1, 2, "", "/0"},
      {"[1", Fault::unfinished, 1, 3, "", "/1"},
      {"{\"a\":\n", Fault::unfinished, 2, 1, "", "/a"},
      {"[\"abc", Fault::unfinished, 1, 2, "\"abc", "/0"},
      {"[\"abc\\", Fault::unfinished, 1, 2, "\"abc\\", "/0"},
      {"tru", Fault::unfinished, 1, 1, "tru", ""},
      {"1 2", Fault::trailing_text, 1, 3, "2", ""},
      {"{}\n}", Fault::trailing_text, 2, 1, "}", ""},
      {"[],", Fault::trailing_text, 1, 3, ",", ""},
      {"{} // end", Fault::trailing_text, 1, 4, "/", ""},
      {std::string("{}\0", 3), Fault::trailing_text, 1, 3, "\\u0000", ""},
  };
  for (const Row& row : rows) {
    check(row);
  }
}

TEST_CASE("a number that no double holds is refused rather than bent") {
  const Row rows[] = {
      {"1e400", Fault::number_out_of_range, 1, 1, "1e400", ""},
      {"[1, -1e400]", Fault::number_out_of_range, 1, 5, "-1e400", "/1"},
      {"[1e-400]", Fault::number_out_of_range, 1, 2, "1e-400", "/0"},
      {"[-0.1e-999999999999]", Fault::number_out_of_range, 1, 2, "-0.1e-999999999999", "/0"},
      {"[1e999999999999999999999]", Fault::number_out_of_range, 1, 2, "1e999999999999999999999",
       "/0"},
      {"[2e308]", Fault::number_out_of_range, 1, 2, "2e308", "/0"},
  };
  for (const Row& row : rows) {
    check(row);
  }
  CHECK(errors_of("[0e-400, 0.0e999999, 1e308, 4.9e-324, 1e-310]").empty());
  const std::string long_number = "[0." + repeated("7", 60'000) + "]";
  CHECK(read_json(long_number)->items[0].number == 7.0 / 9.0);
  CHECK(errors_of("[" + repeated("1", 300) + "]").empty());
  CHECK(errors_of("[" + repeated("1", 310) + "]")[0].fault == Fault::number_out_of_range);
}

TEST_CASE("text that is not UTF-8 is refused at its first bad byte") {
  const Row rows[] = {
      {"[\"\xe4\"]", Fault::not_utf8, 1, 3, "\\xE4", ""},                     // Latin-1
      {"{\n\"a\u00e9\": \"\xC3\"}", Fault::not_utf8, 2, 8, "\\xC3", ""},      // cut off
      {"[\"\xED\xA0\x80\"]", Fault::not_utf8, 1, 3, "\\xED", ""},             // a surrogate
      {"[\"\xC0\x80\"]", Fault::not_utf8, 1, 3, "\\xC0", ""},                 // overlong
      {"[\"\xF4\x90\x80\x80\"]", Fault::not_utf8, 1, 3, "\\xF4", ""},         // past U+10FFFF
      {std::string("\xFF\xFE[\0]\0", 6), Fault::not_utf8, 1, 1, "\\xFF", ""}, // UTF-16
      {std::string("\xFE\xFF\0[\0]", 6), Fault::not_utf8, 1, 1, "\\xFE", ""},
  };
  for (const Row& row : rows) {
    check(row);
  }
}

TEST_CASE("every duplicate member is reported where its second name stands") {
  const auto errors =
      errors_of("{\"a\": 1, \"b\": {\"c\": 1,\n \"c\": 2}, \"a\": [{\"x\":1,\"x\":2,"
                "\"x\":3}],\n\"\\u0061\": 0}");
  REQUIRE(errors.size() == 5);
  for (const JsonError& error : errors) {
    CHECK(error.fault == Fault::duplicate_member);
  }
  CHECK(errors[0] == JsonError{Fault::duplicate_member, 2, 2, "c", "/b/c"});
  CHECK(errors[1] == JsonError{Fault::duplicate_member, 2, 11, "a", "/a"});
  CHECK(errors[2] == JsonError{Fault::duplicate_member, 2, 24, "x", "/a/0/x"});
  CHECK(errors[3] == JsonError{Fault::duplicate_member, 2, 30, "x", "/a/0/x"});
  CHECK(errors[4] == JsonError{Fault::duplicate_member, 3, 1, "a", "/a"});
  CHECK(errors_of(R"({"a":{"a":1},"b":[{"a":1},{"a":2}],"A":0})").empty());
}

TEST_CASE("a syntax fault after a duplicate is reported as well and ends the reading") {
  const auto errors = errors_of(R"({"a":1,"a":2,"b":,"c":1,"c":2})");
  REQUIRE(errors.size() == 2);
  CHECK(errors[0].fault == Fault::duplicate_member);
  CHECK(errors[1].fault == Fault::unreadable);
  CHECK(errors[1].path == "/b");
}

TEST_CASE("no more duplicates are listed than the limit") {
  CHECK(errors_of("{" + repeated("\"a\":1,", 5000) + "\"b\":1}").size() == 100);
}

TEST_CASE("a path is a JSON Pointer") {
  // Source: RFC 6901, section 5: the pointers of the members a/b, m~n and the empty name.
  CHECK(errors_of(R"({"a/b": x})")[0].path == "/a~1b");
  CHECK(errors_of(R"({"m~n": x})")[0].path == "/m~0n");
  CHECK(errors_of(R"({"": x})")[0].path == "/");
  CHECK(errors_of(R"({"foo": ["bar", x]})")[0].path == "/foo/1");
  CHECK(errors_of("{\"" + repeated("n", 2000) + "\": x}")[0].path.empty());
}

TEST_CASE("a text cut off after any byte is an error, never a crash or half a value") {
  const std::string whole =
      "{\"format\": {\"name\": \"x\", \"major\": 1},\r\n \"axes\": [{\"lead\": \"5 mm\\u00b7\\n\","
      " \"\u03c6\": [true, false, null, -1.5e-3, \"\U0001D11E\"], \"e\": {}, \"f\": []}]}";
  REQUIRE(read_json(whole).has_value());
  for (std::size_t size = 0; size < whole.size(); ++size) {
    INFO(size);
    const auto errors = errors_of(std::string_view(whole).substr(0, size));
    REQUIRE(errors.size() == 1);
    CHECK((errors[0].fault == Fault::unfinished || errors[0].fault == Fault::empty ||
           errors[0].fault == Fault::not_utf8));
  }
}

TEST_CASE("a text with any one byte changed gives a value or an error with a place") {
  const std::string whole = "{\"a\": [1.5, \"\u03c6\\n\", true, null], \"b\": {\"c\": -2e3}}\n";
  for (std::size_t at = 0; at < whole.size(); ++at) {
    for (int byte = 0; byte < 256; ++byte) {
      std::string changed = whole;
      changed[at] = static_cast<char>(byte);
      const auto node = read_json(changed);
      if (node) {
        REQUIRE(node->end <= changed.size());
      } else {
        REQUIRE_FALSE(node.error().empty());
        REQUIRE(node.error()[0].line <= 3);
        REQUIRE(node.error()[0].column <= changed.size() + 1);
      }
    }
  }
}

TEST_CASE("numbers are read alike whatever the locale's decimal sign") {
  const std::string before = std::setlocale(LC_ALL, nullptr);
  int tried = 0;
  for (const char* name : {"de_DE.UTF-8", "de_CH.UTF-8", "ps_AF.UTF-8", "fa_IR.UTF-8", "C.UTF-8"}) {
    if (std::setlocale(LC_ALL, name) != nullptr) {
      ++tried;
      const auto node = read_json("[1.5, -2.25e-3, 0.1]");
      const bool overflow_seen = errors_of("[1.5e400]").size() == 1;
      std::setlocale(LC_ALL, before.c_str());
      INFO(name);
      REQUIRE(node.has_value());
      CHECK(node->items[0].number == 1.5);
      CHECK(node->items[1].number == -0.00225);
      CHECK(node->items[2].number == 0.1);
      CHECK(overflow_seen);
    }
  }
  if (tried < 2) {
    WARN("no locale with another decimal sign is installed: checked under the C locale only");
  }
}
