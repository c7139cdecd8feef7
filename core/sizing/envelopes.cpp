// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/envelopes.h"

#include "sizing/prepared_axis.h"

#include <algorithm>

namespace feedwright {

namespace {

/// Where a curve over speed ends: the end of the motor's curve, or where its usable torque only
/// just turns the axis.
AngularVelocity end_of_curve(const PreparedAxis& prepared, Duty duty,
                             std::optional<Velocity> last) {
  const auto& s = prepared.state;
  const AngularVelocity of_motor =
      s.motor.speed_meeting(steady_torque(s, Force(s.gravity + s.friction)), duty);
  return last ? std::min(of_motor, AngularVelocity(*last / s.motor_travel)) : of_motor;
}

template <class Point, class Value>
std::vector<Point> sampled(AngularVelocity end, int count, const Value& value) {
  std::vector<Point> points;
  points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    points.push_back(value(AngularVelocity(end * (double(i) / double(count - 1)))));
  }
  return points;
}

/// The feed whip allows with the screw stretched to that span; nothing where no span would do.
std::optional<Velocity> allowed_whip_feed(const AxisBasics& basics, Screw& screw, Length span) {
  const auto made = Positive<Length>::make(span);
  if (!made) {
    return std::nullopt;
  }
  screw.span = *made;
  const auto segment = chosen_segment(nut_reach(basics, screw), screw);
  if (!segment || segment->length <= Length()) {
    return std::nullopt;
  }
  const Length diameter = sqrt(square(*screw.core_diameter) + square(*screw.bore));
  const AngularVelocity speed =
      *screw.whip_share * critical_speed(segment->eigenvalue, segment->length, diameter,
                                         *screw.elastic_modulus, *screw.density);
  return speed * *screw.lead;
}

/// The axis' screw, if it has one that turns.
std::optional<Screw> turning_screw(const Axis& axis) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  return screw != nullptr && screw->driven == DrivenMember::screw ? std::optional(*screw)
                                                                  : std::nullopt;
}

} // namespace

std::vector<ThrustPoint> thrust_over_feed(const Machine& machine, const Axis& axis, int count,
                                          std::optional<Velocity> last) {
  const PreparedAxis prepared(machine, axis);
  const auto& s = prepared.state;
  // What the motor pushes with that axial force left over, as the margin of the thrust counts it.
  const auto left = [&](Force axial) {
    return std::max(Force(), Force(at_tool(s, Force(axial - s.gravity - s.friction))));
  };
  return sampled<ThrustPoint>(
      end_of_curve(prepared, Duty::continuous, last), count,
      [&](AngularVelocity speed) -> ThrustPoint {
        const Force axial =
            axial_force_from(s, Torque(s.motor.usable(speed, Duty::continuous).value_or(Torque())));
        return {speed * s.motor_travel, left(axial), left(Force(axial / clear_margin))};
      });
}

std::vector<AccelerationPoint> acceleration_over_feed(const Machine& machine, const Axis& axis,
                                                      int count, std::optional<Velocity> last) {
  const PreparedAxis prepared(machine, axis);
  const auto& s = prepared.state;
  return sampled<AccelerationPoint>(
      end_of_curve(prepared, Duty::short_time, last), count,
      [&](AngularVelocity speed) -> AccelerationPoint {
        const Torque torque = s.motor.usable(speed, Duty::short_time).value_or(Torque());
        const Acceleration most =
            std::max(Acceleration(), Acceleration(acceleration_from(s, torque)));
        return {speed * s.motor_travel, most, most / clear_margin};
      });
}

std::vector<MotorTorquePoint> motor_torque_over_speed(const Machine& machine, const Axis& axis,
                                                      int count, AngularVelocity at_least) {
  const PreparedAxis prepared(machine, axis);
  const MotorCurve& motor = prepared.state.motor;
  constexpr double shown_share_of_hold = 0.05; // a curve without an end is drawn down to this
  const AngularVelocity end =
      motor.last_speed()
          ? *motor.last_speed()
          : std::max(at_least, motor.speed_meeting(motor.holding_torque().value_or(Torque()) *
                                                       shown_share_of_hold,
                                                   Duty::short_time));
  return sampled<MotorTorquePoint>(end, count, [&](AngularVelocity speed) -> MotorTorquePoint {
    return {speed, speed * prepared.state.motor_travel,
            motor.torque(speed, Duty::short_time).value_or(Torque()),
            motor.usable(speed, Duty::short_time).value_or(Torque()),
            motor.usable(speed, Duty::continuous).value_or(Torque())};
  });
}

std::vector<WhipPoint> whip_over_span(const Axis& axis, EndSupport motor_end, EndSupport far_end,
                                      Length from, Length to, int count) {
  std::vector<WhipPoint> points;
  auto screw = turning_screw(axis);
  if (!screw) {
    return points;
  }
  screw->motor_end = motor_end;
  screw->far_end = far_end;
  points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    const Length span = from + (to - from) * (double(i) / double(count - 1));
    if (const auto feed = allowed_whip_feed(axis.basics, *screw, span)) {
      points.push_back({span, *feed});
    }
  }
  return points;
}

} // namespace feedwright
