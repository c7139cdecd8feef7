// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"

namespace feedwright {

/// A maker's figure of what one tooth in mesh carries for a belt's width, at a pulley speed.
struct ToothLoad {
  NonNegative<AngularVelocity> speed = NonNegative<AngularVelocity>::of(AngularVelocity());
  /// Pull for each tooth and width.
  Positive<Stiffness> load = Positive<Stiffness>::of(from_si<Stiffness>(3000.0));
  static constexpr bool plain_rows = true;
  static constexpr std::size_t least_rows = 2;
  friend bool operator==(const ToothLoad&, const ToothLoad&) = default;
};

/// What every synchronous belt has, whatever it drives.
struct BeltBody {
  std::string profile = "5M";
  Positive<Length> pitch = Positive<Length>::of(from_si<Length>(5e-3));
  Positive<Length> width = Positive<Length>::of(from_si<Length>(15e-3));
  Share efficiency = Share::of(0.97);
  NonNegative<LinearDensity> mass_per_length =
      NonNegative<LinearDensity>::of(from_si<LinearDensity>(0.06));
  Positive<Density> pulley_density = Positive<Density>::of(from_si<Density>(2700.0));
  std::optional<Positive<Velocity>> speed_limit;
  /// Pull for a strain of one, at this width: span stiffness times span length.
  std::optional<Positive<Force>> specific_stiffness;
  /// Static pull the belt is set to.
  std::optional<Positive<Force>> tension;
  /// Play of the teeth in the pulley's gaps, at the pitch line.
  std::optional<NonNegative<Length>> tooth_gap;
  /// What the cords carry for ever, at this width.
  std::optional<Positive<Force>> allowable_pull;
  /// ISO 5295: allowable pull at the base width; with `base_width` the other route to the strength.
  std::optional<Positive<Force>> rated_pull;
  std::optional<Positive<Length>> base_width;
  /// Note of the belt's longest free span as it is heard; the pull follows from it.
  std::optional<Positive<Frequency>> heard_note;
  std::vector<ToothLoad> tooth_loads;
  /// Teeth in mesh beyond this many do not carry more.
  int most_teeth_counted = 12;
  int least_teeth = 10;

  friend bool operator==(const BeltBody&, const BeltBody&) = default;
};

template <>
struct FieldsOf<ToothLoad> {
  static std::span<const Field<ToothLoad>> list();
};

} // namespace feedwright
