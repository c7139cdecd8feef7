// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What moves, along what, and what it must do.

#include "parts/field.h"

namespace feedwright {

struct Supply {
  Positive<Voltage> voltage = Positive<Voltage>::of(from_si<Voltage>(36.0));
  PartNotes notes;
  friend bool operator==(const Supply&, const Supply&) = default;
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
  PartNotes notes;
  friend bool operator==(const Guides&, const Guides&) = default;
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
