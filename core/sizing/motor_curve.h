// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"
#include "mechanics/monotone_cubic.h"
#include "mechanics/stepper_fit.h"

#include <optional>
#include <variant>

namespace feedwright {

/// For how long the motor is asked: a servo gives more for a moment than for ever.
enum class Duty : std::uint8_t { short_time, continuous };

/// What a torque of the curve comes from.
enum class CurveEquation : std::uint8_t {
  points,            ///< joined by a monotone cubic
  points_taken_down, ///< the same, their speeds less for a lower supply
  fitted,            ///< winding and loss fitted to the points
  ratings_by_current,
  ratings_by_voltage,
  ratings_by_both,
  servo_held,    ///< up to the rated speed
  servo_falling, ///< as one over the speed
};

/// The motor's torque against speed, made ready once from its points or ratings.
class MotorCurve {
public:
  MotorCurve(const Motor& motor, const Supply& supply);

  /// Pull-out (stepper) or rated torque (servo). Nothing past the end of what is known: torque is
  /// not invented there. Below the first point the first point's torque holds.
  std::optional<Torque> torque(AngularVelocity speed, Duty duty) const;
  /// torque() times the share that may be used.
  std::optional<Torque> usable(AngularVelocity speed, Duty duty) const;
  /// How torque() finds it.
  CurveEquation equation(AngularVelocity speed) const;
  /// End of the known curve; nothing for a motor known by ratings.
  std::optional<AngularVelocity> last_speed() const { return last_speed_; }
  /// Lowest speed at which the usable torque has fallen to `need`; the end of the curve if it never
  /// does; zero if it is below the need from the start.
  AngularVelocity speed_meeting(Torque need, Duty duty) const;
  /// Whether the known curve ends with more usable torque than the need: its end, not the torque,
  /// is then what speed_meeting() gives.
  bool suffices_to_end(Torque need, Duty duty) const;

  double usable_share() const { return share_; }
  /// Command steps for one turn.
  double steps_per_turn() const { return steps_per_turn_; }
  Inertia rotor_inertia() const { return rotor_inertia_; }
  /// Torque held at rest, powered; nothing if not known.
  std::optional<Torque> holding_torque() const { return holding_torque_; }
  Torque detent_torque() const { return detent_torque_; }
  /// Of a stepper that corrects its position, or a servo.
  bool holds_position() const { return holds_position_; }
  bool is_stepper() const { return rotor_teeth_ > 0.0; }
  /// 90° over the step angle; zero for a servo.
  double rotor_teeth() const { return rotor_teeth_; }
  /// Winding and loss fitted to the points for another voltage; nothing if that was not asked.
  const FittedStepper* fitted() const { return std::get_if<FittedStepper>(&model_); }

private:
  using Points = std::vector<Knot>; // SI, as the interpolator wants them
  struct ServoRegions {
    Torque continuous, peak;
    AngularVelocity rated;
  };
  AngularVelocity points_meeting(const Points& points, Torque need, Duty duty) const;
  AngularVelocity bracketed_meeting(AngularVelocity low, AngularVelocity high, Torque need,
                                    Duty duty) const;

  void take(const StepperByPoints& motor, const Supply& supply);
  void take(const StepperByRatings& motor, const Supply& supply);
  void take(const Servo& motor);

  std::variant<Points, StepperWinding, FittedStepper, ServoRegions> model_;
  std::optional<AngularVelocity> last_speed_;
  std::optional<Torque> holding_torque_;
  Torque detent_torque_;
  Inertia rotor_inertia_;
  double share_ = 1.0;
  double steps_per_turn_ = 200.0;
  bool holds_position_ = true;
  double rotor_teeth_ = 0.0;
  bool taken_down_ = false;
};

} // namespace feedwright
