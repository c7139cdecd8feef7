// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/answer.h"
#include "parts/axis_parts.h"
#include "parts/duty.h"
#include "parts/motor.h"
#include "parts/screw.h"
#include "parts/transmission.h"
#include "working/working.h"

#include <string>
#include <utility>
#include <vector>

namespace feedwright {

/// One axis: what moves, what it must do, and the drive train of one side, from motor to screw or
/// hauling belt. With two sides each has the same.
struct Axis {
  AxisBasics basics;
  Targets targets;
  Carriage carriage;
  Guides guides;
  Sides sides;
  DutyCycle duty;
  Motor motor;
  Transmission transmission;
  FinalDrive drive;
  /// To what deserves care on this axis.
  std::vector<Answer> answers;
  friend bool operator==(const Axis&, const Axis&) = default;
};

/// The document: a value, copied for undo.
struct Machine {
  std::string name;
  std::string story;
  Supply supply;
  Controller controller;
  Spindle spindle;
  std::vector<Axis> axes;
  /// To what deserves care of all axes together.
  std::vector<Answer> answers;
  /// Minor format version the file was written with, if newer than ours.
  int newer_minor = 0;
  /// Members this version does not know, of the machine and of its format object.
  std::vector<std::pair<std::string, std::string>> unknown;
  std::vector<std::pair<std::string, std::string>> unknown_format;
  friend bool operator==(const Machine&, const Machine&) = default;
};

/// A place for a part. What stands in it may be of several types (a motor, a transmission).
enum class PartSlot : std::uint8_t {
  supply,
  controller,
  spindle,
  axis,
  targets,
  carriage,
  guides,
  sides,
  duty,
  motor,
  transmission,
  drive,
};
inline constexpr std::size_t slot_count = 12;
inline constexpr PartSlot machine_slots[] = {PartSlot::supply, PartSlot::controller,
                                             PartSlot::spindle};
inline constexpr PartSlot axis_slots[] = {
    PartSlot::axis, PartSlot::targets, PartSlot::carriage,     PartSlot::guides, PartSlot::sides,
    PartSlot::duty, PartSlot::motor,   PartSlot::transmission, PartSlot::drive};

constexpr bool of_machine(PartSlot slot) {
  return slot == PartSlot::supply || slot == PartSlot::controller || slot == PartSlot::spindle;
}

/// The slot's name in files: "drive", "motor", …
std::string_view slot_name(PartSlot slot);

/// The name in files of what stands in a slot of several types: "stepper_by_points", "belt", …
template <class Part>
constexpr std::string_view part_type_name{};
template <>
inline constexpr std::string_view part_type_name<StepperByPoints> = "stepper_by_points";
template <>
inline constexpr std::string_view part_type_name<StepperByRatings> = "stepper_by_ratings";
template <>
inline constexpr std::string_view part_type_name<Servo> = "servo";
template <>
inline constexpr std::string_view part_type_name<Coupling> = "coupling";
template <>
inline constexpr std::string_view part_type_name<BeltStage> = "belt";
template <>
inline constexpr std::string_view part_type_name<BeltLoopDrive> = "belt_loop";
template <>
inline constexpr std::string_view part_type_name<Screw> = "screw";
template <>
inline constexpr std::string_view part_type_name<HaulingBelt> = "hauling_belt";

inline InputRef input_ref(PartSlot slot, std::string_view member) {
  return {static_cast<std::uint8_t>(slot), member};
}

/// Calls `f` with the part itself, whatever its type.
template <class M, class F>
decltype(auto) visit_part(M& machine, std::size_t axis, PartSlot slot, F&& f) {
  switch (slot) {
  case PartSlot::supply: return f(machine.supply);
  case PartSlot::controller: return f(machine.controller);
  case PartSlot::spindle: return f(machine.spindle);
  case PartSlot::axis: return f(machine.axes.at(axis).basics);
  case PartSlot::targets: return f(machine.axes.at(axis).targets);
  case PartSlot::carriage: return f(machine.axes.at(axis).carriage);
  case PartSlot::guides: return f(machine.axes.at(axis).guides);
  case PartSlot::sides: return f(machine.axes.at(axis).sides);
  case PartSlot::duty: return f(machine.axes.at(axis).duty);
  case PartSlot::motor: return std::visit(f, machine.axes.at(axis).motor);
  case PartSlot::transmission: return std::visit(f, machine.axes.at(axis).transmission);
  case PartSlot::drive: break;
  }
  return std::visit(f, machine.axes.at(axis).drive);
}

/// A field with its value and note, as the window and the sheet show it.
struct FieldView {
  FieldInfo info;
  FieldValue value;
  EntryNote note;
};

/// The fields of what stands in the slot, in their order.
std::vector<FieldView> fields_of(const Machine& machine, std::size_t axis, PartSlot slot);

/// One field; nothing if the part has none of that name.
std::optional<FieldView> field_of(const Machine& machine, std::size_t axis, PartSlot slot,
                                  std::string_view member);

/// Sets one field and its note. False, and nothing changed, if the part has no such field or the
/// value is out of its bounds.
bool set_field(Machine& machine, std::size_t axis, PartSlot slot, std::string_view member,
               const FieldValue& value, const EntryNote& note);

/// Type name of what stands in the slot ("belt"), empty where there is only one type.
std::string_view part_type(const Machine& machine, std::size_t axis, PartSlot slot);
/// The types that may stand in the slot.
std::span<const std::string_view> part_types(PartSlot slot);
/// Puts a part of that type, with its presets, in the slot; keeps what both types share.
bool set_part_type(Machine& machine, std::size_t axis, PartSlot slot, std::string_view type);

} // namespace feedwright
