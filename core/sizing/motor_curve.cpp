// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/motor_curve.h"

#include <boost/math/tools/toms748_solve.hpp>

namespace feedwright {

namespace {

Current peak_current(const StepperByRatings& motor) {
  return motor.drive_current_reading == CurrentReading::peak
             ? *motor.drive_current
             : Current(*motor.drive_current * std::numbers::sqrt2);
}

double full_steps_per_turn(Angle step_angle) {
  return 2.0 * pi * radian / step_angle;
}

} // namespace

MotorCurve::MotorCurve(const Motor& motor, const Supply& supply) {
  if (const auto* by_points = std::get_if<StepperByPoints>(&motor)) {
    Points points;
    points.reserve(by_points->points.size());
    for (const TorquePoint& point : by_points->points) {
      points.push_back({si_value(point.speed), si_value(point.torque)});
    }
    set_monotone_slopes(points);
    last_speed_ = by_points->points.back().speed;
    holding_torque_ =
        by_points->holding_torque ? **by_points->holding_torque : by_points->points.front().torque;
    model_ = std::move(points);
  } else if (const auto* by_ratings = std::get_if<StepperByRatings>(&motor)) {
    model_ =
        StepperWinding{rotor_teeth(*by_ratings->step_angle),
                       torque_constant(*by_ratings->holding_torque, *by_ratings->rated_current),
                       *by_ratings->resistance,
                       *by_ratings->inductance,
                       peak_current(*by_ratings),
                       *supply.voltage};
    holding_torque_ = *by_ratings->holding_torque;
  } else {
    const Servo& servo = std::get<Servo>(motor);
    model_ = ServoRegions{*servo.continuous_torque, *servo.peak_torque, *servo.rated_speed};
    last_speed_ = *servo.top_speed;
    holding_torque_ = *servo.continuous_torque;
  }
  std::visit(
      [this](const auto& m) {
        rotor_inertia_ = *m.rotor_inertia;
        share_ = *m.usable_share;
        if constexpr (requires { m.steps_per_turn; }) {
          steps_per_turn_ = m.steps_per_turn;
        } else {
          steps_per_turn_ = full_steps_per_turn(*m.step_angle) * m.microsteps;
          detent_torque_ = *m.detent_torque;
        }
      },
      motor);
}

std::optional<Torque> MotorCurve::torque(AngularVelocity speed, Duty duty) const {
  if (last_speed_ && speed > *last_speed_) {
    return std::nullopt;
  }
  if (const auto* points = std::get_if<Points>(&model_)) {
    return from_si<Torque>(hermite_value(*points, si_value(speed)));
  }
  if (const auto* winding = std::get_if<StepperWinding>(&model_)) {
    return pull_out_torque(*winding, speed);
  }
  const auto& servo = std::get<ServoRegions>(model_);
  const Torque held = duty == Duty::continuous ? servo.continuous : servo.peak;
  return speed <= servo.rated ? held : Torque(held * (servo.rated / speed));
}

std::optional<Torque> MotorCurve::usable(AngularVelocity speed, Duty duty) const {
  const auto whole = torque(speed, duty);
  return whole ? std::optional<Torque>(*whole * share_) : std::nullopt;
}

AngularVelocity MotorCurve::bracketed_meeting(AngularVelocity low, AngularVelocity high,
                                              Torque need, Duty duty) const {
  const auto excess = [&](double speed) {
    return si_value(usable(from_si<AngularVelocity>(speed), duty).value_or(Torque())) -
           si_value(need);
  };
  std::uintmax_t rounds = 60;
  const auto bracket = boost::math::tools::toms748_solve(
      excess, si_value(low), si_value(high), boost::math::tools::eps_tolerance<double>(48), rounds);
  return from_si<AngularVelocity>(bracket.first);
}

AngularVelocity MotorCurve::points_meeting(const Points& points, Torque need, Duty duty) const {
  const double wanted = si_value(need) / share_;
  if (points.front().y < wanted) {
    return AngularVelocity();
  }
  for (std::size_t i = 1; i < points.size(); ++i) {
    // Monotone between knots, so a segment crosses only if its far end is below.
    if (points[i].y < wanted) {
      return bracketed_meeting(from_si<AngularVelocity>(points[i - 1].x),
                               from_si<AngularVelocity>(points[i].x), need, duty);
    }
  }
  return *last_speed_;
}

AngularVelocity MotorCurve::speed_meeting(Torque need, Duty duty) const {
  if (const auto* points = std::get_if<Points>(&model_)) {
    return points_meeting(*points, need, duty);
  }
  if (*usable(AngularVelocity(), duty) < need) {
    return AngularVelocity();
  }
  if (const auto* servo = std::get_if<ServoRegions>(&model_)) {
    const Torque held = (duty == Duty::continuous ? servo->continuous : servo->peak) * share_;
    const AngularVelocity meeting = servo->rated * (held / need);
    return meeting < *last_speed_ ? meeting : *last_speed_;
  }
  AngularVelocity high = from_si<AngularVelocity>(50.0);
  const AngularVelocity beyond_sense = from_si<AngularVelocity>(1e7);
  while (*usable(high, duty) >= need) {
    high = high * 2.0;
    if (high > beyond_sense) {
      return beyond_sense;
    }
  }
  return bracketed_meeting(AngularVelocity(), high, need, duty);
}

} // namespace feedwright
