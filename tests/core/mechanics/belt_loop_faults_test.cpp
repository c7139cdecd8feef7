// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_geometry.h"
#include "mechanics/belt_loop.h"
#include "support/near.h"

#include <cmath>
#include <limits>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

using Pulleys = std::vector<LoopPulley>;

LoopPulley inside(double x_mm, double y_mm, double diameter_mm) {
  return {from_si<Length>(x_mm * 1e-3), from_si<Length>(y_mm * 1e-3),
          from_si<Length>(diameter_mm * 1e-3), false};
}

LoopPulley back(double x_mm, double y_mm, double diameter_mm) {
  LoopPulley p = inside(x_mm, y_mm, diameter_mm);
  p.back_face = true;
  return p;
}

LoopFault fault_of(const Pulleys& pulleys) {
  const auto loop = belt_loop(pulleys);
  REQUIRE_FALSE(loop);
  return loop.error();
}

} // namespace

TEST_CASE("pulleys that just touch still make a loop") {
  const auto pair = belt_loop(Pulleys{inside(0, 0, 30), inside(25, 0, 20)});
  REQUIRE(pair);
  CHECK(near(pair->length, open_belt_length(30_mm, 20_mm, 25_mm), 1e-12));
  CHECK(belt_loop(Pulleys{inside(0, 0, 30), inside(120, 0, 30), back(14.4, 19.2, 18)}));
}

TEST_CASE("an idler that only grazes the belt changes nothing") {
  const auto bare = belt_loop(Pulleys{inside(0, 0, 40), inside(200, 0, 40)});
  const auto grazed = belt_loop(Pulleys{inside(0, 0, 40), inside(200, 0, 40), back(100, 30, 20)});
  REQUIRE((bare && grazed));
  CHECK(near(grazed->length, bare->length, 1e-14));
  CHECK(si_value(grazed->contacts[2].wrap) < 1e-12);
}

TEST_CASE("an idler presses on the span on whose side it stands, whichever way the order goes") {
  const auto above = belt_loop(Pulleys{inside(0, 0, 40), inside(200, 0, 40), back(100, 24, 20)});
  const auto below = belt_loop(Pulleys{inside(0, 0, 40), inside(200, 0, 40), back(100, -24, 20)});
  REQUIRE((above && below));
  CHECK(near(above->length, below->length, 1e-14));
  CHECK(above->contacts[2].to < above->contacts[2].from);
  CHECK(below->contacts[2].to > below->contacts[2].from);
}

TEST_CASE("too few and too many pulleys are no loop") {
  CHECK(fault_of({}).code == LoopFaultCode::too_few_pulleys);
  CHECK(fault_of({inside(0, 0, 20)}).code == LoopFaultCode::too_few_pulleys);
  Pulleys ring;
  for (int i = 0; i < 17; ++i) {
    ring.push_back(inside(300 * std::cos(2 * pi * i / 17), 300 * std::sin(2 * pi * i / 17), 20));
  }
  CHECK(fault_of(ring).code == LoopFaultCode::too_many_pulleys);
  ring.pop_back();
  CHECK(belt_loop(ring));
}

TEST_CASE("a pulley without a place or a size is named") {
  const double nan = std::nan("");
  const double infinite = std::numeric_limits<double>::infinity();
  for (const LoopPulley& bad : {inside(nan, 0, 20), inside(0, infinite, 20), inside(100, 0, nan),
                                inside(100, 0, 0), inside(100, 0, -5)}) {
    CHECK(fault_of({inside(0, 50, 20), bad}) == LoopFault{LoopFaultCode::not_finite, 1, 1});
  }
}

TEST_CASE("overlapping pulleys are named") {
  CHECK(fault_of({inside(0, 0, 30), inside(24.9, 0, 20)}) ==
        LoopFault{LoopFaultCode::overlap, 0, 1});
  CHECK(fault_of({inside(0, 0, 30), inside(200, 0, 20), inside(200, 100, 20), back(8, 20, 20)}) ==
        LoopFault{LoopFaultCode::overlap, 0, 3});
  CHECK(fault_of({inside(5, 5, 20), inside(5, 5, 20)}).code == LoopFaultCode::overlap);
}

TEST_CASE("an idler the belt would not touch on its stated face is named") {
  // outside the loop, without reaching the belt
  CHECK(fault_of({inside(0, 0, 40), inside(200, 0, 40), inside(100, 180, 40), back(20, 160, 24)}) ==
        LoopFault{LoopFaultCode::idler_on_wrong_side, 3, 3});
  CHECK(fault_of({inside(0, 0, 40), inside(200, 0, 40), back(100, 31, 20)}) ==
        LoopFault{LoopFaultCode::idler_on_wrong_side, 2, 2});
  // an inside pulley that does not reach out to the belt
  CHECK(fault_of({inside(0, 0, 40), inside(100, 15, 20), inside(200, 0, 40),
                  inside(100, 180, 40)}) == LoopFault{LoopFaultCode::idler_on_wrong_side, 1, 1});
  // one of each, whose missing turns cancel
  CHECK(fault_of({inside(0, 0, 40), inside(100, 15, 20), inside(200, 0, 40), inside(100, 180, 40),
                  back(20, 160, 24)}) == LoopFault{LoopFaultCode::idler_on_wrong_side, 1, 1});
  // no inside pulley at all
  CHECK(fault_of({back(0, 0, 40), back(200, 0, 40)}).code == LoopFaultCode::idler_on_wrong_side);
}

TEST_CASE("spans that cross are named") {
  CHECK(fault_of({inside(0, 0, 20), inside(100, 100, 20), inside(100, 0, 20),
                  inside(0, 100, 20)}) == LoopFault{LoopFaultCode::crossing_spans, 0, 2});
  // a crossed belt
  CHECK(fault_of({inside(0, 0, 20), back(100, 0, 20)}) ==
        LoopFault{LoopFaultCode::crossing_spans, 0, 1});
}

TEST_CASE("a span that runs through a pulley of another place in the loop is named") {
  // the idler pushes the upper span down onto a pulley of the lower side
  CHECK(fault_of({inside(0, 0, 40), inside(60, -6, 40), inside(200, 0, 40), back(140, 2, 20)}) ==
        LoopFault{LoopFaultCode::span_through_pulley, 3, 1});
}
