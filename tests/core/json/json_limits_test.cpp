// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/read_json.h"

#include <catch2/catch.hpp>

#include <chrono>

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

} // namespace

TEST_CASE("each limit lets its own size pass and refuses one more") {
  const auto nested = [](std::size_t depth) { return repeated("[", depth) + repeated("]", depth); };
  CHECK(errors_of(nested(64)).empty());
  CHECK(errors_of(nested(65))[0] ==
        JsonError{Fault::too_deep, 1, 65, "[", [] { return repeated("/0", 64); }()});
  CHECK(errors_of("[" + repeated("0,", 199'998) + "0]").empty());
  CHECK(errors_of("[" + repeated("0,", 199'999) + "0]")[0].fault == Fault::too_many_values);
  CHECK(errors_of("[" + repeated("[],", 199'999) + "[]]")[0].fault == Fault::too_many_values);
  CHECK(errors_of("\"" + repeated("x", 65'536) + "\"").empty());
  CHECK(errors_of("\"" + repeated("x", 65'537) + "\"")[0].fault == Fault::text_too_long);
  CHECK(errors_of("{\"" + repeated("x", 65'537) + "\":1}")[0].fault == Fault::text_too_long);
  CHECK(errors_of("[0." + repeated("1", 65'537) + "]")[0].fault == Fault::text_too_long);
  const std::size_t most = std::size_t{8} << 20U;
  CHECK(errors_of("1" + repeated(" ", most - 1)).empty());
  CHECK(errors_of("1" + repeated(" ", most))[0].fault == Fault::too_large);
}

TEST_CASE("huge hostile texts are refused in bounded time") {
  const std::size_t million = 1'000'000;
  std::string names = "{";
  for (int i = 0; i < 190'000; ++i) {
    names += "\"common prefix of a name " + std::to_string(i) + "\":0,";
  }
  const std::pair<std::string, Fault> rows[] = {
      {repeated("[", million), Fault::too_deep},
      {repeated("{\"a\":", million), Fault::too_deep},
      {repeated("[{\"a\":", million), Fault::too_deep},
      {"\"" + repeated("[", million) + "\"", Fault::text_too_long},
      {"\"" + repeated("\\\"", million), Fault::unfinished},
      {repeated("1", million), Fault::number_out_of_range},
      {"0." + repeated("0", million) + "1", Fault::text_too_long},
      {repeated(" ", million), Fault::empty},
      {repeated("\n", million) + "x", Fault::unreadable},
      {"[" + repeated("\n", 8 * million) + "x", Fault::unreadable},
      {"[" + repeated("0,", million), Fault::too_many_values},
      {"[" + repeated("{},", million), Fault::too_many_values},
      {"{" + repeated("\"a\":0,", million), Fault::duplicate_member},
      {names, Fault::unfinished},
      {repeated("\u03c6", million), Fault::unreadable},
      {repeated("\xff", million), Fault::not_utf8},
      {std::string(million, '\0'), Fault::unreadable},
  };
  for (const auto& [source, fault] : rows) {
    INFO(source.substr(0, 40));
    const auto start = std::chrono::steady_clock::now();
    const auto errors = errors_of(source);
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    REQUIRE_FALSE(errors.empty());
    CHECK(static_cast<int>(errors[0].fault) == static_cast<int>(fault));
    CHECK(errors[0].found.size() <= 240);
    CHECK(taken.count() < 5.0);
  }
}
