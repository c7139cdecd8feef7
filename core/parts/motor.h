// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"

#include <variant>

namespace feedwright {

/// Whether a drive's current setting is the top of the sine or its effective value.
enum class CurrentReading : std::uint8_t { peak, rms };

namespace fields {
template <>
struct Names<CurrentReading> {
  static constexpr std::string_view list[] = {"peak", "rms"};
};
} // namespace fields

/// One point of a torque curve.
struct TorquePoint {
  Finite<AngularVelocity> speed = Finite<AngularVelocity>::of(AngularVelocity());
  Finite<Torque> torque = Finite<Torque>::of(Torque());
  static constexpr bool plain_rows = true;
  static constexpr std::size_t least_rows = 2;
  friend bool operator==(const TorquePoint&, const TorquePoint&) = default;
};

/// A stepper known by points of pull-out torque against speed.
struct StepperByPoints {
  std::string frame;
  Positive<Inertia> rotor_inertia = Positive<Inertia>::of(from_si<Inertia>(48e-6));
  Positive<Angle> step_angle = Positive<Angle>::of(from_si<Angle>(1.8 * pi / 180.0));
  int microsteps = 8;
  Share usable_share = Share::of(0.6);
  /// At least two, speeds rising from zero or more.
  std::vector<TorquePoint> points;
  /// Supply voltage at which the points were taken.
  std::optional<Positive<Voltage>> points_voltage;
  /// Reckon the curve anew for the machine's supply; needs the winding's figures.
  bool reckon_for_supply = false;
  std::optional<Positive<Torque>> holding_torque;
  std::optional<Positive<Current>> rated_current;
  std::optional<Positive<Resistance>> resistance;
  std::optional<Positive<Inductance>> inductance;
  std::optional<Positive<Current>> drive_current;
  CurrentReading drive_current_reading = CurrentReading::rms;
  /// An encoder corrects the position: no step is lost, the load angle is no error.
  bool closed_loop = false;
  NonNegative<Torque> detent_torque = NonNegative<Torque>::of(Torque());
  PartNotes notes;
  friend bool operator==(const StepperByPoints&, const StepperByPoints&) = default;
};

/// A stepper known by its ratings; the torque follows from the current and voltage limits.
struct StepperByRatings {
  std::string frame;
  Positive<Inertia> rotor_inertia = Positive<Inertia>::of(from_si<Inertia>(48e-6));
  Positive<Angle> step_angle = Positive<Angle>::of(from_si<Angle>(1.8 * pi / 180.0));
  int microsteps = 8;
  Share usable_share = Share::of(0.6);
  Positive<Torque> holding_torque = Positive<Torque>::of(from_si<Torque>(1.9));
  /// Per phase, both phases on: the current of the holding torque (effective value).
  Positive<Current> rated_current = Positive<Current>::of(from_si<Current>(2.8));
  Positive<Resistance> resistance = Positive<Resistance>::of(from_si<Resistance>(1.13));
  Positive<Inductance> inductance = Positive<Inductance>::of(from_si<Inductance>(3.6e-3));
  Positive<Current> drive_current = Positive<Current>::of(from_si<Current>(2.8));
  CurrentReading drive_current_reading = CurrentReading::rms;
  bool closed_loop = false;
  NonNegative<Torque> detent_torque = NonNegative<Torque>::of(Torque());
  PartNotes notes;
  friend bool operator==(const StepperByRatings&, const StepperByRatings&) = default;
};

/// A servo: continuous and short-time torque, held to the rated speed, then falling as 1/speed.
struct Servo {
  std::string frame;
  Positive<Inertia> rotor_inertia = Positive<Inertia>::of(from_si<Inertia>(26e-6));
  Positive<Torque> continuous_torque = Positive<Torque>::of(from_si<Torque>(1.27));
  Positive<Torque> peak_torque = Positive<Torque>::of(from_si<Torque>(3.8));
  Positive<AngularVelocity> rated_speed =
      Positive<AngularVelocity>::of(from_si<AngularVelocity>(100.0 * pi));
  Positive<AngularVelocity> top_speed =
      Positive<AngularVelocity>::of(from_si<AngularVelocity>(500.0 * pi / 3.0));
  /// Command steps for one turn.
  int steps_per_turn = 10000;
  Share usable_share = Share::of(0.9);
  PartNotes notes;
  friend bool operator==(const Servo&, const Servo&) = default;
};

using Motor = std::variant<StepperByPoints, StepperByRatings, Servo>;

template <>
struct FieldsOf<TorquePoint> {
  static std::span<const Field<TorquePoint>> list();
};
template <>
struct FieldsOf<StepperByPoints> {
  static std::span<const Field<StepperByPoints>> list();
};
template <>
struct FieldsOf<StepperByRatings> {
  static std::span<const Field<StepperByRatings>> list();
};
template <>
struct FieldsOf<Servo> {
  static std::span<const Field<Servo>> list();
};

} // namespace feedwright
