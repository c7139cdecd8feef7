// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What moves, along what, and what it must do.

#include "parts/field.h"

namespace feedwright {

struct Supply {
  Positive<Voltage> voltage = Positive<Voltage>::of(from_si<Voltage>(36.0));
  /// What the supply gives for ever.
  std::optional<Positive<Power>> power;
  /// On the drives' side of the supply, the drives' own included.
  std::optional<Positive<Capacitance>> capacitance;
  /// At which the first drive switches off.
  std::optional<Positive<Voltage>> voltage_limit;
  PartNotes notes;
  friend bool operator==(const Supply&, const Supply&) = default;
};

/// What turns the tool.
struct Spindle {
  std::optional<Positive<Power>> power;
  Share efficiency = Share::of(0.8);
  PartNotes notes;
  friend bool operator==(const Spindle&, const Spindle&) = default;
};

struct Controller {
  std::optional<Positive<Frequency>> step_rate_limit;
  PartNotes notes;
  friend bool operator==(const Controller&, const Controller&) = default;
};

struct AxisBasics {
  std::string letter = "X";
  std::string name;
  Positive<Length> travel = Positive<Length>::of(from_si<Length>(0.6));
  /// 0 lies flat, +90° lifts on +x.
  Finite<Angle> incline = Finite<Angle>::of(Angle());
  /// From the motor-end bearing to the nut at the start of travel; centred if not given.
  std::optional<NonNegative<Length>> nut_at_start;
  PartNotes notes;
  friend bool operator==(const AxisBasics&, const AxisBasics&) = default;
};

struct Targets {
  std::optional<Positive<Velocity>> feed;
  std::optional<Positive<Acceleration>> acceleration;
  std::optional<Positive<Velocity>> cutting_feed;
  std::optional<Positive<Force>> thrust;
  std::optional<Positive<Length>> resolution;
  std::optional<Positive<Length>> lost_motion;
  std::optional<Positive<Length>> reversal_error;
  std::optional<Positive<Length>> cutting_error;
  std::optional<Positive<Time>> life;
  Positive<double> inertia_match = Positive<double>::of(10.0);
  PartNotes notes;
  friend bool operator==(const Targets&, const Targets&) = default;
};

struct Carriage {
  Positive<Mass> mass = Positive<Mass>::of(from_si<Mass>(10.0));
  /// Upward pull of a spring or weight against gravity along the axis.
  NonNegative<Force> counterbalance = NonNegative<Force>::of(Force());
  bool brake = false;
  PartNotes notes;
  friend bool operator==(const Carriage&, const Carriage&) = default;
};

struct Guides {
  NonNegative<double> friction = NonNegative<double>::of(0.005);
  int blocks = 4;
  NonNegative<Force> seal_drag = NonNegative<Force>::of(from_si<Force>(2.5));
  NonNegative<Force> cover_drag = NonNegative<Force>::of(Force());
  std::optional<Positive<Velocity>> speed_limit;
  /// Along the travel, between the outermost blocks of a rail.
  std::optional<Positive<Length>> block_spacing;
  /// Sideways, of one block.
  std::optional<Positive<Stiffness>> block_stiffness;
  /// Basic dynamic rating of one block.
  std::optional<Positive<Force>> block_rating;
  PartNotes notes;
  friend bool operator==(const Guides&, const Guides&) = default;
};

/// How many motors and screws (or belts) move the axis.
enum class DriveLayout : std::uint8_t {
  one,        ///< one motor, one screw
  two_motors, ///< a motor and a screw on each side, slaved in software
  one_motor,  ///< one motor and belt loop, two screws
};
/// What two screws do to each other.
enum class Pairing : std::uint8_t { share, opposed };

namespace fields {
template <>
struct Names<DriveLayout> {
  static constexpr std::string_view list[] = {"one", "two_motors", "one_motor"};
};
template <>
struct Names<Pairing> {
  static constexpr std::string_view list[] = {"share", "opposed"};
};
} // namespace fields

/// One side or two, and what moves across between them.
struct Sides {
  DriveLayout layout = DriveLayout::one;
  Pairing pairing = Pairing::share;
  /// Between the two screws; with one screw, between the rails.
  std::optional<Positive<Length>> spacing;
  /// The part of the moving mass that travels across.
  NonNegative<Mass> crossing_mass = NonNegative<Mass>::of(Mass());
  /// Of that part, centred between the sides; the tool goes with it.
  NonNegative<Length> cross_travel = NonNegative<Length>::of(Length());
  PartNotes notes;
  friend bool operator==(const Sides&, const Sides&) = default;
};

template <>
struct FieldsOf<Spindle> {
  static std::span<const Field<Spindle>> list();
};
template <>
struct FieldsOf<Sides> {
  static std::span<const Field<Sides>> list();
};
template <>
struct FieldsOf<Supply> {
  static std::span<const Field<Supply>> list();
};
template <>
struct FieldsOf<Controller> {
  static std::span<const Field<Controller>> list();
};
template <>
struct FieldsOf<AxisBasics> {
  static std::span<const Field<AxisBasics>> list();
};
template <>
struct FieldsOf<Targets> {
  static std::span<const Field<Targets>> list();
};
template <>
struct FieldsOf<Carriage> {
  static std::span<const Field<Carriage>> list();
};
template <>
struct FieldsOf<Guides> {
  static std::span<const Field<Guides>> list();
};

} // namespace feedwright
