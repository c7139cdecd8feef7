// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Machines of one axis, for tests.

#include "machine/machine_file.h"
#include "units/literals.h"

namespace feedwright::testing {

inline Screw& screw_of(Axis& axis) {
  return std::get<Screw>(axis.drive);
}
inline const Screw& screw_of(const Axis& axis) {
  return std::get<Screw>(axis.drive);
}

inline TorquePoint torque_point(AngularVelocity speed, Torque torque) {
  return {Finite<AngularVelocity>::of(speed), Finite<Torque>::of(torque)};
}

/// An ordinary hobby-router axis: 16×5 screw, 1:1 belt of 5 mm pitch and 15 mm width, 23-size
/// stepper of 1.9 N·m at 48 V.
inline Machine ordinary_router() {
  using namespace literals;
  Machine machine;
  machine.name = "Ordinary router";
  machine.supply.voltage = Positive<Voltage>::of(48_V);
  machine.controller.step_rate_limit = Positive<Frequency>::of(100_kHz);
  Axis axis;
  axis.basics.travel = Positive<Length>::of(750_mm);
  axis.targets.feed = Positive<Velocity>::of(3_m_per_min);
  axis.targets.acceleration = Positive<Acceleration>::of(0.5_m_per_s2);
  axis.targets.cutting_feed = Positive<Velocity>::of(1.5_m_per_min);
  axis.targets.thrust = Positive<Force>::of(150_N);
  axis.carriage.mass = Positive<Mass>::of(20_kg);
  StepperByPoints motor;
  motor.points = {torque_point(0_rpm, 1.7_N_m),    torque_point(150_rpm, 1.6_N_m),
                  torque_point(300_rpm, 1.45_N_m), torque_point(600_rpm, 1.1_N_m),
                  torque_point(900_rpm, 0.8_N_m),  torque_point(1200_rpm, 0.6_N_m),
                  torque_point(1800_rpm, 0.35_N_m)};
  motor.points_voltage = Positive<Voltage>::of(48_V);
  axis.motor = motor;
  axis.transmission = BeltStage();
  screw_of(axis).span = Positive<Length>::of(900_mm);
  machine.axes.push_back(axis);
  return machine;
}

/// The same as it comes out of its file, with the notes that reading leaves.
inline Machine ordinary_router_read() {
  return *read_machine(write_machine(ordinary_router()));
}

} // namespace feedwright::testing
