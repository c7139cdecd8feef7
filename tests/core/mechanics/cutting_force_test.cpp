// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/cutting_force.h"
#include "support/near.h"

#include <random>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

MillingForces sure(const MillingCut& cut, std::optional<Power> spindle = std::nullopt) {
  const auto forces = milling_forces(cut, spindle);
  REQUIRE(forces);
  return *forces;
}

MillingCut typical() {
  return {.specific_force = 700_MPa,
          .exponent = 0.25,
          .depth = 3_mm,
          .width = 4_mm,
          .diameter = 8_mm,
          .teeth = 2,
          .spindle_speed = 12000_rpm,
          .feed = 1.2_m_per_min};
}

class RandomCuts {
public:
  double share(double low = 0.0, double high = 1.0) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }
  MillingCut cut() {
    MillingCut c = typical();
    c.specific_force = from_si<Pressure>(share(10e6, 3e9));
    c.exponent = share(0.0, 0.4);
    c.diameter = from_si<Length>(share(2e-3, 40e-3));
    c.width = c.diameter * std::pow(10.0, share(-3.0, 0.0));
    c.depth = from_si<Length>(share(0.1e-3, 20e-3));
    c.teeth = 1 + int(share(0.0, 5.99));
    c.feed = from_si<Velocity>(share(1e-3, 0.2));
    c.radial_ratio = share();
    return c;
  }

private:
  std::mt19937 random_{11};
};

/// Mean force on the cutter over a turn, tooth by tooth, from vectors: x along the cutter's path, y
/// to its left, the cutter turning clockwise, teeth in the cut from `entry` to `exit` measured from
/// +y. Midpoint rule.
struct Mean {
  double x = 0.0, y = 0.0, tangential = 0.0, thickness = 0.0;
};

Mean mean_force(const MillingCut& cut, double entry, double exit, bool thickness_by_thickness) {
  const double revolutions = si_value(cut.spindle_speed) / (2.0 * pi);
  const double tooth_feed = si_value(cut.feed) / (cut.teeth * revolutions);
  constexpr int steps = 20'000;
  const double step = (exit - entry) / steps;
  Mean mean;
  for (int i = 0; i < steps; ++i) {
    const double at = entry + (i + 0.5) * step;
    mean.thickness += tooth_feed * std::sin(at) / steps;
  }
  for (int i = 0; i < steps; ++i) {
    const double at = entry + (i + 0.5) * step;
    const double h = tooth_feed * std::sin(at);
    const double h_of_k = (thickness_by_thickness ? h : mean.thickness) * 1e3;
    const double k = si_value(cut.specific_force) * std::pow(h_of_k, -cut.exponent);
    const double force = k * si_value(cut.depth) * h * cut.teeth * step / (2.0 * pi);
    const double out[2] = {std::sin(at), std::cos(at)};    // from the centre to the tooth
    const double ahead[2] = {std::cos(at), -std::sin(at)}; // the tooth's own motion
    mean.tangential += force;
    mean.x -= force * (ahead[0] + cut.radial_ratio * out[0]);
    mean.y -= force * (ahead[1] + cut.radial_ratio * out[1]);
  }
  return mean;
}

double arc_of(const MillingCut& cut) {
  return std::acos(1.0 - 2.0 * double(cut.width / cut.diameter));
}

} // namespace

TEST_CASE("milling forces agree with adding up tooth by tooth round the arc") {
  // independent computation: vectors summed numerically
  RandomCuts random;
  for (int i = 0; i < 200; ++i) {
    const MillingCut cut = random.cut();
    const double arc = arc_of(cut);
    const MillingForces forces = sure(cut);
    const Mean up = mean_force(cut, 0.0, arc, false);
    const Mean down = mean_force(cut, pi - arc, pi, false);
    const double slack = 1e-6 * up.tangential;
    CHECK(near(forces.mean_chip_thickness, from_si<Length>(up.thickness), 1e-6));
    CHECK(near(forces.tangential, from_si<Force>(up.tangential), 1e-6));
    CHECK(std::abs(si_value(forces.up.against_feed) + up.x) < slack);
    CHECK(std::abs(si_value(forces.up.across) + up.y) < slack);
    CHECK(std::abs(si_value(forces.down.against_feed) + down.x) < slack);
    CHECK(std::abs(si_value(forces.down.across) - down.y) < slack);
  }
}

TEST_CASE("force across agrees with adding up on both sides of the smallest arcs") {
  // independent computation, as above; the program changes to a series below 0.02 rad
  for (const double arc : {0.002, 0.0199, 0.0201, 0.1}) {
    MillingCut cut = typical();
    cut.width = cut.diameter * std::pow(std::sin(arc / 2.0), 2);
    cut.radial_ratio = 0.0;
    const Mean down = mean_force(cut, pi - arc, pi, false);
    CHECK(near(sure(cut).across, from_si<Force>(down.y), 1e-7));
  }
}

TEST_CASE("one specific force for the whole arc stays close to one for each thickness") {
  // independent computation: k_c taken anew at each chip thickness. h^(1−m) is concave, so its
  // value at the mean is above its mean: the tangential force is on the safe side. The force
  // along the feed can be 2.5 % of the tangential too low, near a slot.
  RandomCuts random;
  for (int i = 0; i < 200; ++i) {
    MillingCut cut = random.cut();
    cut.exponent = 0.26;
    const double arc = arc_of(cut);
    const MillingForces forces = sure(cut);
    const Mean up = mean_force(cut, 0.0, arc, true);
    const Mean down = mean_force(cut, pi - arc, pi, true);
    const double over = si_value(forces.tangential) / up.tangential;
    CHECK(over > 1.0);
    CHECK(over < 1.05);
    const auto off = [&](Force given, double exact) {
      return (si_value(given) - exact) / si_value(forces.tangential);
    };
    CHECK(off(forces.along_feed, -up.x) > -0.025);
    CHECK(off(forces.along_feed, -up.x) < 0.07);
    CHECK(off(forces.across, down.y) > 0.0);
    CHECK(off(forces.across, down.y) < 0.07);
    CHECK(std::abs(off(forces.down.against_feed, -down.x)) < 0.07);
    CHECK(std::abs(off(forces.up.across, -up.y)) < 0.07);
  }
}

TEST_CASE("tangential force times rim speed is specific force times volume rate") {
  RandomCuts random;
  for (int i = 0; i < 1000; ++i) {
    const MillingCut c = random.cut();
    const MillingForces forces = sure(c);
    const double rim = si_value(c.spindle_speed) * si_value(c.diameter) / 2.0;
    const double volume = si_value(c.depth) * si_value(c.width) * si_value(c.feed);
    CHECK(si_value(forces.tangential) * rim ==
          Approx(si_value(forces.specific_force) * volume).epsilon(1e-12));
    CHECK(si_value(forces.specific_force) ==
          Approx(si_value(c.specific_force) *
                 std::pow(si_value(forces.mean_chip_thickness) * 1e3, -c.exponent)));
  }
}

TEST_CASE("engagement angle agrees with the arc cosine and with small arcs") {
  for (const double share : {0.01, 0.2, 0.5, 0.9, 1.0}) {
    CHECK(si_value(engagement_angle(10_mm * share, 10_mm)) ==
          Approx(std::acos(1.0 - 2.0 * share)).epsilon(1e-12));
  }
  CHECK(si_value(engagement_angle(1e-12_m, 1_m)) == Approx(2e-6).epsilon(1e-9));
}

TEST_CASE("mean chip thickness of a slot is two over pi of the feed per tooth") {
  MillingCut cut = typical();
  cut.width = cut.diameter;
  const MillingForces forces = sure(cut);
  CHECK(near(forces.feed_per_tooth, 0.05_mm));
  CHECK(near(forces.mean_chip_thickness, Length(0.05_mm * (2.0 / pi))));
  // and half of the cut climbs: without a radial force nothing is left along the feed
  cut.radial_ratio = 0.0;
  CHECK(abs(sure(cut).along_feed) < 1e-9 * sure(cut).tangential);
}

TEST_CASE("the largest components are those of up milling along and of down milling across") {
  RandomCuts random;
  for (int i = 0; i < 1000; ++i) {
    const MillingForces f = sure(random.cut());
    CHECK(near(f.along_feed, f.up.against_feed, 1e-12));
    CHECK(near(f.across, f.down.across, 1e-12));
    CHECK(f.along_feed >= abs(f.down.against_feed) * (1.0 - 1e-12));
    CHECK(f.across >= abs(f.up.across) * (1.0 - 1e-12));
  }
}

TEST_CASE("a shallow climbing cut pulls the carriage along") {
  MillingCut cut = typical();
  cut.width = 0.5_mm;
  CHECK(sure(cut).down.against_feed < 0_N);
  CHECK(sure(cut).up.against_feed > 0_N);
}

TEST_CASE("the spindle's power caps all forces alike") {
  const MillingForces free = sure(typical());
  const MillingForces enough = sure(typical(), free.power * 1.001);
  CHECK_FALSE(enough.capped);
  CHECK(enough.along_feed == free.along_feed);
  const MillingForces half = sure(typical(), free.power * 0.5);
  CHECK(half.capped);
  CHECK_FALSE(free.capped);
  CHECK(near(half.power, Power(free.power * 0.5)));
  CHECK(near(half.tangential, Force(free.tangential * 0.5)));
  CHECK(near(half.along_feed, Force(free.along_feed * 0.5)));
  CHECK(near(half.down.across, Force(free.down.across * 0.5)));
  CHECK(half.mean_chip_thickness == free.mean_chip_thickness);
  CHECK(sure(typical(), 0_W).along_feed == 0_N);
}

TEST_CASE("a cut that cannot be is none") {
  const auto none = [](auto change) {
    MillingCut cut = typical();
    change(cut);
    return !milling_forces(cut, std::nullopt);
  };
  CHECK(none([](MillingCut& c) { c.width = c.diameter * 1.01; }));
  CHECK(none([](MillingCut& c) { c.width = 0_mm; }));
  CHECK(none([](MillingCut& c) { c.teeth = 0; }));
  CHECK(none([](MillingCut& c) { c.feed = 0_m_per_s; }));
  CHECK(none([](MillingCut& c) { c.exponent = 1.0; }));
  CHECK(none([](MillingCut& c) { c.radial_ratio = -0.1; }));
  CHECK(none([](MillingCut& c) { c.spindle_speed = from_si<AngularVelocity>(std::nan("")); }));
  CHECK_FALSE(milling_forces(typical(), Power(-1_W)));
}
