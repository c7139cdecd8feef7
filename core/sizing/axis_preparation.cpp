// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/axis_preparation.h"

#include "mechanics/belt_geometry.h"

namespace feedwright {

std::optional<StageLayout> stage_layout(const BeltStage& belt) {
  const Length motor_diameter = pulley_pitch_diameter(double(belt.motor_pulley_teeth), *belt.pitch);
  const Length screw_diameter = pulley_pitch_diameter(double(belt.screw_pulley_teeth), *belt.pitch);
  const Length length = double(belt.belt_teeth) * *belt.pitch;
  const auto distance = centre_distance(motor_diameter, screw_diameter, length);
  if (!distance) {
    return std::nullopt;
  }
  return StageLayout{motor_diameter, screw_diameter, length, *distance};
}

AxisPreparation::AxisPreparation(const Machine& machine, const Axis& axis)
    : AxisPreparation(MotorCurve(axis.motor, machine.supply), axis) {}

AxisPreparation::AxisPreparation(MotorCurve known, const Axis& axis) : motor(std::move(known)) {
  if (const auto* belt = std::get_if<BeltStage>(&axis.transmission)) {
    stage = stage_layout(*belt);
  } else if (const auto* drive = std::get_if<BeltLoopDrive>(&axis.transmission)) {
    if (auto layout = loop_layout(*drive)) {
      loop = *std::move(layout);
      take_up = tensioner_travel(*drive, *loop);
    }
  }
}

} // namespace feedwright
