// SPDX-License-Identifier: GPL-3.0-or-later

// The inputs, each declared once. Order here is the order in files, forms and sheets.

#include "parts/axis_parts.h"
#include "parts/motor.h"
#include "parts/screw.h"
#include "parts/transmission.h"

namespace feedwright {

using namespace fields;
using enum Presence;

std::span<const Field<Supply>> FieldsOf<Supply>::list() {
  static constexpr Field<Supply> all[] = {quantity<&Supply::voltage>("voltage", "V", "V")};
  return all;
}

std::span<const Field<Controller>> FieldsOf<Controller>::list() {
  static constexpr Field<Controller> all[] = {
      quantity<&Controller::step_rate_limit>("step_rate_limit", "f_max", "kHz")};
  return all;
}

std::span<const Field<AxisBasics>> FieldsOf<AxisBasics>::list() {
  static constexpr Field<AxisBasics> all[] = {
      text<&AxisBasics::letter>("letter", required),
      text<&AxisBasics::name>("name"),
      quantity<&AxisBasics::travel>("travel", "x_t", "mm"),
      quantity<&AxisBasics::incline>("incline", "θ", "°", preset),
      quantity<&AxisBasics::nut_at_start>("nut_at_start", "x_0", "mm"),
  };
  return all;
}

std::span<const Field<Targets>> FieldsOf<Targets>::list() {
  static constexpr Field<Targets> all[] = {
      quantity<&Targets::feed>("feed", "v_w", "m/min"),
      quantity<&Targets::acceleration>("acceleration", "a_w", "m/s²"),
      quantity<&Targets::cutting_feed>("cutting_feed", "v_c", "m/min"),
      quantity<&Targets::thrust>("thrust", "F_c", "N"),
      quantity<&Targets::resolution>("resolution", "δ_w", "µm"),
      quantity<&Targets::lost_motion>("lost_motion", "b_w", "µm"),
      quantity<&Targets::inertia_match>("inertia_match", "κ_w", "", preset),
  };
  return all;
}

std::span<const Field<Carriage>> FieldsOf<Carriage>::list() {
  static constexpr Field<Carriage> all[] = {
      quantity<&Carriage::mass>("mass", "m", "kg"),
      quantity<&Carriage::counterbalance>("counterbalance", "F_cb", "N", preset),
      flag<&Carriage::brake>("brake"),
  };
  return all;
}

std::span<const Field<Guides>> FieldsOf<Guides>::list() {
  static constexpr Field<Guides> all[] = {
      quantity<&Guides::friction>("friction", "μ_g", "", preset),
      count<&Guides::blocks>("blocks", "n_b", 0, 64, preset),
      quantity<&Guides::seal_drag>("seal_drag", "F_s", "N", preset),
      quantity<&Guides::cover_drag>("cover_drag", "F_cov", "N", preset),
      quantity<&Guides::speed_limit>("speed_limit", "v_g", "m/min"),
  };
  return all;
}

std::span<const Field<StepperByPoints>> FieldsOf<StepperByPoints>::list() {
  using M = StepperByPoints;
  static constexpr Field<M> all[] = {
      text<&M::frame>("frame"),
      points<&M::points>("points"),
      quantity<&M::points_voltage>("points_voltage", "V_p", "V"),
      quantity<&M::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²"),
      quantity<&M::holding_torque>("holding_torque", "T_h", "N·m"),
      quantity<&M::detent_torque>("detent_torque", "T_d", "N·m", preset),
      quantity<&M::step_angle>("step_angle", "θ_s", "°", preset),
      count<&M::microsteps>("microsteps", "n_µ", 1, 1024, preset),
      quantity<&M::usable_share>("usable_share", "k_u", "%", preset),
  };
  return all;
}

std::span<const Field<StepperByRatings>> FieldsOf<StepperByRatings>::list() {
  using M = StepperByRatings;
  static constexpr Field<M> all[] = {
      text<&M::frame>("frame"),
      quantity<&M::holding_torque>("holding_torque", "T_h", "N·m"),
      quantity<&M::rated_current>("rated_current", "I_r", "A"),
      quantity<&M::resistance>("resistance", "R", "Ω"),
      quantity<&M::inductance>("inductance", "L", "mH"),
      quantity<&M::drive_current>("drive_current", "I_d", "A"),
      choice<&M::drive_current_reading>("drive_current_reading"),
      quantity<&M::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²"),
      quantity<&M::detent_torque>("detent_torque", "T_d", "N·m", preset),
      quantity<&M::step_angle>("step_angle", "θ_s", "°", preset),
      count<&M::microsteps>("microsteps", "n_µ", 1, 1024, preset),
      quantity<&M::usable_share>("usable_share", "k_u", "%", preset),
  };
  return all;
}

std::span<const Field<Servo>> FieldsOf<Servo>::list() {
  static constexpr Field<Servo> all[] = {
      text<&Servo::frame>("frame"),
      quantity<&Servo::continuous_torque>("continuous_torque", "T_n", "N·m"),
      quantity<&Servo::peak_torque>("peak_torque", "T_p", "N·m"),
      quantity<&Servo::rated_speed>("rated_speed", "n_n", "rpm"),
      quantity<&Servo::top_speed>("top_speed", "n_max", "rpm"),
      quantity<&Servo::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²"),
      count<&Servo::steps_per_turn>("steps_per_turn", "n_s", 1, 100'000'000, preset),
      quantity<&Servo::usable_share>("usable_share", "k_u", "%", preset),
  };
  return all;
}

std::span<const Field<Coupling>> FieldsOf<Coupling>::list() {
  static constexpr Field<Coupling> all[] = {
      quantity<&Coupling::inertia>("inertia", "J_c", "kg·cm²")};
  return all;
}

std::span<const Field<BeltStage>> FieldsOf<BeltStage>::list() {
  using B = BeltStage;
  static constexpr Field<B> all[] = {
      text<&B::profile>("profile"),
      quantity<&B::pitch>("pitch", "p", "mm"),
      quantity<&B::width>("width", "b", "mm"),
      count<&B::motor_pulley_teeth>("motor_pulley_teeth", "z_1", 6, 1000),
      count<&B::screw_pulley_teeth>("screw_pulley_teeth", "z_2", 6, 1000),
      count<&B::belt_teeth>("belt_teeth", "z_b", 12, 20000),
      quantity<&B::efficiency>("efficiency", "η_b", "%", preset),
      quantity<&B::mass_per_length>("mass_per_length", "m_b", "g/m", preset),
      quantity<&B::motor_pulley_inertia>("motor_pulley_inertia", "J_1", "kg·cm²"),
      quantity<&B::screw_pulley_inertia>("screw_pulley_inertia", "J_2", "kg·cm²"),
      quantity<&B::pulley_density>("pulley_density", "ρ_p", "kg/m³", preset),
      quantity<&B::speed_limit>("speed_limit", "v_b", "m/s"),
  };
  return all;
}

std::span<const Field<Screw>> FieldsOf<Screw>::list() {
  static constexpr Field<Screw> all[] = {
      choice<&Screw::thread>("thread"),
      quantity<&Screw::nominal_diameter>("nominal_diameter", "d_0", "mm"),
      quantity<&Screw::core_diameter>("core_diameter", "d_r", "mm"),
      quantity<&Screw::pitch_diameter>("pitch_diameter", "d_m", "mm"),
      quantity<&Screw::lead>("lead", "l", "mm"),
      quantity<&Screw::span>("span", "L", "mm"),
      quantity<&Screw::overall_length>("overall_length", "L_o", "mm"),
      choice<&Screw::motor_end>("motor_end"),
      choice<&Screw::far_end>("far_end"),
      choice<&Screw::whip_span>("whip_span", preset),
      quantity<&Screw::thread_friction>("thread_friction", "μ", "", preset),
      quantity<&Screw::efficiency>("efficiency", "η", "%"),
      quantity<&Screw::preload_drag>("preload_drag", "T_pl", "N·m", preset),
      quantity<&Screw::bearing_drag>("bearing_drag", "T_br", "N·m", preset),
      quantity<&Screw::backlash>("backlash", "b", "µm"),
      quantity<&Screw::ball_speed_limit>("ball_speed_limit", "D_n", "mm·rpm", preset),
      quantity<&Screw::speed_limit>("speed_limit", "n_max", "rpm"),
      quantity<&Screw::static_rating>("static_rating", "C_0a", "kN"),
      quantity<&Screw::bearing_thrust_limit>("bearing_thrust_limit", "F_br", "kN"),
      quantity<&Screw::whip_share>("whip_share", "k_w", "%", preset),
      quantity<&Screw::buckling_safety>("buckling_safety", "s_k", "", preset),
      quantity<&Screw::stress_safety>("stress_safety", "s_y", "", preset),
      quantity<&Screw::static_safety>("static_safety", "s_0", "", preset),
      quantity<&Screw::elastic_modulus>("elastic_modulus", "E", "GPa", preset),
      quantity<&Screw::yield_strength>("yield_strength", "S_y", "MPa", preset),
      quantity<&Screw::density>("density", "ρ", "kg/m³", preset),
  };
  return all;
}

} // namespace feedwright
