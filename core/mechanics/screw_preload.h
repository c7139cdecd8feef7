// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

namespace feedwright {

/// Drag of a preloaded ball nut: T_p = 0.05 (tan φ)^(−1/2) F_pl r, r travel per angle.
/// Source: from memory, JIS B 1192 and ball-screw catalogues.
template <NumberOf<Force> F, NumberOf<TravelPerAngle> R, PureNumber T>
auto ball_preload_drag(const F& preload, const R& travel, const T& lead_angle_tangent) {
  return 0.05 / sqrt(number(lead_angle_tangent)) * (preload * travel);
}

/// Drag at one of two threads wound against each other with F: one drives against the preload at
/// 1/η, the other is driven by it at η_r; each pays half, T = F r (1/η − η_r)/2. Not below zero
/// even for a thread that locks. Source: power flow, see derivations/preloaded_pairs.md.
template <NumberOf<Force> F, NumberOf<TravelPerAngle> R, PureNumber E, PureNumber B>
auto opposed_thread_drag(const F& preload, const R& travel, const E& efficiency,
                         const B& back_efficiency) {
  return preload * travel * (1.0 / efficiency - back_efficiency) / 2.0;
}

/// Thrust washer: T = μ_c F d_c/2. Source: Shigley, Mechanical Engineering Design, ch. 8.
template <PureNumber M, NumberOf<Force> F, NumberOf<Length> D>
auto collar_torque(const M& friction, const F& force, const D& mean_diameter) {
  return per_radian(friction * force * mean_diameter / 2.0);
}

} // namespace feedwright
