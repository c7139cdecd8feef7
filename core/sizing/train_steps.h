// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Kinematics, thread and inertias of the drive train.

#include "mechanics/belt_geometry.h"
#include "mechanics/rotor.h"
#include "mechanics/screw_thread.h"
#include "sizing/sizing_state.h"

namespace feedwright {

/// What the belt stage's geometry gives; nothing for a coupling.
struct BeltLayout {
  Length motor_diameter, screw_diameter, length, centre_distance;
};

/// Nothing if the belt does not go round (which soundness refuses).
inline std::optional<BeltLayout> belt_layout(const BeltStage& belt) {
  const Length motor_diameter = pulley_pitch_diameter(double(belt.motor_pulley_teeth), *belt.pitch);
  const Length screw_diameter = pulley_pitch_diameter(double(belt.screw_pulley_teeth), *belt.pitch);
  const Length length = double(belt.belt_teeth) * *belt.pitch;
  const auto distance = centre_distance(motor_diameter, screw_diameter, length);
  if (!distance) {
    return std::nullopt;
  }
  return BeltLayout{motor_diameter, screw_diameter, length, *distance};
}

template <class W>
void belt_kinematics(SizingState<W>& s, const BeltStage& belt) {
  constexpr auto slot = PartSlot::transmission;
  const auto z1 = s.in(slot, "motor_pulley_teeth", double(belt.motor_pulley_teeth));
  const auto z2 = s.in(slot, "screw_pulley_teeth", double(belt.screw_pulley_teeth));
  s.reduction = number(FEEDWRIGHT_KEEP(s, reduction, as_ratio(z2 / z1)));
  s.stage_efficiency = s.in(slot, "efficiency", *belt.efficiency);
  const auto layout = belt_layout(belt);
  if (!layout) {
    return;
  }
  const auto pitch = s.in(slot, "pitch", *belt.pitch);
  const auto belt_teeth = s.in(slot, "belt_teeth", double(belt.belt_teeth));
  FEEDWRIGHT_KEEP(
      s, belt_centre_distance,
      s.working.solved("belt_length", layout->centre_distance, z1, z2, pitch, belt_teeth));
  const double smaller = std::min(belt.motor_pulley_teeth, belt.screw_pulley_teeth);
  const Angle wrap =
      smaller_pulley_wrap(layout->motor_diameter, layout->screw_diameter, layout->centre_distance);
  FEEDWRIGHT_KEEP(s, belt_teeth_in_mesh,
                  as_ratio(s.constant("z_min", smaller) *
                           number(s.constant("φ_min", Ratio(wrap / radian))) / (2.0 * pi)));
}

template <class W>
void kinematics(SizingState<W>& s) {
  constexpr auto slot = PartSlot::screw;
  const auto lead = s.in(slot, "lead", Length(*s.axis.screw.lead * (2.0 * pi * radian)));
  if (const auto* belt = std::get_if<BeltStage>(&s.axis.transmission)) {
    belt_kinematics(s, *belt);
  } else {
    s.reduction = number(FEEDWRIGHT_KEEP(s, reduction, as_ratio(s.constant("1", 1.0))));
    s.stage_efficiency = s.constant("η_c", 1.0);
  }
  s.screw_travel = FEEDWRIGHT_KEEP(s, screw_travel, per_turn(lead));
  s.motor_travel = FEEDWRIGHT_KEEP(s, motor_travel, s.screw_travel / s.reduction);
  const auto steps = s.constant("n_t", s.motor.steps_per_turn());
  FEEDWRIGHT_KEEP(s, steps_per_length, steps * s.reduction / lead);
  FEEDWRIGHT_KEEP(s, resolution, lead / (steps * s.reduction));
  if (s.axis.screw.backlash) {
    FEEDWRIGHT_KEEP(s, lost_motion, s.in(slot, "backlash", **s.axis.screw.backlash));
  }
}

template <class W>
void thread(SizingState<W>& s) {
  const Screw& screw = s.axis.screw;
  constexpr auto slot = PartSlot::screw;
  if (screw.efficiency) {
    s.efficiency =
        FEEDWRIGHT_KEEP(s, forward_efficiency, s.in(slot, "efficiency", **screw.efficiency));
    s.back_efficiency =
        FEEDWRIGHT_KEEP(s, back_driving_efficiency, back_efficiency_from_forward(s.efficiency));
    return;
  }
  const auto lead = s.in(slot, "lead", Length(*screw.lead * (2.0 * pi * radian)));
  const auto pitch_diameter = s.in(slot, "pitch_diameter", *screw.pitch_diameter);
  const auto friction = s.in(slot, "thread_friction", *screw.thread_friction);
  const auto tangent =
      FEEDWRIGHT_KEEP(s, tan_lead_angle, as_ratio(lead_angle_tangent(lead, pitch_diameter)));
  const auto friction_angle = FEEDWRIGHT_KEEP(s, friction_angle,
                                              screw.thread == ThreadForm::ball
                                                  ? ball_friction_angle(friction)
                                                  : trapezoidal_friction_angle(friction, tangent));
  s.efficiency = FEEDWRIGHT_KEEP(s, forward_efficiency, thread_efficiency(tangent, friction_angle));
  s.back_efficiency =
      FEEDWRIGHT_KEEP(s, back_driving_efficiency, thread_back_efficiency(tangent, friction_angle));
}

template <class W>
auto pulley_inertia(SizingState<W>& s, const BeltStage& belt, std::string_view teeth_member,
                    int teeth, std::string_view inertia_member,
                    const std::optional<NonNegative<Inertia>>& given) {
  constexpr auto slot = PartSlot::transmission;
  if (given) {
    return s.in(slot, inertia_member, **given);
  }
  const auto diameter = pulley_pitch_diameter(s.in(slot, teeth_member, double(teeth)),
                                              s.in(slot, "pitch", *belt.pitch));
  return cylinder_inertia(s.in(slot, "pulley_density", *belt.pulley_density),
                          s.in(slot, "width", *belt.width), diameter);
}

template <class W>
void belt_inertias(SizingState<W>& s, const BeltStage& belt) {
  constexpr auto slot = PartSlot::transmission;
  const auto j1 =
      FEEDWRIGHT_KEEP(s, motor_pulley_inertia,
                      pulley_inertia(s, belt, "motor_pulley_teeth", belt.motor_pulley_teeth,
                                     "motor_pulley_inertia", belt.motor_pulley_inertia));
  const auto j2 =
      FEEDWRIGHT_KEEP(s, screw_pulley_inertia,
                      pulley_inertia(s, belt, "screw_pulley_teeth", belt.screw_pulley_teeth,
                                     "screw_pulley_inertia", belt.screw_pulley_inertia));
  const auto pitch = s.in(slot, "pitch", *belt.pitch);
  const auto mass = s.in(slot, "mass_per_length", *belt.mass_per_length) *
                    (s.in(slot, "belt_teeth", double(belt.belt_teeth)) * pitch);
  const auto radius =
      per_radian(pulley_pitch_diameter(
                     s.in(slot, "motor_pulley_teeth", double(belt.motor_pulley_teeth)), pitch) /
                 2.0);
  const auto jb = FEEDWRIGHT_KEEP(s, belt_inertia, carried_inertia(mass, radius));
  s.motor_side_inertia = s.motor_side_inertia + j1 + jb;
  s.screw_side_inertia = s.screw_side_inertia + j2;
}

template <class W>
void inertias(SizingState<W>& s) {
  const Screw& screw = s.axis.screw;
  constexpr auto slot = PartSlot::screw;
  const auto length = screw.overall_length ? s.in(slot, "overall_length", **screw.overall_length)
                                           : s.in(slot, "span", *screw.span);
  s.screw_side_inertia =
      FEEDWRIGHT_KEEP(s, screw_inertia,
                      cylinder_inertia(s.in(slot, "density", *screw.density), length,
                                       s.in(slot, "nominal_diameter", *screw.nominal_diameter)));
  const auto rotor = s.in(PartSlot::motor, "rotor_inertia", s.motor.rotor_inertia());
  s.motor_side_inertia = rotor;
  if (const auto* belt = std::get_if<BeltStage>(&s.axis.transmission)) {
    belt_inertias(s, *belt);
  } else {
    const auto& coupling = std::get<Coupling>(s.axis.transmission);
    s.screw_side_inertia =
        s.screw_side_inertia + s.in(PartSlot::transmission, "inertia", *coupling.inertia);
  }
  const auto carriage = FEEDWRIGHT_KEEP(
      s, carriage_inertia,
      carried_inertia(s.in(PartSlot::carriage, "mass", *s.axis.carriage.mass), s.motor_travel));
  const auto load = FEEDWRIGHT_KEEP(s, load_inertia,
                                    (s.motor_side_inertia - rotor) +
                                        s.screw_side_inertia / square(s.reduction) + carriage);
  FEEDWRIGHT_KEEP(s, inertia_match, as_ratio(load / rotor));
}

} // namespace feedwright
