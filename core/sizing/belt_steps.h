// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What belts carry, how tight they must be and how that sounds.

#include "mechanics/belt_strength.h"
#include "mechanics/belt_tension.h"
#include "sizing/load_steps.h"

#include <algorithm>

namespace feedwright {

/// A belt at work, whichever part it is.
struct BeltAtWork {
  const BeltBody& belt;
  PartSlot slot;
  double teeth_in_mesh; ///< of the pulley that has fewest
  Velocity speed;       ///< at the wanted feed, or zero
  AngularVelocity pulley_speed;
};

/// Pull the teeth may hand on: by a maker's figures for a tooth, or by ISO 5295's base pull.
inline std::optional<Force> tooth_limit(const BeltAtWork& at) {
  const BeltBody& belt = at.belt;
  if (!belt.tooth_loads.empty()) {
    std::vector<ToothLoadPoint> table;
    for (const ToothLoad& row : belt.tooth_loads) {
      table.push_back({*row.speed, *row.load});
    }
    const auto load = tooth_load_at(table, at.pulley_speed);
    return load ? std::optional<Force>(tooth_load_pull(
                      *load,
                      counted_teeth(belt_numbers::whole(at.teeth_in_mesh), belt.most_teeth_counted),
                      *belt.width))
                : std::nullopt;
  }
  if (belt.rated_pull && belt.base_width) {
    const auto mesh = mesh_factor(belt_numbers::whole(at.teeth_in_mesh));
    return mesh ? std::optional<Force>(std::max(
                      Force(),
                      Force(iso_allowed_pull(*mesh, width_factor(*belt.width, **belt.base_width),
                                             **belt.rated_pull,
                                             centrifugal_pull(*belt.mass_per_length, at.speed)))))
                : std::optional<Force>(Force());
  }
  return std::nullopt;
}

/// Where a belt is pulled hardest: shares of its free length that are on the tight side, where the
/// cords have most and where the slack side goes limp first. Both ½ for two pulleys.
struct TightShares {
  double cords = 0.5, slack = 0.5;
};

/// Pull the cords leave for work beside the pull the belt is set to; where that is not given,
/// beside the least that keeps the slack side tight. Few teeth in mesh hand on less.
inline std::optional<Force> cord_limit(const BeltAtWork& at, const TightShares& shares) {
  const auto mesh = mesh_factor(belt_numbers::whole(at.teeth_in_mesh));
  if (!at.belt.allowable_pull) {
    return std::nullopt;
  }
  const Force cords =
      **at.belt.allowable_pull - centrifugal_pull(*at.belt.mass_per_length, at.speed);
  const double taken = 1.0 - shares.cords; // of the rim force, on top of the static pull
  const Force left = at.belt.tension ? Force((cords - **at.belt.tension) / taken)
                                     : Force(cords / (shares.slack + taken));
  return std::max(Force(), Force(std::min(left, cords) * mesh.value_or(0.0)));
}

/// The lower of teeth and cords; nothing if neither is known.
inline std::optional<Force> allowed_pull(const BeltAtWork& at, const TightShares& shares) {
  const auto teeth = tooth_limit(at);
  const auto cords = cord_limit(at, shares);
  if (teeth && cords) {
    return std::min(*teeth, *cords);
  }
  return teeth ? teeth : cords;
}

/// The largest torque that comes through the stage from its motor, over the cases that are known.
template <class W>
std::optional<Torque> stage_torque(const SizingState<W>& s) {
  std::optional<Torque> most;
  if (s.out.rapid_torque) {
    most = *s.out.rapid_torque - *s.out.rotor_torque;
  }
  const auto take = [&](Torque torque) { most = most ? std::max(*most, torque) : torque; };
  if (s.out.cutting_torque) {
    take(*s.out.cutting_torque);
  }
  for (const CaseResult& load : s.out.cases) {
    take(load.torque);
  }
  // Of two screws wound against each other the one that is driven back sends its torque through
  // the belt to the other.
  const bool opposed = s.axis.sides.pairing == Pairing::opposed && s.out.axial_load;
  if (opposed && most) {
    take(Torque(*s.out.axial_load * value_of(s.screw_travel) /
                (value_of(s.efficiency) * value_of(s.reduction))));
  }
  return most;
}

template <class W>
Velocity wanted_feed(const SizingState<W>& s) {
  return s.axis.targets.feed ? **s.axis.targets.feed : Velocity();
}

/// Free lengths of belt from the motor's pulley either way to the nearest screw.
struct FreeLengths {
  Length one, other;
  Length longest_span;
  Angle motor_wrap;
  Length motor_radius;
};

template <class W>
std::optional<FreeLengths> free_lengths(const SizingState<W>& s) {
  if (const auto& stage = s.ready.stage) {
    const double sine =
        (stage->screw_diameter - stage->motor_diameter) / (2.0 * stage->centre_distance);
    const Length span = stage->centre_distance * std::sqrt(std::max(0.0, 1.0 - sine * sine));
    return FreeLengths{span, span, span,
                       (pi - 2.0 * std::asin(std::clamp(sine, -1.0, 1.0))) * radian,
                       stage->motor_diameter / 2.0};
  }
  if (!s.ready.loop) {
    return std::nullopt;
  }
  const LoopLayout& loop = *s.ready.loop;
  const auto& spans = loop.path.spans;
  Length longest{};
  for (const LoopSpan& span : spans) {
    longest = std::max(longest, span.length);
  }
  // To the nearest screw either way; what lies between two screws turns along with them.
  const auto on_screw = [&](std::size_t i) {
    return std::ranges::find(loop.screws, i) != loop.screws.end();
  };
  FreeLengths worst{};
  for (std::size_t i = loop.motor; !on_screw(i); i = (i + 1) % spans.size()) {
    worst.one += spans[i].length;
  }
  for (std::size_t i = loop.motor; !on_screw(i);) {
    i = (i + spans.size() - 1) % spans.size();
    worst.other += spans[i].length;
  }
  worst.longest_span = longest;
  worst.motor_wrap = loop.path.contacts[loop.motor].wrap;
  worst.motor_radius = loop.pulleys[loop.motor].pitch_diameter / 2.0;
  return worst;
}

/// The pull of a span that was plucked and heard; nothing where no note is given or none could be.
template <class W>
auto heard_pull(const SizingState<W>& s, const BeltBody& belt, PartSlot slot, const Length& span)
    -> std::optional<typename SizingState<W>::template N<Force>> {
  using Result = std::optional<typename SizingState<W>::template N<Force>>;
  if (!belt.heard_note || *belt.mass_per_length <= LinearDensity() || span <= Length()) {
    return Result();
  }
  return Result(pull_of_frequency(s.in(slot, "heard_note", **belt.heard_note),
                                  s.in(slot, "mass_per_length", *belt.mass_per_length),
                                  s.constant("L_s", span)));
}

/// Pull to set, what it does to the motor's shaft, and the note of the longest span.
template <class W, class F>
void stage_tension(SizingState<W>& s, const BeltBody& belt, const FreeLengths& free, const F& rim) {
  constexpr auto slot = PartSlot::transmission;
  const auto needed = FEEDWRIGHT_KEEP(s, belt_tension_needed,
                                      static_pull(rim, s.constant("½", 0.5), s.constant("0", 0.0)));
  const auto set = belt.tension ? s.in(slot, "tension", **belt.tension) : needed;
  FEEDWRIGHT_KEEP(s, belt_shaft_load, static_shaft_load(set, s.constant("φ_1", free.motor_wrap)));
  if (*belt.mass_per_length > LinearDensity() && value_of(set) > Force() &&
      free.longest_span > Length()) {
    FEEDWRIGHT_KEEP(s, belt_note,
                    span_frequency(set, s.in(slot, "mass_per_length", *belt.mass_per_length),
                                   s.constant("L_s", free.longest_span)));
  }
}

template <class W>
void stage_belt(SizingState<W>& s) {
  const BeltBody* belt = belt_of(s.axis.transmission);
  const auto torque = stage_torque(s);
  const auto free = free_lengths(s);
  if (belt == nullptr || !free) {
    return;
  }
  const AngularVelocity speed = wanted_feed(s) / value_of(s.motor_travel);
  const BeltAtWork at{*belt, PartSlot::transmission, *s.out.belt_teeth_in_mesh,
                      speed * free->motor_radius / radian, speed};
  if (const auto factor = mesh_factor(belt_numbers::whole(at.teeth_in_mesh))) {
    FEEDWRIGHT_KEEP(
        s, belt_mesh_factor,
        as_ratio(s.solved("mesh_factor", *factor, FEEDWRIGHT_EARLIER(s, belt_teeth_in_mesh))));
  }
  const auto allowed = s.axis.targets.feed ? allowed_pull(at, {}) : std::nullopt;
  if (allowed) {
    FEEDWRIGHT_KEEP(s, belt_pull_allowed,
                    s.solved("belt_pull", *allowed, FEEDWRIGHT_EARLIER(s, belt_teeth_in_mesh),
                             s.in(PartSlot::transmission, "width", *belt->width)));
  }
  if (const auto heard = heard_pull(s, *belt, PartSlot::transmission, free->longest_span)) {
    FEEDWRIGHT_KEEP(s, belt_pull_heard, *heard);
  }
  if (torque) {
    const auto rim = FEEDWRIGHT_KEEP(
        s, belt_rim_force,
        rim_force(s.constant("T_st", *torque), s.constant("r_1", free->motor_radius)));
    stage_tension(s, *belt, *free, rim);
  }
}

/// Belt from the carriage to the driving pulley direct, at the far and the near end of its reach,
/// and the whole free belt: twice the run between the pulleys.
struct HaulingLengths {
  Length far, near, whole;
};

inline HaulingLengths hauling_lengths(const AxisBasics& basics, const HaulingBelt& belt) {
  const Length round = double(belt.pulley_teeth) * *belt.pitch;
  const Length run = (*belt.belt_length - round) / 2.0;
  // A carriage right at a pulley would leave no belt: a thousandth of the run keeps it a number.
  const Length near = std::max(Length((run - *basics.travel) / 2.0), Length(run * 1e-3));
  return {std::min(Length(near + *basics.travel), run), near, Length(2.0 * run)};
}

/// Of the axis' hauling belt: where the carriage stands, else over the whole travel.
template <class W>
HaulingLengths hauling_lengths(const SizingState<W>& s) {
  HaulingLengths lengths = hauling_lengths(s.axis.basics, *s.haul);
  if (s.standing) {
    const Length run = lengths.whole / 2.0;
    lengths.near = std::clamp(s.standing->nearest, Length(run * 1e-3), run);
    lengths.far = std::clamp(s.standing->farthest, Length(run * 1e-3), run);
  }
  return lengths;
}

template <class W>
void hauling_belt(SizingState<W>& s) {
  if (s.haul == nullptr) {
    return;
  }
  constexpr auto slot = PartSlot::drive;
  const HaulingBelt& belt = *s.haul;
  const HaulingLengths lengths = hauling_lengths(s);
  const AngularVelocity speed = wanted_feed(s) / value_of(s.screw_travel);
  const BeltAtWork at{belt, slot, double(belt.pulley_teeth) / 2.0, wanted_feed(s), speed};
  // Pulled towards the driving pulley from near by the short direct side is tight: the cords have
  // most. Pulled away from there it is the slack one.
  const double near = number(lengths.near / lengths.whole);
  const auto allowed = s.axis.targets.feed ? allowed_pull(at, {near, 1.0 - near}) : std::nullopt;
  if (allowed) {
    FEEDWRIGHT_KEEP(s, haul_pull_allowed,
                    s.solved("belt_pull", *allowed, s.in(slot, "width", *belt.width)));
  }
  if (const auto heard = heard_pull(s, belt, slot, Length(lengths.whole / 2.0))) {
    FEEDWRIGHT_KEEP(s, haul_pull_heard, *heard);
  }
  if (!s.out.axial_load) {
    return;
  }
  const auto rim = FEEDWRIGHT_KEEP(s, haul_rim_force, FEEDWRIGHT_EARLIER(s, axial_load));
  // The slack side goes limp first where it is shortest: pulled the long way round from near by.
  const auto tight = s.constant("κ_t", 1.0 - number(lengths.near / lengths.whole));
  const auto needed =
      FEEDWRIGHT_KEEP(s, haul_tension_needed, static_pull(rim, tight, s.constant("0", 0.0)));
  const auto set = belt.tension ? s.in(slot, "tension", **belt.tension) : needed;
  if (*belt.mass_per_length > LinearDensity() && value_of(set) > Force()) {
    FEEDWRIGHT_KEEP(s, haul_note,
                    span_frequency(set, s.in(slot, "mass_per_length", *belt.mass_per_length),
                                   s.constant("L_s", Length(lengths.whole / 2.0))));
  }
}

template <class W>
void coupling(SizingState<W>& s) {
  const auto* part = std::get_if<Coupling>(&s.axis.transmission);
  if (part == nullptr || !part->torque_limit) {
    return;
  }
  FEEDWRIGHT_KEEP(s, coupling_torque_limit,
                  s.in(PartSlot::transmission, "torque_limit", **part->torque_limit));
  if (const auto torque = stage_torque(s)) {
    FEEDWRIGHT_KEEP(s, coupling_torque, s.constant("T_st", *torque));
  }
}

} // namespace feedwright
