// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Why a machine cannot be read or computed. Codes and data; words are made in app/text.

#include "machine/machine.h"
#include "units/read_quantity.h"
#include "json/read_json.h"

#include <optional>
#include <string>

namespace feedwright {

enum class FaultCode : std::uint8_t {
  // reading
  not_json,      ///< see `json`
  not_a_machine, ///< no format member naming this format
  newer_major,   ///< written by a newer program; `found` is its version
  missing_member,
  wrong_type,          ///< `found` is the type found, `wanted` the type wanted
  unreadable_quantity, ///< see `quantity`
  out_of_bounds,       ///< see `bound`, or least/most for counts
  unknown_choice,      ///< `choices` are those that would do
  too_many_axes,
  not_a_parts_list,
  unknown_member,    ///< of a parts list's row: no figure of that part
  too_many_answers,  ///< `most` are read
  answer_too_long,   ///< `most` bytes are read
  answer_to_nothing, ///< names neither a finding nor a limit, or both
  // soundness
  ends_do_not_hold, ///< the end supports leave the screw loose
  core_not_below_nominal,
  travel_beyond_span,
  nut_beyond_span,
  curve_too_short,  ///< fewer than two torque points
  curve_not_rising, ///< torque points not in rising order of speed
  curve_negative,
  belt_too_short, ///< the belt does not go round the pulleys
  belt_too_long,  ///< no sensible centre distance
  top_speed_below_rated,
  no_axes,
  duplicate_letter,
  thread_locks_forward, ///< friction so high that the thread cannot be driven
  nut_without_inertia,  ///< the nut turns, and what turns with it is not known
  bore_not_below_core,
  pitch_not_above_core,
  stretch_without_fixed_ends, ///< a screw is stretched between two fixed ends only
  crossing_beyond_mass,       ///< more mass travels across than moves at all
  spacing_missing,            ///< two sides and a cross travel, but not how far apart
  block_spacing_missing,      ///< one drive and a cross travel: the guides take the couple
  opposed_without_pair,       ///< screws wound against each other, but there is only one
  opposed_by_two_motors,      ///< two motors would have to hold the preload against each other
  preload_missing,            ///< wound against each other, but not with which force
  loop_needed,                ///< one motor for two screws, but no loop with two screws
  loop_not_wanted,            ///< a loop with two screws where the layout has one to a motor
  loop_no_single_motor,
  loop_screws, ///< none, or more than two
  loop_pulley_without_size,
  loop_screw_teeth_differ,
  loop_driven_on_back,
  loop_no_such_slide,
  loop_overlap,
  loop_wrong_side,
  loop_crossing,
  loop_span_through_pulley,
  loop_belt_does_not_fit, ///< `found` lists the teeth of belts that would
  hauling_belt_too_short,
  load_case_without_thrust, ///< neither a thrust nor a whole cut to reckon one from
};

struct Fault {
  FaultCode code{};
  std::string path;     ///< as in the file: axes[0].screw.lead
  std::size_t line = 0; ///< 1-based; 0 when not from a file
  std::size_t column = 0;
  std::size_t first = 0;  ///< pulley or row it is about, from 1; 0 for none
  std::size_t second = 0; ///< another pulley it is about
  std::string found; ///< for wrong_type a type's name: object, array, string, number, boolean, null
  std::string wanted; ///< type wanted, for wrong_type
  Bound bound = Bound::any;
  std::int64_t least = 0;
  std::int64_t most = 0;
  Kind kind = Kind::number; ///< of the field
  std::string_view unit;    ///< the field's usual unit, for an example
  std::span<const std::string_view> choices;
  std::optional<ReadError> quantity;
  std::optional<JsonError> json;
  // where it is in the machine, for the window
  std::size_t axis = 0;
  std::optional<PartSlot> slot;
  std::string member;
};

} // namespace feedwright
