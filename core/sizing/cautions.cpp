// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/limits.h"
#include "units/literals.h"

namespace feedwright {

namespace {

using namespace literals;

struct Cautions {
  const Machine& machine;
  const Axis& axis;
  const MotorCurve& motor;
  AxisResults& out;

  void add(FindingCode code, PartSlot subject, std::optional<AnyQuantity> actual = std::nullopt,
           std::optional<AnyQuantity> allowed = std::nullopt) const {
    out.findings.push_back({code, subject, actual, allowed});
  }

  void falling() const {
    const bool inclined = *axis.basics.incline != Angle() && *out.gravity_force > 0_N;
    if (!inclined) {
      return;
    }
    if (*out.back_driving_efficiency <= 0.0) {
      add(FindingCode::self_locking_not_promised, PartSlot::screw);
      return;
    }
    const Torque gravity = *out.holding_torque_needed;
    if (!axis.carriage.brake && gravity > motor.detent_torque()) {
      add(FindingCode::axis_can_fall, PartSlot::carriage, any(gravity), any(motor.detent_torque()));
    }
    const auto held = motor.holding_torque();
    if (held && gravity > *held * motor.usable_share()) {
      add(FindingCode::hold_beyond_motor, PartSlot::motor, any(gravity),
          any(Torque(*held * motor.usable_share())));
    }
  }

  void whipping() const {
    if (!axis.targets.feed || !out.whip_speed) {
      return;
    }
    const AngularVelocity wanted = **axis.targets.feed / *out.screw_travel;
    if (wanted >= *out.whip_speed) {
      add(FindingCode::whip_beyond_critical, PartSlot::screw, any(wanted), any(*out.whip_speed));
    } else if (wanted > *out.whip_allowed_speed) {
      add(FindingCode::near_whip, PartSlot::screw, any(wanted), any(*out.whip_allowed_speed));
    }
  }

  void motor_trouble() const {
    if (out.motor_torque_feed && *out.motor_torque_feed == Velocity()) {
      add(FindingCode::stall_at_rest, PartSlot::motor, any(*out.rapid_torque),
          any(motor.usable(AngularVelocity(), Duty::short_time).value_or(Torque())));
    }
    if (out.motor_speed && motor.last_speed() && *out.motor_speed > *motor.last_speed()) {
      add(FindingCode::motor_curve_ends, PartSlot::motor, any(*out.motor_speed),
          any(*motor.last_speed()));
    }
    const auto* points = std::get_if<StepperByPoints>(&axis.motor);
    if (points != nullptr && points->points_voltage &&
        **points->points_voltage != *machine.supply.voltage) {
      add(FindingCode::points_at_other_voltage, PartSlot::motor, any(**points->points_voltage),
          any(*machine.supply.voltage));
    }
  }

  void guards() const {
    constexpr double teeth_that_carry_fully = 6.0;
    if (out.belt_teeth_in_mesh && std::floor(*out.belt_teeth_in_mesh) < teeth_that_carry_fully) {
      add(FindingCode::few_teeth_in_mesh, PartSlot::transmission, any(*out.belt_teeth_in_mesh),
          any(from_si<Ratio>(teeth_that_carry_fully)));
    }
    if (*axis.screw.span > 500_mm) {
      add(FindingCode::long_open_screw, PartSlot::screw, any(*axis.screw.span));
    }
  }

  void typical() const {
    const auto is_typical = [](const PartNotes& notes) {
      return notes.source.find("typical") != std::string::npos;
    };
    const auto note = [&](const auto& part, PartSlot slot) {
      if (is_typical(part.notes)) {
        add(FindingCode::typical_figures, slot);
      }
    };
    std::visit([&](const auto& part) { note(part, PartSlot::motor); }, axis.motor);
    std::visit([&](const auto& part) { note(part, PartSlot::transmission); }, axis.transmission);
    note(axis.screw, PartSlot::screw);
  }
};

} // namespace

void find_cautions(const Machine& machine, const Axis& axis, const MotorCurve& motor,
                   AxisResults& out) {
  constexpr std::size_t usual_number = 6;
  out.findings.reserve(usual_number);
  const Cautions cautions{machine, axis, motor, out};
  cautions.falling();
  cautions.whipping();
  cautions.motor_trouble();
  cautions.guards();
  cautions.typical();
}

} // namespace feedwright
