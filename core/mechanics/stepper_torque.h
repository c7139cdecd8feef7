// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/quantities.h"

#include <cstdint>

namespace feedwright {

/// The electrical side of a two-phase hybrid stepper on a chopper drive.
struct StepperWinding {
  double rotor_teeth;               ///< 90° over the step angle: 50 for 1.8°
  TorquePerCurrent torque_constant; ///< T_hold/(√2 I_rated), torque per peak phase current
  Resistance resistance;
  Inductance inductance;
  Current current_limit; ///< peak of the sine the drive holds
  Voltage voltage_limit; ///< amplitude of the phase voltage the drive can make: its supply
};

/// N_r = 90°/step angle.
double rotor_teeth(Angle step_angle);

/// K = T_hold/(√2 I_rated): the holding torque is taken with both phases at the rated current.
TorquePerCurrent torque_constant(Torque holding_torque, Current rated_current);

/// What holds the torque back at a speed.
enum class PullOutBound : std::uint8_t { current, voltage, both };

struct PullOut {
  Torque torque;
  PullOutBound bound;
};

/// Pull-out torque: K times the largest q-axis current that is inside the current limit
/// |i| ≤ I and the voltage limit |(R + jN_rωL) i + Kω| ≤ V. Non-negative; speed ≥ 0.
/// Steady state, sinusoidal currents, no saturation, no iron loss. Source: P. P. Acarnley,
/// Stepping Motors, ch. 5 (voltage-limited branch); the current limit added by geometry.
PullOut pull_out(const StepperWinding& winding, AngularVelocity speed);

/// The same without its reason.
Torque pull_out_torque(const StepperWinding& winding, AngularVelocity speed);

} // namespace feedwright
