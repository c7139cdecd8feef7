// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/quantities.h"

namespace feedwright {

/// Travel per angle of the motor that gives the greatest acceleration with torque T (drags already
/// off) against a steady force F at efficiency η, rotating inertia J at the motor and mass m:
/// from d a/d r = 0,  r = [√((F J)² + m J η T²) − F J]/(m T).
/// With F = 0 the reflected mass equals the rotating inertia (over η). T > 0, m > 0, J > 0.
/// Zero if there is no torque. Source: see derivations/best_travel.md.
inline TravelPerAngle best_motor_travel(Torque torque, Force force, double efficiency,
                                        Inertia inertia, Mass mass) {
  if (torque <= Torque()) {
    return TravelPerAngle();
  }
  const double t = si_value(torque);
  const double j = si_value(inertia);
  const double m = si_value(mass);
  const double fj = si_value(force) * j;
  // Written without the difference of like numbers: (a² − b²)/(a + b).
  return from_si<TravelPerAngle>(j * efficiency * t /
                                 (std::sqrt(fj * fj + m * j * efficiency * t * t) + fj));
}

/// Reduction that gives the greatest acceleration of a load: with motor torque T and load torque
/// T_L at the driven shaft, i = T_L/T + √((T_L/T)² + J_L/J_M). Zero if there is no torque.
/// Source: from memory, servo makers' selection guides; see derivations/best_travel.md.
inline double best_reduction(Torque motor_torque, Torque load_torque, Inertia load_inertia,
                             Inertia motor_inertia) {
  if (motor_torque <= Torque()) {
    return 0.0;
  }
  const double ratio = load_torque / motor_torque;
  return ratio + std::sqrt(ratio * ratio + load_inertia / motor_inertia);
}

} // namespace feedwright
