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
      text<&M::frame>("frame"),
      table<&M::points>("points", required),
      quantity<&M::points_voltage>("points_voltage", "V_p", "V"),
      flag<&M::reckon_for_supply>("reckon_for_supply"),
      quantity<&M::rated_current>("rated_current", "I_r", "A"),
      quantity<&M::resistance>("resistance", "R", "Ω"),
      quantity<&M::inductance>("inductance", "L", "mH"),
      quantity<&M::drive_current>("drive_current", "I_d", "A"),
      choice<&M::drive_current_reading>("drive_current_reading", preset),
      quantity<&M::rotor_inertia>("rotor_inertia", "J_m", "kg·cm²"),
      quantity<&M::holding_torque>("holding_torque", "T_h", "N·m"),
      quantity<&M::detent_torque>("detent_torque", "T_d", "N·m", preset),
      quantity<&M::step_angle>("step_angle", "θ_s", "°", preset),
      count<&M::microsteps>("microsteps", "n_µ", 1, 1024, preset),
      quantity<&M::usable_share>("usable_share", "k_u", "%", preset),
      flag<&M::closed_loop>("closed_loop"),
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
      flag<&M::closed_loop>("closed_loop"),
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
      quantity<&Coupling::inertia>("inertia", "J_c", "kg·cm²"),
      quantity<&Coupling::torque_limit>("torque_limit", "T_cl", "N·m"),
      quantity<&Coupling::stiffness>("stiffness", "k_c", "N·m/rad"),
  };
  return all;
}

std::span<const Field<BeltStage>> FieldsOf<BeltStage>::list() {
  using B = BeltStage;
  static constexpr std::array<Field<B>, 5> pulleys{
      count<&B::motor_pulley_teeth>("motor_pulley_teeth", "z_1", 6, 1000),
      count<&B::screw_pulley_teeth>("screw_pulley_teeth", "z_2", 6, 1000),
      count<&B::belt_teeth>("belt_teeth", "z_b", 12, 20000),
      quantity<&B::motor_pulley_inertia>("motor_pulley_inertia", "J_1", "kg·cm²"),
      quantity<&B::screw_pulley_inertia>("screw_pulley_inertia", "J_2", "kg·cm²")};
  static constexpr auto all = joined<B>(belt_size_fields<B>(), pulleys, belt_strength_fields<B>());
  return all;
}

std::span<const Field<BeltLoopDrive>> FieldsOf<BeltLoopDrive>::list() {
  using B = BeltLoopDrive;
  static constexpr std::array<Field<B>, 7> loop{
      table<&B::pulleys>("pulleys", required),
      count<&B::belt_teeth>("belt_teeth", "z_b", 12, 20000),
      count<&B::sliding_pulley>("sliding_pulley", "", 1, 16),
      quantity<&B::slide_direction>("slide_direction", "ψ", "°", preset),
      quantity<&B::slide_back>("slide_back", "s_-", "mm", preset),
      quantity<&B::slide_forth>("slide_forth", "s_+", "mm", preset),
      quantity<&B::back_height>("back_height", "h_b", "mm", preset)};
  static constexpr auto all = joined<B>(belt_size_fields<B>(), loop, belt_strength_fields<B>());
  return all;
}

std::span<const Field<HaulingBelt>> FieldsOf<HaulingBelt>::list() {
  using B = HaulingBelt;
  static constexpr std::array<Field<B>, 4> pulleys{
      count<&B::pulley_teeth>("pulley_teeth", "z", 6, 1000),
      quantity<&B::belt_length>("belt_length", "L_b", "mm"),
      quantity<&B::pulley_inertia>("pulley_inertia", "J_p", "kg·cm²"),
      quantity<&B::bearing_drag>("bearing_drag", "T_br", "N·m", preset)};
  static constexpr auto all = joined<B>(belt_size_fields<B>(), pulleys, belt_strength_fields<B>());
  return all;
}

std::span<const Field<Screw>> FieldsOf<Screw>::list() {
  static constexpr Field<Screw> all[] = {
      choice<&Screw::thread>("thread"),
      quantity<&Screw::nominal_diameter>("nominal_diameter", "d_0", "mm"),
      quantity<&Screw::core_diameter>("core_diameter", "d_r", "mm"),
      quantity<&Screw::pitch_diameter>("pitch_diameter", "d_m", "mm"),
      quantity<&Screw::lead>("lead", "l", "mm"),
      count<&Screw::starts>("starts", "z_s", 1, 32, preset),
      choice<&Screw::driven>("driven", preset),
      quantity<&Screw::nut_inertia>("nut_inertia", "J_n", "kg·cm²"),
      quantity<&Screw::bore>("bore", "d_i", "mm", preset),
      quantity<&Screw::span>("span", "L", "mm"),
      quantity<&Screw::overall_length>("overall_length", "L_o", "mm"),
      choice<&Screw::motor_end>("motor_end"),
      choice<&Screw::far_end>("far_end"),
      choice<&Screw::whip_span>("whip_span", preset),
      quantity<&Screw::thread_friction>("thread_friction", "μ", "", preset),
      quantity<&Screw::efficiency>("efficiency", "η", "%"),
      choice<&Screw::nuts>("nuts", preset),
      quantity<&Screw::preload>("preload", "F_pl", "N"),
      quantity<&Screw::preload_drag>("preload_drag", "T_pl", "N·m"),
      quantity<&Screw::collar_friction>("collar_friction", "μ_c", "", preset),
      quantity<&Screw::collar_diameter>("collar_diameter", "d_c", "mm", preset),
      quantity<&Screw::bearing_drag>("bearing_drag", "T_br", "N·m", preset),
      quantity<&Screw::backlash>("backlash", "b", "µm"),
      quantity<&Screw::ball_speed_limit>("ball_speed_limit", "D_n", "mm·rpm", preset),
      quantity<&Screw::speed_limit>("speed_limit", "n_max", "rpm"),
      quantity<&Screw::static_rating>("static_rating", "C_0a", "kN"),
      quantity<&Screw::dynamic_rating>("dynamic_rating", "C_a", "kN"),
      quantity<&Screw::load_factor>("load_factor", "f_w", "", preset),
      quantity<&Screw::reliability>("reliability", "R", "%", preset),
      quantity<&Screw::nut_stiffness>("nut_stiffness", "k_n", "N/µm"),
      quantity<&Screw::bearing_stiffness>("bearing_stiffness", "k_br", "N/µm"),
      choice<&Screw::grade>("grade", preset),
      quantity<&Screw::travel_deviation>("travel_deviation", "e_p", "µm"),
      quantity<&Screw::temperature_rise>("temperature_rise", "ΔT", "K"),
      quantity<&Screw::expansion>("expansion", "α", "ppm/K", preset),
      quantity<&Screw::stretch>("stretch", "F_z", "N", preset),
      quantity<&Screw::bearing_thrust_limit>("bearing_thrust_limit", "F_br", "kN"),
      quantity<&Screw::whip_share>("whip_share", "k_w", "%", preset),
      quantity<&Screw::buckling_safety>("buckling_safety", "s_k", "", preset),
      quantity<&Screw::stress_safety>("stress_safety", "s_y", "", preset),
      quantity<&Screw::static_safety>("static_safety", "s_0", "", preset),
      quantity<&Screw::elastic_modulus>("elastic_modulus", "E", "GPa", preset),
      quantity<&Screw::shear_modulus>("shear_modulus", "G", "GPa", preset),
      quantity<&Screw::yield_strength>("yield_strength", "S_y", "MPa", preset),
      quantity<&Screw::density>("density", "ρ", "kg/m³", preset),
  };
  return all;
}

} // namespace feedwright
