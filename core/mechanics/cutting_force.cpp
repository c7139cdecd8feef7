// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/cutting_force.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

template <class Q>
bool above_zero(Q q) {
  return q > Q() && std::isfinite(si_value(q));
}

bool sound(const MillingCut& cut) {
  return above_zero(cut.specific_force) && cut.exponent >= 0.0 && cut.exponent < 1.0 &&
         above_zero(cut.depth) && above_zero(cut.width) && above_zero(cut.diameter) &&
         cut.width <= cut.diameter && cut.teeth >= 1 && above_zero(cut.spindle_speed) &&
         above_zero(cut.feed) && cut.radial_ratio >= 0.0 && std::isfinite(cut.radial_ratio);
}

/// ∫ sin φ cos φ dφ and ∫ sin² φ dφ over the arc from 0, each over ∫ sin φ dφ: shares of the mean
/// tangential force.
struct ArcShares {
  double along, across;
};

ArcShares arc_shares(double width_share, double arc) {
  const double sine_integral = 2.0 * width_share; // 1 − cos φ_s = 2 a_e/d
  const double cosine = 1.0 - sine_integral;
  const double sine_squared = 4.0 * width_share * (1.0 - width_share);
  const double x = arc * arc;
  // ½(φ − sin φ cos φ), by its series where the difference would cancel
  const double square_integral = arc < 0.02 ? arc * x * (1.0 / 3.0 - x / 15.0 + 2.0 * x * x / 315.0)
                                            : 0.5 * (arc - std::sqrt(sine_squared) * cosine);
  return {0.5 * sine_squared / sine_integral, square_integral / sine_integral};
}

} // namespace

Pressure specific_cutting_force(Pressure at_one_mm, double exponent, Length chip_thickness) {
  return at_one_mm * std::pow(si_value(chip_thickness) * 1e3, -exponent);
}

Angle engagement_angle(Length width, Length diameter) {
  // half-angle form of acos(1 − 2a_e/d), exact for small widths too
  const double share = std::clamp(si_value(width / diameter), 0.0, 1.0);
  return 2.0 * std::asin(std::sqrt(share)) * radian;
}

std::optional<MillingForces> milling_forces(const MillingCut& cut,
                                            std::optional<Power> spindle_power_at_tool) {
  if (!sound(cut) || (spindle_power_at_tool && !(*spindle_power_at_tool >= Power()))) {
    return std::nullopt;
  }
  const Angle arc = engagement_angle(cut.width, cut.diameter);
  MillingForces out{};
  out.feed_per_tooth = feed_per_tooth(cut.feed, double(cut.teeth), cut.spindle_speed);
  out.mean_chip_thickness = mean_chip_thickness(out.feed_per_tooth, cut.width, cut.diameter, arc);
  out.specific_force =
      specific_cutting_force(cut.specific_force, cut.exponent, out.mean_chip_thickness);
  out.power = cutting_power(out.specific_force, cut.depth, cut.width, cut.feed);
  if (spindle_power_at_tool && out.power > *spindle_power_at_tool) {
    out.power = *spindle_power_at_tool;
    out.capped = true;
  }
  out.tangential = mean_tangential_force(out.power, cut.spindle_speed, cut.diameter);

  const ArcShares share = arc_shares(si_value(cut.width / cut.diameter), si_value(arc));
  const Force tangential_along = out.tangential * share.along;
  const Force tangential_across = out.tangential * share.across;
  const Force radial_along = tangential_across * cut.radial_ratio;
  const Force radial_across = tangential_along * cut.radial_ratio;
  out.up = {tangential_along + radial_along, radial_across - tangential_across};
  out.down = {radial_along - tangential_along, tangential_across + radial_across};
  out.along_feed = std::max(abs(out.up.against_feed), abs(out.down.against_feed));
  out.across = std::max(abs(out.up.across), abs(out.down.across));
  return std::isfinite(si_value(out.along_feed)) && std::isfinite(si_value(out.across))
             ? std::optional(out)
             : std::nullopt;
}

} // namespace feedwright
