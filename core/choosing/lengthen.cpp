// SPDX-License-Identifier: GPL-3.0-or-later
#include "choosing/lengthen.h"

#include "units/read_quantity.h"
#include "units/write_quantity.h"

namespace feedwright {

std::optional<FieldChange> lengthened_field(PartSlot slot, const FieldView& field, Length by,
                                            const Unit& unit) {
  const auto* length = std::get_if<AnyQuantity>(&field.value);
  if (length == nullptr || length->kind != Kind::length || length->si + si_value(by) <= 0.0) {
    return std::nullopt;
  }
  constexpr int digits = 10; // sheds what the sum adds
  FieldChange change{slot, field.info.member, field.value, {}, {}};
  change.text = write_quantity({Kind::length, length->si + si_value(by)}, unit, digits);
  const auto read = read_quantity(change.text, Kind::length, &unit);
  if (!read || read->value.si <= 0.0) {
    return std::nullopt;
  }
  change.after = read->value;
  return change;
}

std::vector<FieldChange> lengthening(const Machine& machine, std::size_t axis, Length by,
                                     const FileUnits& units) {
  struct Growing {
    PartSlot slot;
    std::string_view member;
    double share;
  };
  constexpr Growing growing[] = {{PartSlot::axis, "travel", 1.0},
                                 {PartSlot::drive, "span", 1.0},
                                 {PartSlot::drive, "overall_length", 1.0},
                                 {PartSlot::drive, "belt_length", 2.0}};
  std::vector<FieldChange> changes;
  if (axis >= machine.axes.size()) {
    return changes;
  }
  for (const Growing& each : growing) {
    const auto field = field_of(machine, axis, each.slot, each.member);
    if (!field || std::holds_alternative<std::monostate>(field->value)) {
      continue;
    }
    auto change =
        lengthened_field(each.slot, *field, Length(by * each.share), units.unit_of(*field));
    if (!change) {
      return {};
    }
    changes.push_back(*std::move(change));
  }
  return changes;
}

} // namespace feedwright
