// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_loop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace feedwright {

namespace {

/// Relative slack within which pulleys are let touch each other and the belt.
constexpr double touching = 1e-9;
/// Turn in radians that rounding may put on the wrong side of none.
constexpr double no_turn = 1e-12;

struct Circle {
  Length x, y;
  Length radius;
  double turn; ///< +1 turns counter-clockwise, −1 clockwise
};

/// A straight span along its travel.
struct Tangent {
  double x, y; ///< unit vector
  LoopPoint from, to;
  Length length;
};

struct Path {
  std::size_t count = 0;
  std::array<Circle, most_loop_pulleys> circles;
  std::array<Tangent, most_loop_pulleys> tangents;
  std::array<double, most_loop_pulleys> wraps; ///< rad
  Length length = Length();

  std::size_t after(std::size_t i) const { return i + 1 == count ? 0 : i + 1; }
  std::size_t before(std::size_t i) const { return i == 0 ? count - 1 : i - 1; }
};

/// The point of the circle where a belt of that direction of travel leaves or meets it.
LoopPoint contact_point(const Circle& c, double x, double y) {
  return {c.x + c.turn * c.radius * y, c.y - c.turn * c.radius * x};
}

/// With signed radii ρ, counter-clockwise positive, the centre distance d has ρ_b − ρ_a across the
/// span and the span's length along it.
Tangent tangent(const Circle& a, const Circle& b) {
  const Length dx = b.x - a.x;
  const Length dy = b.y - a.y;
  const Length across = b.turn * b.radius - a.turn * a.radius;
  const Area square_distance = dx * dx + dy * dy;
  const Length along = sqrt(std::max(Area(), Area(square_distance - across * across)));
  const double x = (along * dx + across * dy) / square_distance;
  const double y = (along * dy - across * dx) / square_distance;
  return {x, y, contact_point(a, x, y), contact_point(b, x, y), along};
}

/// Turn of the belt from one span into the next, in the sense of the pulley between: 0 to 2π.
double wrap_between(const Tangent& in, const Tangent& out, double turn) {
  const double angle = turn * std::atan2(in.x * out.y - in.y * out.x, in.x * out.x + in.y * out.y);
  return angle < -no_turn ? angle + 2.0 * pi : std::max(0.0, angle);
}

std::optional<LoopFault> unusable(std::span<const LoopPulley> pulleys) {
  if (pulleys.size() < 2) {
    return LoopFault{LoopFaultCode::too_few_pulleys};
  }
  if (pulleys.size() > most_loop_pulleys) {
    return LoopFault{LoopFaultCode::too_many_pulleys};
  }
  // Far beyond any machine, and its squares are still numbers.
  constexpr double largest = 1e6; // m
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const LoopPulley& p = pulleys[i];
    const bool placed = std::abs(si_value(p.x)) <= largest && std::abs(si_value(p.y)) <= largest;
    const double diameter = si_value(p.pitch_diameter);
    if (!placed || !(diameter > 0.0 && diameter <= largest)) {
      return LoopFault{LoopFaultCode::not_finite, i, i};
    }
  }
  return std::nullopt;
}

std::optional<LoopFault> overlap(const Path& path) {
  for (std::size_t i = 0; i < path.count; ++i) {
    for (std::size_t k = i + 1; k < path.count; ++k) {
      const Circle& a = path.circles[i];
      const Circle& b = path.circles[k];
      const Length dx = b.x - a.x;
      const Length dy = b.y - a.y;
      const Length least = (a.radius + b.radius) * (1.0 - touching);
      if (dx * dx + dy * dy < least * least) {
        return LoopFault{LoopFaultCode::overlap, i, k};
      }
    }
  }
  return std::nullopt;
}

/// On which side of the span's line the point lies, and how far.
Length beside(const Tangent& t, const LoopPoint& p) {
  return t.x * (p.y - t.from.y) - t.y * (p.x - t.from.x);
}

bool cross(const Tangent& a, const Tangent& b) {
  return beside(a, b.from) * beside(a, b.to) < Area() &&
         beside(b, a.from) * beside(b, a.to) < Area();
}

std::optional<LoopFault> crossing(const Path& path) {
  for (std::size_t i = 0; i < path.count; ++i) {
    for (std::size_t k = i + 1; k < path.count; ++k) {
      // Neighbours are judged with the pulley between them.
      const bool neighbours = path.after(i) == k || path.after(k) == i;
      if ((!neighbours || path.count == 2) && cross(path.tangents[i], path.tangents[k])) {
        return LoopFault{LoopFaultCode::crossing_spans, i, k};
      }
    }
  }
  return std::nullopt;
}

/// A loop that does not cross itself turns once round in all. Where it does not, the pulley with
/// the largest arc is the one the belt would have to be slung about.
std::optional<LoopFault> wrong_side(const Path& path, double sense) {
  double turns = 0.0;
  std::size_t widest = 0;
  for (std::size_t i = 0; i < path.count; ++i) {
    turns += path.circles[i].turn * path.wraps[i] / (2.0 * pi);
    widest = path.wraps[i] > path.wraps[widest] ? i : widest;
    const bool neighbours_may_cross = path.wraps[i] > pi && path.count > 2;
    if (neighbours_may_cross && cross(path.tangents[path.before(i)], path.tangents[i])) {
      return LoopFault{LoopFaultCode::idler_on_wrong_side, i, i};
    }
  }
  if (std::abs(turns - sense) > 0.5) {
    return LoopFault{LoopFaultCode::idler_on_wrong_side, widest, widest};
  }
  return std::nullopt;
}

bool cuts(const Tangent& t, const Circle& c) {
  const Length dx = c.x - t.from.x;
  const Length dy = c.y - t.from.y;
  const Length foot = std::clamp(Length(t.x * dx + t.y * dy), Length(), t.length);
  const Length off_x = dx - foot * t.x;
  const Length off_y = dy - foot * t.y;
  const Length least = c.radius * (1.0 - touching);
  return off_x * off_x + off_y * off_y < least * least;
}

std::optional<LoopFault> span_through_pulley(const Path& path) {
  for (std::size_t i = 0; i < path.count; ++i) {
    for (std::size_t k = 0; k < path.count; ++k) {
      const bool its_own = k == i || k == path.after(i);
      if (!its_own && cuts(path.tangents[i], path.circles[k])) {
        return LoopFault{LoopFaultCode::span_through_pulley, i, k};
      }
    }
  }
  return std::nullopt;
}

void lay(Path& path) {
  for (std::size_t i = 0; i < path.count; ++i) {
    path.tangents[i] = tangent(path.circles[i], path.circles[path.after(i)]);
  }
  for (std::size_t i = 0; i < path.count; ++i) {
    const Circle& circle = path.circles[i];
    path.wraps[i] = wrap_between(path.tangents[path.before(i)], path.tangents[i], circle.turn);
    path.length += path.tangents[i].length + path.wraps[i] * circle.radius;
  }
}

std::optional<LoopFault> find_path(std::span<const LoopPulley> pulleys, LoopSense sense,
                                   Path& path) {
  if (auto fault = unusable(pulleys)) {
    return fault;
  }
  const double turn = static_cast<double>(sense);
  path.count = pulleys.size();
  for (std::size_t i = 0; i < path.count; ++i) {
    const LoopPulley& p = pulleys[i];
    path.circles[i] = {p.x, p.y, p.pitch_diameter / 2.0, p.back_face ? -turn : turn};
  }
  if (auto fault = overlap(path)) {
    return fault;
  }
  lay(path);
  if (auto fault = crossing(path)) {
    return fault;
  }
  if (auto fault = wrong_side(path, turn)) {
    return fault;
  }
  return span_through_pulley(path);
}

/// Sign of the area the centres enclose; 0 where it is none to speak of.
int area_sign(std::span<const LoopPulley> pulleys, bool with_back_face) {
  const LoopPulley* origin = nullptr;
  const LoopPulley* last = nullptr;
  Area twice = Area();
  Area scale = Area();
  for (const LoopPulley& p : pulleys) {
    if (p.back_face && !with_back_face) {
      continue;
    }
    origin = origin == nullptr ? &p : origin;
    if (last != nullptr) {
      const Length ax = last->x - origin->x, ay = last->y - origin->y;
      const Length bx = p.x - origin->x, by = p.y - origin->y;
      twice += ax * by - ay * bx;
      scale = std::max(scale, Area(bx * bx + by * by));
    }
    last = &p;
  }
  constexpr double none = 1e-12;
  return twice > none * scale ? 1 : twice < -none * scale ? -1 : 0;
}

} // namespace

LoopSense loop_sense(std::span<const LoopPulley> pulleys) {
  const int inside = area_sign(pulleys, false);
  const int sign = inside != 0 ? inside : area_sign(pulleys, true);
  return sign < 0 ? LoopSense::clockwise : LoopSense::counter_clockwise;
}

tl::expected<BeltLoop, LoopFault> belt_loop(std::span<const LoopPulley> pulleys) {
  return belt_loop(pulleys, loop_sense(pulleys));
}

tl::expected<BeltLoop, LoopFault> belt_loop(std::span<const LoopPulley> pulleys, LoopSense sense) {
  Path path;
  if (const auto fault = find_path(pulleys, sense, path)) {
    return tl::unexpected(*fault);
  }
  BeltLoop loop;
  loop.length = path.length;
  loop.contacts.reserve(path.count);
  loop.spans.reserve(path.count);
  for (std::size_t i = 0; i < path.count; ++i) {
    const Tangent& in = path.tangents[path.before(i)];
    const Tangent& out = path.tangents[i];
    const double turn = path.circles[i].turn;
    const double from = std::atan2(-turn * in.x, turn * in.y);
    loop.contacts.push_back(
        {path.wraps[i] * radian, from * radian, (from + turn * path.wraps[i]) * radian});
    loop.spans.push_back({out.from, out.to, out.length});
  }
  return loop;
}

tl::expected<Length, LoopFault> belt_loop_length(std::span<const LoopPulley> pulleys,
                                                 LoopSense sense) {
  Path path;
  if (const auto fault = find_path(pulleys, sense, path)) {
    return tl::unexpected(*fault);
  }
  return path.length;
}

} // namespace feedwright
