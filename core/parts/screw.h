// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/belt.h"
#include "units/literals.h"

#include <variant>

namespace feedwright {

enum class ThreadForm : std::uint8_t { ball, trapezoidal };
/// What a bearing arrangement holds at one end of a screw.
enum class EndSupport : std::uint8_t { fixed, supported, free };
/// Which length counts for whip.
enum class WhipSpan : std::uint8_t { between_bearings, nut_to_bearing };
/// Which of screw and nut turns.
enum class DrivenMember : std::uint8_t { screw, nut };
/// One nut with its play, or two wound against each other on the same screw.
enum class NutArrangement : std::uint8_t { single, preloaded_pair };
/// Lead accuracy by ISO 3408-3; `unknown` leaves the lead error open.
enum class LeadGrade : std::uint8_t { unknown, g1, g2, g3, g4, g5, g7, g10 };

namespace fields {
template <>
struct Names<ThreadForm> {
  static constexpr std::string_view list[] = {"ball", "trapezoidal"};
};
template <>
struct Names<EndSupport> {
  static constexpr std::string_view list[] = {"fixed", "supported", "free"};
};
template <>
struct Names<WhipSpan> {
  static constexpr std::string_view list[] = {"between_bearings", "nut_to_bearing"};
};
template <>
struct Names<DrivenMember> {
  static constexpr std::string_view list[] = {"screw", "nut"};
};
template <>
struct Names<NutArrangement> {
  static constexpr std::string_view list[] = {"single", "preloaded_pair"};
};
template <>
struct Names<LeadGrade> {
  static constexpr std::string_view list[] = {"unknown", "1", "2", "3", "4", "5", "7", "10"};
};
} // namespace fields

/// A screw with its nut and its end supports.
struct Screw {
  ThreadForm thread = ThreadForm::ball;
  Positive<Length> nominal_diameter = Positive<Length>::of(from_si<Length>(0.016));
  Positive<Length> core_diameter = Positive<Length>::of(from_si<Length>(0.0132));
  /// Ball-circle diameter of a ball screw, pitch diameter of a trapezoidal one.
  Positive<Length> pitch_diameter = Positive<Length>::of(from_si<Length>(0.01675));
  Positive<TravelPerAngle> lead =
      Positive<TravelPerAngle>::of(literals::operator""_mm_per_rev(5ULL));
  /// Between the bearings.
  Positive<Length> span = Positive<Length>::of(from_si<Length>(0.8));
  /// Of the nut along the screw; a usual one's if not given.
  std::optional<Positive<Length>> nut_length;
  /// Of the whole shaft, for its inertia; the span if not given.
  std::optional<Positive<Length>> overall_length;
  EndSupport motor_end = EndSupport::fixed;
  EndSupport far_end = EndSupport::supported;
  WhipSpan whip_span = WhipSpan::between_bearings;
  Share whip_share = Share::of(0.8);
  Positive<double> buckling_safety = Positive<double>::of(2.0);
  Positive<double> stress_safety = Positive<double>::of(2.0);
  Positive<double> static_safety = Positive<double>::of(2.0);
  Share thread_friction = Share::of(0.01);
  /// Measured forward efficiency; counts instead of the friction when given.
  std::optional<Share> efficiency;
  /// Starts of the thread: lead over starts is the thread's own pitch.
  int starts = 1;
  DrivenMember driven = DrivenMember::screw;
  /// Of a turning nut with its pulley; needed when the nut turns.
  std::optional<NonNegative<Inertia>> nut_inertia;
  /// Bore of a hollow screw.
  NonNegative<Length> bore = NonNegative<Length>::of(Length());
  NutArrangement nuts = NutArrangement::single;
  /// Force with which two nuts or two screws are wound against each other.
  std::optional<Positive<Force>> preload;
  /// Measured or from a catalogue; reckoned from the preload when not given.
  std::optional<NonNegative<Torque>> preload_drag;
  /// Thrust washer: its friction and mean diameter.
  NonNegative<double> collar_friction = NonNegative<double>::of(0.0);
  NonNegative<Length> collar_diameter = NonNegative<Length>::of(Length());
  NonNegative<Torque> bearing_drag = NonNegative<Torque>::of(Torque());
  std::optional<NonNegative<Length>> backlash;
  /// Usual for common rolled nuts; the supplier's figure is better.
  Positive<RimSpeed> ball_speed_limit =
      Positive<RimSpeed>::of(literals::operator""_mm_rpm(70000ULL));
  std::optional<Positive<AngularVelocity>> speed_limit;
  std::optional<Positive<Force>> static_rating;
  std::optional<Positive<Force>> dynamic_rating;
  /// For smooth running 1 to 1.2, with shocks up to 3.
  Positive<double> load_factor = Positive<double>::of(1.2);
  /// Share of screws that reach the life.
  Share reliability = Share::of(0.9);
  std::optional<Positive<Force>> bearing_thrust_limit;
  /// Of the nut as catalogues give it: at a load of 30 % of the dynamic rating, or preloaded with
  /// 10 % of it.
  std::optional<Positive<Stiffness>> nut_stiffness;
  /// Axial, of one fixed bearing set.
  std::optional<Positive<Stiffness>> bearing_stiffness;
  LeadGrade grade = LeadGrade::unknown;
  /// Over the travel, from the supplier's chart; counts instead of the grade.
  std::optional<NonNegative<Length>> travel_deviation;
  /// How much warmer than its frame the screw gets.
  std::optional<NonNegative<Temperature>> temperature_rise;
  Positive<Expansion> expansion = Positive<Expansion>::of(from_si<Expansion>(11.5e-6));
  /// Pull the screw is stretched with between two fixed ends.
  NonNegative<Force> stretch = NonNegative<Force>::of(Force());
  Positive<Pressure> elastic_modulus = Positive<Pressure>::of(from_si<Pressure>(206e9));
  Positive<Pressure> shear_modulus = Positive<Pressure>::of(from_si<Pressure>(79e9));
  Positive<Pressure> yield_strength = Positive<Pressure>::of(from_si<Pressure>(300e6));
  Positive<Density> density = Positive<Density>::of(from_si<Density>(7850.0));
  PartNotes notes;
  friend bool operator==(const Screw&, const Screw&) = default;
};

/// A belt that pulls the carriage itself: two pulleys, the carriage clamped to one run.
struct HaulingBelt : BeltBody {
  int pulley_teeth = 20;
  /// Length of the whole belt, from clamp to clamp.
  Positive<Length> belt_length = Positive<Length>::of(from_si<Length>(2.0));
  /// Of each of the two pulleys; from size and density when not given.
  std::optional<NonNegative<Inertia>> pulley_inertia;
  NonNegative<Torque> bearing_drag = NonNegative<Torque>::of(Torque());
  PartNotes notes;
  friend bool operator==(const HaulingBelt&, const HaulingBelt&) = default;
};

/// What turns the last shaft's rotation into travel.
using FinalDrive = std::variant<Screw, HaulingBelt>;

template <>
struct FieldsOf<Screw> {
  static std::span<const Field<Screw>> list();
};
template <>
struct FieldsOf<HaulingBelt> {
  static std::span<const Field<HaulingBelt>> list();
};

} // namespace feedwright
