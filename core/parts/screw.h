// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "units/literals.h"

namespace feedwright {

enum class ThreadForm : std::uint8_t { ball, trapezoidal };
/// What a bearing arrangement holds at one end of a screw.
enum class EndSupport : std::uint8_t { fixed, supported, free };
/// Which length counts for whip.
enum class WhipSpan : std::uint8_t { between_bearings, nut_to_bearing };

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
} // namespace fields

/// A screw with its nut and its end supports; the screw turns, the nut travels.
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
  NonNegative<Torque> preload_drag = NonNegative<Torque>::of(Torque());
  NonNegative<Torque> bearing_drag = NonNegative<Torque>::of(Torque());
  std::optional<NonNegative<Length>> backlash;
  /// Usual for common rolled nuts; the supplier's figure is better.
  Positive<RimSpeed> ball_speed_limit =
      Positive<RimSpeed>::of(literals::operator""_mm_rpm(70000ULL));
  std::optional<Positive<AngularVelocity>> speed_limit;
  std::optional<Positive<Force>> static_rating;
  std::optional<Positive<Force>> bearing_thrust_limit;
  Positive<Pressure> elastic_modulus = Positive<Pressure>::of(from_si<Pressure>(206e9));
  Positive<Pressure> yield_strength = Positive<Pressure>::of(from_si<Pressure>(300e6));
  Positive<Density> density = Positive<Density>::of(from_si<Density>(7850.0));
  PartNotes notes;
  friend bool operator==(const Screw&, const Screw&) = default;
};

template <>
struct FieldsOf<Screw> {
  static std::span<const Field<Screw>> list();
};

} // namespace feedwright
