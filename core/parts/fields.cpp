// SPDX-License-Identifier: GPL-3.0-or-later

// The inputs, each declared once. Order here is the order in files, forms and sheets.

#include "parts/axis_parts.h"
#include "parts/duty.h"
#include "parts/motor.h"
#include "parts/screw.h"
#include "parts/transmission.h"

namespace feedwright {

using namespace fields;
using enum Presence;

std::span<const Field<Supply>> FieldsOf<Supply>::list() {
  static constexpr Field<Supply> all[] = {
      quantity<&Supply::voltage>("voltage", "V", "V"),
      quantity<&Supply::power>("power", "P_s", "W"),
      quantity<&Supply::capacitance>("capacitance", "C_s", "µF"),
      quantity<&Supply::voltage_limit>("voltage_limit", "V_max", "V"),
  };
  return all;
}

std::span<const Field<Spindle>> FieldsOf<Spindle>::list() {
  static constexpr Field<Spindle> all[] = {
      quantity<&Spindle::power>("power", "P_sp", "W"),
      quantity<&Spindle::efficiency>("efficiency", "η_sp", "%", preset),
  };
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
      quantity<&Targets::reversal_error>("reversal_error", "e_r,w", "µm"),
      quantity<&Targets::cutting_error>("cutting_error", "e_c,w", "µm"),
      quantity<&Targets::life>("life", "L_h,w", "h"),
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
      quantity<&Guides::block_spacing>("block_spacing", "b_g", "mm"),
      quantity<&Guides::block_stiffness>("block_stiffness", "k_g", "N/µm"),
      quantity<&Guides::block_rating>("block_rating", "C_g", "kN"),
  };
  return all;
}

std::span<const Field<Sides>> FieldsOf<Sides>::list() {
  static constexpr Field<Sides> all[] = {
      choice<&Sides::layout>("layout", preset),
      choice<&Sides::pairing>("pairing", preset),
      quantity<&Sides::spacing>("spacing", "W", "mm"),
      quantity<&Sides::crossing_mass>("crossing_mass", "m_x", "kg", preset),
      quantity<&Sides::cross_travel>("cross_travel", "y_t", "mm", preset),
  };
  return all;
}

std::span<const Field<LoadCase>> FieldsOf<LoadCase>::list() {
  using C = LoadCase;
  static constexpr Field<C> all[] = {
      text<&C::name>("name"),
      quantity<&C::time>("time", "t", "min"),
      quantity<&C::feed>("feed", "v", "m/min"),
      quantity<&C::thrust>("thrust", "F", "N"),
      quantity<&C::specific_force>("specific_force", "k_c1.1", "MPa"),
      quantity<&C::exponent>("exponent", "m_c", ""),
      quantity<&C::tool_diameter>("tool_diameter", "D", "mm"),
      quantity<&C::teeth>("teeth", "z", ""),
      quantity<&C::spindle_speed>("spindle_speed", "n_sp", "rpm"),
      quantity<&C::depth>("depth", "a_p", "mm"),
      quantity<&C::engagement>("engagement", "a_e", "mm"),
  };
  return all;
}

std::span<const Field<RapidMove>> FieldsOf<RapidMove>::list() {
  static constexpr Field<RapidMove> all[] = {
      quantity<&RapidMove::distance>("distance", "h", "mm"),
      quantity<&RapidMove::rest>("rest", "t_r", "s"),
  };
  return all;
}

std::span<const Field<DutyCycle>> FieldsOf<DutyCycle>::list() {
  static constexpr Field<DutyCycle> all[] = {
      table<&DutyCycle::load_cases>("load_cases"),
      table<&DutyCycle::moves>("moves"),
      quantity<&DutyCycle::jerk>("jerk", "j", "m/s³"),
  };
  return all;
}

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

std::vector<LoopMember> BeltLoopDrive::default_pulleys() {
  const auto at = [](PulleyRole role, double x, double y, int teeth, BeltFace face) {
    LoopMember made;
    made.role = role;
    made.x = Finite<Length>::of(from_si<Length>(x));
    made.y = Finite<Length>::of(from_si<Length>(y));
    made.teeth = teeth;
    made.face = face;
    return made;
  };
  return {at(PulleyRole::motor, 0.15, -0.08, 20, BeltFace::toothed),
          at(PulleyRole::screw, 0.3, 0.0, 20, BeltFace::toothed),
          at(PulleyRole::screw, 0.0, 0.0, 20, BeltFace::toothed)};
}

const BeltBody* belt_of(const Transmission& transmission) {
  if (const auto* stage = std::get_if<BeltStage>(&transmission)) {
    return stage;
  }
  return std::get_if<BeltLoopDrive>(&transmission);
}

FieldValue field_value(const CellValue& cell) {
  return std::visit([](const auto& value) { return FieldValue(value); }, cell);
}

CellValue cell_value(const FieldValue& value) {
  return std::visit(
      [](const auto& held) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(held)>, TableRows>) {
          return CellValue();
        } else {
          return CellValue(held);
        }
      },
      value);
}

} // namespace feedwright
