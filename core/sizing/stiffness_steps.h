// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How far the axis gives way, at the place of the travel where it gives most, and how it rings.

#include "mechanics/screw_life.h"
#include "mechanics/stiffness.h"
#include "mechanics/two_sides.h"
#include "sizing/belt_steps.h"
#include "sizing/screw_steps.h"

namespace feedwright {

inline bool both_ends_fixed(const Screw& screw) {
  return screw.motor_end == EndSupport::fixed && screw.far_end == EndSupport::fixed;
}

/// From the motor-end bearing to the nut where a shaft held at both ends is weakest: its middle, or
/// the place within its reach nearest to it.
inline Length weakest_place(const NutReach& reach, const Screw& screw) {
  return std::clamp(Length(*screw.span / 2.0), reach.nearest, reach.farthest);
}

template <class W>
auto axial_shaft_stiffness(SizingState<W>& s) {
  constexpr auto slot = PartSlot::drive;
  const auto modulus = s.in(slot, "elastic_modulus", *s.screw->elastic_modulus);
  const auto area = carrying_area(s);
  if (both_ends_fixed(*s.screw)) {
    const Length span = *s.screw->span;
    // A nut right at a bearing is as stiff as can be; a thousandth of the span keeps it a number.
    const Length place =
        std::clamp(weakest_place(nut_reach(s), *s.screw), span * 1e-3, span * (1.0 - 1e-3));
    return shaft_stiffness_both_ends(area, modulus, s.in(slot, "span", span),
                                     s.constant("x", place));
  }
  return shaft_stiffness_one_end(area, modulus, loaded_length(s));
}

/// Twist of the turning screw up to the nut's farthest place, as a spring along the axis. Nothing
/// for a turning nut: the screw stands still.
template <class W>
auto twist_stiffness(SizingState<W>& s)
    -> std::optional<typename SizingState<W>::template N<Stiffness>> {
  using Result = std::optional<typename SizingState<W>::template N<Stiffness>>;
  if (s.screw->driven == DrivenMember::nut) {
    return Result();
  }
  constexpr auto slot = PartSlot::drive;
  const auto shear = s.in(slot, "shear_modulus", *s.screw->shear_modulus);
  const auto length =
      s.constant("l_t", std::max(nut_reach(s).farthest, Length(*s.screw->span * 1e-3)));
  auto twist = shaft_torsional_stiffness(
      shear, s.in(slot, "core_diameter", *s.screw->core_diameter), length);
  if (*s.screw->bore > Length()) {
    twist = twist - shaft_torsional_stiffness(shear, s.in(slot, "bore", *s.screw->bore), length);
  }
  return Result(along_the_axis(twist, s.screw_travel));
}

/// Coupling or belt as a spring along the axis at one screw; nothing if not known.
template <class W>
auto tie_stiffness(SizingState<W>& s)
    -> std::optional<typename SizingState<W>::template N<Stiffness>> {
  using Result = std::optional<typename SizingState<W>::template N<Stiffness>>;
  constexpr auto slot = PartSlot::transmission;
  if (const auto* coupling = std::get_if<Coupling>(&s.axis.transmission)) {
    return coupling->stiffness
               ? Result(
                     along_the_axis(s.in(slot, "stiffness", **coupling->stiffness), s.screw_travel))
               : Result();
  }
  const BeltBody* belt = belt_of(s.axis.transmission);
  const auto free = free_lengths(s);
  if (belt == nullptr || !belt->specific_stiffness || !free || free->one <= Length() ||
      free->other <= Length()) {
    return Result();
  }
  const auto line = belt_stiffness(s.in(slot, "specific_stiffness", **belt->specific_stiffness),
                                   s.constant("L_a", free->one), s.constant("L_b", free->other));
  const auto radius = s.constant("r_1", free->motor_radius) * s.reduction;
  const auto whole = along_the_axis(stiffness_at_shaft(line, radius), s.screw_travel);
  // Two screws on one loop load the same spans: each has half of them.
  return Result(s.screws_each > 1.0 ? whole / s.screws_each : whole);
}

/// The nut at the load it has, a preloaded one at its preload.
template <class W>
auto nut_spring(SizingState<W>& s)
    -> std::optional<typename SizingState<W>::template N<Stiffness>> {
  using Result = std::optional<typename SizingState<W>::template N<Stiffness>>;
  const Screw& screw = *s.screw;
  if (!screw.nut_stiffness) {
    return Result();
  }
  const auto listed = s.in(PartSlot::drive, "nut_stiffness", **screw.nut_stiffness);
  const bool preloaded = screw.preload.has_value();
  const auto load = preloaded ? std::optional<Force>(**screw.preload) : s.out.axial_load;
  if (screw.thread != ThreadForm::ball) {
    return Result(listed);
  }
  if (!screw.dynamic_rating || !load) {
    return Result();
  }
  return Result(
      s.solved("nut_stiffness",
               nut_stiffness_at(**screw.nut_stiffness, *load, **screw.dynamic_rating, preloaded),
               listed, s.constant("F", *load)));
}

/// Spring after spring of one screw; open while one of nut, bearing and coupling or belt is not
/// known.
template <class W>
void screw_chain(SizingState<W>& s) {
  const auto shaft = FEEDWRIGHT_KEEP(s, shaft_stiffness, axial_shaft_stiffness(s));
  auto chain = shaft;
  if (const auto twist = twist_stiffness(s)) {
    chain = in_series(chain, FEEDWRIGHT_KEEP(s, torsion_stiffness, *twist));
  }
  const auto tie = tie_stiffness(s);
  if (tie) {
    chain = in_series(chain, FEEDWRIGHT_KEEP(s, transmission_stiffness, *tie));
  }
  const auto nut = nut_spring(s);
  if (nut) {
    chain = in_series(chain, FEEDWRIGHT_KEEP(s, nut_stiffness, *nut));
  }
  const auto& given = s.screw->bearing_stiffness;
  if (given) {
    const auto one = s.in(PartSlot::drive, "bearing_stiffness", **given);
    chain = in_series(
        chain, FEEDWRIGHT_KEEP(s, bearing_stiffness, both_ends_fixed(*s.screw) ? 2.0 * one : one));
  }
  if (nut && given && tie) {
    FEEDWRIGHT_KEEP(s, drive_stiffness, chain);
  }
}

template <class W>
void hauling_chain(SizingState<W>& s) {
  if (!s.haul->specific_stiffness) {
    return;
  }
  // Weakest where the two ways to the driving pulley are most alike.
  const HaulingLengths lengths = hauling_lengths(s);
  auto chain = FEEDWRIGHT_KEEP(
      s, haul_stiffness,
      belt_stiffness(s.in(PartSlot::drive, "specific_stiffness", **s.haul->specific_stiffness),
                     s.constant("L_a", lengths.far),
                     s.constant("L_b", Length(lengths.whole - lengths.far))));
  const auto tie = tie_stiffness(s);
  if (tie) {
    chain = in_series(chain, FEEDWRIGHT_KEEP(s, transmission_stiffness, *tie));
    FEEDWRIGHT_KEEP(s, drive_stiffness, chain);
  }
}

/// Motor against screw and load, with coupling or belt and the screw's twist between them.
template <class W>
void torsional(SizingState<W>& s) {
  std::optional<Stiffness> spring = s.out.transmission_stiffness;
  if (spring && s.out.torsion_stiffness) {
    spring = in_series(*spring, *s.out.torsion_stiffness);
  }
  if (!spring) {
    return;
  }
  const auto travel = value_of(s.screw_travel);
  const TorsionalStiffness at_screw = *spring * square(travel) * s.screws_each;
  const Inertia motor = value_of(s.motor_side_inertia) * square(value_of(s.reduction));
  const Inertia load = value_of(s.screw_side_inertia) + value_of(s.mass) * square(travel);
  FEEDWRIGHT_KEEP(s, torsional_frequency,
                  s.solved("torsional_frequency", torsional_frequency(at_screw, motor, load),
                           FEEDWRIGHT_EARLIER(s, transmission_stiffness), s.motor_side_inertia,
                           s.screw_side_inertia));
}

template <class W>
void axis_spring(SizingState<W>& s) {
  if (!s.out.drive_stiffness) {
    return;
  }
  const double drives = (s.two_motors ? 2.0 : 1.0) * s.screws_each;
  const auto one = FEEDWRIGHT_EARLIER(s, drive_stiffness);
  const auto whole =
      FEEDWRIGHT_KEEP(s, axis_stiffness, drives > 1.0 ? s.constant("n", drives) * one : one);
  FEEDWRIGHT_KEEP(s, natural_frequency,
                  axial_frequency(whole, s.in(PartSlot::carriage, "mass", *s.axis.carriage.mass)));
}

/// Skew: of one central drive by the guides' give, of two motors by what one can lose.
template <class W>
void skewing(SizingState<W>& s) {
  const Guides& guides = s.axis.guides;
  if (s.out.couple_force && guides.block_stiffness && s.axis.sides.spacing) {
    FEEDWRIGHT_KEEP(
        s, skew,
        skew_of_blocks(FEEDWRIGHT_EARLIER(s, couple_force),
                       s.in(PartSlot::guides, "block_stiffness", **guides.block_stiffness),
                       s.in(PartSlot::sides, "spacing", **s.axis.sides.spacing),
                       s.in(PartSlot::guides, "block_spacing", **guides.block_spacing)));
  }
  if (!s.two_motors) {
    return;
  }
  if (s.motor.is_stepper() && !s.motor.holds_position()) {
    // A stalled stepper falls back by whole rotor teeth, four full steps each.
    FEEDWRIGHT_KEEP(s, skew_per_slip,
                    2.0 * pi * times_radian(s.motor_travel) /
                        s.constant("N_r", s.motor.rotor_teeth()));
  }
  const auto standstill = s.motor.torque(AngularVelocity(), Duty::short_time);
  if (guides.block_spacing && s.axis.sides.spacing && standstill) {
    const auto push = s.constant("T_0", *standstill) * s.reduction * s.stage_efficiency *
                      s.efficiency / s.screw_travel;
    FEEDWRIGHT_KEEP(s, stall_couple_force,
                    couple_force(push, s.in(PartSlot::sides, "spacing", **s.axis.sides.spacing),
                                 s.in(PartSlot::guides, "block_spacing", **guides.block_spacing)));
  }
}

template <class W>
void stiffness(SizingState<W>& s) {
  s.screw != nullptr ? screw_chain(s) : hauling_chain(s);
  axis_spring(s);
  torsional(s);
  skewing(s);
}

} // namespace feedwright
