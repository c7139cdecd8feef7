// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the axis does all day: moves, and cuts with the force each asks.

#include "parts/field.h"

namespace feedwright {

/// One way the axis is loaded for some time of its cycle. The thrust follows from the cut (tool,
/// material, engagement) where that is whole, else it is given.
struct LoadCase {
  std::string name;
  Positive<Time> time = Positive<Time>::of(from_si<Time>(60.0));
  Positive<Velocity> feed = Positive<Velocity>::of(from_si<Velocity>(0.02));
  std::optional<NonNegative<Force>> thrust = NonNegative<Force>::of(from_si<Force>(100.0));
  /// Specific cutting force of the material at a chip 1 mm thick, and how it falls with thickness.
  std::optional<Positive<Pressure>> specific_force;
  std::optional<Fraction> exponent;
  std::optional<Positive<Length>> tool_diameter;
  std::optional<Positive<double>> teeth;
  std::optional<Positive<AngularVelocity>> spindle_speed;
  std::optional<Positive<Length>> depth;
  std::optional<Positive<Length>> engagement;
  static constexpr bool plain_rows = false;
  static constexpr std::size_t least_rows = 1;
  friend bool operator==(const LoadCase&, const LoadCase&) = default;
};

/// A move without cutting, there and back counting as two, and the rest after it.
struct RapidMove {
  Positive<Length> distance = Positive<Length>::of(from_si<Length>(0.1));
  NonNegative<Time> rest = NonNegative<Time>::of(Time());
  static constexpr bool plain_rows = true;
  static constexpr std::size_t least_rows = 1;
  friend bool operator==(const RapidMove&, const RapidMove&) = default;
};

/// One cycle of work.
struct DutyCycle {
  std::vector<LoadCase> load_cases;
  std::vector<RapidMove> moves;
  std::optional<Positive<Jerk>> jerk;
  PartNotes notes;
  friend bool operator==(const DutyCycle&, const DutyCycle&) = default;
};

template <>
struct FieldsOf<LoadCase> {
  static std::span<const Field<LoadCase>> list();
};
template <>
struct FieldsOf<RapidMove> {
  static std::span<const Field<RapidMove>> list();
};
template <>
struct FieldsOf<DutyCycle> {
  static std::span<const Field<DutyCycle>> list();
};

} // namespace feedwright
