// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/belt.h"

#include <variant>

namespace feedwright {

/// Ties the motor's shaft to the screw one to one.
struct Coupling {
  NonNegative<Inertia> inertia = NonNegative<Inertia>::of(from_si<Inertia>(1e-5));
  std::optional<Positive<Torque>> torque_limit;
  std::optional<Positive<TorsionalStiffness>> stiffness;
  PartNotes notes;
  friend bool operator==(const Coupling&, const Coupling&) = default;
};

/// Two pulleys and a synchronous belt between the motor's shaft and the screw.
struct BeltStage : BeltBody {
  int motor_pulley_teeth = 20;
  int screw_pulley_teeth = 20;
  int belt_teeth = 80;
  /// From size and density when not given.
  std::optional<NonNegative<Inertia>> motor_pulley_inertia;
  std::optional<NonNegative<Inertia>> screw_pulley_inertia;
  PartNotes notes;
  friend bool operator==(const BeltStage&, const BeltStage&) = default;
};

/// What a pulley of a loop sits on.
enum class PulleyRole : std::uint8_t { motor, screw, idler };
/// Which face of the belt touches the pulley.
enum class BeltFace : std::uint8_t { toothed, back };

namespace fields {
template <>
struct Names<PulleyRole> {
  static constexpr std::string_view list[] = {"motor", "screw", "idler"};
};
template <>
struct Names<BeltFace> {
  static constexpr std::string_view list[] = {"toothed", "back"};
};
} // namespace fields

/// One pulley of a belt loop, seen along the shafts.
struct LoopMember {
  PulleyRole role = PulleyRole::idler;
  Finite<Length> x = Finite<Length>::of(Length());
  Finite<Length> y = Finite<Length>::of(Length());
  /// Of a toothed pulley; a smooth roller has none.
  int teeth = 0;
  /// Of a smooth roller's surface.
  std::optional<Positive<Length>> diameter;
  BeltFace face = BeltFace::toothed;
  static constexpr bool plain_rows = false;
  static constexpr std::size_t least_rows = 2;
  friend bool operator==(const LoopMember&, const LoopMember&) = default;
};

/// One belt over one motor's pulley, one or two screws' pulleys and any idlers, in belt order. One
/// pulley sits on a slide that takes up the belt.
struct BeltLoopDrive : BeltBody {
  std::vector<LoopMember> pulleys = default_pulleys();
  int belt_teeth = 148;
  /// Which pulley slides, counted from 1 in the table's order.
  int sliding_pulley = 1;
  Finite<Angle> slide_direction = Finite<Angle>::of(from_si<Angle>(-pi / 2.0));
  NonNegative<Length> slide_back = NonNegative<Length>::of(from_si<Length>(0.01));
  NonNegative<Length> slide_forth = NonNegative<Length>::of(from_si<Length>(0.01));
  /// From the belt's pitch line to its back.
  NonNegative<Length> back_height = NonNegative<Length>::of(from_si<Length>(1.2e-3));
  PartNotes notes;
  friend bool operator==(const BeltLoopDrive&, const BeltLoopDrive&) = default;

  /// Motor below, two screws above it: what a new loop starts as.
  static std::vector<LoopMember> default_pulleys();
};

using Transmission = std::variant<Coupling, BeltStage, BeltLoopDrive>;

/// The belt of a transmission; null for a coupling.
const BeltBody* belt_of(const Transmission& transmission);

template <>
struct FieldsOf<LoopMember> {
  static std::span<const Field<LoopMember>> list();
};
template <>
struct FieldsOf<Coupling> {
  static std::span<const Field<Coupling>> list();
};
template <>
struct FieldsOf<BeltStage> {
  static std::span<const Field<BeltStage>> list();
};
template <>
struct FieldsOf<BeltLoopDrive> {
  static std::span<const Field<BeltLoopDrive>> list();
};

} // namespace feedwright
