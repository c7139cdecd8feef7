// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Sound machines of one axis, every kind of train, drawn at random within what is home-built.

#include "machine/loop_layout.h"
#include "machine/machine_file.h"
#include "support/axes.h"
#include "support/dice.h"

namespace feedwright::testing {

/// What a train is drawn for.
struct TrainWish {
  bool yaw = false;          ///< one side, its tool off the middle
  bool self_locking = false; ///< a sliding thread of little lead and much friction
};

inline Screw random_screw(Dice& dice, const TrainWish& wish, const AxisBasics& basics) {
  Screw screw;
  const bool ball = !wish.self_locking && dice.chance(0.5);
  screw.thread = ball ? ThreadForm::ball : ThreadForm::trapezoidal;
  const double diameter = dice.in(8e-3, 32e-3);
  screw.nominal_diameter = Positive<Length>::of(from_si<Length>(diameter));
  screw.core_diameter = dice.of<Positive<Length>>(0.7 * diameter, 0.9 * diameter);
  screw.pitch_diameter = dice.of<Positive<Length>>(0.9 * diameter, 1.05 * diameter);
  const double most_lead = wish.self_locking ? 0.15 * diameter : 1.2 * diameter;
  screw.lead =
      dice.of<Positive<TravelPerAngle>>(0.08 * diameter / (2.0 * pi), most_lead / (2.0 * pi));
  screw.thread_friction = ball                ? dice.of<Share>(0.003, 0.02)
                          : wish.self_locking ? dice.of<Share>(0.12, 0.3)
                                              : dice.of<Share>(0.05, 0.3);
  if (!wish.self_locking && dice.chance(0.2)) {
    screw.efficiency = dice.of<Share>(0.3, 1.0);
  }
  screw.span = Positive<Length>::of(*basics.travel + from_si<Length>(dice.in(0.05, 0.4)));
  if (dice.chance(0.3)) {
    screw.bore = dice.of<NonNegative<Length>>(0.1 * diameter, 0.5 * diameter);
  }
  if (dice.chance(0.2)) {
    screw.driven = DrivenMember::nut;
    screw.nut_inertia = dice.of<NonNegative<Inertia>>(1e-5, 1e-3);
  }
  if (dice.chance(0.3)) {
    screw.collar_friction = dice.of<NonNegative<double>>(0.002, 0.2);
    screw.collar_diameter = dice.of<NonNegative<Length>>(diameter, 2.0 * diameter);
  }
  screw.bearing_drag = dice.of<NonNegative<Torque>>(0.0, 0.1);
  return screw;
}

inline void preload(Dice& dice, Screw& screw) {
  screw.preload = dice.of<Positive<Force>>(20.0, 800.0);
  if (dice.chance(0.3)) {
    screw.preload_drag = dice.of<NonNegative<Torque>>(0.0, 0.3);
  }
}

template <class Belt>
void random_body(Dice& dice, Belt& belt) {
  belt.pitch = Positive<Length>::of(from_si<Length>(5e-3));
  belt.width = dice.of<Positive<Length>>(6e-3, 30e-3);
  belt.efficiency = dice.template of<Share>(0.85, 1.0);
  belt.mass_per_length = dice.of<NonNegative<LinearDensity>>(0.0, 0.15);
}

inline HaulingBelt random_hauling_belt(Dice& dice, const AxisBasics& basics) {
  HaulingBelt belt;
  random_body(dice, belt);
  belt.pulley_teeth = dice.whole(12, 40);
  const Length least = 2.0 * *basics.travel + double(belt.pulley_teeth) * *belt.pitch;
  belt.belt_length = Positive<Length>::of(least * dice.in(1.05, 1.5));
  if (dice.chance(0.3)) {
    belt.pulley_inertia = dice.of<NonNegative<Inertia>>(0.0, 2e-4);
  }
  belt.bearing_drag = dice.of<NonNegative<Torque>>(0.0, 0.2);
  return belt;
}

inline BeltStage random_stage(Dice& dice) {
  BeltStage stage;
  random_body(dice, stage);
  stage.motor_pulley_teeth = dice.whole(12, 40);
  stage.screw_pulley_teeth = dice.whole(12, 60);
  stage.belt_teeth = stage.motor_pulley_teeth + stage.screw_pulley_teeth + dice.whole(20, 120);
  if (dice.chance(0.3)) {
    stage.motor_pulley_inertia = dice.of<NonNegative<Inertia>>(0.0, 1e-4);
    stage.screw_pulley_inertia = dice.of<NonNegative<Inertia>>(0.0, 5e-4);
  }
  return stage;
}

inline LoopMember loop_member(PulleyRole role, double x, double y, int teeth) {
  LoopMember made;
  made.role = role;
  made.x = Finite<Length>::of(from_si<Length>(x));
  made.y = Finite<Length>::of(from_si<Length>(y));
  made.teeth = teeth;
  return made;
}

/// Motor below, one or two screws above, and at times an idler: toothed, or smooth inside or on the
/// belt's back. Nothing if no whole-tooth belt fits.
inline std::optional<BeltLoopDrive> random_loop(Dice& dice, bool two_screws) {
  BeltLoopDrive loop;
  random_body(dice, loop);
  const int motor = dice.whole(14, 24);
  const int screw = dice.whole(14, 36);
  const double wide = dice.in(0.25, 0.6);
  const double low = dice.in(0.08, 0.2);
  loop.pulleys = {loop_member(PulleyRole::motor, 0.5 * wide, -low, motor),
                  loop_member(PulleyRole::screw, wide, 0.0, screw)};
  const double across = dice.in(0.3, 0.7) * wide;
  switch (dice.whole(0, two_screws ? 2 : 1)) {
  case 0: loop.pulleys.push_back(loop_member(PulleyRole::idler, across, 0.1, 20)); break;
  case 1:
    loop.pulleys.push_back(loop_member(PulleyRole::idler, across, 0.08, 0));
    loop.pulleys.back().diameter = dice.of<Positive<Length>>(0.015, 0.05);
    if (two_screws) { // on the back of the span between them
      loop.pulleys.back().face = BeltFace::back;
      loop.pulleys.back().y = Finite<Length>::of(from_si<Length>(0.03));
    }
    break;
  default: break;
  }
  if (two_screws) {
    loop.pulleys.push_back(loop_member(PulleyRole::screw, 0.0, 0.0, screw));
  }
  const auto belts = fitting_belts(loop, 1);
  if (belts.empty()) {
    return std::nullopt;
  }
  loop.belt_teeth = belts.front().belt_teeth;
  return loop;
}

inline void random_load(Dice& dice, const TrainWish& wish, Axis& axis) {
  axis.carriage.mass = dice.of<Positive<Mass>>(2.0, 80.0);
  const bool level = dice.chance(0.3);
  axis.basics.incline = Finite<Angle>::of(level ? Angle() : dice.in(-pi / 2.0, pi / 2.0) * radian);
  if (dice.chance(0.4)) {
    axis.carriage.counterbalance =
        dice.of<NonNegative<Force>>(0.0, 12.0 * si_value(*axis.carriage.mass));
  }
  axis.guides.friction = dice.of<NonNegative<double>>(0.002, 0.15);
  axis.guides.blocks = dice.whole(2, 8);
  axis.guides.seal_drag = dice.of<NonNegative<Force>>(0.0, 6.0);
  axis.guides.cover_drag = dice.of<NonNegative<Force>>(0.0, 20.0);
  if (wish.yaw || axis.sides.layout != DriveLayout::one) {
    axis.sides.crossing_mass = NonNegative<Mass>::of(dice.in(0.1, 0.6) * *axis.carriage.mass);
    axis.sides.cross_travel = dice.of<NonNegative<Length>>(0.1, 0.7);
    axis.sides.spacing = dice.of<Positive<Length>>(0.8, 1.2);
    axis.guides.block_spacing = dice.of<Positive<Length>>(0.1, 0.4);
  }
}

/// Nothing where the draw came to a fault.
inline std::optional<Machine> drawn_train(Dice& dice, const TrainWish& wish) {
  Machine machine = ordinary_router();
  Axis& axis = machine.axes[0];
  constexpr DriveLayout layouts[] = {DriveLayout::one, DriveLayout::two_motors,
                                     DriveLayout::one_motor};
  axis.sides.layout = layouts[wish.yaw ? 0 : dice.whole(0, 2)];
  axis.basics.travel = dice.of<Positive<Length>>(0.2, 1.2);
  random_load(dice, wish, axis);
  if (!wish.self_locking && dice.chance(1.0 / 3.0)) {
    axis.drive = random_hauling_belt(dice, axis.basics);
  } else {
    Screw screw = random_screw(dice, wish, axis.basics);
    const bool opposed = axis.sides.layout != DriveLayout::one && dice.chance(0.25);
    axis.sides.pairing = opposed ? Pairing::opposed : Pairing::share;
    if (opposed || dice.chance(0.3)) {
      screw.nuts = opposed ? NutArrangement::single : NutArrangement::preloaded_pair;
      preload(dice, screw);
    }
    axis.drive = screw;
  }
  const bool looped = axis.sides.layout == DriveLayout::one_motor;
  const int kind = looped ? 2 : dice.whole(0, 2);
  if (kind == 0) {
    Coupling coupling;
    coupling.inertia = dice.of<NonNegative<Inertia>>(0.0, 1e-4);
    axis.transmission = coupling;
  } else if (kind == 1) {
    axis.transmission = random_stage(dice);
  } else if (const auto loop = random_loop(dice, looped)) {
    axis.transmission = *loop;
  } else {
    return std::nullopt;
  }
  std::get<StepperByPoints>(axis.motor).rotor_inertia = dice.of<Positive<Inertia>>(1e-5, 4e-4);
  return faults_of(machine).empty() ? std::optional(machine) : std::nullopt;
}

/// Draws until one is sound.
inline Machine random_train(Dice& dice, const TrainWish& wish = {}) {
  for (;;) {
    if (auto machine = drawn_train(dice, wish)) {
      return *std::move(machine);
    }
  }
}

} // namespace feedwright::testing
