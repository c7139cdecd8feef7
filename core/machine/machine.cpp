// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine.h"

#include <algorithm>

namespace feedwright {

namespace {

constexpr std::string_view slot_names[] = {"supply",  "controller",   "axis",
                                           "targets", "carriage",     "guides",
                                           "motor",   "transmission", "screw"};
constexpr std::string_view motor_types[] = {
    part_type_name<StepperByPoints>, part_type_name<StepperByRatings>, part_type_name<Servo>};
constexpr std::string_view transmission_types[] = {part_type_name<Coupling>,
                                                   part_type_name<BeltStage>};

template <class Part>
FieldView view(const Part& part, const Field<Part>& field) {
  FieldView result{field.info, field.get(part), {{}, Origin::preset}};
  if (const auto note = part.notes.entries.find(field.info.member);
      note != part.notes.entries.end()) {
    result.note = note->second;
  }
  return result;
}

/// Copies the fields of the same name and kind from one part to another.
void keep_shared_fields(const Machine& from, Machine& to, std::size_t axis, PartSlot slot) {
  for (const FieldView& field : fields_of(from, axis, slot)) {
    if (field.note.origin != Origin::preset && field_of(to, axis, slot, field.info.member)) {
      set_field(to, axis, slot, field.info.member, field.value, field.note);
    }
  }
}

} // namespace

std::string_view slot_name(PartSlot slot) {
  return slot_names[static_cast<std::size_t>(slot)];
}

std::vector<FieldView> fields_of(const Machine& machine, std::size_t axis, PartSlot slot) {
  return visit_part(machine, axis, slot, [](const auto& part) {
    using Part = std::remove_cvref_t<decltype(part)>;
    std::vector<FieldView> views;
    for (const Field<Part>& field : FieldsOf<Part>::list()) {
      views.push_back(view(part, field));
    }
    return views;
  });
}

std::optional<FieldView> field_of(const Machine& machine, std::size_t axis, PartSlot slot,
                                  std::string_view member) {
  return visit_part(machine, axis, slot, [&](const auto& part) -> std::optional<FieldView> {
    using Part = std::remove_cvref_t<decltype(part)>;
    for (const Field<Part>& field : FieldsOf<Part>::list()) {
      if (field.info.member == member) {
        return view(part, field);
      }
    }
    return std::nullopt;
  });
}

bool set_field(Machine& machine, std::size_t axis, PartSlot slot, std::string_view member,
               const FieldValue& value, const EntryNote& note) {
  return visit_part(machine, axis, slot, [&](auto& part) {
    using Part = std::remove_cvref_t<decltype(part)>;
    for (const Field<Part>& field : FieldsOf<Part>::list()) {
      if (field.info.member != member || !field.set(part, value)) {
        continue;
      }
      if (std::holds_alternative<std::monostate>(value) || note.origin == Origin::preset) {
        part.notes.entries.erase(std::string(member));
      } else {
        part.notes.entries[std::string(member)] = note;
      }
      return true;
    }
    return false;
  });
}

std::string_view part_type(const Machine& machine, std::size_t axis, PartSlot slot) {
  return visit_part(machine, axis, slot, [](const auto& part) {
    return part_type_name<std::remove_cvref_t<decltype(part)>>;
  });
}

std::span<const std::string_view> part_types(PartSlot slot) {
  if (slot == PartSlot::motor) {
    return motor_types;
  }
  if (slot == PartSlot::transmission) {
    return transmission_types;
  }
  return {};
}

bool set_part_type(Machine& machine, std::size_t axis, PartSlot slot, std::string_view type) {
  if (std::ranges::find(part_types(slot), type) == part_types(slot).end()) {
    return false;
  }
  if (part_type(machine, axis, slot) == type) {
    return true;
  }
  const Machine before = machine;
  Axis& changed = machine.axes.at(axis);
  if (type == part_type_name<StepperByPoints>) {
    StepperByPoints motor;
    motor.points = {{from_si<AngularVelocity>(0.0), from_si<Torque>(1.5)},
                    {from_si<AngularVelocity>(10.0 * pi), from_si<Torque>(1.3)},
                    {from_si<AngularVelocity>(20.0 * pi), from_si<Torque>(0.9)},
                    {from_si<AngularVelocity>(40.0 * pi), from_si<Torque>(0.4)}};
    changed.motor = motor;
  } else if (type == part_type_name<StepperByRatings>) {
    changed.motor = StepperByRatings();
  } else if (type == part_type_name<Servo>) {
    changed.motor = Servo();
  } else if (type == part_type_name<Coupling>) {
    changed.transmission = Coupling();
  } else {
    changed.transmission = BeltStage();
  }
  keep_shared_fields(before, machine, axis, slot);
  return true;
}

} // namespace feedwright
