// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine.h"

#include <algorithm>

namespace feedwright {

namespace {

constexpr std::string_view slot_names[slot_count] = {
    "supply", "controller", "spindle", "axis",  "targets",      "carriage",
    "guides", "sides",      "duty",    "motor", "transmission", "drive"};

template <class Variant>
struct TypesOf;
template <class... Types>
struct TypesOf<std::variant<Types...>> {
  static constexpr std::string_view names[] = {part_type_name<Types>...};
  /// A part of that type with its presets; false if there is none.
  static bool emplace(std::variant<Types...>& part, std::string_view type) {
    return ((type == part_type_name<Types> && (part.template emplace<Types>(), true)) || ...);
  }
};

template <class Part>
FieldView view(const Part& part, const Field<Part>& field) {
  FieldView result{field.info, field.get(part), {{}, Origin::preset}};
  if (const auto note = part.notes.entries.find(field.info.member);
      note != part.notes.entries.end()) {
    result.note = note->second;
  }
  return result;
}

/// A curve to type over: a stepper must have one.
std::vector<TorquePoint> usual_torque_points() {
  const auto point = [](double speed, double torque) {
    return TorquePoint{Finite<AngularVelocity>::of(from_si<AngularVelocity>(speed * pi)),
                       Finite<Torque>::of(from_si<Torque>(torque))};
  };
  return {point(0.0, 1.5), point(10.0, 1.3), point(20.0, 0.9), point(40.0, 0.4)};
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
  switch (slot) {
  case PartSlot::motor: return TypesOf<Motor>::names;
  case PartSlot::transmission: return TypesOf<Transmission>::names;
  case PartSlot::drive: return TypesOf<FinalDrive>::names;
  default: return {};
  }
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
  if (slot == PartSlot::motor) {
    TypesOf<Motor>::emplace(changed.motor, type);
    if (auto* motor = std::get_if<StepperByPoints>(&changed.motor)) {
      motor->points = usual_torque_points();
    }
  } else if (slot == PartSlot::transmission) {
    TypesOf<Transmission>::emplace(changed.transmission, type);
  } else {
    TypesOf<FinalDrive>::emplace(changed.drive, type);
  }
  keep_shared_fields(before, machine, axis, slot);
  return true;
}

} // namespace feedwright
