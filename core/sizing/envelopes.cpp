// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/envelopes.h"

#include "sizing/pipeline.h"

#include <algorithm>

namespace feedwright {

namespace {

/// The train and its loads, computed once for a whole curve.
struct Prepared {
  MotorCurve motor;
  AxisResults out;
  NoWorking none;
  SizingState<NoWorking> state;

  Prepared(const Machine& machine, const Axis& axis)
      : motor(axis.motor, machine.supply), state{machine, axis, motor, none, out} {
    train_and_loads(state);
  }
  Prepared(const Prepared&) = delete;
  Prepared& operator=(const Prepared&) = delete;

  /// Where a curve over speed ends: the end of the motor's curve, or where its usable torque only
  /// just turns the axis.
  AngularVelocity end(Duty duty) const {
    return motor.speed_meeting(steady_torque(state, Force(state.gravity + state.friction)), duty);
  }
};

template <class Point, class Value>
std::vector<Point> sampled(AngularVelocity end, int count, const Value& value) {
  std::vector<Point> points;
  points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    points.push_back(value(AngularVelocity(end * (double(i) / double(count - 1)))));
  }
  return points;
}

} // namespace

std::vector<ThrustPoint> thrust_over_feed(const Machine& machine, const Axis& axis, int count) {
  const Prepared prepared(machine, axis);
  const auto& s = prepared.state;
  return sampled<ThrustPoint>(
      prepared.end(Duty::continuous), count, [&](AngularVelocity speed) -> ThrustPoint {
        const Torque torque =
            prepared.motor.usable(speed, Duty::continuous).value_or(Torque());
        const Force left = axial_force_from(s, torque) - s.gravity - s.friction;
        return {speed * s.motor_travel, std::max(Force(), left)};
      });
}

std::vector<AccelerationPoint> acceleration_over_feed(const Machine& machine, const Axis& axis,
                                                      int count) {
  const Prepared prepared(machine, axis);
  const auto& s = prepared.state;
  return sampled<AccelerationPoint>(
      prepared.end(Duty::short_time), count, [&](AngularVelocity speed) -> AccelerationPoint {
        const Torque torque =
            prepared.motor.usable(speed, Duty::short_time).value_or(Torque());
        return {speed * s.motor_travel,
                std::max(Acceleration(), Acceleration(acceleration_from(s, torque)))};
      });
}

std::vector<MotorTorquePoint> motor_torque_over_speed(const Machine& machine, const Axis& axis,
                                                      int count) {
  const MotorCurve motor(axis.motor, machine.supply);
  constexpr double shown_share_of_hold = 0.02; // a curve without an end is drawn down to this
  const AngularVelocity end =
      motor.last_speed()
          ? *motor.last_speed()
          : motor.speed_meeting(motor.holding_torque().value_or(Torque()) * shown_share_of_hold,
                                Duty::short_time);
  return sampled<MotorTorquePoint>(end, count, [&](AngularVelocity speed) -> MotorTorquePoint {
    return {speed, motor.torque(speed, Duty::short_time).value_or(Torque()),
            motor.usable(speed, Duty::short_time).value_or(Torque())};
  });
}

std::vector<WhipPoint> whip_over_span(const Axis& axis, EndSupport motor_end, EndSupport far_end,
                                      Length from, Length to, int count) {
  Screw screw = axis.screw;
  screw.motor_end = motor_end;
  screw.far_end = far_end;
  std::vector<WhipPoint> points;
  points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    const Length span = from + (to - from) * (double(i) / double(count - 1));
    const auto made = Positive<Length>::make(span);
    if (!made) {
      continue;
    }
    screw.span = *made;
    const auto segment = chosen_segment(axis.basics, screw);
    if (segment && segment->length > Length()) {
      const AngularVelocity speed =
          *screw.whip_share * critical_speed(segment->eigenvalue, segment->length,
                                             *screw.core_diameter, *screw.elastic_modulus,
                                             *screw.density);
      points.push_back({span, speed * *screw.lead});
    }
  }
  return points;
}

Length longest_span_at(const Axis& axis, Velocity feed) {
  const Screw& screw = axis.screw;
  const auto segment = chosen_segment(axis.basics, screw);
  if (!segment) {
    return Length();
  }
  const AngularVelocity speed =
      *screw.whip_share * critical_speed(segment->eigenvalue, segment->length,
                                         *screw.core_diameter, *screw.elastic_modulus,
                                         *screw.density);
  // The allowed speed goes with 1/L² of the length that whips.
  const Length allowed = segment->length * std::sqrt(double(speed * *screw.lead / feed));
  return *screw.span + (allowed - segment->length) * (*screw.span / segment->length);
}

} // namespace feedwright
