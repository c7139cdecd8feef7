// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The fields that every belt has, for the lists of the parts with one.

#include "parts/belt.h"
#include "parts/field_makers.h"

namespace feedwright {

namespace fields {

/// The belt's own fields before the pulleys'.
template <class Part>
constexpr std::array<Field<Part>, 3> belt_size_fields() {
  return {text<&BeltBody::profile, Part>("profile").in("belt"),
          quantity<&BeltBody::pitch, Part>("pitch", "p", "mm").in("belt"),
          quantity<&BeltBody::width, Part>("width", "b", "mm").in("belt")};
}

/// The belt's own fields after the pulleys'.
template <class Part>
constexpr std::array<Field<Part>, 14> belt_strength_fields() {
  using enum Presence;
  return {
      quantity<&BeltBody::efficiency, Part>("efficiency", "η_b", "%", preset).in("losses"),
      quantity<&BeltBody::mass_per_length, Part>("mass_per_length", "m_b", "g/m", preset)
          .in("losses"),
      quantity<&BeltBody::pulley_density, Part>("pulley_density", "ρ_p", "kg/m³", preset)
          .in("losses"),
      quantity<&BeltBody::speed_limit, Part>("speed_limit", "v_b", "m/s").in("losses"),
      quantity<&BeltBody::specific_stiffness, Part>("specific_stiffness", "c_sp", "kN")
          .in("stiffness"),
      quantity<&BeltBody::tension, Part>("tension", "F_st", "N").in("strength"),
      quantity<&BeltBody::heard_note, Part>("heard_note", "f_heard", "Hz").in("strength"),
      quantity<&BeltBody::tooth_gap, Part>("tooth_gap", "b_t", "µm").in("stiffness"),
      quantity<&BeltBody::allowable_pull, Part>("allowable_pull", "F_cord", "N").in("strength"),
      quantity<&BeltBody::rated_pull, Part>("rated_pull", "T_a", "N").in("strength"),
      quantity<&BeltBody::base_width, Part>("base_width", "b_0", "mm").in("strength"),
      table<&BeltBody::tooth_loads, Part>("tooth_loads").in("strength"),
      count<&BeltBody::most_teeth_counted, Part>("most_teeth_counted", "z_e", 1, 1000, preset)
          .in("strength"),
      count<&BeltBody::least_teeth, Part>("least_teeth", "z_l", 6, 1000, preset).in("strength")};
}

} // namespace fields
} // namespace feedwright
