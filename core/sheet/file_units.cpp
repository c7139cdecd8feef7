// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/file_units.h"

#include "units/read_quantity.h"

namespace feedwright {

FileUnits::FileUnits(const Machine& machine) {
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    take(machine, axis, PartSlot::targets);
  }
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    for (const PartSlot slot : axis_slots) {
      take(machine, axis, slot);
    }
  }
}

void FileUnits::take(const Machine& machine, std::size_t axis, PartSlot slot) {
  for (const FieldView& field : fields_of(machine, axis, slot)) {
    const Unit*& place = typed_[static_cast<std::size_t>(field.info.kind)];
    if (place != nullptr || field.note.text.empty() || field.info.type != FieldType::quantity) {
      continue;
    }
    const auto read = read_quantity(field.note.text, field.info.kind);
    if (read && read->unit != nullptr && !read->bare) {
      place = read->unit;
    }
  }
}

const Unit& FileUnits::unit_of(Kind kind, std::string_view usual) const {
  const Unit* typed = typed_[static_cast<std::size_t>(kind)];
  const bool metric_length =
      kind == Kind::length && typed != nullptr && typed->symbol != "in" && typed->symbol != "ft";
  // A lead is typed per turn, but shown per angle; numbers and shares are not a matter of taste; a
  // life is typed in hours where a move takes a second.
  const bool fixed =
      kind == Kind::lead || kind == Kind::number || kind == Kind::time || metric_length;
  if (typed != nullptr && !fixed) {
    return *typed;
  }
  const Unit* found = find_unit(kind, usual);
  return found != nullptr ? *found : si_unit(kind);
}

const Unit& FileUnits::unit_of(const FieldView& field) const {
  const Unit* usual = find_unit(field.info.kind, field.info.unit);
  if (!field.note.text.empty()) {
    const auto typed = read_quantity(field.note.text, field.info.kind, usual);
    if (typed && typed->unit != nullptr) {
      return *typed->unit;
    }
  }
  return unit_of(field.info.kind, field.info.unit);
}

} // namespace feedwright
