// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/read_json.h"
#include "json/write_json.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>

#include <bit>
#include <csignal>
#include <functional>
#include <random>

namespace {

using namespace feedwright;

std::string written(const std::function<void(JsonWriter&)>& steps) {
  JsonWriter writer;
  steps(writer);
  return std::move(writer).finish();
}

/// Runs the steps in a child and says whether an assertion stopped it.
bool aborts(const std::function<void(JsonWriter&)>& steps) {
  const pid_t child = fork();
  if (child == 0) {
    std::signal(SIGABRT, SIG_DFL);
    const rlimit no_core{0, 0};
    setrlimit(RLIMIT_CORE, &no_core);
    close(STDERR_FILENO);
    written(steps);
    _exit(0);
  }
  int status = 0;
  waitpid(child, &status, 0);
  return WIFSIGNALED(status) && WTERMSIG(status) == SIGABRT;
}

} // namespace

TEST_CASE("the canonical text has one member a line, two spaces and a final newline") {
  const std::string text = written([](JsonWriter& w) {
    w.begin_object();
    w.member("name").value("Gantry router");
    w.member("count").value(2).member("big").value(std::uint64_t{18446744073709551615U});
    w.member("share").value(0.1).member("on").value(true).member("none").null();
    w.member("points").begin_array();
    w.begin_array().value("300 rpm").value("1.9 N\u00b7m").end_array();
    w.begin_array().value("600 rpm").value("1.2 N\u00b7m").end_array();
    w.end_array();
    w.member("empty").begin_object().end_object().member("list").begin_array().end_array();
    w.member("axes").begin_array().begin_object().member("letter").value("X").end_object();
    w.end_array().end_object();
  });
  CHECK(text == R"({
  "name": "Gantry router",
  "count": 2,
  "big": 18446744073709551615,
  "share": 0.1,
  "on": true,
  "none": null,
  "points": [
    ["300 rpm", "1.9 N·m"],
    ["600 rpm", "1.2 N·m"]
  ],
  "empty": {},
  "list": [],
  "axes": [
    {
      "letter": "X"
    }
  ]
}
)");
}

TEST_CASE("an array of scalars stays on its line up to 100 columns and no further") {
  const auto with = [](std::size_t length) {
    return written([&](JsonWriter& w) {
      w.begin_object().member("\u03c6").begin_array();
      w.value(std::string(length, 'x')).value(1).end_array().end_object();
    });
  };
  // two spaces, "φ": [ (6), the quotes (2), ", 1" (3), "]" and a comma to come: 15 and the text
  CHECK(with(85) == "{\n  \"\u03c6\": [\"" + std::string(85, 'x') + "\", 1]\n}\n");
  CHECK(with(86) == "{\n  \"\u03c6\": [\n    \"" + std::string(86, 'x') + "\",\n    1\n  ]\n}\n");
}

TEST_CASE("scalars and containers mixed in an array all stand on their own lines") {
  CHECK(written([](JsonWriter& w) {
          w.begin_array().value(1).null().begin_object().end_object().value("x").end_array();
        }) == "[\n  1,\n  null,\n  {},\n  \"x\"\n]\n");
}

TEST_CASE("a lone scalar is a whole text") {
  CHECK(written([](JsonWriter& w) { w.value(false); }) == "false\n");
  CHECK(written([](JsonWriter& w) { w.value(std::string("a")); }) == "\"a\"\n");
}

TEST_CASE("strings are escaped no more than needed and read back the same") {
  CHECK(json_string("a\"b\\c/d\u00e9\u03c6\U0001D11E\x7f") ==
        "\"a\\\"b\\\\c/d\u00e9\u03c6\U0001D11E\x7f\"");
  CHECK(json_string(std::string("\b\f\n\r\t\x01\x1f\0", 8)) ==
        "\"\\b\\f\\n\\r\\t\\u0001\\u001f\\u0000\"");
  for (unsigned char c = 0; c < 0x80; ++c) {
    const std::string text = "a" + std::string(1, static_cast<char>(c)) + "z";
    CHECK(read_json(json_string(text))->text == text);
  }
  CHECK(json_string("a\xe4z\xC3") == "\"a\uFFFDz\uFFFD\"");
}

TEST_CASE("a number is written as short as it can be and reads back to the same bits") {
  CHECK(json_number_text(5.0) == "5");
  CHECK(json_number_text(0.1) == "0.1");
  CHECK(json_number_text(-0.0) == "-0");
  CHECK(json_number_text(1e23) == "1e+23");
  CHECK(json_number_text(5e-324) == "5e-324");
  std::mt19937_64 random(20240229);
  for (int i = 0; i < 20'000; ++i) {
    const auto number = std::bit_cast<double>(random());
    if (std::isfinite(number)) {
      const auto node = read_json(json_number_text(number));
      REQUIRE(node.has_value());
      REQUIRE(std::bit_cast<std::uint64_t>(node->number) == std::bit_cast<std::uint64_t>(number));
    }
  }
}

TEST_CASE("a kept slice survives byte for byte and the text is a fixed point") {
  const std::string source =
      "{\n  \"a\": 1,\n  \"later\": {\"x\" :  [1.50,\t-0],\n"
      "      \"y\": \"\\u00e9\"},\n  \"n\": 1.500,\n  \"l\": [1e2, \"\\/\"]\n}\n";
  const auto again = [](const std::string& text) {
    const JsonNode node = *read_json(text);
    return written([&](JsonWriter& w) {
      w.begin_object();
      for (const auto& [name, value] : node.members) {
        w.member(name).raw(std::string_view(text).substr(value.begin, value.end - value.begin));
      }
      w.end_object();
    });
  };
  CHECK(again(source) == source);
}

TEST_CASE("kept scalars share an array's line and kept containers do not") {
  CHECK(written([](JsonWriter& w) { w.begin_array().raw("1.50").raw("\"a\"").end_array(); }) ==
        "[1.50, \"a\"]\n");
  CHECK(written([](JsonWriter& w) { w.begin_array().raw("1").raw("[ ]").end_array(); }) ==
        "[\n  1,\n  [ ]\n]\n");
}

TEST_CASE("calls that make no whole JSON value are stopped") {
  CHECK_FALSE(aborts([](JsonWriter& w) { w.begin_object().member("a").value(1).end_object(); }));
  CHECK(aborts([](JsonWriter&) {}));
  CHECK(aborts([](JsonWriter& w) { w.begin_object(); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_object().end_array(); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_array().end_object(); }));
  CHECK(aborts([](JsonWriter& w) { w.end_object(); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_object().value(1).end_object(); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_object().begin_array().end_array().end_object(); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_object().member("a").end_object(); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_object().member("a").member("b"); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_array().member("a").value(1).end_array(); }));
  CHECK(aborts([](JsonWriter& w) { w.member("a"); }));
  CHECK(aborts([](JsonWriter& w) { w.value(1).value(2); }));
  CHECK(aborts([](JsonWriter& w) { w.begin_array().end_array().begin_array().end_array(); }));
  CHECK(aborts([](JsonWriter& w) { w.raw(""); }));
  CHECK(aborts([](JsonWriter& w) { w.value(std::numeric_limits<double>::infinity()); }));
}
