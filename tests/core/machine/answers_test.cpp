// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"
#include "support/axes.h"

#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <catch2/catch.hpp>

using namespace feedwright;
using feedwright::testing::ordinary_router;

namespace {

Answer covered() {
  return {AnswerTo::finding,
          "long_open_screw",
          "drive",
          "Covered by bellows.\n\"Both\" ends.",
          "900 mm",
          "",
          {}};
}

Machine answered() {
  Machine machine = ordinary_router();
  machine.axes.front().answers = {
      covered(), {AnswerTo::limit, "whip", "", "trial runs only", "3 m/min", "2.9 m/min", {}}};
  machine.answers = {{AnswerTo::limit, "supply_power", "", "never all at once", "", "", {}}};
  return machine;
}

bool fits_schema(const std::string& text) {
  const nlohmann::json schema_text = nlohmann::json::parse(machine_schema());
  const nlohmann::json document = nlohmann::json::parse(text);
  valijson::Schema schema;
  valijson::SchemaParser parser;
  parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(schema_text), schema);
  valijson::Validator validator;
  return validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(document), nullptr);
}

/// The answered machine's file with its first answer put in another way.
std::string with_answers(const nlohmann::ordered_json& answers) {
  auto document = nlohmann::ordered_json::parse(write_machine(ordinary_router()));
  document["axes"][0]["answers"] = answers;
  return document.dump();
}

Fault fault_in(const std::string& text) {
  const auto read = read_machine(text);
  REQUIRE_FALSE(read);
  REQUIRE(read.error().size() == 1);
  return read.error().front();
}

} // namespace

TEST_CASE("answers of axis and machine survive writing and reading, with their lines") {
  const std::string text = write_machine(answered());
  const auto read = read_machine(text);
  REQUIRE(read);
  CHECK(read->axes.front().answers == answered().axes.front().answers);
  CHECK(read->answers == answered().answers);
  CHECK(write_machine(*read) == text);
  CHECK(fits_schema(text));
}

TEST_CASE("only a machine with answers is written in the format that has them") {
  const auto minor = [](const Machine& machine) {
    return nlohmann::json::parse(write_machine(machine)).at("format").at("minor").get<int>();
  };
  CHECK(minor(ordinary_router()) == 0);
  CHECK(minor(answered()) == 1);
  Machine machine = answered();
  machine.answers.clear();
  CHECK(minor(machine) == 1);
  machine.axes.front().answers.clear();
  CHECK(minor(machine) == 0);
  CHECK(read_machine(write_machine(answered()))->newer_minor == 0);
}

TEST_CASE("what an answer says that is not known here is kept byte for byte") {
  const std::string text = with_answers({{{"finding", "hums_in_b_flat"},
                                          {"part", "bellows"},
                                          {"note", "we like it"},
                                          {"by", {1, 2}}}});
  const auto read = read_machine(text);
  REQUIRE(read);
  const Answer& answer = read->axes.front().answers.front();
  CHECK(answer.code == "hums_in_b_flat");
  REQUIRE(answer.unknown.size() == 1);
  CHECK(answer.unknown.front() == std::pair<std::string, std::string>("by", "[1,2]"));
  const auto again = read_machine(write_machine(*read));
  REQUIRE(again);
  CHECK(again->axes.front().answers == read->axes.front().answers);
}

TEST_CASE("broken answers are refused with their place") {
  CHECK(fault_in(with_answers("none")).code == FaultCode::wrong_type);
  CHECK(fault_in(with_answers("none")).path == "axes[0].answers");
  const auto place = [](const nlohmann::ordered_json& answer) {
    const Fault fault = fault_in(with_answers(nlohmann::ordered_json::array({answer})));
    CHECK(fault.line > 0);
    return fault;
  };
  CHECK(place(7).path == "axes[0].answers[0]");
  CHECK(place({{"note", "why"}}).code == FaultCode::answer_to_nothing);
  CHECK(place({{"finding", "a"}, {"limit", "b"}, {"note", "why"}}).code ==
        FaultCode::answer_to_nothing);
  CHECK(place({{"limit", "whip"}}).code == FaultCode::missing_member);
  CHECK(place({{"limit", "whip"}}).path == "axes[0].answers[0].note");
  CHECK(place({{"finding", "near_whip"}, {"note", "why"}}).path == "axes[0].answers[0].part");
  CHECK(place({{"limit", "whip"}, {"note", 5}}).code == FaultCode::wrong_type);
  CHECK(place({{"limit", nullptr}, {"note", "why"}}).code == FaultCode::wrong_type);
}

TEST_CASE("answers longer or more than can be meant are refused") {
  const auto noted = [](std::size_t length) {
    return with_answers({{{"limit", "whip"}, {"note", std::string(length, 'a')}}});
  };
  CHECK(read_machine(noted(longest_answer)));
  CHECK(fault_in(noted(longest_answer + 1)).code == FaultCode::answer_too_long);
  auto many = nlohmann::ordered_json::array();
  for (std::size_t i = 0; i <= most_answers; ++i) {
    many.push_back({{"limit", "whip"}, {"note", "why"}});
  }
  CHECK(fault_in(with_answers(many)).code == FaultCode::too_many_answers);
}

TEST_CASE("a new answer to the same thing takes the old one's place") {
  std::vector<Answer> answers{covered()};
  answers.front().unknown = {{"by", "1"}};
  Answer other = covered();
  other.note = "a cover of sheet steel";
  set_answer(answers, other);
  REQUIRE(answers.size() == 1);
  CHECK(answers.front().note == other.note);
  CHECK(answers.front().unknown.size() == 1);
  other.part = "transmission";
  set_answer(answers, other);
  CHECK(answers.size() == 2);
  CHECK(find_answer(answers, AnswerTo::limit, "long_open_screw", "drive") == nullptr);
  CHECK(remove_answer(answers, AnswerTo::finding, "long_open_screw", "drive"));
  CHECK_FALSE(remove_answer(answers, AnswerTo::finding, "long_open_screw", "drive"));
  CHECK(answers.size() == 1);
}
