// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"

#include <variant>

namespace feedwright {

/// Ties the motor's shaft to the screw one to one.
struct Coupling {
  NonNegative<Inertia> inertia = NonNegative<Inertia>::of(from_si<Inertia>(1e-5));
  PartNotes notes;
  friend bool operator==(const Coupling&, const Coupling&) = default;
};

/// Two pulleys and a synchronous belt between the motor's shaft and the screw.
struct BeltStage {
  std::string profile = "5M";
  Positive<Length> pitch = Positive<Length>::of(from_si<Length>(5e-3));
  Positive<Length> width = Positive<Length>::of(from_si<Length>(15e-3));
  int motor_pulley_teeth = 20;
  int screw_pulley_teeth = 20;
  int belt_teeth = 80;
  Share efficiency = Share::of(0.97);
  NonNegative<LinearDensity> mass_per_length =
      NonNegative<LinearDensity>::of(from_si<LinearDensity>(0.06));
  /// From size and density when not given.
  std::optional<NonNegative<Inertia>> motor_pulley_inertia;
  std::optional<NonNegative<Inertia>> screw_pulley_inertia;
  Positive<Density> pulley_density = Positive<Density>::of(from_si<Density>(2700.0));
  std::optional<Positive<Velocity>> speed_limit;
  PartNotes notes;
  friend bool operator==(const BeltStage&, const BeltStage&) = default;
};

using Transmission = std::variant<Coupling, BeltStage>;

template <>
struct FieldsOf<Coupling> {
  static std::span<const Field<Coupling>> list();
};
template <>
struct FieldsOf<BeltStage> {
  static std::span<const Field<BeltStage>> list();
};

} // namespace feedwright
