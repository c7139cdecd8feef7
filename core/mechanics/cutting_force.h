// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

#include <optional>

namespace feedwright {

/// Kienzle's k_c = k_c1.1 (h/1 mm)^(−m_c): cutting force per chip cross-section at chip thickness
/// h > 0. k_c1.1 is its value for a chip 1 mm thick and 1 mm wide; m_c ≥ 0, about 0.2 to 0.3 for
/// metals. Fitted for h from about 0.05 to 2.5 mm (from memory); below, it extrapolates and edge
/// radius and rubbing add to it.
/// Source: O. Kienzle, VDI-Z 94 (1952) 299-305 (from memory).
Pressure specific_cutting_force(Pressure at_one_mm, double exponent, Length chip_thickness);

/// F_c = k_c b h. Source: Kienzle.
template <NumberOf<Pressure> K, NumberOf<Length> B, NumberOf<Length> H>
auto cutting_force(const K& specific, const B& chip_width, const H& chip_thickness) {
  return specific * chip_width * chip_thickness;
}

/// φ_s = acos(1 − 2a_e/d), the arc over which a tooth cuts when the cutter takes the width from one
/// of its sides; π for a slot. 0 ≤ width ≤ diameter. Source: geometry.
Angle engagement_angle(Length width, Length diameter);

/// f_z = v_f/(z n). Source: definition.
template <NumberOf<Velocity> F, PureNumber Z, NumberOf<AngularVelocity> W>
auto feed_per_tooth(const F& feed, const Z& teeth, const W& spindle_speed) {
  return 2.0 * pi * feed / (teeth * per_radian(spindle_speed));
}

/// h_m = 2 f_z a_e/(d φ_s), mean over the arc of h = f_z sin φ. Cutting edges parallel to the axis
/// (κ = 90°), feed per tooth small against the diameter.
/// Source: integration; common to milling textbooks, e.g. Y. Altintas, Manufacturing Automation,
/// ch. 2 (from memory).
template <NumberOf<Length> F, NumberOf<Length> W, NumberOf<Length> D, NumberOf<Angle> A>
auto mean_chip_thickness(const F& tooth_feed, const W& width, const D& diameter,
                         const A& engagement) {
  return 2.0 * tooth_feed * width / (diameter * per_radian(engagement));
}

/// P = k_c a_p a_e v_f, mean power at the tool: work per volume times volume per time.
/// Source: energy balance.
template <NumberOf<Pressure> K, NumberOf<Length> L, NumberOf<Length> W, NumberOf<Velocity> F>
auto cutting_power(const K& specific, const L& depth, const W& width, const F& feed) {
  return specific * depth * width * feed;
}

/// Mean tangential force over a turn: P over the rim speed ω d/2. Source: energy balance.
template <NumberOf<Power> P, NumberOf<AngularVelocity> W, NumberOf<Length> D>
auto mean_tangential_force(const P& power, const W& spindle_speed, const D& diameter) {
  return power / (per_radian(spindle_speed) * diameter / 2.0);
}

/// Radial force over tangential force of a sharp or slightly worn cutter, upper end of the usual
/// 0.3 to 0.5; common practice, no source.
inline constexpr double usual_radial_ratio = 0.5;

/// A cut with a shank or side mill that takes the width from one of its sides.
struct MillingCut {
  Pressure specific_force; ///< k_c1.1 > 0
  double exponent;         ///< m_c, 0 to below 1
  Length depth;            ///< a_p > 0, along the cutter's axis
  Length width;            ///< a_e, above 0 up to the diameter
  Length diameter;
  int teeth; ///< ≥ 1
  AngularVelocity spindle_speed;
  Velocity feed;
  double radial_ratio = usual_radial_ratio; ///< ≥ 0
};

/// Mean force on the cutter over a turn, seen from the carriage.
struct MillingComponents {
  Force against_feed; ///< negative: the cut pulls the carriage along
  Force across;       ///< in the plane of the cutter's turning, positive away from the material
};

struct MillingForces {
  Length feed_per_tooth;
  Length mean_chip_thickness;
  Pressure specific_force; ///< at the mean chip thickness
  Power power;             ///< at the tool
  Force tangential;        ///< mean over a turn
  MillingComponents up;    ///< teeth enter at no thickness, conventional milling
  MillingComponents down;  ///< teeth leave at no thickness, climb milling
  Force along_feed;        ///< largest size, of up and down
  Force across;            ///< largest size, of up and down
  bool capped;             ///< the spindle stalls first: forces and power are what it gives
};

/// Mean forces of a milling cut. The force is k_c a_p h on each tooth in the cut, k_c taken once,
/// at the mean chip thickness: against k_c at each thickness the tangential force comes out up to
/// 5 % high, the components within 7 % of the tangential force (m_c up to 0.26). Radial force a
/// constant share of tangential. Means over a turn: with few teeth in the cut the peaks lie above.
/// Straight teeth; no helix, run-out, corner radius. With a power the spindle has at the tool at
/// this speed, ≥ 0, no more than that. Nothing outside the ranges of MillingCut.
std::optional<MillingForces> milling_forces(const MillingCut& cut,
                                            std::optional<Power> spindle_power_at_tool);

} // namespace feedwright
