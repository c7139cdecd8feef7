// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/motor_curve.h"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>

namespace feedwright {

namespace {

Current peak_of(Current current, CurrentReading reading) {
  return reading == CurrentReading::peak ? current : Current(current * std::numbers::sqrt2);
}

double full_steps_per_turn(Angle step_angle) {
  return 2.0 * pi * radian / step_angle;
}

/// Share of the rated torque that the drive's current makes, at most the whole: both phases at
/// rated current are its peak √2 times that.
double current_share(Current peak, Current rated) {
  return std::min(1.0, double(peak / (std::numbers::sqrt2 * rated)));
}

/// By how much less the speeds of a curve become with less than its voltage. A current that the
/// voltage V drives at ω is still driven by V_s at ω (V_s − R I)/(V + R I), so no torque is
/// promised that is not there; without the resistance known, the plain ratio. One with more than
/// its voltage. See core/derivations/stepper_pull_out.md.
double speed_share(const StepperByPoints& motor, const Supply& supply) {
  if (!motor.points_voltage || *supply.voltage >= **motor.points_voltage) {
    return 1.0;
  }
  const Voltage taken_at = **motor.points_voltage;
  const Current drive = motor.drive_current
                            ? peak_of(**motor.drive_current, motor.drive_current_reading)
                        : motor.rated_current ? peak_of(**motor.rated_current, CurrentReading::rms)
                                              : Current();
  const Voltage drop = motor.resistance ? Voltage(**motor.resistance * drive) : Voltage();
  constexpr double least = 0.01; // a curve keeps some width
  return std::max(least, double((*supply.voltage - drop) / (taken_at + drop)));
}

/// The curve fitted for the supply's voltage, if that is asked and everything known.
std::optional<FittedStepper> reckoned_anew(const StepperByPoints& motor, const Supply& supply) {
  if (!motor.reckon_for_supply || !motor.points_voltage || !motor.holding_torque ||
      !motor.rated_current || !motor.resistance) {
    return std::nullopt;
  }
  const Current drive = motor.drive_current ? **motor.drive_current : **motor.rated_current;
  constexpr double usual_inductance = 3e-3;
  StepperWinding winding{
      rotor_teeth(*motor.step_angle),
      torque_constant(**motor.holding_torque, **motor.rated_current),
      **motor.resistance,
      motor.inductance ? **motor.inductance : from_si<Inductance>(usual_inductance),
      peak_of(drive, motor.drive_current ? motor.drive_current_reading : CurrentReading::rms),
      **motor.points_voltage};
  std::vector<PullOutPoint> points;
  for (const TorquePoint& point : motor.points) {
    points.push_back({*point.speed, *point.torque});
  }
  FittedStepper fitted = fit_to_points(winding, points);
  fitted.winding.voltage_limit = *supply.voltage;
  return fitted;
}

} // namespace

void MotorCurve::take(const StepperByPoints& motor, const Supply& supply) {
  last_speed_ = *motor.points.back().speed;
  holding_torque_ = motor.holding_torque ? **motor.holding_torque : *motor.points.front().torque;
  if (auto fitted = reckoned_anew(motor, supply)) {
    model_ = *fitted;
    return;
  }
  const double slower = speed_share(motor, supply);
  last_speed_ = *last_speed_ * slower;
  taken_down_ = slower < 1.0;
  Points points;
  points.reserve(motor.points.size());
  // A drive set below the rated current makes less; at speed, where the voltage rules, this is on
  // the safe side.
  double share = 1.0;
  if (motor.drive_current && motor.rated_current) {
    share = current_share(peak_of(**motor.drive_current, motor.drive_current_reading),
                          **motor.rated_current);
  }
  holding_torque_ = *holding_torque_ * share;
  for (const TorquePoint& point : motor.points) {
    points.push_back({si_value(*point.speed) * slower, si_value(*point.torque) * share});
  }
  set_monotone_slopes(points);
  model_ = std::move(points);
}

void MotorCurve::take(const StepperByRatings& motor, const Supply& supply) {
  const Current peak = peak_of(*motor.drive_current, motor.drive_current_reading);
  model_ = StepperWinding{feedwright::rotor_teeth(*motor.step_angle),
                          torque_constant(*motor.holding_torque, *motor.rated_current),
                          *motor.resistance,
                          *motor.inductance,
                          peak,
                          *supply.voltage};
  holding_torque_ = *motor.holding_torque * current_share(peak, *motor.rated_current);
}

void MotorCurve::take(const Servo& motor) {
  model_ = ServoRegions{*motor.continuous_torque, *motor.peak_torque, *motor.rated_speed};
  last_speed_ = *motor.top_speed;
  holding_torque_ = *motor.continuous_torque;
  steps_per_turn_ = motor.steps_per_turn;
}

MotorCurve::MotorCurve(const Motor& motor, const Supply& supply) {
  std::visit(
      [&](const auto& m) {
        rotor_inertia_ = *m.rotor_inertia;
        share_ = *m.usable_share;
        if constexpr (requires { m.steps_per_turn; }) {
          take(m);
        } else {
          take(m, supply);
          steps_per_turn_ = full_steps_per_turn(*m.step_angle) * m.microsteps;
          detent_torque_ = *m.detent_torque;
          rotor_teeth_ = feedwright::rotor_teeth(*m.step_angle);
          holds_position_ = m.closed_loop;
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
    // The rotor's own cogging takes its part; a fitted loss has it already.
    return std::max(Torque(), Torque(pull_out_torque(*winding, speed) - detent_torque_));
  }
  if (const auto* fitted = std::get_if<FittedStepper>(&model_)) {
    return pull_out_torque(*fitted, speed);
  }
  const auto& servo = std::get<ServoRegions>(model_);
  const Torque held = duty == Duty::continuous ? servo.continuous : servo.peak;
  return speed <= servo.rated ? held : Torque(held * (servo.rated / speed));
}

CurveEquation MotorCurve::equation(AngularVelocity speed) const {
  if (const auto* winding = std::get_if<StepperWinding>(&model_)) {
    switch (pull_out(*winding, speed).bound) {
    case PullOutBound::current: return CurveEquation::ratings_by_current;
    case PullOutBound::voltage: return CurveEquation::ratings_by_voltage;
    case PullOutBound::both: return CurveEquation::ratings_by_both;
    }
  }
  if (const auto* servo = std::get_if<ServoRegions>(&model_)) {
    return speed <= servo->rated ? CurveEquation::servo_held : CurveEquation::servo_falling;
  }
  if (fitted() != nullptr) {
    return CurveEquation::fitted;
  }
  return taken_down_ ? CurveEquation::points_taken_down : CurveEquation::points;
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

bool MotorCurve::suffices_to_end(Torque need, Duty duty) const {
  return last_speed_ && *usable(*last_speed_, duty) > need &&
         speed_meeting(need, duty) == *last_speed_;
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
  if (last_speed_ && *usable(*last_speed_, duty) >= need) {
    return *last_speed_;
  }
  AngularVelocity high = from_si<AngularVelocity>(50.0);
  const AngularVelocity beyond_sense = from_si<AngularVelocity>(1e7);
  if (last_speed_) {
    return bracketed_meeting(AngularVelocity(), *last_speed_, need, duty);
  }
  while (*usable(high, duty) >= need) {
    high = high * 2.0;
    if (high > beyond_sense) {
      return beyond_sense;
    }
  }
  return bracketed_meeting(AngularVelocity(), high, need, duty);
}

} // namespace feedwright
