// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Kinematics and efficiency of the drive train: from the motor's shaft to the carriage.

#include "mechanics/belt_geometry.h"
#include "mechanics/screw_life.h"
#include "mechanics/screw_preload.h"
#include "mechanics/screw_thread.h"
#include "sizing/sizing_state.h"

#include <algorithm>

namespace feedwright {

template <class W>
void stage_kinematics(SizingState<W>& s, const BeltStage& belt) {
  constexpr auto slot = PartSlot::transmission;
  const auto z1 = s.in(slot, "motor_pulley_teeth", double(belt.motor_pulley_teeth));
  const auto z2 = s.in(slot, "screw_pulley_teeth", double(belt.screw_pulley_teeth));
  s.reduction = number(FEEDWRIGHT_KEEP(s, reduction, as_ratio(z2 / z1)));
  s.stage_efficiency = s.in(slot, "efficiency", *belt.efficiency);
  const auto& layout = s.ready.stage;
  if (!layout) {
    return;
  }
  const auto pitch = s.in(slot, "pitch", *belt.pitch);
  const auto belt_teeth = s.in(slot, "belt_teeth", double(belt.belt_teeth));
  FEEDWRIGHT_KEEP(s, belt_centre_distance,
                  s.solved("belt_length", layout->centre_distance, z1, z2, pitch, belt_teeth));
  const double smaller = std::min(belt.motor_pulley_teeth, belt.screw_pulley_teeth);
  const Angle wrap =
      smaller_pulley_wrap(layout->motor_diameter, layout->screw_diameter, layout->centre_distance);
  FEEDWRIGHT_KEEP(s, belt_teeth_in_mesh,
                  as_ratio(s.constant("z_min", smaller) *
                           number(s.constant("φ_min", Ratio(wrap / radian))) / (2.0 * pi)));
}

/// What each pulley of the loop has in mesh, and the least of the driven ones.
template <class W>
double loop_contacts(SizingState<W>& s, const BeltLoopDrive& drive, const LoopLayout& layout) {
  double least = 1e9;
  for (std::size_t i = 0; i < layout.pulleys.size(); ++i) {
    const LoopMember& member = drive.pulleys[i];
    const Angle wrap = layout.path.contacts[i].wrap;
    const double mesh = double(member.teeth) * (wrap / radian) / (2.0 * pi);
    s.out.loop.push_back(
        {wrap, member.face == BeltFace::toothed ? mesh : 0.0, layout.path.spans[i].length});
    if (member.role != PulleyRole::idler) {
      least = std::min(least, mesh);
    }
  }
  return least;
}

template <class W>
void loop_kinematics(SizingState<W>& s, const BeltLoopDrive& drive) {
  constexpr auto slot = PartSlot::transmission;
  s.stage_efficiency = s.in(slot, "efficiency", *drive.efficiency);
  const auto& layout = s.ready.loop;
  if (!layout) {
    s.reduction = s.constant("1", 1.0);
    return;
  }
  const auto z1 = s.constant("z_1", double(layout->motor_teeth));
  const auto z2 = s.constant("z_2", double(layout->screw_teeth));
  s.reduction = number(FEEDWRIGHT_KEEP(s, reduction, as_ratio(z2 / z1)));
  FEEDWRIGHT_KEEP(s, slide_position,
                  s.solved("loop_length", layout->slide_position,
                           s.in(slot, "belt_teeth", double(drive.belt_teeth)),
                           s.in(slot, "pitch", *drive.pitch)));
  if (s.ready.take_up.to_ease) {
    FEEDWRIGHT_KEEP(s, slide_to_ease, s.solved("slide_travel", *s.ready.take_up.to_ease));
  }
  if (s.ready.take_up.to_stretch) {
    FEEDWRIGHT_KEEP(s, slide_to_stretch, s.solved("slide_travel", *s.ready.take_up.to_stretch));
  }
  const double least = loop_contacts(s, drive, *layout);
  FEEDWRIGHT_KEEP(s, belt_teeth_in_mesh, as_ratio(s.solved("loop_mesh", least, z1, z2)));
}

/// Play at the carriage from the parts' own play; open while the nut's is not known.
template <class W>
void plays(SizingState<W>& s) {
  if (s.haul != nullptr) {
    if (s.haul->tooth_gap) {
      FEEDWRIGHT_KEEP(s, lost_motion, s.in(PartSlot::drive, "tooth_gap", **s.haul->tooth_gap));
    }
    return;
  }
  const bool paired =
      s.screw->nuts == NutArrangement::preloaded_pair || s.axis.sides.pairing == Pairing::opposed;
  if (paired) {
    FEEDWRIGHT_KEEP(s, lost_motion, s.constant("0", Length()));
  } else if (s.screw->backlash) {
    FEEDWRIGHT_KEEP(s, lost_motion, s.in(PartSlot::drive, "backlash", **s.screw->backlash));
  }
}

template <class W>
auto drive_travel(SizingState<W>& s) {
  constexpr auto slot = PartSlot::drive;
  if (s.haul != nullptr) {
    return per_radian(
        pulley_pitch_diameter(s.in(slot, "pulley_teeth", double(s.haul->pulley_teeth)),
                              s.in(slot, "pitch", *s.haul->pitch)) /
        2.0);
  }
  return per_turn(s.in(slot, "lead", Length(*s.screw->lead * (2.0 * pi * radian))));
}

template <class W>
void kinematics(SizingState<W>& s) {
  if (const auto* belt = std::get_if<BeltStage>(&s.axis.transmission)) {
    stage_kinematics(s, *belt);
  } else if (const auto* loop = std::get_if<BeltLoopDrive>(&s.axis.transmission)) {
    loop_kinematics(s, *loop);
  } else {
    s.reduction = number(FEEDWRIGHT_KEEP(s, reduction, as_ratio(s.constant("1", 1.0))));
    s.stage_efficiency = s.constant("η_c", 1.0);
  }
  s.screw_travel = FEEDWRIGHT_KEEP(s, screw_travel, drive_travel(s));
  s.motor_travel = FEEDWRIGHT_KEEP(s, motor_travel, s.screw_travel / s.reduction);
  const auto steps = s.constant("n_t", s.motor.steps_per_turn());
  const auto per_step = 2.0 * pi * times_radian(s.motor_travel);
  FEEDWRIGHT_KEEP(s, steps_per_length, steps / per_step);
  FEEDWRIGHT_KEEP(s, resolution, per_step / steps);
  plays(s);
}

/// The share a thrust washer adds to the force's own torque: μ_c d_c/(2 r).
template <class W>
void with_collar(SizingState<W>& s, typename SizingState<W>::template N<double> forward,
                 typename SizingState<W>::template N<double> back) {
  constexpr auto slot = PartSlot::drive;
  const Screw& screw = *s.screw;
  if (*screw.collar_friction > 0.0 && *screw.collar_diameter > Length()) {
    const auto mean = per_radian(s.in(slot, "collar_diameter", *screw.collar_diameter));
    const auto loss =
        number(FEEDWRIGHT_KEEP(s, collar_loss,
                               as_ratio(s.in(slot, "collar_friction", *screw.collar_friction) *
                                        number(mean / (2.0 * s.screw_travel)))));
    forward = 1.0 / (1.0 / forward + loss);
    back = back - loss;
  }
  s.efficiency = FEEDWRIGHT_KEEP(s, forward_efficiency, forward);
  s.back_efficiency = FEEDWRIGHT_KEEP(s, back_driving_efficiency, back);
}

template <class W>
void thread(SizingState<W>& s) {
  if (s.haul != nullptr) {
    s.efficiency = FEEDWRIGHT_KEEP(s, forward_efficiency,
                                   s.in(PartSlot::drive, "efficiency", *s.haul->efficiency));
    s.back_efficiency = FEEDWRIGHT_KEEP(s, back_driving_efficiency, s.efficiency);
    return;
  }
  const Screw& screw = *s.screw;
  constexpr auto slot = PartSlot::drive;
  const auto lead = s.in(slot, "lead", Length(*screw.lead * (2.0 * pi * radian)));
  if (screw.starts > 1) {
    FEEDWRIGHT_KEEP(s, thread_pitch, lead / s.in(slot, "starts", double(screw.starts)));
  }
  const auto tangent = FEEDWRIGHT_KEEP(
      s, tan_lead_angle,
      as_ratio(lead_angle_tangent(lead, s.in(slot, "pitch_diameter", *screw.pitch_diameter))));
  s.tangent = number(tangent);
  if (screw.efficiency) {
    const auto measured = s.in(slot, "efficiency", **screw.efficiency);
    with_collar(s, measured, back_efficiency_from_forward(measured));
    return;
  }
  const auto friction = s.in(slot, "thread_friction", *screw.thread_friction);
  const auto friction_angle = FEEDWRIGHT_KEEP(s, friction_angle,
                                              screw.thread == ThreadForm::ball
                                                  ? ball_friction_angle(friction)
                                                  : trapezoidal_friction_angle(friction, tangent));
  with_collar(s, thread_efficiency(tangent, friction_angle),
              thread_back_efficiency(tangent, friction_angle));
}

/// Drag of the preload at one screw; nothing if there is none.
template <class W>
auto preload_drag(SizingState<W>& s) -> std::optional<typename SizingState<W>::template N<Torque>> {
  using Result = std::optional<typename SizingState<W>::template N<Torque>>;
  constexpr auto slot = PartSlot::drive;
  if (s.screw == nullptr) {
    return Result();
  }
  const Screw& screw = *s.screw;
  if (screw.preload_drag) {
    return Result(s.in(slot, "preload_drag", **screw.preload_drag));
  }
  if (!screw.preload) {
    return Result();
  }
  const auto preload = s.in(slot, "preload", **screw.preload);
  if (s.axis.sides.pairing == Pairing::opposed) {
    return Result(FEEDWRIGHT_KEEP(
        s, preload_drag_torque,
        opposed_thread_drag(preload, s.screw_travel, s.efficiency, s.back_efficiency)));
  }
  if (screw.thread == ThreadForm::ball) {
    return Result(FEEDWRIGHT_KEEP(s, preload_drag_torque,
                                  ball_preload_drag(preload, s.screw_travel, s.tangent)));
  }
  // Two sliding nuts on one screw: one pushes, one is pushed.
  return Result(FEEDWRIGHT_KEEP(
      s, preload_drag_torque,
      2.0 * opposed_thread_drag(preload, s.screw_travel, s.efficiency, s.back_efficiency)));
}

/// Drags at the screws of one motor, which no force along the axis causes.
template <class W>
void drags(SizingState<W>& s) {
  auto each = s.in(PartSlot::drive, "bearing_drag",
                   s.haul != nullptr ? *s.haul->bearing_drag : *s.screw->bearing_drag);
  if (const auto preload = preload_drag(s)) {
    each = *preload + each;
  }
  if (s.screws_each > 1.0) {
    each = s.constant("2", s.screws_each) * each;
  }
  s.drag = FEEDWRIGHT_KEEP(s, drag_torque, each);
  if (s.screw != nullptr && s.screw->preload && s.screw->thread == ThreadForm::ball) {
    FEEDWRIGHT_KEEP(s, preload_holds_to,
                    s.solved("preload_holds_to", preload_holds_to(**s.screw->preload),
                             s.in(PartSlot::drive, "preload", **s.screw->preload)));
  }
}

} // namespace feedwright
