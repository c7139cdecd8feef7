// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/concerns.h"
#include "sizing/size_axis.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;

namespace {

Concerns concerns_in(const Machine& machine) {
  std::vector<AxisResults> results;
  for (const Axis& axis : machine.axes) {
    results.push_back(size_axis(machine, axis));
  }
  return concerns_of(machine, results, size_machine(machine, results));
}

/// Whips, on both of its axes, the second one more.
Machine whipping() {
  Machine machine = ordinary_router();
  machine.axes.front().targets.feed = Positive<Velocity>::of(16_m_per_min);
  machine.axes.push_back(machine.axes.front());
  machine.axes.back().basics.letter = "Y";
  machine.axes.back().targets.feed = Positive<Velocity>::of(22_m_per_min);
  return machine;
}

const Concern& first_finding(const Concerns& concerns, FindingCode code) {
  const auto found = std::ranges::find_if(concerns.list, [code](const Concern& concern) {
    return concern.finding && concern.finding->code == code;
  });
  REQUIRE(found != concerns.list.end());
  return *found;
}

void answer(Machine& machine, const Concern& concern, const char* note) {
  set_answer(answers_of(machine, concern.axis), answer_to(concern, note));
}

} // namespace

TEST_CASE("every finding has a weight of its own") {
  std::set<int> weights;
  constexpr int codes = static_cast<int>(FindingCode::axis_can_rise) + 1;
  for (int code = 0; code < codes; ++code) {
    weights.insert(weight_of(static_cast<FindingCode>(code)));
  }
  CHECK(weights.size() == codes);
  CHECK(*weights.rbegin() < codes);
}

TEST_CASE("over all axes the grave stands first, then limits by their margin, then the rest") {
  const Concerns concerns = concerns_in(whipping());
  REQUIRE(concerns.list.size() > 4);
  std::vector<int> ranks;
  double margin = 0.0;
  std::set<std::size_t> axes;
  for (const Concern& concern : concerns.list) {
    ranks.push_back(concern.finding ? (concern.grave ? 0 : 3)
                                    : (concern.verdict == Verdict::over ? 1 : 2));
    if (!concern.finding) {
      CHECK(*concern.margin >= margin);
      margin = *concern.margin;
    }
    if (concern.axis) {
      axes.insert(*concern.axis);
    }
  }
  CHECK(std::ranges::is_sorted(ranks));
  CHECK(ranks.front() == 0);
  CHECK(axes == std::set<std::size_t>{0, 1});
}

TEST_CASE("an answer stays while its figures move by less than a hundredth, and then it is told") {
  Machine machine = whipping();
  answer(machine, first_finding(concerns_in(machine), FindingCode::long_open_screw),
         "covered by bellows\nwith a steel lip");
  const auto standing = [&] {
    return first_finding(concerns_in(machine), FindingCode::long_open_screw).standing;
  };
  CHECK(standing() == AnswerStanding::stands);
  CHECK(machine.axes.front().answers.front().actual == "900 mm");
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(905_mm);
  CHECK(standing() == AnswerStanding::stands);
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(915_mm);
  CHECK(standing() == AnswerStanding::changed);
}

TEST_CASE("an answer is to one axis and one part only") {
  Machine machine = whipping();
  answer(machine, first_finding(concerns_in(machine), FindingCode::long_open_screw), "covered");
  int answered = 0;
  for (const Concern& concern : concerns_in(machine).list) {
    answered += concern.answer.has_value();
  }
  CHECK(answered == 1);
}

TEST_CASE("a limit's answer knows what was asked and what was allowed") {
  Machine machine = whipping();
  const Concerns before = concerns_in(machine);
  const auto whip = std::ranges::find_if(
      before.list, [](const Concern& concern) { return concern.limit == LimitId::whip; });
  REQUIRE(whip != before.list.end());
  answer(machine, *whip, "trial runs only");
  const auto standing = [&] {
    const Concerns now = concerns_in(machine);
    return std::ranges::find_if(now.list,
                                [&](const Concern& concern) {
                                  return concern.limit == LimitId::whip &&
                                         concern.axis == whip->axis;
                                })
        ->standing;
  };
  CHECK(standing() == AnswerStanding::stands);
  auto& feed = machine.axes[*whip->axis].targets.feed;
  feed = Positive<Velocity>::of(Velocity(**feed * 1.05));
  CHECK(standing() == AnswerStanding::changed);
}

TEST_CASE("an answer to what is no longer found is kept and told apart") {
  Machine machine = whipping();
  answer(machine, first_finding(concerns_in(machine), FindingCode::long_open_screw), "covered");
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(450_mm);
  machine.axes.front().basics.travel = Positive<Length>::of(300_mm);
  const Concerns concerns = concerns_in(machine);
  REQUIRE(concerns.idle.size() == 1);
  CHECK(concerns.idle.front().axis == std::size_t{0});
  CHECK(concerns.idle.front().answer.note == "covered");
}

TEST_CASE("an answer whose figures cannot be read counts as changed") {
  Machine machine = whipping();
  answer(machine, first_finding(concerns_in(machine), FindingCode::long_open_screw), "covered");
  for (const char* text : {"900 kg", "long", ""}) {
    machine.axes.front().answers.front().actual = text;
    CHECK(first_finding(concerns_in(machine), FindingCode::long_open_screw).standing ==
          AnswerStanding::changed);
  }
}

TEST_CASE("what all axes do together is answered with the machine") {
  Machine machine = whipping();
  machine.supply.capacitance = Positive<Capacitance>::of(100_uF);
  machine.supply.voltage_limit = Positive<Voltage>::of(50_V);
  const Concerns before = concerns_in(machine);
  const auto bus = std::ranges::find_if(before.list, [](const Concern& concern) {
    return concern.machine_limit == MachineLimitId::bus_voltage;
  });
  REQUIRE(bus != before.list.end());
  CHECK_FALSE(bus->axis);
  answer(machine, *bus, "a brake resistor is fitted");
  CHECK(machine.answers.size() == 1);
  CHECK(concerns_in(machine).idle.empty());
}
