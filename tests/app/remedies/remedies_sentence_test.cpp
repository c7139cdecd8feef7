// SPDX-License-Identifier: GPL-3.0-or-later
#include "remedies/remedies_sentence.h"

#include "document/machine_document.h"
#include "support/machine_files.h"

#include <algorithm>

using namespace feedwright;

namespace {

/// Of an axis on which nothing is to be said.
AxisResults calm() {
  AxisResults made;
  for (Limit& limit : made.limits) {
    limit.verdict = Verdict::clear;
  }
  return made;
}

const Finding grave{FindingCode::axis_can_fall, PartSlot::drive, std::nullopt, std::nullopt};
const Finding whipping{FindingCode::near_whip, PartSlot::drive, std::nullopt, std::nullopt};
const Finding slight{FindingCode::preset_figures, PartSlot::drive, std::nullopt, std::nullopt};

} // namespace

TEST_CASE("an axis without a limit in trouble is not called well while it is in danger or open") {
  AxisResults results = calm();
  results.findings = {slight};
  CHECK(sentence_on_calm(results) == QStringLiteral("Nothing is over or close."));
  results.limits[0].verdict = results.limits[1].verdict = results.limits[2].verdict = Verdict::open;
  results.limits[2].applies = false;
  CHECK(sentence_on_calm(results).contains(QStringLiteral("2 limits")));
  results.findings.push_back(grave);
  CHECK(sentence_on_calm(results).contains(QStringLiteral("danger")));
}

TEST_CASE("of a machine the axes in trouble are named, or else that one is in danger") {
  const Machine machine = testing::sample("plank-router");
  REQUIRE(machine.axes.size() >= 2);
  std::vector<AxisResults> results(machine.axes.size(), calm());
  CHECK_FALSE(sentence_on_machine(machine, results).contains(QStringLiteral("danger")));
  results[0].findings = {grave};
  CHECK(sentence_on_machine(machine, results).contains(QStringLiteral("danger")));
  MachineDocument document(machine);
  results[1] = document.results()[0];
  REQUIRE_FALSE(limits_in_trouble(results[1]).empty());
  const QString letter = QString::fromStdString(machine.axes[1].basics.letter);
  CHECK(sentence_on_machine(machine, results)
            .startsWith(QStringLiteral("A limit is over or close on %1.").arg(letter)));
}

TEST_CASE("a danger comes before the remedies of a limit unless they take it away") {
  MachineDocument document(testing::sample("plank-router"));
  AxisResults results = document.results()[0];
  const auto sentence = [&](LimitId limit, const std::vector<Finding>& findings) {
    results.findings = findings;
    return sentence_on_limit({document.machine(), 0, results, limit, {}, document.units()}, true);
  };
  const auto is_warned = [](const QString& text) {
    return text.startsWith(QStringLiteral("See to the danger"));
  };
  const LimitId other = LimitId::motor_torque;
  REQUIRE(results.limit(LimitId::whip).wanted);
  REQUIRE(results.limit(other).wanted);
  CHECK(is_warned(sentence(other, {slight, whipping})));
  CHECK_FALSE(is_warned(sentence(LimitId::whip, {slight, whipping})));
  CHECK(is_warned(sentence(LimitId::whip, {slight, grave})));
  CHECK_FALSE(is_warned(sentence(other, {slight})));
}
