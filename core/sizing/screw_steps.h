// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the screw allows: whip, ball speed, buckling, stress, capacity.

#include "mechanics/column_buckling.h"
#include "mechanics/screw_accuracy.h"
#include "mechanics/screw_life.h"
#include "mechanics/shaft_whip.h"
#include "sizing/sizing_state.h"

#include <algorithm>

namespace feedwright {

/// One length of the screw that may whip, with its ends.
struct WhipSegment {
  enum class From : std::uint8_t { bearing_to_bearing, motor_end_to_nut, far_end_to_nut };
  Length length;
  double eigenvalue;
  From from = From::bearing_to_bearing;
};

/// From the motor-end bearing to the nut at the start of its travel.
inline Length nut_at_start(const AxisBasics& basics, const Screw& screw) {
  return basics.nut_at_start ? **basics.nut_at_start : Length((*screw.span - *basics.travel) / 2.0);
}

/// Over the whole travel.
inline NutReach nut_reach(const AxisBasics& basics, const Screw& screw) {
  const Length start = nut_at_start(basics, screw);
  return {start, Length(start + *basics.travel)};
}

/// Of the axis' screw: where the nut stands, else over the whole travel.
template <class W>
NutReach nut_reach(const SizingState<W>& s) {
  return s.standing ? *s.standing : nut_reach(s.axis.basics, *s.screw);
}

/// From the motor-end bearing to the nut at the end of its travel, as it comes about.
template <class W>
auto nut_at_end(const SizingState<W>& s) {
  using Result = typename SizingState<W>::template N<Length>;
  if (s.standing) {
    return Result(s.constant("x_n", s.standing->farthest));
  }
  const auto travel = s.in(PartSlot::axis, "travel", *s.axis.basics.travel);
  if (s.axis.basics.nut_at_start) {
    return Result(s.in(PartSlot::axis, "nut_at_start", **s.axis.basics.nut_at_start) + travel);
  }
  return Result((s.in(PartSlot::drive, "span", *s.screw->span) + travel) / 2.0);
}

/// From the far bearing to the nut at the start of its travel, as it comes about.
template <class W>
auto nut_from_far_end(const SizingState<W>& s) {
  using Result = typename SizingState<W>::template N<Length>;
  const auto span = s.in(PartSlot::drive, "span", *s.screw->span);
  if (s.standing) {
    return Result(span - s.constant("x_n", s.standing->nearest));
  }
  if (s.axis.basics.nut_at_start) {
    return Result(span - s.in(PartSlot::axis, "nut_at_start", **s.axis.basics.nut_at_start));
  }
  return Result((span + s.in(PartSlot::axis, "travel", *s.axis.basics.travel)) / 2.0);
}

/// The whole length between the bearings; nothing if the ends do not hold it.
inline std::optional<WhipSegment> whole_span(const Screw& screw) {
  const auto eigenvalue = whip_eigenvalue(screw.motor_end, screw.far_end);
  return eigenvalue ? std::optional(WhipSegment{*screw.span, *eigenvalue}) : std::nullopt;
}

/// Lower is sooner: the critical speed goes with the square of this.
inline PerLength whip_resistance(const WhipSegment& segment) {
  return segment.eigenvalue / segment.length;
}

/// The length between nut and bearing that whips first within its reach, the nut counted as a
/// support; nothing if an end is free (there the whole length is the safe reading). Cut apart at
/// the nut a length can come out below the whole span; a support never lowers a natural frequency
/// (Rayleigh), so the whole span then stands.
inline std::optional<WhipSegment> nut_segment(const NutReach& reach, const Screw& screw) {
  const auto whole = whole_span(screw);
  if (!whole || screw.motor_end == EndSupport::free || screw.far_end == EndSupport::free) {
    return std::nullopt;
  }
  const WhipSegment motor_side{reach.farthest,
                               *whip_eigenvalue(screw.motor_end, EndSupport::supported),
                               WhipSegment::From::motor_end_to_nut};
  const WhipSegment far_side{*screw.span - reach.nearest,
                             *whip_eigenvalue(screw.far_end, EndSupport::supported),
                             WhipSegment::From::far_end_to_nut};
  const WhipSegment& first =
      whip_resistance(motor_side) < whip_resistance(far_side) ? motor_side : far_side;
  return whip_resistance(first) < whip_resistance(*whole) ? *whole : first;
}

inline std::optional<WhipSegment> chosen_segment(const NutReach& reach, const Screw& screw) {
  if (screw.whip_span == WhipSpan::nut_to_bearing) {
    if (auto segment = nut_segment(reach, screw)) {
      return segment;
    }
  }
  return whole_span(screw);
}

/// Diameter with the radius of gyration of the core: of a hollow one √(d_r² + d_i²).
template <class W>
auto gyration_diameter(const SizingState<W>& s) {
  auto core = s.in(PartSlot::drive, "core_diameter", *s.screw->core_diameter);
  if (*s.screw->bore == Length()) {
    return core;
  }
  using Result = decltype(core);
  return Result(sqrt(square(core) + square(s.in(PartSlot::drive, "bore", *s.screw->bore))));
}

/// A segment's length as it comes about.
template <class W>
auto segment_length(const SizingState<W>& s, const WhipSegment& segment) {
  switch (segment.from) {
  case WhipSegment::From::motor_end_to_nut: return nut_at_end(s);
  case WhipSegment::From::far_end_to_nut: return nut_from_far_end(s);
  case WhipSegment::From::bearing_to_bearing: break;
  }
  using Result = typename SizingState<W>::template N<Length>;
  return Result(s.in(PartSlot::drive, "span", *s.screw->span));
}

template <class W, class L>
auto segment_speed(const SizingState<W>& s, const WhipSegment& segment, const L& length) {
  constexpr auto slot = PartSlot::drive;
  const Screw& screw = *s.screw;
  return critical_speed(s.constant("λ", segment.eigenvalue), length, gyration_diameter(s),
                        s.in(slot, "elastic_modulus", *screw.elastic_modulus),
                        s.in(slot, "density", *screw.density));
}

template <class W>
void whip(SizingState<W>& s) {
  const auto segment = chosen_segment(nut_reach(s), *s.screw);
  if (!segment) {
    return;
  }
  const auto share = s.in(PartSlot::drive, "whip_share", *s.screw->whip_share);
  const auto length = FEEDWRIGHT_KEEP(s, whip_length, segment_length(s, *segment));
  const auto critical = FEEDWRIGHT_KEEP(s, whip_speed, segment_speed(s, *segment, length));
  const auto allowed = FEEDWRIGHT_KEEP(s, whip_allowed_speed, share * critical);
  FEEDWRIGHT_KEEP(s, whip_feed, allowed * s.screw_travel);
  if (const auto whole = whole_span(*s.screw)) {
    FEEDWRIGHT_KEEP(s, whip_feed_between_bearings,
                    share * segment_speed(s, *whole, segment_length(s, *whole)) * s.screw_travel);
  }
  if (const auto part = nut_segment(nut_reach(s), *s.screw)) {
    FEEDWRIGHT_KEEP(s, whip_feed_nut_to_bearing,
                    share * segment_speed(s, *part, segment_length(s, *part)) * s.screw_travel);
  }
}

template <class W>
void screw_speeds(SizingState<W>& s) {
  const Screw& screw = *s.screw;
  constexpr auto slot = PartSlot::drive;
  if (screw.thread == ThreadForm::ball) {
    FEEDWRIGHT_KEEP(s, ball_speed_feed,
                    s.in(slot, "ball_speed_limit", *screw.ball_speed_limit) /
                        s.in(slot, "pitch_diameter", *screw.pitch_diameter) * s.screw_travel);
  }
  if (screw.speed_limit) {
    FEEDWRIGHT_KEEP(s, screw_speed_feed,
                    s.in(slot, "speed_limit", **screw.speed_limit) * s.screw_travel);
  }
}

/// Longest loaded length: from a bearing that takes thrust to the nut at its farthest. A fixed end
/// takes thrust, either of two; with none fixed the motor end does. A nut right at its bearing
/// would leave no length: a thousandth of the span keeps it a number.
template <class W>
auto loaded_length(const SizingState<W>& s) {
  using Result = typename SizingState<W>::template N<Length>;
  const Screw& screw = *s.screw;
  const Result from_motor = nut_at_end(s);
  const Result from_far = nut_from_far_end(s);
  const bool both = screw.motor_end == EndSupport::fixed && screw.far_end == EndSupport::fixed;
  const bool far_only = screw.far_end == EndSupport::fixed && screw.motor_end != EndSupport::fixed;
  const bool from_far_counts = both ? value_of(from_far) > value_of(from_motor) : far_only;
  const Result longest = from_far_counts ? from_far : from_motor;
  const Result least = s.in(PartSlot::drive, "span", *screw.span) / 1000.0;
  return value_of(longest) < value_of(least) ? least : longest;
}

/// Cross-section that carries, of a hollow screw less its bore.
template <class W>
auto carrying_area(const SizingState<W>& s) {
  const auto full = round_area(s.in(PartSlot::drive, "core_diameter", *s.screw->core_diameter));
  using Result = std::remove_cvref_t<decltype(full)>;
  return *s.screw->bore == Length()
             ? full
             : Result(full - round_area(s.in(PartSlot::drive, "bore", *s.screw->bore)));
}

/// Pressure of a warmer screw between two fixed ends on itself and its bearings, less the stretch
/// it was given: E A α ΔT − F_z, not below zero. Nothing where the ends let it grow.
template <class W>
auto heat_pressure(SizingState<W>& s) -> std::optional<typename SizingState<W>::template N<Force>> {
  using Result = std::optional<typename SizingState<W>::template N<Force>>;
  constexpr auto slot = PartSlot::drive;
  const Screw& screw = *s.screw;
  const bool held = screw.motor_end == EndSupport::fixed && screw.far_end == EndSupport::fixed;
  if (!held || !screw.temperature_rise) {
    return Result();
  }
  const auto left = stretch_for_heat(s.in(slot, "elastic_modulus", *screw.elastic_modulus),
                                     carrying_area(s), s.in(slot, "expansion", *screw.expansion),
                                     s.in(slot, "temperature_rise", **screw.temperature_rise)) -
                    s.in(slot, "stretch", *screw.stretch);
  return Result(
      FEEDWRIGHT_KEEP(s, heat_force, value_of(left) < Force() ? s.constant("0", Force()) : left));
}

/// What is left of an allowed force when another already uses some of it; not below zero.
template <class W, class F, class G>
auto left_of(const SizingState<W>& s, const F& allowed, const G& used) {
  using Result = std::remove_cvref_t<decltype(allowed - used)>;
  const auto left = allowed - used;
  return value_of(left) < Force() ? Result(s.constant("0", Force())) : Result(left);
}

template <class W>
void buckling(SizingState<W>& s) {
  const Screw& screw = *s.screw;
  constexpr auto slot = PartSlot::drive;
  const auto end_constant = buckling_constant(screw.motor_end, screw.far_end);
  if (!end_constant) {
    return;
  }
  const auto c = s.constant("C", *end_constant);
  const auto modulus = s.in(slot, "elastic_modulus", *screw.elastic_modulus);
  const auto yield = s.in(slot, "yield_strength", *screw.yield_strength);
  const auto area = FEEDWRIGHT_KEEP(s, core_area, carrying_area(s));
  const auto length = FEEDWRIGHT_KEEP(s, buckling_length, loaded_length(s));
  const auto slender =
      FEEDWRIGHT_KEEP(s, slenderness, as_ratio(slenderness_ratio(length, gyration_diameter(s))));
  const auto limit =
      FEEDWRIGHT_KEEP(s, slenderness_limit, as_ratio(slenderness_transition(c, modulus, yield)));
  const auto load = FEEDWRIGHT_KEEP(s, buckling_load,
                                    value_of(slender) > value_of(limit)
                                        ? euler_load(c, modulus, area, slender)
                                        : johnson_load(c, modulus, yield, area, slender));
  const auto allowed = load / s.in(slot, "buckling_safety", *screw.buckling_safety);
  const auto heat = heat_pressure(s);
  FEEDWRIGHT_KEEP(s, buckling_thrust, heat ? left_of(s, allowed, *heat) : allowed);
  const auto stress = area * yield / s.in(slot, "stress_safety", *screw.stress_safety);
  const bool stretched = *screw.stretch > Force();
  const auto stretch = s.in(slot, "stretch", *screw.stretch);
  FEEDWRIGHT_KEEP(s, core_stress_thrust, stretched ? left_of(s, stress, stretch) : stress);
  if (s.out.axial_load) {
    const auto axial = FEEDWRIGHT_EARLIER(s, axial_load);
    FEEDWRIGHT_KEEP(s, core_stress, (stretched ? axial + stretch : axial) / area);
  }
}

/// The critical speed while the screw is pressed by the largest load and stretched by its own pull:
/// n √(1 − (F − F_z)/P), P Euler's load. Nothing where the load reaches it.
template <class W>
void whip_under_load(SizingState<W>& s) {
  if (!s.out.whip_speed || !s.out.core_area || !s.out.axial_load) {
    return;
  }
  const auto c = s.constant("C", *buckling_constant(s.screw->motor_end, s.screw->far_end));
  const auto euler =
      euler_load(c, s.in(PartSlot::drive, "elastic_modulus", *s.screw->elastic_modulus),
                 FEEDWRIGHT_EARLIER(s, core_area),
                 as_ratio(slenderness_ratio(s.in(PartSlot::drive, "span", *s.screw->span),
                                            gyration_diameter(s))));
  const auto pressed =
      FEEDWRIGHT_EARLIER(s, axial_load) - s.in(PartSlot::drive, "stretch", *s.screw->stretch);
  const auto left = 1.0 - number(pressed / euler);
  if (value_of(left) > 0.0) {
    FEEDWRIGHT_KEEP(s, whip_speed_loaded, FEEDWRIGHT_EARLIER(s, whip_speed) * sqrt(left));
  }
}

template <class W>
void capacities(SizingState<W>& s) {
  const Screw& screw = *s.screw;
  constexpr auto slot = PartSlot::drive;
  if (screw.static_rating) {
    const auto of_half = s.in(slot, "static_rating", **screw.static_rating) /
                         s.in(slot, "static_safety", *screw.static_safety);
    const bool paired = screw.nuts == NutArrangement::preloaded_pair && screw.preload;
    FEEDWRIGHT_KEEP(s, static_thrust,
                    paired ? s.solved("pair_capacity",
                                      outer_load_of_pair(value_of(of_half), **screw.preload),
                                      of_half, s.in(slot, "preload", **screw.preload))
                           : of_half);
  }
  if (screw.bearing_thrust_limit) {
    const auto limit = s.in(slot, "bearing_thrust_limit", **screw.bearing_thrust_limit);
    // A stretched screw pulls on its bearings, a warm one presses: whichever is more is gone.
    const Force heat = s.out.heat_force.value_or(Force());
    const Force standing = std::max(heat, *screw.stretch);
    FEEDWRIGHT_KEEP(s, bearing_thrust,
                    standing > Force() ? left_of(s, limit, s.constant("F_stand", standing))
                                       : limit);
  }
}

} // namespace feedwright
