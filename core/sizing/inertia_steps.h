// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What turns, at the motor's shaft and at the screw's, and what one motor has to move.

#include "mechanics/rotor.h"
#include "mechanics/two_sides.h"
#include "sizing/train_steps.h"

namespace feedwright {

/// How much of everything the harder-loaded of two sides takes, and the guides' couple of one.
template <class W>
void shares(SizingState<W>& s) {
  const Sides& sides = s.axis.sides;
  const auto whole = s.in(PartSlot::carriage, "mass", *s.axis.carriage.mass);
  s.mass = whole;
  s.resisting_mass = whole;
  s.side_share = s.constant("1", 1.0);
  s.screw_share = s.side_share;
  const bool crosses = *sides.cross_travel > Length();
  if (sides.layout == DriveLayout::one) {
    if (crosses && s.axis.guides.block_spacing) {
      const auto share = FEEDWRIGHT_KEEP(
          s, yaw_friction_share,
          as_ratio(s.in(PartSlot::guides, "friction", *s.axis.guides.friction) *
                   number(s.in(PartSlot::sides, "cross_travel", *sides.cross_travel) /
                          s.in(PartSlot::guides, "block_spacing", **s.axis.guides.block_spacing))));
      s.resisting_mass =
          whole + number(share) * s.in(PartSlot::sides, "crossing_mass", *sides.crossing_mass);
    }
    return;
  }
  const auto half = s.constant("½", Ratio(from_si<Ratio>(0.5)));
  const auto share = number(FEEDWRIGHT_KEEP(
      s, worst_side_share,
      crosses
          ? as_ratio(worst_side_share(s.in(PartSlot::sides, "cross_travel", *sides.cross_travel),
                                      s.in(PartSlot::sides, "spacing", **sides.spacing)))
          : half));
  if (!s.two_motors) {
    s.screw_share = share;
    return;
  }
  s.side_share = share;
  const auto crossing = s.in(PartSlot::sides, "crossing_mass", *sides.crossing_mass);
  s.mass = FEEDWRIGHT_KEEP(s, worst_side_mass, (whole - crossing) / 2.0 + share * crossing);
  s.resisting_mass = s.mass;
}

/// A pulley as a solid disc of its pitch diameter.
template <class W, class T, class P, class D, class B>
auto disc_inertia(const SizingState<W>&, const T& teeth, const P& pitch, const D& density,
                  const B& width) {
  return cylinder_inertia(density, width, pulley_pitch_diameter(teeth, pitch));
}

template <class W>
auto given_or_disc(SizingState<W>& s, const BeltBody& belt, std::string_view teeth_member,
                   int teeth, std::string_view inertia_member,
                   const std::optional<NonNegative<Inertia>>& given, PartSlot slot) {
  if (given) {
    return s.in(slot, inertia_member, **given);
  }
  return disc_inertia(s, s.in(slot, teeth_member, double(teeth)), s.in(slot, "pitch", *belt.pitch),
                      s.in(slot, "pulley_density", *belt.pulley_density),
                      s.in(slot, "width", *belt.width));
}

/// A belt of that many teeth as a mass at the motor pulley's rim.
template <class W, class T>
auto belt_at_motor(SizingState<W>& s, const BeltBody& belt, int belt_teeth, const T& motor_teeth) {
  constexpr auto slot = PartSlot::transmission;
  const auto pitch = s.in(slot, "pitch", *belt.pitch);
  const auto mass = s.in(slot, "mass_per_length", *belt.mass_per_length) *
                    (s.in(slot, "belt_teeth", double(belt_teeth)) * pitch);
  const auto radius = per_radian(pulley_pitch_diameter(motor_teeth, pitch) / 2.0);
  return FEEDWRIGHT_KEEP(s, belt_inertia, carried_inertia(mass, radius));
}

/// What the stage adds at the motor's shaft.
template <class W>
auto stage_inertias(SizingState<W>& s, const BeltStage& belt) {
  constexpr auto slot = PartSlot::transmission;
  const auto j1 =
      FEEDWRIGHT_KEEP(s, motor_pulley_inertia,
                      given_or_disc(s, belt, "motor_pulley_teeth", belt.motor_pulley_teeth,
                                    "motor_pulley_inertia", belt.motor_pulley_inertia, slot));
  const auto j2 =
      FEEDWRIGHT_KEEP(s, screw_pulley_inertia,
                      given_or_disc(s, belt, "screw_pulley_teeth", belt.screw_pulley_teeth,
                                    "screw_pulley_inertia", belt.screw_pulley_inertia, slot));
  const auto jb = belt_at_motor(s, belt, belt.belt_teeth,
                                s.in(slot, "motor_pulley_teeth", double(belt.motor_pulley_teeth)));
  s.screw_side_inertia = s.screw_side_inertia + j2;
  return j1 + jb;
}

/// Idlers turn with the belt's speed: each counts at the motor by its own radius. A smooth roller
/// is a solid disc too.
inline Inertia idlers_at_motor(const BeltLoopDrive& drive, const LoopLayout& layout) {
  Inertia sum{};
  const Length motor_diameter = layout.pulleys[layout.motor].pitch_diameter;
  for (std::size_t i = 0; i < drive.pulleys.size(); ++i) {
    if (drive.pulleys[i].role == PulleyRole::idler) {
      const Length diameter = layout.pulleys[i].pitch_diameter;
      sum += cylinder_inertia(*drive.pulley_density, *drive.width, diameter) *
             square(motor_diameter / diameter);
    }
  }
  return sum;
}

/// What the loop adds at the motor's shaft.
template <class W>
auto loop_inertias(SizingState<W>& s, const BeltLoopDrive& drive) {
  using Carried = std::optional<typename SizingState<W>::template N<Inertia>>;
  if (!s.ready.loop) {
    return Carried();
  }
  constexpr auto slot = PartSlot::transmission;
  const LoopLayout& layout = *s.ready.loop;
  const auto z1 = s.constant("z_1", double(layout.motor_teeth));
  const auto z2 = s.constant("z_2", double(layout.screw_teeth));
  const auto pitch = s.in(slot, "pitch", *drive.pitch);
  const auto density = s.in(slot, "pulley_density", *drive.pulley_density);
  const auto width = s.in(slot, "width", *drive.width);
  const auto j1 = FEEDWRIGHT_KEEP(s, motor_pulley_inertia,
                                  disc_inertia(s, z1, pitch, density, width) +
                                      s.solved("idlers", idlers_at_motor(drive, layout), pitch));
  const auto j2 = disc_inertia(s, z2, pitch, density, width);
  const auto all = FEEDWRIGHT_KEEP(s, screw_pulley_inertia,
                                   s.screws_each > 1.0 ? s.constant("2", s.screws_each) * j2 : j2);
  const auto jb = belt_at_motor(s, drive, drive.belt_teeth, z1);
  s.screw_side_inertia = s.screw_side_inertia + all;
  return Carried(j1 + jb);
}

/// Everything that turns with one screw, or with one hauling belt.
template <class W>
auto final_drive_inertia(SizingState<W>& s) {
  constexpr auto slot = PartSlot::drive;
  if (s.haul != nullptr) {
    const auto pulley = given_or_disc(s, *s.haul, "pulley_teeth", s.haul->pulley_teeth,
                                      "pulley_inertia", s.haul->pulley_inertia, slot);
    const auto mass = s.in(slot, "mass_per_length", *s.haul->mass_per_length) *
                      s.in(slot, "belt_length", *s.haul->belt_length);
    return 2.0 * pulley + carried_inertia(mass, s.screw_travel);
  }
  const Screw& screw = *s.screw;
  if (screw.driven == DrivenMember::nut && screw.nut_inertia) {
    return s.in(slot, "nut_inertia", **screw.nut_inertia);
  }
  // A whole length below the span is left over from a shorter screw, and a finding of its own.
  const bool whole = screw.overall_length && **screw.overall_length >= *screw.span;
  const auto length = whole ? s.in(slot, "overall_length", **screw.overall_length)
                            : s.in(slot, "span", *screw.span);
  const auto density = s.in(slot, "density", *screw.density);
  const auto solid =
      cylinder_inertia(density, length, s.in(slot, "nominal_diameter", *screw.nominal_diameter));
  return *screw.bore > Length()
             ? solid - cylinder_inertia(density, length, s.in(slot, "bore", *screw.bore))
             : solid;
}

template <class W>
void inertias(SizingState<W>& s) {
  const auto one = FEEDWRIGHT_KEEP(s, screw_inertia, final_drive_inertia(s));
  s.screw_side_inertia = s.screws_each > 1.0 ? s.constant("2", s.screws_each) * one : one;
  const auto rotor = s.in(PartSlot::motor, "rotor_inertia", s.motor.rotor_inertia());
  std::optional<typename SizingState<W>::template N<Inertia>> belted;
  if (const auto* belt = std::get_if<BeltStage>(&s.axis.transmission)) {
    belted = stage_inertias(s, *belt);
  } else if (const auto* loop = std::get_if<BeltLoopDrive>(&s.axis.transmission)) {
    belted = loop_inertias(s, *loop);
  } else {
    const auto& coupling = std::get<Coupling>(s.axis.transmission);
    s.screw_side_inertia =
        s.screw_side_inertia + s.in(PartSlot::transmission, "inertia", *coupling.inertia);
  }
  const auto carriage =
      FEEDWRIGHT_KEEP(s, carriage_inertia, carried_inertia(s.mass, s.motor_travel));
  s.motor_side_inertia = belted ? rotor + *belted : rotor;
  const auto of_screw = s.screw_side_inertia / square(s.reduction);
  const auto load = FEEDWRIGHT_KEEP(s, load_inertia,
                                    belted ? *belted + of_screw + carriage : of_screw + carriage);
  FEEDWRIGHT_KEEP(s, inertia_match, as_ratio(load / rotor));
}

} // namespace feedwright
