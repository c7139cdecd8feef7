// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"

#include "mechanics/belt_geometry.h"
#include "mechanics/column_buckling.h"
#include "mechanics/screw_thread.h"
#include "units/literals.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace feedwright {

namespace {

using namespace literals;

class Inspector {
public:
  explicit Inspector(const Machine& machine) : machine_(machine) {}

  std::vector<Fault> inspect() {
    if (machine_.axes.empty()) {
      add(FaultCode::no_axes, std::nullopt, "axes");
    }
    for (index_ = 0; index_ < machine_.axes.size(); ++index_) {
      const Axis& axis = machine_.axes[index_];
      letter(axis.basics);
      screw(axis);
      travel(axis);
      std::visit([this](const auto& motor) { inspect_motor(motor); }, axis.motor);
      if (const auto* stage = std::get_if<BeltStage>(&axis.transmission)) {
        belt(*stage);
      }
    }
    return faults_;
  }

private:
  Fault& add(FaultCode code, std::optional<PartSlot> slot, std::string_view member) {
    Fault& made = faults_.emplace_back();
    made.code = code;
    made.axis = index_;
    made.slot = slot;
    made.member = member;
    if (!slot) {
      made.path = member;
      return made;
    }
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), index_).ptr;
    made.path = "axes[" + std::string(digits.data(), end) + "].";
    if (*slot != PartSlot::axis) {
      made.path += std::string(slot_name(*slot)) + ".";
    }
    made.path += member;
    return made;
  }

  void letter(const AxisBasics& basics) {
    for (std::size_t i = 0; i < index_; ++i) {
      if (machine_.axes[i].basics.letter == basics.letter) {
        add(FaultCode::duplicate_letter, PartSlot::axis, "letter").found = basics.letter;
        return;
      }
    }
  }

  void screw(const Axis& axis) {
    const Screw& s = axis.screw;
    if (!buckling_constant(s.motor_end, s.far_end)) {
      add(FaultCode::ends_do_not_hold, PartSlot::screw, "far_end");
    }
    if (*s.core_diameter >= *s.nominal_diameter) {
      add(FaultCode::core_not_below_nominal, PartSlot::screw, "core_diameter");
    }
    const auto tangent =
        lead_angle_tangent(Length(*s.lead * (2.0 * pi * radian)), *s.pitch_diameter);
    const double friction_angle = s.thread == ThreadForm::ball
                                      ? ball_friction_angle(*s.thread_friction)
                                      : trapezoidal_friction_angle(*s.thread_friction, tangent);
    // Forward efficiency vanishes where lead and friction angle make up a right angle.
    if (!s.efficiency && std::atan(number(tangent)) + friction_angle >= pi / 2.0) {
      add(FaultCode::thread_locks_forward, PartSlot::screw, "thread_friction");
    }
  }

  void travel(const Axis& axis) {
    if (*axis.basics.travel > *axis.screw.span) {
      add(FaultCode::travel_beyond_span, PartSlot::axis, "travel");
    } else if (axis.basics.nut_at_start &&
               **axis.basics.nut_at_start + *axis.basics.travel > *axis.screw.span) {
      add(FaultCode::nut_beyond_span, PartSlot::axis, "nut_at_start");
    }
  }

  void inspect_motor(const StepperByPoints& motor) {
    const auto& points = motor.points;
    if (points.size() < 2) {
      add(FaultCode::curve_too_short, PartSlot::motor, "points");
      return;
    }
    const auto falls = [](const TorquePoint& a, const TorquePoint& b) {
      return !(a.speed < b.speed);
    };
    if (std::ranges::adjacent_find(points, falls) != points.end()) {
      add(FaultCode::curve_not_rising, PartSlot::motor, "points");
    }
    const auto negative = [](const TorquePoint& p) {
      return p.speed < AngularVelocity() || p.torque < Torque();
    };
    if (std::ranges::any_of(points, negative)) {
      add(FaultCode::curve_negative, PartSlot::motor, "points");
    }
  }
  void inspect_motor(const StepperByRatings&) {}
  void inspect_motor(const Servo& motor) {
    if (*motor.top_speed < *motor.rated_speed) {
      add(FaultCode::top_speed_below_rated, PartSlot::motor, "top_speed");
    }
  }

  void belt(const BeltStage& stage) {
    const auto distance =
        centre_distance(pulley_pitch_diameter(double(stage.motor_pulley_teeth), *stage.pitch),
                        pulley_pitch_diameter(double(stage.screw_pulley_teeth), *stage.pitch),
                        double(stage.belt_teeth) * *stage.pitch);
    if (!distance) {
      add(FaultCode::belt_too_short, PartSlot::transmission, "belt_teeth");
    } else if (*distance > 10_m) {
      add(FaultCode::belt_too_long, PartSlot::transmission, "belt_teeth");
    }
  }

  const Machine& machine_;
  std::size_t index_ = 0;
  std::vector<Fault> faults_;
};

} // namespace

std::vector<Fault> faults_of(const Machine& machine) {
  return Inspector(machine).inspect();
}

} // namespace feedwright
