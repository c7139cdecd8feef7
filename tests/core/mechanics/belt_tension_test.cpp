// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_loop.h"
#include "mechanics/belt_tension.h"
#include "support/near.h"

#include <algorithm>
#include <vector>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

template <class Q>
Traced<Q> traced(const Q& value) {
  return {value, tracing::literal(si_value(value))};
}

/// Pulls of two springs of these lengths, both at the static pull, after the pulley between them
/// has turned until they differ by the rim force: found by bisection over the turn.
std::pair<double, double> sprung_pulls(double specific, double tight, double slack, double at_rest,
                                       double rim_force) {
  double low = 0.0, high = 1.0;
  for (int i = 0; i < 200; ++i) {
    const double turn = (low + high) / 2.0;
    const double difference = specific * turn / tight + specific * turn / slack;
    (difference < rim_force ? low : high) = turn;
  }
  return {at_rest + specific * low / tight, at_rest - specific * low / slack};
}

/// First tone of a string by shooting: the slope at one end runs to the first return to zero.
double shot_frequency(double pull, double mass, double length) {
  const auto end_height = [&](double frequency) {
    constexpr int steps = 20'000;
    const double h = length / steps;
    const double k = mass * std::pow(2.0 * pi * frequency, 2) / pull;
    double y = 0.0, slope = 1.0;
    for (int i = 0; i < steps; ++i) { // leap-frog
      slope -= k * y * h / 2.0;
      y += slope * h;
      slope -= k * y * h / 2.0;
    }
    return y;
  };
  double low = 1.0, high = 1.0;
  while (end_height(high) > 0.0) {
    low = high;
    high *= 1.1;
  }
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2.0;
    (end_height(middle) > 0.0 ? low : high) = middle;
  }
  return low;
}

} // namespace

TEST_CASE("the pulls of the two sides are those of two springs") {
  // independent computation: springs, bisection over the turn of the pulley
  for (const double tight : {0.1, 0.3, 1.7}) {
    for (const double slack : {0.1, 0.25, 0.9}) {
      const auto [pull_t, pull_s] = sprung_pulls(220000.0, tight, slack, 400.0, 260.0);
      const double share = tight_share(from_si<Length>(tight), from_si<Length>(slack));
      CHECK(near(tight_pull(400_N, 260_N, share), from_si<Force>(pull_t), 1e-9));
      CHECK(near(slack_pull(400_N, 260_N, share), from_si<Force>(pull_s), 1e-9));
    }
  }
}

TEST_CASE("the least static pull leaves the slack side at its margin") {
  for (const double share : {0.2, 0.5, 0.97}) {
    CHECK(std::abs(si_value(slack_pull(static_pull(300_N, share, 0.0), 300_N, share))) < 1e-12);
    const Force slack = slack_pull(static_pull(300_N, share, 0.25), 300_N, share);
    CHECK(near(slack, 0.25 * share * 300_N, 1e-12));
  }
}

TEST_CASE("shaft load is the sum of the span pulls as vectors") {
  // independent computation: components along the spans of a drawn loop
  const std::vector<LoopPulley> pulleys = {
      {0_mm, 0_mm, 30_mm, false}, {170_mm, 40_mm, 90_mm, false}, {60_mm, 160_mm, 50_mm, false}};
  const auto loop = belt_loop(pulleys);
  REQUIRE(loop);
  const Force before = 420_N, after = 130_N;
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const LoopSpan& in = loop->spans[(i + 2) % 3];
    const LoopSpan& out = loop->spans[i];
    const Force x = before * number((in.from.x - in.to.x) / in.length) +
                    after * number((out.to.x - out.from.x) / out.length);
    const Force y = before * number((in.from.y - in.to.y) / in.length) +
                    after * number((out.to.y - out.from.y) / out.length);
    const Angle wrap = loop->contacts[i].wrap;
    CHECK(near(shaft_load(before, after, wrap), Force(sqrt(x * x + y * y)), 1e-12));
    CHECK(near(shaft_load(before, before, wrap), static_shaft_load(before, wrap), 1e-12));
  }
}

TEST_CASE("the tone of a span is that of a string computed step by step") {
  // independent computation: shooting with 20 000 steps
  for (const double length : {0.08, 0.2, 0.9}) {
    for (const double pull : {40.0, 300.0}) {
      const Frequency shot = from_si<Frequency>(shot_frequency(pull, 0.0585, length));
      CHECK(near(span_frequency(from_si<Force>(pull), 0.0585_kg_per_m, from_si<Length>(length)),
                 shot, 1e-7));
    }
  }
  const Frequency tone = span_frequency(175_N, 0.05_kg_per_m, 230_mm);
  CHECK(near(pull_of_frequency(tone, 0.05_kg_per_m, 230_mm), 175_N, 1e-13));
}

TEST_CASE("stage stiffness is the second change of the belt's strain energy") {
  // independent computation: W = Σ ½ c (x/L)² L over both sides, second difference over x
  const double c = 220000.0, a = 0.17, b = 0.31, step = 1e-3;
  const auto energy = [&](double x) {
    return 0.5 * c * (x / a) * (x / a) * a + 0.5 * c * (x / b) * (x / b) * b;
  };
  const double curvature = (energy(step) - 2.0 * energy(0.0) + energy(-step)) / (step * step);
  const Stiffness k = belt_stiffness(220000_N, 170_mm, 310_mm);
  CHECK(near(k, from_si<Stiffness>(curvature), 1e-12));
  // at the shaft: the torque of a small turn over that turn
  const Length radius = 16_mm;
  const Angle turn = 1e-3_rad;
  const Torque torque = k * (per_radian(radius) * turn) * per_radian(radius);
  CHECK(near(stiffness_at_shaft(k, radius), TorsionalStiffness(torque / turn), 1e-12));
}

TEST_CASE("a hauled carriage is softest in the middle of its belt") {
  const Length belt = 2.4_m;
  const Stiffness middle = belt_stiffness(90000_N, belt / 2.0, belt / 2.0);
  CHECK(near(middle, from_si<Stiffness>(4.0 * 90000.0 / 2.4), 1e-13));
  for (const double share : {0.02, 0.2, 0.49, 0.51, 0.9}) {
    CHECK(belt_stiffness(90000_N, share * belt, (1.0 - share) * belt) > middle);
  }
}

TEST_CASE("belt tension runs alike on plain and on traced quantities") {
  const auto share = tight_share(traced(200_mm), traced(300_mm));
  CHECK(near(share.value, tight_share(200_mm, 300_mm)));
  const auto rest = static_pull(traced(250_N), share, traced(0.2));
  CHECK(near(rest.value, static_pull(250_N, 0.4, 0.2)));
  const auto tight = tight_pull(rest, traced(250_N), share);
  const auto slack = slack_pull(rest, traced(250_N), share);
  CHECK(near(tight.value, tight_pull(rest.value, 250_N, 0.4)));
  CHECK(near(slack.value, slack_pull(rest.value, 250_N, 0.4)));
  CHECK(near(shaft_load(tight, slack, traced(140_deg)).value,
             shaft_load(tight.value, slack.value, 140_deg)));
  CHECK(
      near(static_shaft_load(rest, traced(140_deg)).value, static_shaft_load(rest.value, 140_deg)));
  const auto tone = span_frequency(rest, traced(0.06_kg_per_m), traced(200_mm));
  CHECK(near(tone.value, span_frequency(rest.value, 0.06_kg_per_m, 200_mm)));
  CHECK(near(pull_of_frequency(tone, traced(0.06_kg_per_m), traced(200_mm)).value, rest.value));
  const auto stiffness = belt_stiffness(traced(90000_N), traced(200_mm), traced(300_mm));
  CHECK(near(stiffness.value, belt_stiffness(90000_N, 200_mm, 300_mm)));
  CHECK(stiffness.how->form == Expression::Form::multiply);
  CHECK(near(stiffness_at_shaft(stiffness, traced(16_mm)).value,
             stiffness_at_shaft(stiffness.value, 16_mm)));
}
