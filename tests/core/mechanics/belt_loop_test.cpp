// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_geometry.h"
#include "mechanics/belt_loop.h"
#include "support/near.h"

#include <algorithm>
#include <array>
#include <random>

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

/// Motor, two screws and an idler that presses on the back of the long span.
Pulleys two_screws() {
  return {inside(0, 0, 30), inside(300, -20, 50), inside(280, 220, 50), back(130, 125, 24)};
}

/// Four inside pulleys with a back-face idler between any two: a loop with every sort of tangent.
Pulleys cross_shape() {
  return {inside(0, 0, 40),     back(100, 25, 22), inside(210, 5, 32),  back(180, 95, 30),
          inside(200, 200, 36), back(90, 170, 26), inside(-5, 190, 44), back(20, 90, 20)};
}

struct Point {
  double x, y;
};

double turn_of(Point a, Point b, Point c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/// Perimeter of the convex hull of points sampled on all circles (Andrew's monotone chain).
double hull_perimeter(const Pulleys& pulleys) {
  std::vector<Point> points;
  constexpr int samples = 40'000;
  for (const LoopPulley& p : pulleys) {
    for (int i = 0; i < samples; ++i) {
      const double angle = 2.0 * pi * i / samples;
      const double r = si_value(p.pitch_diameter) / 2.0;
      points.push_back({si_value(p.x) + r * std::cos(angle), si_value(p.y) + r * std::sin(angle)});
    }
  }
  std::ranges::sort(points, {}, [](const Point& p) { return std::pair(p.x, p.y); });
  double sum = 0.0;
  for (const double sign : {1.0, -1.0}) {
    std::vector<Point> chain;
    for (const Point& p : points) {
      while (chain.size() > 1 && sign * turn_of(chain[chain.size() - 2], chain.back(), p) <= 0.0) {
        chain.pop_back();
      }
      chain.push_back(p);
    }
    for (std::size_t i = 1; i < chain.size(); ++i) {
      sum += std::hypot(chain[i].x - chain[i - 1].x, chain[i].y - chain[i - 1].y);
    }
  }
  return sum;
}

struct Disc {
  double x, y, r, turn;
};

/// How far the straight line from angle `a` on disc A to angle `b` on disc B is from leaving and
/// meeting both along their rims.
double kink(const Disc& disc_a, const Disc& disc_b, double a, double b) {
  const double dx = disc_b.x + disc_b.r * std::cos(b) - disc_a.x - disc_a.r * std::cos(a);
  const double dy = disc_b.y + disc_b.r * std::sin(b) - disc_a.y - disc_a.r * std::sin(a);
  const double length = std::hypot(dx, dy);
  const auto off = [&](const Disc& d, double angle) {
    return 1.0 + d.turn * (std::sin(angle) * dx - std::cos(angle) * dy) / length;
  };
  return off(disc_a, a) + off(disc_b, b);
}

/// Angles of the span's ends by trying a net of angles and closing in on the best: no tangent
/// formula.
std::pair<double, double> tried_span(const Disc& disc_a, const Disc& disc_b) {
  std::pair best(0.0, 0.0);
  double least = 1e9;
  constexpr int net = 120;
  for (double half = pi; half > 1e-9; half /= 20.0) {
    const std::pair centre = best;
    for (int i = -net; i <= net; ++i) {
      for (int k = -net; k <= net; ++k) {
        const double at_a = centre.first + half * i / net;
        const double at_b = centre.second + half * k / net;
        const double value = kink(disc_a, disc_b, at_a, at_b);
        if (value < least) {
          least = value;
          best = {at_a, at_b};
        }
      }
    }
  }
  return best;
}

/// Length of the loop along tried spans and the arcs between them.
double tried_length(const Pulleys& pulleys, double sense) {
  const std::size_t n = pulleys.size();
  std::vector<Disc> discs;
  for (const LoopPulley& p : pulleys) {
    discs.push_back({si_value(p.x), si_value(p.y), si_value(p.pitch_diameter) / 2.0,
                     p.back_face ? -sense : sense});
  }
  std::vector<std::pair<double, double>> spans;
  double sum = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    const Disc& a = discs[i];
    const Disc& b = discs[(i + 1) % n];
    const auto [at_a, at_b] = spans.emplace_back(tried_span(a, b));
    sum += std::hypot(b.x + b.r * std::cos(at_b) - a.x - a.r * std::cos(at_a),
                      b.y + b.r * std::sin(at_b) - a.y - a.r * std::sin(at_a));
  }
  for (std::size_t i = 0; i < n; ++i) {
    const double arrives = spans[(i + n - 1) % n].second;
    const double arc = std::fmod(discs[i].turn * (spans[i].first - arrives) + 8.0 * pi, 2.0 * pi);
    sum += discs[i].r * arc;
  }
  return sum;
}

Pulleys moved(const Pulleys& pulleys, double angle, double scale, double mirror) {
  Pulleys out = pulleys;
  for (LoopPulley& p : out) {
    const Length x = p.x * scale;
    const Length y = p.y * scale * mirror;
    p.x = x * std::cos(angle) - y * std::sin(angle) + 730_mm;
    p.y = x * std::sin(angle) + y * std::cos(angle) - 190_mm;
    p.pitch_diameter *= scale;
  }
  return out;
}

void check_same_shape(const BeltLoop& a, const BeltLoop& b, double scale, std::size_t shift) {
  CHECK(near(a.length * scale, b.length, 1e-12));
  const std::size_t n = a.spans.size();
  for (std::size_t i = 0; i < n; ++i) {
    CHECK(near(a.contacts[(i + shift) % n].wrap, b.contacts[i].wrap, 1e-10));
    CHECK(near(a.spans[(i + shift) % n].length * scale, b.spans[i].length, 1e-10));
  }
}

} // namespace

TEST_CASE("a loop of two pulleys has the length and the wrap of the two-pulley formula") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> diameter(8.0, 200.0), gap(0.0, 900.0), angle(0.0, 6.28);
  for (int i = 0; i < 500; ++i) {
    const double d1 = diameter(random), d2 = diameter(random), a = angle(random);
    const double c = (d1 + d2) / 2.0 + gap(random);
    const auto loop = belt_loop(
        Pulleys{inside(13, -4, d1), inside(13 + c * std::cos(a), -4 + c * std::sin(a), d2)});
    REQUIRE(loop);
    const Length first = d1 * 1_mm, second = d2 * 1_mm, distance = c * 1_mm;
    CHECK(near(loop->length, open_belt_length(first, second, distance), 1e-12));
    const Angle smaller = std::min(loop->contacts[0].wrap, loop->contacts[1].wrap);
    CHECK(near(smaller, smaller_pulley_wrap(first, second, distance), 1e-9));
  }
}

TEST_CASE("a loop of inside pulleys is as long as the convex hull of its circles") {
  // independent computation: convex hull of sampled points
  for (const Pulleys& pulleys :
       {Pulleys{inside(0, 0, 30), inside(300, -20, 50), inside(280, 220, 50)},
        Pulleys{inside(0, 0, 60), inside(200, 0, 20), inside(260, 120, 44), inside(90, 210, 16),
                inside(-60, 130, 30)}}) {
    const auto loop = belt_loop(pulleys);
    REQUIRE(loop);
    CHECK(near(loop->length, from_si<Length>(hull_perimeter(pulleys)), 1e-8));
  }
}

TEST_CASE("a loop with back-face idlers is as long as the path found by trying") {
  // independent computation: ends of spans by closing in on the least kink, arcs between them
  for (const Pulleys& pulleys : {two_screws(), cross_shape()}) {
    const auto loop = belt_loop(pulleys);
    REQUIRE(loop);
    CHECK(near(loop->length, from_si<Length>(tried_length(pulleys, 1.0)), 1e-7));
  }
}

TEST_CASE("the arcs of a loop turn the belt once round in all") {
  for (const double mirror : {1.0, -1.0}) {
    for (const Pulleys& drawn : {two_screws(), cross_shape()}) {
      const Pulleys pulleys = moved(drawn, 0.4, 1.0, mirror);
      const auto loop = belt_loop(pulleys);
      REQUIRE(loop);
      double turns = 0.0, drawn_turns = 0.0;
      for (std::size_t i = 0; i < pulleys.size(); ++i) {
        const LoopContact& c = loop->contacts[i];
        turns += (pulleys[i].back_face ? -mirror : mirror) * si_value(c.wrap);
        drawn_turns += si_value(c.to - c.from);
      }
      CHECK(turns == Approx(2.0 * pi * mirror).epsilon(1e-13));
      CHECK(drawn_turns == Approx(2.0 * pi * mirror).epsilon(1e-13));
    }
  }
}

TEST_CASE("spans and arcs of a loop join without a gap") {
  const Pulleys pulleys = cross_shape();
  const auto loop = belt_loop(pulleys);
  REQUIRE(loop);
  const auto on_rim = [](const LoopPulley& p, Angle angle) {
    return LoopPoint{p.x + p.pitch_diameter / 2.0 * std::cos(si_value(angle)),
                     p.y + p.pitch_diameter / 2.0 * std::sin(si_value(angle))};
  };
  const auto apart = [](const LoopPoint& a, const LoopPoint& b) {
    return std::hypot(si_value(a.x - b.x), si_value(a.y - b.y));
  };
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const LoopSpan& span = loop->spans[i];
    const std::size_t next = (i + 1) % pulleys.size();
    CHECK(apart(span.from, on_rim(pulleys[i], loop->contacts[i].to)) < 1e-15);
    CHECK(apart(span.to, on_rim(pulleys[next], loop->contacts[next].from)) < 1e-15);
    CHECK(apart(span.from, span.to) == Approx(si_value(span.length)).epsilon(1e-13));
  }
}

TEST_CASE("a loop keeps its shape when it is shifted, turned, mirrored or scaled") {
  for (const Pulleys& pulleys : {two_screws(), cross_shape()}) {
    const auto drawn = belt_loop(pulleys);
    REQUIRE(drawn);
    for (const double angle : {0.0, 0.7, 2.9, 4.4}) {
      for (const double scale : {1.0, 0.3, 25.4}) {
        for (const double mirror : {1.0, -1.0}) {
          const auto other = belt_loop(moved(pulleys, angle, scale, mirror));
          REQUIRE(other);
          check_same_shape(*drawn, *other, scale, 0);
        }
      }
    }
  }
}

TEST_CASE("a loop does not care which pulley is named first") {
  Pulleys pulleys = cross_shape();
  const auto drawn = belt_loop(pulleys);
  REQUIRE(drawn);
  for (std::size_t shift = 1; shift < pulleys.size(); ++shift) {
    std::ranges::rotate(pulleys, pulleys.begin() + 1);
    const auto other = belt_loop(pulleys);
    REQUIRE(other);
    check_same_shape(*drawn, *other, 1.0, shift);
  }
}

TEST_CASE("a loop lengthens by what its sliding pulley moves against its two spans") {
  // virtual work: dL = (in − out)·ds, in and out unit vectors along the spans; independent of arcs
  const Pulleys pulleys = cross_shape();
  const auto loop = belt_loop(pulleys);
  REQUIRE(loop);
  const std::size_t n = pulleys.size();
  const double step = 1e-6;
  for (std::size_t i = 0; i < n; ++i) {
    Pulleys there = pulleys, here = pulleys;
    there[i].x += from_si<Length>(step);
    here[i].x -= from_si<Length>(step);
    const double slope =
        si_value(belt_loop(there)->length - belt_loop(here)->length) / (2.0 * step);
    const LoopSpan& in = loop->spans[(i + n - 1) % n];
    const LoopSpan& out = loop->spans[i];
    const double expected =
        double((in.to.x - in.from.x) / in.length) - double((out.to.x - out.from.x) / out.length);
    CHECK(slope == Approx(expected).margin(1e-8));
  }
}
