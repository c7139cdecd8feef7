// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"
#include "support/axes.h"
#include "text/words.h"

#include <catch2/catch.hpp>

using namespace feedwright;

namespace {

std::string sentences_of(const std::string& text) {
  const auto read = read_machine(text);
  REQUIRE_FALSE(read);
  std::string all;
  for (const Fault& fault : read.error()) {
    all += words::fault_text(fault).toStdString() + "\n";
  }
  return all;
}

std::string respelt(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  INFO(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

std::string router() {
  return write_machine(feedwright::testing::ordinary_router());
}

} // namespace

TEST_CASE("each thing wrong with a file is a sentence with line, path, what was found and wanted") {
  using Catch::Contains;
  CHECK_THAT(sentences_of(respelt(router(), "\"lead\": \"5 mm\"", "\"lead\": \"5 kg\"")),
             Contains("axes[0].drive.lead") && Contains("Line ") &&
                 Contains("\"5 kg\" is a mass; lead is a length, such as 5 mm."));
  CHECK_THAT(sentences_of(respelt(router(), "\"lead\": \"5 mm\"", "\"lead\": \"-5 mm\"")),
             Contains("more than zero"));
  CHECK_THAT(sentences_of(respelt(router(), "\"lead\": \"5 mm\"", "\"lead\": []")),
             Contains("a list") && Contains("a text in quotes"));
  CHECK_THAT(sentences_of(respelt(router(), "\"lead\": \"5 mm\",", "")), Contains("missing"));
  CHECK_THAT(sentences_of(respelt(router(), "\"thread\": \"ball\"", "\"thread\": \"bolt\"")),
             Contains("\"bolt\"") && Contains("\"trapezoidal\""));
  CHECK_THAT(sentences_of(respelt(router(), "\"belt_teeth\": 80", "\"belt_teeth\": 8000000")),
             Contains("8000000") && Contains("20000"));
  CHECK_THAT(sentences_of(respelt(router(), "\"travel\": \"750 mm\"", "\"travel\": \"950 mm\"")),
             Contains("shorter than the screw"));
  CHECK_THAT(sentences_of("{"), Contains("too early"));
  CHECK_THAT(sentences_of(""), Contains("empty"));
  CHECK_THAT(sentences_of("{}"), Contains("feedwright machine"));
  CHECK_THAT(sentences_of("\xff"), Contains("UTF-8"));
  CHECK_THAT(sentences_of(respelt(router(), "\"major\": 2", "\"major\": 3")), Contains("newer"));
  CHECK_THAT(sentences_of(respelt(router(), "\"name\": \"Ordinary router\"",
                                  "\"name\": \"a\", \"name\": \"b\"")),
             Contains("second time"));
}

TEST_CASE("all faults of a file are told, not only the first") {
  std::string text = respelt(router(), "\"lead\": \"5 mm\"", "\"lead\": \"5 kg\"");
  text = respelt(text, "\"mass\": \"20 kg\"", "\"mass\": \"heavy\"");
  text = respelt(text, "\"motor_end\": \"fixed\"", "\"motor_end\": \"glued\"");
  const std::string told = sentences_of(text);
  CHECK_THAT(told, Catch::Contains("lead") && Catch::Contains("mass") && Catch::Contains("glued"));
}

TEST_CASE("no sentence on a fault leaves a place unfilled") {
  for (int code = 0; code <= static_cast<int>(FaultCode::load_case_without_thrust); ++code) {
    Fault fault;
    fault.code = static_cast<FaultCode>(code);
    fault.path = "axes[0].drive.lead";
    fault.line = 3;
    fault.found = "string";
    fault.wanted = "number";
    const QString text = words::fault_text(fault);
    INFO(text.toStdString());
    CHECK(text.endsWith(QLatin1Char('.')));
    CHECK_FALSE(text.contains(QLatin1Char('%')));
  }
}
