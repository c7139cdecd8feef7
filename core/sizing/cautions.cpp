// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/limits.h"
#include "units/literals.h"

#include <algorithm>

namespace feedwright {

namespace {

using namespace literals;

struct Cautions {
  const Machine& machine;
  const Axis& axis;
  const AxisPreparation& ready;
  AxisResults& out;
  const MotorCurve& motor = ready.motor;
  const Screw* screw = std::get_if<Screw>(&axis.drive);

  void add(FindingCode code, PartSlot subject, std::optional<AnyQuantity> actual = std::nullopt,
           std::optional<AnyQuantity> allowed = std::nullopt) const {
    out.findings.push_back({code, subject, actual, allowed});
  }

  void falling() const {
    lying_flat();
    const bool inclined = *axis.basics.incline != Angle() && *out.gravity_force > 0_N;
    if (!inclined) {
      return;
    }
    if (*out.back_driving_efficiency <= 0.0) {
      add(FindingCode::self_locking_not_promised, PartSlot::drive);
      return;
    }
    const Torque gravity = *out.holding_torque_needed;
    if (!axis.carriage.brake) {
      // However little gravity asks: a shaken motor's detent holds nothing for certain.
      const FindingCode moves =
          out.overbalanced ? FindingCode::axis_can_rise : FindingCode::axis_can_fall;
      add(gravity > motor.detent_torque() ? moves : FindingCode::held_unpowered_by_detent,
          PartSlot::carriage, any(gravity), any(motor.detent_torque()));
    } else if (gravity > 0_N_m) {
      add(FindingCode::brake_not_judged, PartSlot::carriage, any(gravity));
    }
    const auto held = motor.holding_torque();
    if (held && gravity > *held * motor.usable_share()) {
      add(FindingCode::hold_beyond_motor, PartSlot::motor, any(gravity),
          any(Torque(*held * motor.usable_share())));
    }
  }

  /// Z is the axis of the spindle (ISO 841), on a router or mill of this kind nearly always the one
  /// that lifts. Given as lying flat, nothing would be said of its fall.
  void lying_flat() const {
    const bool is_z = axis.basics.letter == "Z" || axis.basics.letter == "z";
    if (is_z && *axis.basics.incline == Angle()) {
      add(FindingCode::lifting_axis_flat, PartSlot::axis);
    }
  }

  void whipping() const {
    if (!axis.targets.feed || !out.whip_speed) {
      return;
    }
    const AngularVelocity wanted = **axis.targets.feed / *out.screw_travel;
    if (screw->driven == DrivenMember::nut) {
      // The shaft stands still; a turning nut shakes it at its own speed.
      if (wanted > *out.whip_allowed_speed) {
        add(FindingCode::nut_near_shaft_frequency, PartSlot::drive, any(wanted),
            any(*out.whip_speed));
      }
      return;
    }
    if (wanted >= *out.whip_speed) {
      add(FindingCode::whip_beyond_critical, PartSlot::drive, any(wanted), any(*out.whip_speed));
    } else if (wanted > *out.whip_allowed_speed) {
      add(FindingCode::near_whip, PartSlot::drive, any(wanted), any(*out.whip_allowed_speed));
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
    if (motor.fitted() != nullptr) {
      add(FindingCode::curve_reckoned_anew, PartSlot::motor, any(**points->points_voltage),
          any(*machine.supply.voltage));
    } else if (points != nullptr && points->points_voltage &&
               **points->points_voltage != *machine.supply.voltage) {
      add(**points->points_voltage > *machine.supply.voltage ? FindingCode::points_at_other_voltage
                                                             : FindingCode::curve_of_less_voltage,
          PartSlot::motor, any(**points->points_voltage), any(*machine.supply.voltage));
    }
    if (std::holds_alternative<StepperByRatings>(axis.motor)) {
      add(FindingCode::torque_from_ratings, PartSlot::motor);
    }
  }

  void guards() const {
    constexpr double teeth_that_carry_fully = 6.0;
    if (out.belt_teeth_in_mesh && std::floor(*out.belt_teeth_in_mesh) < teeth_that_carry_fully) {
      add(FindingCode::few_teeth_in_mesh, PartSlot::transmission, any(*out.belt_teeth_in_mesh),
          any(from_si<Ratio>(teeth_that_carry_fully)));
    }
    if (const auto* haul = std::get_if<HaulingBelt>(&axis.drive);
        haul != nullptr && haul->pulley_teeth / 2 < int(teeth_that_carry_fully)) {
      add(FindingCode::few_teeth_in_mesh, PartSlot::drive,
          any(from_si<Ratio>(double(haul->pulley_teeth) / 2.0)),
          any(from_si<Ratio>(teeth_that_carry_fully)));
    }
    if (screw != nullptr && screw->driven == DrivenMember::screw && *screw->span > 500_mm) {
      add(FindingCode::long_open_screw, PartSlot::drive, any(*screw->span));
    }
    if (const auto* haul = std::get_if<HaulingBelt>(&axis.drive);
        haul != nullptr && *haul->belt_length > 1000_mm) {
      add(FindingCode::guard_moving_belt, PartSlot::drive, any(*haul->belt_length));
    }
    if (out.bus_voltage && machine.supply.voltage_limit &&
        *out.bus_voltage > **machine.supply.voltage_limit) {
      add(FindingCode::bus_over_limit, PartSlot::supply, any(*out.bus_voltage),
          any(**machine.supply.voltage_limit));
    }
  }

  void belts() const {
    if (const BeltBody* belt = belt_of(axis.transmission)) {
      inspect_belt(*belt, PartSlot::transmission, out.belt_pull_heard, out.belt_tension_needed);
      for (const int teeth : driven_teeth()) {
        too_small(*belt, PartSlot::transmission, teeth);
      }
    }
    if (const auto* haul = std::get_if<HaulingBelt>(&axis.drive)) {
      inspect_belt(*haul, PartSlot::drive, out.haul_pull_heard, out.haul_tension_needed);
      too_small(*haul, PartSlot::drive, haul->pulley_teeth);
    }
  }

  /// The smallest pulley of the stage; a caution names one, not each.
  std::vector<int> driven_teeth() const {
    if (const auto* stage = std::get_if<BeltStage>(&axis.transmission)) {
      return {std::min(stage->motor_pulley_teeth, stage->screw_pulley_teeth)};
    }
    return ready.loop ? std::vector{std::min(ready.loop->motor_teeth, ready.loop->screw_teeth)}
                      : std::vector<int>();
  }

  /// What is heard counts before what was meant to be set.
  void inspect_belt(const BeltBody& belt, PartSlot slot, const std::optional<Force>& heard,
                    const std::optional<Force>& needed) const {
    const std::optional<Force> set = heard          ? heard
                                     : belt.tension ? std::optional<Force>(**belt.tension)
                                                    : std::nullopt;
    if (set && needed && *set < *needed) {
      add(FindingCode::slack_belt, slot, any(*set), any(*needed));
    }
  }

  void too_small(const BeltBody& belt, PartSlot slot, int teeth) const {
    if (teeth < belt.least_teeth) {
      add(FindingCode::too_few_pulley_teeth, slot, any(from_si<Ratio>(double(teeth))),
          any(from_si<Ratio>(double(belt.least_teeth))));
    }
  }

  void lengths() const {
    if (screw == nullptr) {
      return;
    }
    const Length lead = *screw->lead * (2.0 * pi * radian);
    // Usual single flanged nuts, within a fifth or so; from memory.
    const Length nut =
        screw->nut_length ? **screw->nut_length : Length(2.0 * (*screw->nominal_diameter + lead));
    // A turn of free thread at either end: common practice, no source.
    const Length end = nut / 2.0 + lead;
    const Length start = axis.basics.nut_at_start ? std::max(**axis.basics.nut_at_start, end) : end;
    const Length wanted = start + *axis.basics.travel + end;
    constexpr double rounding = 1e-9;
    if (*screw->span < wanted * (1.0 - rounding)) {
      add(FindingCode::screw_too_short, PartSlot::drive, any(*screw->span), any(wanted));
    }
    if (screw->overall_length && **screw->overall_length < *screw->span) {
      add(FindingCode::overall_below_span, PartSlot::drive, any(**screw->overall_length),
          any(*screw->span));
    }
  }

  void pairs() const {
    // What a released pair carries is the load alone, so this holds for screws in a pair too.
    if (out.preload_holds_to && out.axial_load && *out.axial_load > *out.preload_holds_to) {
      add(FindingCode::preload_lost, PartSlot::drive, any(*out.axial_load),
          any(*out.preload_holds_to));
    }
    if (axis.sides.layout == DriveLayout::two_motors && out.skew_per_slip) {
      add(FindingCode::sides_can_skew, PartSlot::sides, any(*out.skew_per_slip));
    }
    for (const CaseResult& load : out.cases) {
      if (load.capped) {
        add(FindingCode::cut_capped_by_spindle, PartSlot::duty, any(load.thrust));
        break;
      }
    }
  }

  /// How many figures of a part that must have them nobody has given.
  template <class Part>
  static int count_preset(const Part& part) {
    return static_cast<int>(
        std::ranges::count_if(FieldsOf<Part>::list(), [&](const Field<Part>& field) {
          const bool is_figure =
              field.info.type == FieldType::quantity || field.info.type == FieldType::table;
          return is_figure && field.info.presence == Presence::required &&
                 !part.notes.entries.contains(field.info.member);
        }));
  }

  /// What is bought by figures that nobody, or no supplier, has given.
  void unproven_figures() const {
    const auto note = [&](const auto& part, PartSlot slot) {
      if (const int preset = count_preset(part); preset > 0) {
        add(FindingCode::preset_figures, slot, any(from_si<Ratio>(double(preset))));
      }
      if (part.notes.source.find("typical") != std::string::npos) {
        add(FindingCode::typical_figures, slot);
      }
    };
    std::visit([&](const auto& part) { note(part, PartSlot::motor); }, axis.motor);
    std::visit([&](const auto& part) { note(part, PartSlot::transmission); }, axis.transmission);
    std::visit([&](const auto& part) { note(part, PartSlot::drive); }, axis.drive);
  }
};

} // namespace

void find_cautions(const Machine& machine, const Axis& axis, const AxisPreparation& ready,
                   AxisResults& out) {
  constexpr std::size_t usual_number = 6;
  out.findings.reserve(usual_number);
  const Cautions cautions{machine, axis, ready, out};
  cautions.falling();
  cautions.whipping();
  cautions.motor_trouble();
  cautions.guards();
  cautions.belts();
  cautions.pairs();
  cautions.lengths();
  cautions.unproven_figures();
}

} // namespace feedwright
