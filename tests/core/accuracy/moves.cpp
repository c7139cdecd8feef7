// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/move_profile.h"

#include <array>

namespace feedwright::testing {

namespace {

struct WantedMove {
  std::size_t kind;
  std::array<Ref, 4> pieces; ///< acceleration rises, holds, falls; cruise
  Ref total() const { return 2 * (pieces[0] + pieces[1] + pieces[2]) + pieces[3]; }
};

constexpr std::array<const char*, 6> kinds{
    "move time, no jerk limit, no cruise", "move time, no jerk limit, cruise",
    "move time, neither limit reached",    "move time, acceleration reached",
    "move time, velocity reached",         "move time, both limits reached"};

WantedMove without_jerk(const Ref& d, const Ref& v, const Ref& a) {
  if (d * a <= v * v) {
    return {0, {Ref(0), sqrt(d / a), Ref(0), Ref(0)}};
  }
  return {1, {Ref(0), v / a, Ref(0), d / v - v / a}};
}

/// The double-S move by its usual cases, told apart by times.
WantedMove with_jerk(const Ref& d, const Ref& v, const Ref& a, const Ref& j) {
  const bool holds = v * j >= a * a;
  const Ref ramp = holds ? a / j : sqrt(v / j);
  const Ref rise = holds ? ramp + v / a : 2 * ramp;
  const Ref cruise = d / v - rise;
  if (cruise >= 0) {
    return {holds ? 5U : 4U, {ramp, rise - 2 * ramp, ramp, cruise}};
  }
  if (d * j * j >= 2 * a * a * a) {
    const Ref full = a / j;
    const Ref reached = (full + sqrt(full * full + 4 * d / a)) / 2;
    return {3, {full, reached - 2 * full, full, Ref(0)}};
  }
  const Ref each = cbrt(d / (2 * j));
  return {2, {each, Ref(0), each, Ref(0)}};
}

} // namespace

Agreements agreement_of_moves() {
  Agreements all;
  for (const char* kind : kinds) {
    all.emplace_back(kind);
  }
  Agreement segments("durations of the seven segments, over the move's"),
      where("place where the last segment starts, over the distance");
  Dice dice(71);
  for (int i = 0; i < 3000; ++i) {
    const auto distance = from_si<Length>(dice.over(1e-5, 2.0));
    MoveLimits limits{from_si<Velocity>(dice.over(5e-3, 2.0)),
                      from_si<Acceleration>(dice.over(0.05, 20.0)), std::nullopt};
    const Ref d = ref(distance), v = ref(limits.velocity), a = ref(limits.acceleration);
    WantedMove wanted{};
    if (dice.chance(0.7)) {
      limits.jerk = from_si<Jerk>(dice.over(0.5, 2000.0));
      wanted = with_jerk(d, v, a, ref(*limits.jerk));
    } else {
      wanted = without_jerk(d, v, a);
    }
    const auto move = least_time_move(distance, limits);
    all[wanted.kind].add(move->total, wanted.total());

    constexpr std::array<std::size_t, 7> piece_of{0, 1, 2, 3, 0, 1, 2};
    for (std::size_t k = 0; k < 7; ++k) {
      segments.add_over(move->segments[k].duration, wanted.pieces[piece_of[k]], wanted.total());
    }
    // Seen from the end, the last piece covers j t³/6.
    if (limits.jerk) {
      where.add_over(move->segments[6].position_at_start,
                     d - ref(*limits.jerk) * pow(wanted.pieces[0], 3) / 6, d);
    }
  }
  all.insert(all.end(), {segments, where});
  return all;
}

} // namespace feedwright::testing
