// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/loop_layout.h"
#include "machine/machine_file.h"
#include "machine/milling_case.h"

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
      std::visit([&](const auto& drive) { inspect_drive(drive, axis); }, axis.drive);
      std::visit([this](const auto& motor) { inspect_motor(motor); }, axis.motor);
      std::visit([this](const auto& part) { inspect_transmission(part); }, axis.transmission);
      sides(axis);
      load_cases(axis.duty);
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

  void inspect_drive(const Screw& screw, const Axis& axis) {
    supports(screw);
    thread(screw);
    travel(axis.basics, screw);
    if (screw.driven == DrivenMember::nut && !screw.nut_inertia) {
      add(FaultCode::nut_without_inertia, PartSlot::drive, "nut_inertia");
    }
    const bool paired =
        screw.nuts == NutArrangement::preloaded_pair || axis.sides.pairing == Pairing::opposed;
    if (paired && !screw.preload) {
      add(FaultCode::preload_missing, PartSlot::drive, "preload");
    }
  }

  void inspect_drive(const HaulingBelt& belt, const Axis& axis) {
    // Once round both pulleys and along the travel twice.
    if (*belt.belt_length < 2.0 * *axis.basics.travel + double(belt.pulley_teeth) * *belt.pitch) {
      add(FaultCode::hauling_belt_too_short, PartSlot::drive, "belt_length");
    }
  }

  void supports(const Screw& s) {
    if (!buckling_constant(s.motor_end, s.far_end)) {
      add(FaultCode::ends_do_not_hold, PartSlot::drive, "far_end");
    }
    if (*s.core_diameter >= *s.nominal_diameter) {
      add(FaultCode::core_not_below_nominal, PartSlot::drive, "core_diameter");
    } else if (*s.pitch_diameter <= *s.core_diameter) {
      add(FaultCode::pitch_not_above_core, PartSlot::drive, "pitch_diameter");
    }
    if (*s.bore >= *s.core_diameter) {
      add(FaultCode::bore_not_below_core, PartSlot::drive, "bore");
    }
    const bool both_fixed = s.motor_end == EndSupport::fixed && s.far_end == EndSupport::fixed;
    if (*s.stretch > Force() && !both_fixed) {
      add(FaultCode::stretch_without_fixed_ends, PartSlot::drive, "stretch");
    }
  }

  void thread(const Screw& s) {
    const auto tangent =
        lead_angle_tangent(Length(*s.lead * (2.0 * pi * radian)), *s.pitch_diameter);
    const double friction_angle = s.thread == ThreadForm::ball
                                      ? ball_friction_angle(*s.thread_friction)
                                      : trapezoidal_friction_angle(*s.thread_friction, tangent);
    // Forward efficiency vanishes where lead and friction angle make up a right angle.
    if (!s.efficiency && std::atan(number(tangent)) + friction_angle >= pi / 2.0) {
      add(FaultCode::thread_locks_forward, PartSlot::drive, "thread_friction");
    }
  }

  void travel(const AxisBasics& basics, const Screw& screw) {
    if (*basics.travel > *screw.span) {
      add(FaultCode::travel_beyond_span, PartSlot::drive, "span");
    } else if (basics.nut_at_start && **basics.nut_at_start + *basics.travel > *screw.span) {
      add(FaultCode::nut_beyond_span, PartSlot::axis, "nut_at_start");
    }
  }

  void sides(const Axis& axis) {
    const Sides& sides = axis.sides;
    if (*sides.crossing_mass > *axis.carriage.mass) {
      add(FaultCode::crossing_beyond_mass, PartSlot::sides, "crossing_mass");
    }
    const bool one = sides.layout == DriveLayout::one;
    if (*sides.cross_travel > Length()) {
      if (!one && !sides.spacing) {
        add(FaultCode::spacing_missing, PartSlot::sides, "spacing");
      }
      if (one && !axis.guides.block_spacing) {
        add(FaultCode::block_spacing_missing, PartSlot::guides, "block_spacing");
      }
    }
    if (one && sides.pairing == Pairing::opposed) {
      add(FaultCode::opposed_without_pair, PartSlot::sides, "pairing");
    }
    if (sides.layout == DriveLayout::two_motors && sides.pairing == Pairing::opposed) {
      add(FaultCode::opposed_by_two_motors, PartSlot::sides, "pairing");
    }
    const auto* loop = std::get_if<BeltLoopDrive>(&axis.transmission);
    const auto is_screw = [](const LoopMember& m) { return m.role == PulleyRole::screw; };
    const bool two_on_loop = loop != nullptr && std::ranges::count_if(loop->pulleys, is_screw) == 2;
    if (sides.layout == DriveLayout::one_motor && !two_on_loop) {
      add(FaultCode::loop_needed, PartSlot::sides, "layout");
    } else if (sides.layout != DriveLayout::one_motor && two_on_loop) {
      add(FaultCode::loop_not_wanted, PartSlot::sides, "layout");
    }
  }

  void load_cases(const DutyCycle& duty) {
    for (std::size_t i = 0; i < duty.load_cases.size(); ++i) {
      const LoadCase& load = duty.load_cases[i];
      if (!milling_cut(load) && (!load.thrust || describes_cut(load))) {
        add(FaultCode::load_case_without_thrust, PartSlot::duty, "load_cases").first = i + 1;
      }
    }
  }

  void inspect_motor(const StepperByPoints& motor) {
    const auto& points = motor.points;
    if (points.size() < 2) {
      add(FaultCode::curve_too_short, PartSlot::motor, "points");
      return;
    }
    const auto falls = [](const TorquePoint& a, const TorquePoint& b) {
      return !(*a.speed < *b.speed);
    };
    if (std::ranges::adjacent_find(points, falls) != points.end()) {
      add(FaultCode::curve_not_rising, PartSlot::motor, "points");
    }
    const auto negative = [](const TorquePoint& p) {
      return *p.speed < AngularVelocity() || *p.torque < Torque();
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

  void inspect_transmission(const Coupling&) {}
  void inspect_transmission(const BeltStage& stage) {
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

  void inspect_transmission(const BeltLoopDrive& loop) {
    const auto layout = loop_layout(loop);
    if (layout) {
      return;
    }
    const LayoutError& error = layout.error();
    Fault& made = add(code_of(error), PartSlot::transmission, member_of(error.code));
    const bool names_one = error.code == LayoutFault::pulley_without_size ||
                           error.code == LayoutFault::screw_teeth_differ ||
                           error.code == LayoutFault::driven_on_back;
    if (error.code == LayoutFault::belt_does_not_fit) {
      made.found = fitting_teeth(loop);
    }
    if (error.loop) {
      made.first = error.loop->first + 1;
      made.second = error.loop->second + 1;
    } else if (names_one) {
      made.first = error.first + 1;
    }
  }

  /// Teeth of the belts that would fit, "228, 229, 230"; empty if none does.
  static std::string fitting_teeth(const BeltLoopDrive& loop) {
    constexpr int most = 8;
    std::string text;
    for (const TakeUpPosition& belt : fitting_belts(loop, most)) {
      std::array<char, 24> digits{};
      const auto end =
          std::to_chars(digits.data(), digits.data() + digits.size(), belt.belt_teeth).ptr;
      text += text.empty() ? "" : ", ";
      text.append(digits.data(), end);
    }
    return text;
  }

  static FaultCode code_of(const LayoutError& error) {
    switch (error.code) {
    case LayoutFault::no_single_motor: return FaultCode::loop_no_single_motor;
    case LayoutFault::screws_not_one_or_two: return FaultCode::loop_screws;
    case LayoutFault::pulley_without_size: return FaultCode::loop_pulley_without_size;
    case LayoutFault::screw_teeth_differ: return FaultCode::loop_screw_teeth_differ;
    case LayoutFault::driven_on_back: return FaultCode::loop_driven_on_back;
    case LayoutFault::no_such_slide: return FaultCode::loop_no_such_slide;
    case LayoutFault::belt_does_not_fit: return FaultCode::loop_belt_does_not_fit;
    case LayoutFault::geometry: break;
    }
    switch (error.loop->code) {
    case LoopFaultCode::idler_on_wrong_side: return FaultCode::loop_wrong_side;
    case LoopFaultCode::crossing_spans: return FaultCode::loop_crossing;
    case LoopFaultCode::span_through_pulley: return FaultCode::loop_span_through_pulley;
    default: return FaultCode::loop_overlap;
    }
  }

  static std::string_view member_of(LayoutFault code) {
    switch (code) {
    case LayoutFault::no_such_slide: return "sliding_pulley";
    case LayoutFault::belt_does_not_fit: return "belt_teeth";
    default: return "pulleys";
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
