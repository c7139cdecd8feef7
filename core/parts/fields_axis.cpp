// SPDX-License-Identifier: GPL-3.0-or-later

// The inputs of machine and axis, each declared once. Order here is the order in files, forms and
// sheets.

#include "parts/axis_parts.h"
#include "parts/duty.h"
#include "parts/field_makers.h"

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
      quantity<&Targets::feed>("feed", "v_w", "m/min").in("speed"),
      quantity<&Targets::acceleration>("acceleration", "a_w", "m/s²").in("speed"),
      quantity<&Targets::cutting_feed>("cutting_feed", "v_c", "m/min").in("speed"),
      quantity<&Targets::thrust>("thrust", "F_c", "N").in("speed"),
      quantity<&Targets::resolution>("resolution", "δ_w", "µm").in("accuracy"),
      quantity<&Targets::lost_motion>("lost_motion", "b_w", "µm").in("accuracy"),
      quantity<&Targets::reversal_error>("reversal_error", "e_r,w", "µm").in("accuracy"),
      quantity<&Targets::cutting_error>("cutting_error", "e_c,w", "µm").in("accuracy"),
      quantity<&Targets::life>("life", "L_h,w", "h").in("service"),
      quantity<&Targets::inertia_match>("inertia_match", "κ_w", "", preset).in("service"),
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
      quantity<&Guides::friction>("friction", "μ_g", "", preset).in("drag"),
      count<&Guides::blocks>("blocks", "n_b", 0, 64, preset).in("drag"),
      quantity<&Guides::seal_drag>("seal_drag", "F_s", "N", preset).in("drag"),
      quantity<&Guides::cover_drag>("cover_drag", "F_cov", "N", preset).in("drag"),
      quantity<&Guides::speed_limit>("speed_limit", "v_g", "m/min").in("drag"),
      quantity<&Guides::block_spacing>("block_spacing", "b_g", "mm").in("blocks"),
      quantity<&Guides::block_stiffness>("block_stiffness", "k_g", "N/µm").in("blocks"),
      quantity<&Guides::block_rating>("block_rating", "C_g", "kN").in("blocks"),
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
