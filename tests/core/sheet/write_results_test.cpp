// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/write_results.h"
#include "sizing/size_axis.h"
#include "support/axes.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;

namespace {

std::string written(const Machine& machine) {
  std::vector<AxisResults> results;
  for (const Axis& axis : machine.axes) {
    results.push_back(size_axis(machine, axis));
  }
  return write_results(machine, results, {"router.json", "0123456789abcdef", "2026-05-01"});
}

nlohmann::json first_axis(const Machine& machine) {
  return nlohmann::json::parse(written(machine)).at("axes").at(0);
}

} // namespace

TEST_CASE("the results as JSON have every result and every limit, open or not") {
  Machine machine = ordinary_router();
  machine.axes.front().targets = Targets();
  const nlohmann::json axis = first_axis(machine);
  for (const ResultDescriptor& result : result_descriptors()) {
    CHECK(axis.at("results").contains(std::string(result.name)));
  }
  CHECK(axis.at("results").size() == result_descriptors().size());
  for (const LimitDescriptor& limit : limit_descriptors()) {
    CHECK(axis.at("limits").contains(std::string(limit.name)));
  }
}

TEST_CASE("a result stands in SI and in its usual unit") {
  const nlohmann::json whip = first_axis(ordinary_router()).at("results").at("whip_allowed_speed");
  CHECK(whip.at("si_unit") == "rad/s");
  CHECK(whip.at("unit") == "rpm");
  // 1 rpm is 2π/60 rad/s by definition
  CHECK(whip.at("value").get<double>() ==
        Approx(whip.at("si").get<double>() * 30.0 / pi).epsilon(1e-12));
}

TEST_CASE("results are given in the units the file speaks in") {
  Machine machine = ordinary_router();
  const AnyQuantity feed{Kind::velocity, 120.0 * 0.0254 / 60.0};
  const AnyQuantity span{Kind::length, 36.0 * 0.0254};
  REQUIRE(set_field(machine, 0, PartSlot::targets, "feed", feed, {"120 in/min", Origin::entered}));
  REQUIRE(set_field(machine, 0, PartSlot::drive, "span", span, {"36 in", Origin::entered}));
  const nlohmann::json results = first_axis(machine).at("results");
  const nlohmann::json& whip = results.at("whip_feed");
  CHECK(whip.at("unit") == "in/min");
  // 1 in is 0.0254 m exactly (international agreement of 1959)
  CHECK(whip.at("value").get<double>() ==
        Approx(whip.at("si").get<double>() * 60.0 / 0.0254).epsilon(1e-12));
  CHECK(results.at("resolution").at("unit") == "in");
  CHECK(results.at("whip_speed").at("unit") == "rpm");
}

TEST_CASE("a lead or travel per angle is written in its two units") {
  const nlohmann::json travel = first_axis(ordinary_router()).at("results").at("screw_travel");
  CHECK(travel.at("si_unit") == "m/rad");
  // lead/2π, 5 mm
  CHECK(travel.at("si").get<double>() == Approx(0.005 / (2.0 * pi)).epsilon(1e-12));
  CHECK(travel.at("value").get<double>() == Approx(5.0 / (2.0 * pi)).epsilon(1e-12));
}

TEST_CASE("an open limit names the part and field it waits for") {
  Machine machine = ordinary_router();
  machine.controller.step_rate_limit.reset();
  const nlohmann::json limit = first_axis(machine).at("limits").at("step_rate");
  CHECK(limit.at("verdict") == "open");
  CHECK(limit.at("margin").is_null());
  CHECK(limit.at("missing").at("part") == "controller");
  CHECK(limit.at("missing").at("member") == "step_rate_limit");
}

TEST_CASE("the same machine gives the same bytes") {
  CHECK(written(ordinary_router()) == written(ordinary_router()));
}

TEST_CASE("an axis whose limits are passed says over") {
  Machine machine = ordinary_router();
  CHECK(first_axis(machine).at("over") == false);
  machine.axes.front().targets.feed = Positive<Velocity>::of(60_m_per_min);
  const nlohmann::json axis = first_axis(machine);
  CHECK(axis.at("over") == true);
  CHECK(axis.at("limits").at("whip").at("verdict") == "over");
  CHECK(axis.at("limits").at("whip").at("margin").get<double>() < 1.0);
  CHECK_FALSE(axis.at("findings").empty());
}

TEST_CASE("names and text of the machine are written as JSON strings whatever they hold") {
  Machine machine = ordinary_router();
  machine.name = "\"plank\"\n\\router <b>";
  const auto parsed = nlohmann::json::parse(written(machine));
  CHECK(parsed.at("machine") == machine.name);
}

TEST_CASE("what all axes ask at once stands beside the axes") {
  Machine machine = ordinary_router();
  machine.axes.push_back(machine.axes.front());
  machine.axes.back().basics.letter = "Y";
  machine.supply.capacitance = Positive<Capacitance>::of(500_uF);
  machine.supply.voltage_limit = Positive<Voltage>::of(49_V);
  const auto parsed = nlohmann::json::parse(written(machine));
  const nlohmann::json& together = parsed.at("together");
  CHECK(together.at("motors") == 2);
  CHECK(together.at("over") == true);
  const nlohmann::json& bus = together.at("limits").at("bus_voltage");
  CHECK(bus.at("verdict") == "over");
  CHECK(bus.at("reached").at("si").get<double>() > bus.at("single").at("si").get<double>());
  CHECK(bus.at("allowed").at("value") == 49.0);
  CHECK(together.at("findings").at(0).at("code") == "bus_over_limit");
  CHECK(together.at("axes").size() == 2);
  CHECK(together.at("diagonals").at(0).at("axes") == nlohmann::json({"X", "Y"}));
}

TEST_CASE("an answer is told with its axis, and whether its figures still hold") {
  Machine machine = ordinary_router();
  machine.axes.front().targets.feed = Positive<Velocity>::of(16_m_per_min);
  machine.axes.front().answers = {
      {AnswerTo::finding, "long_open_screw", "drive", "covered", "900 mm", "", {}},
      {AnswerTo::limit, "whip", "", "trials only", "1 m/min", "2 m/min", {}},
      {AnswerTo::finding, "slack_belt", "drive", "long gone", "", "", {}}};
  const nlohmann::json answers = first_axis(machine).at("answers");
  REQUIRE(answers.size() == 3);
  for (const nlohmann::json& answer : answers) {
    if (answer.contains("limit")) {
      CHECK(answer.at("stands") == false);
    } else if (answer.at("finding") == "long_open_screw") {
      CHECK(answer.at("note") == "covered");
      CHECK(answer.at("stands") == true);
    } else {
      CHECK(answer.at("stands").is_null());
    }
  }
  CHECK(first_axis(ordinary_router()).at("answers").empty());
}
