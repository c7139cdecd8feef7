// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/read_json.h"

#include <catch2/catch.hpp>

#include <bit>
#include <cmath>

namespace {

using namespace feedwright;
using Type = JsonNode::Type;

JsonNode read(std::string_view source) {
  auto node = read_json(source);
  INFO(source);
  REQUIRE(node.has_value());
  return *node;
}

struct Place {
  std::size_t line;
  std::size_t column;
  std::string_view slice;
};

void check_place(const JsonNode& node, std::string_view source, Place wanted) {
  CHECK(node.line == wanted.line);
  CHECK(node.column == wanted.column);
  CHECK(source.substr(node.begin, node.end - node.begin) == wanted.slice);
}

void check_same_place_and_value(const JsonNode& whole, std::string_view source) {
  const std::string_view slice = source.substr(whole.begin, whole.end - whole.begin);
  const JsonNode alone = read(slice);
  CHECK(alone.type == whole.type);
  CHECK(alone.text == whole.text);
  CHECK(alone.number == whole.number);
  CHECK(alone.boolean == whole.boolean);
  CHECK(alone.items.size() == whole.items.size());
  CHECK(alone.members.size() == whole.members.size());
  std::size_t line = 1;
  std::size_t line_start = 0;
  for (std::size_t i = 0; i < whole.begin; ++i) {
    if (source[i] == '\n') {
      ++line;
      line_start = i + 1;
    }
  }
  std::size_t column = 1;
  for (std::size_t i = line_start; i < whole.begin; ++i) {
    column += (static_cast<unsigned char>(source[i]) >> 6U) != 2U ? 1 : 0;
  }
  CHECK(whole.line == line);
  CHECK(whole.column == column);
  for (const JsonNode& item : whole.items) {
    check_same_place_and_value(item, source);
  }
  for (const auto& [name, value] : whole.members) {
    check_same_place_and_value(value, source);
  }
}

} // namespace

TEST_CASE("every type of JSON value is read with its value") {
  const JsonNode node = read(R"({"n": null, "t": true, "f": false, "x": -12.5e1, "s": "5 mm",
                                 "a": [1, 2], "o": {"p": 3}})");
  REQUIRE(node.type == Type::object);
  CHECK(node.find("n")->type == Type::null);
  CHECK(node.find("t")->type == Type::boolean);
  CHECK(node.find("t")->boolean);
  CHECK(node.find("f")->type == Type::boolean);
  CHECK_FALSE(node.find("f")->boolean);
  CHECK(node.find("x")->number == -125.0);
  CHECK(node.find("x")->text == "-12.5e1");
  CHECK(node.find("s")->text == "5 mm");
  CHECK(node.find("a")->items.size() == 2);
  CHECK(node.find("o")->find("p")->number == 3.0);
  CHECK(node.find("q") == nullptr);
  CHECK(node.find("n")->find("q") == nullptr);
}

TEST_CASE("members keep the order of the source") {
  const JsonNode node = read(R"({"z":1,"a":2,"m":3,"":4})");
  REQUIRE(node.members.size() == 4);
  CHECK(node.members[0].first == "z");
  CHECK(node.members[1].first == "a");
  CHECK(node.members[2].first == "m");
  CHECK(node.members[3].first.empty());
}

TEST_CASE("a number keeps its spelling and its sign of zero") {
  for (const char* text :
       {"-0", "0", "1.50", "1E+2", "12345678901234567890123", "0e-400", "5e-324"}) {
    CHECK(read(text).text == text);
  }
  CHECK(std::signbit(read("-0").number));
  CHECK(std::signbit(read("[-0.0]").items[0].number));
  CHECK(read("9007199254740993").number == 9007199254740992.0);
}

TEST_CASE("decimals are read to the nearest double") {
  // Source: RFC 8785, appendix B, "Number Serialization Samples" (the rows from memory).
  const std::pair<std::uint64_t, const char*> rows[] = {
      {0x0000000000000001, "5e-324"},
      {0x8000000000000001, "-5e-324"},
      {0x7fefffffffffffff, "1.7976931348623157e+308"},
      {0xffefffffffffffff, "-1.7976931348623157e+308"},
      {0x4340000000000000, "9007199254740992"},
      {0x4430000000000000, "295147905179352830000"},
      {0x44b52d02c7e14af5, "9.999999999999997e+22"},
      {0x44b52d02c7e14af6, "1e+23"},
      {0x44b52d02c7e14af7, "1.0000000000000001e+23"},
      {0x444b1ae4d6e2ef4e, "999999999999999700000"},
      {0x444b1ae4d6e2ef50, "1e+21"},
      {0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7"},
      {0x3eb0c6f7a0b5ed8d, "0.000001"},
      {0x41b3de4355555553, "333333333.3333332"},
      {0x41b3de4355555557, "333333333.33333343"},
      {0xbecbf647612f3696, "-0.0000033333333333333333"},
  };
  for (const auto& [bits, text] : rows) {
    INFO(text);
    CHECK(std::bit_cast<std::uint64_t>(read(text).number) == bits);
  }
}

TEST_CASE("escapes become the characters they stand for") {
  CHECK(read(R"("\"\\\/\b\f\n\r\t")").text == "\"\\/\b\f\n\r\t");
  // Source: RFC 8259, section 7: the G clef, U+1D11E, as a surrogate pair.
  CHECK(read(R"("\uD834\uDD1E")").text == "\U0001D11E");
  CHECK(read(R"("\u00b7 \u03c6")").text == "\u00b7 \u03c6");
  CHECK(read(R"("a\u0000b")").text == std::string("a\0b", 3));
}

TEST_CASE("the published examples of objects and arrays are read") {
  // Source: RFC 8259, section 13, both examples.
  const JsonNode object = read(R"({"Image": {"Width": 800, "Height": 600,
    "Title": "View from 15th Floor",
    "Thumbnail": {"Url": "http://www.example.com/image/481989943", "Height": 125, "Width": 100},
    "Animated": false, "IDs": [116, 943, 234, 38793]}})");
  CHECK(object.find("Image")->find("Thumbnail")->find("Height")->number == 125.0);
  CHECK(object.find("Image")->find("IDs")->items[3].number == 38793.0);
  const JsonNode array = read(R"([{"precision": "zip", "Latitude": 37.7668,
    "Longitude": -122.3959, "Zip": "94107"}, {"Latitude": 37.371991}])");
  CHECK(array.items[0].find("Longitude")->number == -122.3959);
}

TEST_CASE("a value knows its line, column and slice") {
  const std::string_view source = "{\n"
                                  "  \"a\": 12,\n"
                                  "  \"b\" :\ttrue ,\n"
                                  "  \"\u03c6\u00b7\": \"1.9 N\u00b7m\", \"c\": 7\n"
                                  ",\"d\": [], \"e\":{ },\"f\":[{},[[]],null]\n"
                                  "}\n";
  const JsonNode node = read(source);
  check_place(node, source, {1, 1, source.substr(0, source.size() - 1)});
  check_place(*node.find("a"), source, {2, 8, "12"});
  check_place(*node.find("b"), source, {3, 9, "true"});
  check_place(*node.find("\u03c6\u00b7"), source, {4, 9, "\"1.9 N\u00b7m\""});
  check_place(*node.find("c"), source, {4, 25, "7"});
  check_place(*node.find("d"), source, {5, 7, "[]"});
  check_place(*node.find("e"), source, {5, 15, "{ }"});
  check_place(*node.find("f"), source, {5, 23, "[{},[[]],null]"});
  check_place(node.find("f")->items[0], source, {5, 24, "{}"});
  check_place(node.find("f")->items[1].items[0], source, {5, 28, "[]"});
  check_place(node.find("f")->items[2], source, {5, 32, "null"});
}

TEST_CASE("a lone value knows its slice up to the end of the text") {
  for (const char* text : {"1", "-0.5e3", "true", "null", "\"a\\\"b\"", "[]", "{}"}) {
    const JsonNode node = read(text);
    CHECK(node.begin == 0);
    CHECK(node.end == std::string_view(text).size());
  }
}

TEST_CASE("lines end alike with LF and with CR LF") {
  const std::string_view source = "[1\r\n,2,\r\n\r\n \"x\\\\\",3\r\n]";
  const JsonNode node = read(source);
  check_place(node.items[0], source, {1, 2, "1"});
  check_place(node.items[1], source, {2, 2, "2"});
  check_place(node.items[2], source, {4, 2, "\"x\\\\\""});
  check_place(node.items[3], source, {4, 8, "3"});
}

TEST_CASE("every value's slice is that value and stands where it says") {
  const std::string pieces[] = {"null",
                                "false",
                                "-1.5e-3",
                                "\"\\u00e9\\\\\\\"]\"",
                                "[ ]",
                                "{}",
                                "\"\u00e9\U0001D11E,:\"",
                                "0",
                                "{\"a\":[1,{\"b\":\"}\"}]}"};
  const std::string gaps[] = {"", " ", "\n", "\r\n\t", " \n  "};
  for (const std::string& gap : gaps) {
    std::string array = gap + "[";
    std::string object = "{";
    for (const std::string& piece : pieces) {
      array += gap + piece + gap + ",";
      object += gap + "\"\u03bb" + std::to_string(object.size()) + "\"" + gap + ":" + gap + piece +
                gap + ",";
    }
    const std::string source = array + gap + object.substr(0, object.size() - 1) + "}" + gap + "]";
    check_same_place_and_value(read(source), source);
  }
}

TEST_CASE("a byte order mark at the start is dropped and offsets still count it") {
  const std::string_view source = "\xEF\xBB\xBF{\"a\": 1}";
  const JsonNode node = read(source);
  CHECK(node.begin == 3);
  check_place(node, source, {1, 1, "{\"a\": 1}"});
  check_place(*node.find("a"), source, {1, 7, "1"});
}
