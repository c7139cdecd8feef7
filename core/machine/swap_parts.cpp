// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/swap_parts.h"

#include "machine/machine_file.h"
#include "machine/make_swap.h"

#include <algorithm>
#include <utility>

namespace feedwright {

namespace {

bool same_place(const Fault& a, const Fault& b) {
  return a.code == b.code && a.axis == b.axis && a.slot == b.slot && a.member == b.member;
}

/// The first fault that was not there before.
std::optional<Fault> new_fault(const std::vector<Fault>& before, const Machine& machine) {
  for (const Fault& fault : faults_of(machine)) {
    if (std::ranges::none_of(before, [&](const Fault& old) { return same_place(old, fault); })) {
      return fault;
    }
  }
  return std::nullopt;
}

/// What is wrong with a loop that cannot be laid out, where nothing more is known.
Fault no_belt_fits(std::size_t axis) {
  Fault fault;
  fault.code = FaultCode::loop_belt_does_not_fit;
  fault.axis = axis;
  fault.slot = PartSlot::transmission;
  fault.member = "belt_teeth";
  return fault;
}

tl::expected<Machine, Fault> try_swap(const Machine& machine, std::size_t axis, const Swap& swap,
                                      const SwapAids& aids, bool remember) {
  Machine changed = machine;
  if (!make_swap(changed, axis, swap, aids, remember)) {
    return tl::unexpected(no_belt_fits(axis));
  }
  if (auto fault = new_fault(faults_of(machine), changed)) {
    return tl::unexpected(*std::move(fault));
  }
  return changed;
}

/// Whether the swap takes away the very idler that made the loop of `before` the present one.
bool takes_back_idler(const Axis& before, const Axis& present, const Swap& swap) {
  const auto* old = std::get_if<BeltLoopDrive>(&before.transmission);
  const auto* now = std::get_if<BeltLoopDrive>(&present.transmission);
  if (swap.kind != SwapKind::remove_idler || old == nullptr || now == nullptr ||
      swap.pulley >= now->pulleys.size()) {
    return false;
  }
  std::vector<LoopMember> left = now->pulleys;
  left.erase(left.begin() + static_cast<std::ptrdiff_t>(swap.pulley));
  return left == old->pulleys;
}

/// The axis as it was before a swap, when nothing has been changed since and the way back is asked
/// for.
std::optional<Machine> taken_back(const Machine& machine, std::size_t axis, const Swap& swap,
                                  const SwapAids& aids) {
  const Axis& present = machine.axes.at(axis);
  for (auto at = aids.made.rbegin(); at != aids.made.rend(); ++at) {
    const SwapStep& step = *at;
    if (step.after == present &&
        (stands(step.before, swap) || takes_back_idler(step.before, present, swap))) {
      Machine changed = machine;
      changed.axes.at(axis) = step.before;
      return changed;
    }
  }
  return std::nullopt;
}

std::vector<Swap> transmission_swaps(const Axis& axis) {
  std::vector<Swap> swaps{{SwapKind::coupling}, {SwapKind::belt_stage}, {SwapKind::belt_loop}};
  if (const auto* loop = std::get_if<BeltLoopDrive>(&axis.transmission)) {
    swaps.push_back({SwapKind::add_idler});
    for (std::size_t i = 0; i < loop->pulleys.size(); ++i) {
      if (loop->pulleys[i].role == PulleyRole::idler) {
        swaps.push_back({SwapKind::remove_idler, i});
      }
    }
  }
  return swaps;
}

std::vector<Swap> drive_swaps(const Axis& axis) {
  std::vector<Swap> swaps{{SwapKind::screw}, {SwapKind::hauling_belt}};
  if (std::holds_alternative<Screw>(axis.drive)) {
    for (auto kind = SwapKind::screw_turns; kind <= SwapKind::far_end_free;
         kind = static_cast<SwapKind>(static_cast<int>(kind) + 1)) {
      swaps.push_back({kind});
    }
  }
  return swaps;
}

bool holds(const Axis& axis, bool at_motor, EndSupport support) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  return screw != nullptr && (at_motor ? screw->motor_end : screw->far_end) == support;
}

bool drives(const Axis& axis, DrivenMember member) {
  const auto* screw = std::get_if<Screw>(&axis.drive);
  return screw != nullptr && screw->driven == member;
}

} // namespace

std::vector<Swap> swaps_of(const Axis& axis, PartSlot slot) {
  switch (slot) {
  case PartSlot::transmission: return transmission_swaps(axis);
  case PartSlot::sides:
    return {{SwapKind::one_side}, {SwapKind::two_motors}, {SwapKind::one_motor}};
  case PartSlot::drive: return drive_swaps(axis);
  case PartSlot::motor:
    return {{SwapKind::stepper_by_points}, {SwapKind::stepper_by_ratings}, {SwapKind::servo}};
  case PartSlot::carriage: return {{SwapKind::brake}, {SwapKind::no_brake}};
  case PartSlot::targets:
  case PartSlot::duty: return {{SwapKind::add_load_case}};
  default: return {};
  }
}

std::optional<Swap> swap_to(std::string_view part_type) {
  constexpr std::pair<std::string_view, SwapKind> kinds[] = {
      {part_type_name<Coupling>, SwapKind::coupling},
      {part_type_name<BeltStage>, SwapKind::belt_stage},
      {part_type_name<BeltLoopDrive>, SwapKind::belt_loop},
      {part_type_name<Screw>, SwapKind::screw},
      {part_type_name<HaulingBelt>, SwapKind::hauling_belt},
      {part_type_name<StepperByPoints>, SwapKind::stepper_by_points},
      {part_type_name<StepperByRatings>, SwapKind::stepper_by_ratings},
      {part_type_name<Servo>, SwapKind::servo},
  };
  for (const auto& [type, kind] : kinds) {
    if (type == part_type) {
      return Swap{kind};
    }
  }
  return std::nullopt;
}

std::optional<Swap> swap_to_layout(std::string_view layout) {
  constexpr SwapKind kinds[] = {SwapKind::one_side, SwapKind::two_motors, SwapKind::one_motor};
  const auto& names = fields::Names<DriveLayout>::list;
  static_assert(std::size(kinds) == std::size(names));
  const auto* found = std::ranges::find(names, layout);
  return found != std::end(names) ? std::optional(Swap{kinds[found - std::begin(names)]})
                                  : std::nullopt;
}

Machine with_what_follows(const Machine& machine, Machine plain, std::size_t axis,
                          const std::optional<Swap>& swap, const SwapAids& aids) {
  if (swap && new_fault(faults_of(machine), plain)) {
    if (auto made = swapped(machine, axis, *swap, aids)) {
      return *std::move(made);
    }
  }
  return plain;
}

bool stands(const Axis& axis, const Swap& swap) {
  switch (swap.kind) {
  case SwapKind::coupling: return std::holds_alternative<Coupling>(axis.transmission);
  case SwapKind::belt_stage: return std::holds_alternative<BeltStage>(axis.transmission);
  case SwapKind::belt_loop: return std::holds_alternative<BeltLoopDrive>(axis.transmission);
  case SwapKind::one_side: return axis.sides.layout == DriveLayout::one;
  case SwapKind::two_motors: return axis.sides.layout == DriveLayout::two_motors;
  case SwapKind::one_motor: return axis.sides.layout == DriveLayout::one_motor;
  case SwapKind::screw: return std::holds_alternative<Screw>(axis.drive);
  case SwapKind::hauling_belt: return std::holds_alternative<HaulingBelt>(axis.drive);
  case SwapKind::screw_turns: return drives(axis, DrivenMember::screw);
  case SwapKind::nut_turns: return drives(axis, DrivenMember::nut);
  case SwapKind::motor_end_fixed: return holds(axis, true, EndSupport::fixed);
  case SwapKind::motor_end_supported: return holds(axis, true, EndSupport::supported);
  case SwapKind::motor_end_free: return holds(axis, true, EndSupport::free);
  case SwapKind::far_end_fixed: return holds(axis, false, EndSupport::fixed);
  case SwapKind::far_end_supported: return holds(axis, false, EndSupport::supported);
  case SwapKind::far_end_free: return holds(axis, false, EndSupport::free);
  case SwapKind::stepper_by_points: return std::holds_alternative<StepperByPoints>(axis.motor);
  case SwapKind::stepper_by_ratings: return std::holds_alternative<StepperByRatings>(axis.motor);
  case SwapKind::servo: return std::holds_alternative<Servo>(axis.motor);
  case SwapKind::brake: return axis.carriage.brake;
  case SwapKind::no_brake: return !axis.carriage.brake;
  case SwapKind::add_idler:
  case SwapKind::remove_idler:
  case SwapKind::add_load_case: break;
  }
  return false;
}

tl::expected<Machine, Fault> swapped(const Machine& machine, std::size_t axis, const Swap& swap,
                                     const SwapAids& aids) {
  // A layout that stands may still want mending: a loop of two screws, or none, that it lacks.
  const bool mends = swap.kind == SwapKind::one_side || swap.kind == SwapKind::two_motors ||
                     swap.kind == SwapKind::one_motor;
  if (stands(machine.axes.at(axis), swap) && !mends) {
    return machine;
  }
  if (!stands(machine.axes.at(axis), swap)) {
    if (auto back = taken_back(machine, axis, swap, aids)) {
      return *std::move(back);
    }
  }
  auto made = try_swap(machine, axis, swap, aids, true);
  return made ? made : try_swap(machine, axis, swap, aids, false);
}

} // namespace feedwright
