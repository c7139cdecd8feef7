// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_geometry.h"
#include "mechanics/belt_take_up.h"
#include "support/near.h"

#include <algorithm>
#include <cmath>
#include <limits>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

using Pulleys = std::vector<LoopPulley>;

Pulleys pair_of(Length diameter_1, Length diameter_2, Length distance) {
  return {{0_mm, 0_mm, diameter_1, false}, {distance, 0_mm, diameter_2, false}};
}

/// Motor, two screws, and an idler on the belt's back that slides into the long span.
Pulleys two_screws() {
  return {{0_mm, 0_mm, 30_mm, false},
          {300_mm, -20_mm, 50_mm, false},
          {280_mm, 220_mm, 50_mm, false},
          {130_mm, 125_mm, 24_mm, true}};
}

TakeUp idler_slide(Length back, Length forth) {
  return {3, Angle(-50_deg), back, forth};
}

/// Whole tooth counts that the loop passes on its way, counted by walking in small steps; steps
/// with no sound loop are passed over.
std::vector<int> walked_counts(const Pulleys& pulleys, const TakeUp& take_up, Length pitch) {
  std::vector<int> counts;
  constexpr int steps = 200'000;
  double before = std::nan("");
  for (int i = 0; i <= steps; ++i) {
    const Length s = -take_up.back + (take_up.back + take_up.forth) * (double(i) / steps);
    const auto length = belt_loop_length(at_position(pulleys, take_up, s), loop_sense(pulleys));
    const double teeth = length ? double(*length / pitch) : std::nan("");
    if (std::isfinite(before) && std::isfinite(teeth)) {
      for (double k = std::ceil(std::min(before, teeth)); k <= std::max(before, teeth); k += 1.0) {
        counts.push_back(static_cast<int>(k));
      }
    }
    before = teeth;
  }
  std::ranges::sort(counts);
  return counts;
}

void check_against_walk(const Pulleys& pulleys, const TakeUp& take_up, Length pitch) {
  const auto found = whole_tooth_positions(pulleys, take_up, pitch, 1000);
  std::vector<int> counts;
  for (const TakeUpPosition& p : found) {
    counts.push_back(p.belt_teeth);
    CHECK(p.position >= -take_up.back);
    CHECK(p.position <= take_up.forth);
    const auto loop = belt_loop(at_position(pulleys, take_up, p.position), loop_sense(pulleys));
    REQUIRE(loop);
    CHECK(near(loop->length, double(p.belt_teeth) * pitch, 1e-12));
  }
  CHECK(counts == walked_counts(pulleys, take_up, pitch));
  CHECK_FALSE(counts.empty());
}

} // namespace

TEST_CASE("take-up positions of two pulleys are the centre distances of whole belts") {
  const Length d1 = pulley_pitch_diameter(20.0, 5_mm);
  const Length d2 = pulley_pitch_diameter(40.0, 5_mm);
  const TakeUp slide{1, 0_deg, 12_mm, 9_mm};
  const auto found = whole_tooth_positions(pair_of(d1, d2, 170_mm), slide, 5_mm, 100);
  REQUIRE(found.size() == 8);
  int teeth = 94;
  for (const TakeUpPosition& p : found) {
    CHECK(p.belt_teeth == teeth++);
    const auto distance = centre_distance(d1, d2, double(p.belt_teeth) * 5_mm);
    REQUIRE(distance);
    CHECK(near(170_mm + p.position, *distance, 1e-12));
  }
}

TEST_CASE("take-up positions are all those a fine walk along the slide passes") {
  // independent computation: 200 000 steps along the slide
  check_against_walk(two_screws(), idler_slide(30_mm, 60_mm), 5_mm);
  check_against_walk(two_screws(), idler_slide(10_mm, 25_mm), 2_mm);
  check_against_walk(two_screws(), {0, 200_deg, 60_mm, 90_mm}, 8_mm);
  // through where the pulleys overlap, from one side of the other to the other side
  check_against_walk(pair_of(40_mm, 60_mm, 150_mm), {1, 180_deg, 20_mm, 330_mm}, 5_mm);
}

TEST_CASE("a slide past the nearest point finds each belt on either side of it") {
  // square to the line of centres: shortest at the drawn place
  const Pulleys pulleys = pair_of(40_mm, 40_mm, 100_mm);
  const TakeUp slide{1, 90_deg, 60_mm, 60_mm};
  check_against_walk(pulleys, slide, 3_mm);
  const auto found = whole_tooth_positions(pulleys, slide, 3_mm, 1000);
  REQUIRE(found.size() % 2 == 0);
  for (std::size_t i = 0; i < found.size(); i += 2) {
    CHECK(found[i].belt_teeth == found[i + 1].belt_teeth);
    CHECK(near(found[i].position, Length(-found[i + 1].position), 1e-9));
  }
}

TEST_CASE("a belt that only the turning point of a slide reaches is found once") {
  // 100 mm apart at the least, 7.3 mm from the drawn place and between two samples
  const Length diameter = pulley_pitch_diameter(20.0, 5_mm);
  Pulleys pulleys = pair_of(diameter, diameter, 100_mm);
  pulleys[1].y = 7.3_mm;
  const auto found = whole_tooth_positions(pulleys, {1, 90_deg, 8_mm, 1_mm}, 5_mm, 10);
  REQUIRE(found.size() == 1);
  CHECK(found[0].belt_teeth == 60);
  CHECK(std::abs(si_value(found[0].position + 7.3_mm)) < 1e-8);
}

TEST_CASE("of more positions than asked for those nearest to the drawn centre are kept") {
  const Pulleys pulleys = two_screws();
  const TakeUp slide = idler_slide(30_mm, 60_mm);
  auto all = whole_tooth_positions(pulleys, slide, 2_mm, 1000);
  REQUIRE(all.size() > 8);
  std::ranges::sort(all, {}, [](const auto& p) { return abs(p.position); });
  const auto few = whole_tooth_positions(pulleys, slide, 2_mm, 4);
  REQUIRE(few.size() == 4);
  CHECK(std::ranges::is_sorted(few, {}, &TakeUpPosition::belt_teeth));
  for (const TakeUpPosition& p : few) {
    CHECK(abs(p.position) <= abs(all[3].position));
  }
}

TEST_CASE("the position for a belt length undoes the loop's length") {
  const Pulleys pulleys = two_screws();
  const TakeUp slide = idler_slide(5_mm, 60_mm);
  for (double s = 0.0; s <= 0.055; s += 0.0037) {
    const auto length =
        belt_loop_length(at_position(pulleys, slide, from_si<Length>(s)), loop_sense(pulleys));
    REQUIRE(length);
    const auto back = position_for(pulleys, slide, *length);
    REQUIRE(back);
    CHECK(std::abs(si_value(*back) - s) < 1e-9);
  }
  CHECK_FALSE(position_for(pulleys, slide, 2_m));
  CHECK_FALSE(position_for(pulleys, slide, Length(-1_m)));
}

TEST_CASE("two equal pulleys slide half of what the belt wants") {
  const Pulleys pulleys = pair_of(40_mm, 40_mm, 150_mm);
  const TakeUp outward{1, 0_deg, 1_mm, 1_mm};
  const auto travel = take_up_travel(pulleys, outward, 0.5_mm, 6_mm, 1_mm);
  REQUIRE((travel.to_ease && travel.to_stretch));
  CHECK(near(*travel.to_ease, Length(-3_mm), 1e-10));
  CHECK(near(*travel.to_stretch, 0.5_mm, 1e-10));
  const auto inward = take_up_travel(pulleys, {1, 180_deg, 1_mm, 1_mm}, 0.5_mm, 6_mm, 1_mm);
  REQUIRE((inward.to_ease && inward.to_stretch));
  CHECK(near(*inward.to_ease, 3_mm, 1e-10));
  CHECK(near(*inward.to_stretch, Length(-0.5_mm), 1e-10));
}

TEST_CASE("take-up travel changes the loop's length by what was asked") {
  const Pulleys pulleys = two_screws();
  const TakeUp slide = idler_slide(5_mm, 30_mm);
  const auto length_at = [&](Length s) {
    return *belt_loop_length(at_position(pulleys, slide, s), loop_sense(pulleys));
  };
  const auto travel = take_up_travel(pulleys, slide, 10_mm, 2_mm, 1.5_mm);
  REQUIRE((travel.to_ease && travel.to_stretch));
  CHECK(*travel.to_ease < 0_mm);
  CHECK(*travel.to_stretch > 0_mm);
  CHECK(near(length_at(10_mm), length_at(10_mm + *travel.to_ease) + 2_mm, 1e-12));
  CHECK(near(length_at(10_mm), length_at(10_mm + *travel.to_stretch) - 1.5_mm, 1e-12));
}

TEST_CASE("there is no easing once the pulleys meet or the idler loses the belt") {
  const Pulleys close = pair_of(40_mm, 40_mm, 42_mm);
  const auto travel = take_up_travel(close, {1, 0_deg, 1_mm, 1_mm}, 0_mm, 5_mm, 1_mm);
  CHECK_FALSE(travel.to_ease);
  CHECK(travel.to_stretch);
  CHECK_FALSE(take_up_travel(two_screws(), idler_slide(1_mm, 1_mm), 0_mm, 20_mm, 0_mm).to_ease);
}

TEST_CASE("a take-up that is none gives nothing") {
  const Pulleys pulleys = pair_of(40_mm, 40_mm, 150_mm);
  const Length nan = from_si<Length>(std::nan(""));
  const Length infinite = from_si<Length>(std::numeric_limits<double>::infinity());
  const TakeUp slide{1, 0_deg, 5_mm, 5_mm};
  CHECK_FALSE(whole_tooth_positions(pulleys, slide, 2_mm, 3).empty());
  for (const TakeUp& bad :
       {TakeUp{2, 0_deg, 5_mm, 5_mm}, TakeUp{1, 0_deg, 0_mm, 0_mm}, TakeUp{1, 0_deg, nan, 5_mm},
        TakeUp{1, 0_deg, 5_mm, infinite}, TakeUp{1, nan / 1_m * 1_rad, 5_mm, 5_mm}}) {
    CHECK(whole_tooth_positions(pulleys, bad, 2_mm, 3).empty());
    CHECK_FALSE(position_for(pulleys, bad, 426_mm));
  }
  for (const Length& pitch : {0_mm, Length(-2_mm), nan, infinite, from_si<Length>(1e-12)}) {
    CHECK(whole_tooth_positions(pulleys, slide, pitch, 3).empty());
  }
  CHECK(whole_tooth_positions(pulleys, slide, 2_mm, 0).empty());
  CHECK(whole_tooth_positions(Pulleys(), slide, 2_mm, 3).empty());
  CHECK_FALSE(take_up_travel(pulleys, slide, nan, 1_mm, 1_mm).to_ease);
  CHECK_FALSE(take_up_travel(pulleys, slide, 0_mm, nan, 1_mm).to_stretch);
}
