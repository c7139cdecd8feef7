// SPDX-License-Identifier: GPL-3.0-or-later

// The inputs of the drive train, each declared once. Order here is the order in files, forms and
// sheets.

#include "parts/belt_fields.h"
#include "parts/motor.h"
#include "parts/screw.h"
#include "parts/transmission.h"

namespace feedwright {

using namespace fields;
using enum Presence;

std::span<const Field<TorquePoint>> FieldsOf<TorquePoint>::list() {
  static constexpr Field<TorquePoint> all[] = {
      quantity<&TorquePoint::speed>("speed", "n", "rpm"),
      quantity<&TorquePoint::torque>("torque", "T", "N·m"),
  };
  return all;
}

std::span<const Field<ToothLoad>> FieldsOf<ToothLoad>::list() {
  static constexpr Field<ToothLoad> all[] = {
      quantity<&ToothLoad::speed>("speed", "n", "rpm"),
      quantity<&ToothLoad::load>("load", "F_U", "N/cm"),
  };
  return all;
}

std::span<const Field<LoopMember>> FieldsOf<LoopMember>::list() {
  using L = LoopMember;
  static constexpr Field<L> all[] = {
      choice<&L::role>("role"),
      quantity<&L::x>("x", "x", "mm"),
      quantity<&L::y>("y", "y", "mm"),
      count<&L::teeth>("teeth", "z", 0, 1000, preset),
      quantity<&L::diameter>("diameter", "D", "mm"),
      choice<&L::face>("face", preset),
  };
  return all;
}

std::span<const Field<StepperByPoints>> FieldsOf<StepperByPoints>::list() {
  using M = StepperByPoints;
  static constexpr Field<M> all[] = {
      text<&M::frame>("frame").in("torque"),
      table<&M::points>("points", required).in("torque"),
      quantity<&M::points_voltage>("points_voltage", "V_p", "V").in("torque"),
      flag<&M::reckon_for_supply>("reckon_for_supply").in("torque"),
      quantity<&M::rated_current>("rated_current", "I_r", "A").in("winding"),
      quantity<&M::resistance>("resistance", "R", "Ω").in("winding"),
      quantity<&M::inductance>("inductance", "L", "mH").in("winding"),
      quantity<&M::drive_current>("drive_current", "I_d", "A").in("winding"),
      choice<&M::drive_current_reading>("drive_current_reading", preset).in("winding"),
      quantity<&M::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²").in("rotor"),
      quantity<&M::holding_torque>("holding_torque", "T_h", "N·m").in("torque"),
      quantity<&M::detent_torque>("detent_torque", "T_d", "N·m", preset).in("torque"),
      quantity<&M::step_angle>("step_angle", "θ_s", "°", preset).in("rotor"),
      count<&M::microsteps>("microsteps", "n_µ", 1, 1024, preset).in("rotor"),
      quantity<&M::usable_share>("usable_share", "k_u", "%", preset).in("torque"),
      flag<&M::closed_loop>("closed_loop").in("rotor"),
  };
  return all;
}

std::span<const Field<StepperByRatings>> FieldsOf<StepperByRatings>::list() {
  using M = StepperByRatings;
  static constexpr Field<M> all[] = {
      text<&M::frame>("frame").in("torque"),
      quantity<&M::holding_torque>("holding_torque", "T_h", "N·m").in("torque"),
      quantity<&M::rated_current>("rated_current", "I_r", "A").in("winding"),
      quantity<&M::resistance>("resistance", "R", "Ω").in("winding"),
      quantity<&M::inductance>("inductance", "L", "mH").in("winding"),
      quantity<&M::drive_current>("drive_current", "I_d", "A").in("winding"),
      choice<&M::drive_current_reading>("drive_current_reading").in("winding"),
      quantity<&M::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²").in("rotor"),
      quantity<&M::detent_torque>("detent_torque", "T_d", "N·m", preset).in("torque"),
      quantity<&M::step_angle>("step_angle", "θ_s", "°", preset).in("rotor"),
      count<&M::microsteps>("microsteps", "n_µ", 1, 1024, preset).in("rotor"),
      quantity<&M::usable_share>("usable_share", "k_u", "%", preset).in("torque"),
      flag<&M::closed_loop>("closed_loop").in("rotor"),
  };
  return all;
}

std::span<const Field<Servo>> FieldsOf<Servo>::list() {
  static constexpr Field<Servo> all[] = {
      text<&Servo::frame>("frame").in("torque"),
      quantity<&Servo::continuous_torque>("continuous_torque", "T_n", "N·m").in("torque"),
      quantity<&Servo::peak_torque>("peak_torque", "T_p", "N·m").in("torque"),
      quantity<&Servo::rated_speed>("rated_speed", "n_n", "rpm").in("torque"),
      quantity<&Servo::top_speed>("top_speed", "n_max", "rpm").in("torque"),
      quantity<&Servo::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²").in("rotor"),
      count<&Servo::steps_per_turn>("steps_per_turn", "n_s", 1, 100'000'000, preset).in("rotor"),
      quantity<&Servo::usable_share>("usable_share", "k_u", "%", preset).in("torque"),
  };
  return all;
}

std::span<const Field<Coupling>> FieldsOf<Coupling>::list() {
  static constexpr Field<Coupling> all[] = {
      quantity<&Coupling::inertia>("inertia", "J_c", "kg·cm²"),
      quantity<&Coupling::torque_limit>("torque_limit", "T_cl", "N·m"),
      quantity<&Coupling::stiffness>("stiffness", "k_c", "N·m/rad"),
  };
  return all;
}

std::span<const Field<BeltStage>> FieldsOf<BeltStage>::list() {
  using B = BeltStage;
  static constexpr std::array<Field<B>, 5> pulleys{
      count<&B::motor_pulley_teeth>("motor_pulley_teeth", "z_1", 6, 1000).in("pulleys"),
      count<&B::screw_pulley_teeth>("screw_pulley_teeth", "z_2", 6, 1000).in("pulleys"),
      count<&B::belt_teeth>("belt_teeth", "z_b", 12, 20000).in("pulleys"),
      quantity<&B::motor_pulley_inertia>("motor_pulley_inertia", "J_1", "kg·cm²").in("losses"),
      quantity<&B::screw_pulley_inertia>("screw_pulley_inertia", "J_2", "kg·cm²").in("losses")};
  static constexpr auto all = joined<B>(belt_size_fields<B>(), pulleys, belt_strength_fields<B>());
  return all;
}

std::span<const Field<BeltLoopDrive>> FieldsOf<BeltLoopDrive>::list() {
  using B = BeltLoopDrive;
  static constexpr std::array<Field<B>, 7> loop{
      table<&B::pulleys>("pulleys", required).in("pulleys"),
      count<&B::belt_teeth>("belt_teeth", "z_b", 12, 20000).in("pulleys"),
      count<&B::sliding_pulley>("sliding_pulley", "", 1, 16).in("pulleys"),
      quantity<&B::slide_direction>("slide_direction", "ψ", "°", preset).in("pulleys"),
      quantity<&B::slide_back>("slide_back", "s_-", "mm", preset).in("pulleys"),
      quantity<&B::slide_forth>("slide_forth", "s_+", "mm", preset).in("pulleys"),
      quantity<&B::back_height>("back_height", "h_b", "mm", preset).in("pulleys")};
  static constexpr auto all = joined<B>(belt_size_fields<B>(), loop, belt_strength_fields<B>());
  return all;
}

std::span<const Field<HaulingBelt>> FieldsOf<HaulingBelt>::list() {
  using B = HaulingBelt;
  static constexpr std::array<Field<B>, 4> pulleys{
      count<&B::pulley_teeth>("pulley_teeth", "z", 6, 1000).in("pulleys"),
      quantity<&B::belt_length>("belt_length", "L_b", "mm").in("pulleys"),
      quantity<&B::pulley_inertia>("pulley_inertia", "J_p", "kg·cm²").in("losses"),
      quantity<&B::bearing_drag>("bearing_drag", "T_br", "N·m", preset).in("losses")};
  static constexpr auto all = joined<B>(belt_size_fields<B>(), pulleys, belt_strength_fields<B>());
  return all;
}

std::span<const Field<Screw>> FieldsOf<Screw>::list() {
  static constexpr Field<Screw> all[] = {
      choice<&Screw::thread>("thread").in("thread"),
      quantity<&Screw::nominal_diameter>("nominal_diameter", "d_0", "mm").in("thread"),
      quantity<&Screw::core_diameter>("core_diameter", "d_r", "mm").in("thread"),
      quantity<&Screw::pitch_diameter>("pitch_diameter", "d_m", "mm").in("thread"),
      quantity<&Screw::lead>("lead", "l", "mm").in("thread"),
      count<&Screw::starts>("starts", "z_s", 1, 32, preset).in("thread"),
      choice<&Screw::driven>("driven", preset).in("ends"),
      quantity<&Screw::nut_inertia>("nut_inertia", "J_n", "kg·cm²").in("nut"),
      quantity<&Screw::bore>("bore", "d_i", "mm", preset).in("ends"),
      quantity<&Screw::span>("span", "L", "mm").in("ends"),
      quantity<&Screw::overall_length>("overall_length", "L_o", "mm").in("ends"),
      choice<&Screw::motor_end>("motor_end").in("ends"),
      choice<&Screw::far_end>("far_end").in("ends"),
      choice<&Screw::whip_span>("whip_span", preset).in("ends"),
      quantity<&Screw::thread_friction>("thread_friction", "μ", "", preset).in("losses"),
      quantity<&Screw::efficiency>("efficiency", "η", "%").in("losses"),
      choice<&Screw::nuts>("nuts", preset).in("nut"),
      quantity<&Screw::nut_length>("nut_length", "L_n", "mm").in("nut"),
      quantity<&Screw::preload>("preload", "F_pl", "N").in("nut"),
      quantity<&Screw::preload_drag>("preload_drag", "T_pl", "N·m").in("nut"),
      quantity<&Screw::collar_friction>("collar_friction", "μ_c", "", preset).in("losses"),
      quantity<&Screw::collar_diameter>("collar_diameter", "d_c", "mm", preset).in("losses"),
      quantity<&Screw::bearing_drag>("bearing_drag", "T_br", "N·m", preset).in("losses"),
      quantity<&Screw::backlash>("backlash", "b", "µm").in("nut"),
      quantity<&Screw::ball_speed_limit>("ball_speed_limit", "D_n", "mm·rpm", preset).in("ratings"),
      quantity<&Screw::speed_limit>("speed_limit", "n_max", "rpm").in("ratings"),
      quantity<&Screw::static_rating>("static_rating", "C_0a", "kN").in("ratings"),
      quantity<&Screw::dynamic_rating>("dynamic_rating", "C_a", "kN").in("ratings"),
      quantity<&Screw::load_factor>("load_factor", "f_w", "", preset).in("ratings"),
      quantity<&Screw::reliability>("reliability", "R", "%", preset).in("ratings"),
      quantity<&Screw::nut_stiffness>("nut_stiffness", "k_n", "N/µm").in("accuracy"),
      quantity<&Screw::bearing_stiffness>("bearing_stiffness", "k_br", "N/µm").in("accuracy"),
      choice<&Screw::grade>("grade", preset).in("accuracy"),
      quantity<&Screw::travel_deviation>("travel_deviation", "e_p", "µm").in("accuracy"),
      quantity<&Screw::temperature_rise>("temperature_rise", "ΔT", "K").in("accuracy"),
      quantity<&Screw::expansion>("expansion", "α", "ppm/K", preset).in("accuracy"),
      quantity<&Screw::stretch>("stretch", "F_z", "N", preset).in("accuracy"),
      quantity<&Screw::bearing_thrust_limit>("bearing_thrust_limit", "F_br", "kN").in("ratings"),
      quantity<&Screw::whip_share>("whip_share", "k_w", "%", preset).in("safety"),
      quantity<&Screw::buckling_safety>("buckling_safety", "s_k", "", preset).in("safety"),
      quantity<&Screw::stress_safety>("stress_safety", "s_y", "", preset).in("safety"),
      quantity<&Screw::static_safety>("static_safety", "s_0", "", preset).in("safety"),
      quantity<&Screw::elastic_modulus>("elastic_modulus", "E", "GPa", preset).in("safety"),
      quantity<&Screw::shear_modulus>("shear_modulus", "G", "GPa", preset).in("safety"),
      quantity<&Screw::yield_strength>("yield_strength", "S_y", "MPa", preset).in("safety"),
      quantity<&Screw::density>("density", "ρ", "kg/m³", preset).in("safety"),
  };
  return all;
}

} // namespace feedwright
