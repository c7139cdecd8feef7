// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One part put in place of another, with all that must follow for the machine to stay sound: a belt
// that fits, a layout that goes with it, an inertia that is wanted then.

#include "machine/belt_choices.h"
#include "machine/fault.h"

#include <tl/expected.hpp>

#include <optional>
#include <string_view>

namespace feedwright {

enum class SwapKind : std::uint8_t {
  // what ties the motor to its screw
  coupling,
  belt_stage,
  belt_loop,
  add_idler,
  remove_idler,
  // how many motors and screws
  one_side,
  two_motors,
  one_motor,
  // what moves the carriage
  screw,
  hauling_belt,
  screw_turns,
  nut_turns,
  motor_end_fixed,
  motor_end_supported,
  motor_end_free,
  far_end_fixed,
  far_end_supported,
  far_end_free,
  // the motor
  stepper_by_points,
  stepper_by_ratings,
  servo,
  // the rest
  brake,
  no_brake,
  add_load_case,
};

struct Swap {
  SwapKind kind{};
  std::size_t pulley = 0; ///< of `remove_idler`: its place in the loop's table
  friend bool operator==(const Swap&, const Swap&) = default;
};

/// An axis before and after a swap of this session: what was there is taken again when asked for.
struct SwapStep {
  Axis before, after;
};

struct SwapAids {
  std::vector<StockBelts> stock;
  std::vector<SwapStep> made; ///< the latest last
};

/// What may be asked for of a part, in the order of a menu; with what stands already.
std::vector<Swap> swaps_of(const Axis& axis, PartSlot slot);

/// The swap that puts a part of that type in its place; nothing if it is a type of none.
std::optional<Swap> swap_to(std::string_view part_type);

/// The swap that gives the sides that layout; nothing if there is no such layout.
std::optional<Swap> swap_to_layout(std::string_view layout);

/// `plain`, an axis' part changed and nothing else; where that leaves a fault that was not there
/// before and the swap leaves none, the machine with the swap made.
Machine with_what_follows(const Machine& machine, Machine plain, std::size_t axis,
                          const std::optional<Swap>& swap, const SwapAids& aids);

/// The axis already is as the swap would make it.
bool stands(const Axis& axis, const Swap& swap);

/// The machine with the swap made on one axis; unchanged if it stands. Where it cannot be made
/// without a fault that was not there before: that fault. What is added besides the part itself is
/// a usual figure and says in its field that it was entered.
tl::expected<Machine, Fault> swapped(const Machine& machine, std::size_t axis, const Swap& swap,
                                     const SwapAids& aids);

} // namespace feedwright
