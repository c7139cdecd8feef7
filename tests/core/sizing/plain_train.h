// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A train as a power balance needs it, from the machine's own figures in plain SI numbers and
// elementary mechanics; nothing of the program's equations but the belt that fits.

#include "core/sizing/random_trains.h"

#include <cmath>

namespace feedwright::testing {

/// One moment, seen along the motion.
struct Moment {
  bool up;             ///< against what is left of gravity
  double speed;        ///< m/s, above zero
  double acceleration; ///< m/s², below zero while slowing down
  double cut;          ///< N on one motor, below zero where the tool pulls the carriage along
};

inline Moment random_moment(Dice& dice) {
  const double sign = dice.chance(0.5) ? 1.0 : -1.0;
  const double pull = dice.chance(0.5) ? 1.0 : -1.0;
  return {dice.chance(0.5), dice.in(0.002, 1.0), dice.chance(0.1) ? 0.0 : sign * dice.in(0.01, 8.0),
          dice.chance(0.2) ? 0.0 : pull * dice.in(1.0, 1500.0)};
}

inline double disc(const BeltBody& belt, double diameter) {
  return si_value(*belt.pulley_density) * pi * si_value(*belt.width) * std::pow(diameter, 4) / 32.0;
}
inline double pitch_circle(const BeltBody& belt, int teeth) {
  return double(teeth) * si_value(*belt.pitch) / pi;
}

/// Shaft and load figures of one motor's train, from the machine alone.
struct Train {
  const Axis& axis;
  double screws = 1.0; ///< that the motor turns
  double share = 1.0;  ///< of the carriage's mass on the harder-loaded motor
  double reduction = 1.0;
  double travel = 0.0; ///< m/rad of the screw's shaft
  double stage_efficiency = 1.0;

  explicit Train(const Axis& a) : axis(a) {
    if (const auto* screw = std::get_if<Screw>(&a.drive)) {
      travel = si_value(*screw->lead);
    } else {
      const auto& belt = std::get<HaulingBelt>(a.drive);
      travel = pitch_circle(belt, belt.pulley_teeth) / 2.0;
    }
    if (const auto* stage = std::get_if<BeltStage>(&a.transmission)) {
      reduction = double(stage->screw_pulley_teeth) / double(stage->motor_pulley_teeth);
      stage_efficiency = *stage->efficiency;
    } else if (const auto* loop = std::get_if<BeltLoopDrive>(&a.transmission)) {
      reduction = double(loop->pulleys[1].teeth) / double(loop->pulleys[0].teeth);
      stage_efficiency = *loop->efficiency;
    }
    screws = a.sides.layout == DriveLayout::one_motor ? 2.0 : 1.0;
    if (a.sides.layout == DriveLayout::two_motors) {
      // Statics: the tool at the end of its cross travel, the rest of the mass in the middle.
      const double off = si_value(*a.sides.cross_travel) / 2.0 / si_value(**a.sides.spacing);
      share = 0.5 + off * (*a.sides.crossing_mass / *a.carriage.mass);
    }
  }
  double mass() const { return share * si_value(*axis.carriage.mass); }

  /// Force against the motion that is not inertia.
  double steady(const Moment& m) const {
    const double weight = 9.80665 * si_value(*axis.carriage.mass);
    const double slope = std::abs(si_value(*axis.basics.incline));
    const double pull =
        slope > 0.0 ? weight * std::sin(slope) - si_value(*axis.carriage.counterbalance) : 0.0;
    const double rubbing = *axis.guides.friction * weight * std::cos(slope) * share;
    const double seals = (double(axis.guides.blocks) * si_value(*axis.guides.seal_drag) +
                          si_value(*axis.guides.cover_drag)) *
                         (axis.sides.layout == DriveLayout::two_motors ? 0.5 : 1.0);
    return rubbing + seals + (m.up ? 1.0 : -1.0) * std::abs(pull) * share + m.cut;
  }
  /// What the guides rub more because the moving tool pulls off the middle: friction, so it
  /// resists whichever way the carriage changes its speed.
  double yaw(const Moment& m) const {
    if (axis.sides.layout != DriveLayout::one || *axis.sides.cross_travel == Length()) {
      return 0.0;
    }
    const double couple = si_value(*axis.sides.crossing_mass) * std::abs(m.acceleration) *
                          si_value(*axis.sides.cross_travel) / 2.0;
    return *axis.guides.friction * 2.0 * couple / si_value(**axis.guides.block_spacing);
  }

  /// ½ J ω² of all that turns or runs round before the belt's loss, over ½ v² of the carriage.
  double stored_at_motor() const {
    const double motor_turn = reduction / travel;
    double sum =
        si_value(*std::get<StepperByPoints>(axis.motor).rotor_inertia) * motor_turn * motor_turn;
    if (const auto* stage = std::get_if<BeltStage>(&axis.transmission)) {
      const double circle = pitch_circle(*stage, stage->motor_pulley_teeth);
      const double pulley = stage->motor_pulley_inertia ? si_value(**stage->motor_pulley_inertia)
                                                        : disc(*stage, circle);
      sum += pulley * motor_turn * motor_turn;
      sum += belt_running(*stage, stage->belt_teeth, circle / 2.0 * motor_turn);
    } else if (const auto* loop = std::get_if<BeltLoopDrive>(&axis.transmission)) {
      const double run = pitch_circle(*loop, loop->pulleys[0].teeth) / 2.0 * motor_turn;
      sum += belt_running(*loop, loop->belt_teeth, run);
      for (const LoopMember& member : loop->pulleys) {
        if (member.role != PulleyRole::screw) {
          const double circle =
              member.teeth > 0 ? pitch_circle(*loop, member.teeth)
                               : si_value(**member.diameter) + 2.0 * si_value(*loop->back_height);
          const double turn = run / (circle / 2.0);
          sum += disc(*loop, circle) * turn * turn;
        }
      }
    }
    return sum;
  }
  static double belt_running(const BeltBody& belt, int teeth, double run) {
    return si_value(*belt.mass_per_length) * double(teeth) * si_value(*belt.pitch) * run * run;
  }

  /// The same of all that turns with the screws.
  double stored_at_screws() const {
    const double turn = 1.0 / travel;
    double turning = screws * of_one_drive();
    if (const auto* stage = std::get_if<BeltStage>(&axis.transmission)) {
      turning += stage->screw_pulley_inertia
                     ? si_value(**stage->screw_pulley_inertia)
                     : disc(*stage, pitch_circle(*stage, stage->screw_pulley_teeth));
    } else if (const auto* loop = std::get_if<BeltLoopDrive>(&axis.transmission)) {
      turning += screws * disc(*loop, pitch_circle(*loop, loop->pulleys[1].teeth));
    } else {
      turning += si_value(*std::get<Coupling>(axis.transmission).inertia);
    }
    return turning * turn * turn;
  }
  double of_one_drive() const {
    if (const auto* belt = std::get_if<HaulingBelt>(&axis.drive)) {
      const double pulley = belt->pulley_inertia
                                ? si_value(**belt->pulley_inertia)
                                : disc(*belt, pitch_circle(*belt, belt->pulley_teeth));
      return 2.0 * pulley + si_value(*belt->mass_per_length * *belt->belt_length) * travel * travel;
    }
    const Screw& screw = std::get<Screw>(axis.drive);
    if (screw.driven == DrivenMember::nut) {
      return si_value(**screw.nut_inertia);
    }
    const double outer = si_value(*screw.nominal_diameter), bore = si_value(*screw.bore);
    return si_value(*screw.density) * si_value(*screw.span) * pi *
           (std::pow(outer, 4) - std::pow(bore, 4)) / 32.0;
  }
};

} // namespace feedwright::testing
