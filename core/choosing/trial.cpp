// SPDX-License-Identifier: GPL-3.0-or-later
#include "choosing/trial.h"

#include "machine/machine_file.h"
#include "sizing/limits.h"
#include "sizing/size_axis.h"
#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <algorithm>

namespace feedwright::choosing {

namespace {

/// Of the machine only what bears on the axis: sound on its own, cheap to copy.
Machine alone(const Machine& machine, std::size_t axis) {
  Machine made;
  made.supply = machine.supply;
  made.controller = machine.controller;
  made.spindle = machine.spindle;
  made.axes.push_back(machine.axes.at(axis));
  return made;
}

double goal_for(const Limit& limit) {
  constexpr double as_wanted = 1.0;
  constexpr double clear = 1.2; // see verdict_of
  return limit.verdict == Verdict::close ? clear : as_wanted;
}

/// Whether what is prepared before a sizing (motor's curve, belt's geometry) depends on the slot.
bool is_prepared_from(PartSlot slot) {
  return slot == PartSlot::motor || slot == PartSlot::transmission || slot == PartSlot::supply;
}

} // namespace

bool put(Machine& machine, const FieldChange& change, const FieldValue& value) {
  return visit_part(machine, 0, change.slot, [&](auto& part) {
    using Part = std::remove_cvref_t<decltype(part)>;
    for (const Field<Part>& field : FieldsOf<Part>::list()) {
      if (field.info.member == change.member) {
        return field.set(part, value);
      }
    }
    return false;
  });
}

Trial::Trial(const Machine& machine, std::size_t axis, LimitId limit,
             std::span<const ListedPart> parts, const FileUnits& units)
    : machine_(alone(machine, axis)), limit_(limit), parts_(parts), units_(units),
      ready_(machine_, machine_.axes.front()),
      before_(size_axis(machine_, machine_.axes.front(), ready_)),
      goal_(goal_for(before_.limit(limit))) {}

bool Trial::reaches(const Limit& limit) const {
  // A limit that is no more there (a nut turns, so the screw does not whip) holds nobody back.
  constexpr double rounding = 1e-9; // see verdict_of
  return !limit.applies || (limit.margin && *limit.margin >= goal_ - rounding);
}

std::optional<AxisResults> Trial::size_now(bool same_preparation) const {
  if (!faults_of(machine_).empty()) {
    return std::nullopt;
  }
  return same_preparation ? size_axis(machine_, axis(), ready_) : size_axis(machine_, axis());
}

std::optional<AxisResults> Trial::sized(std::span<const FieldChange> changes) {
  bool taken = true;
  for (const FieldChange& change : changes) {
    taken = taken && put(machine_, change, change.after);
  }
  const bool same = std::ranges::none_of(changes, is_prepared_from, &FieldChange::slot);
  const auto results = taken ? size_now(same) : std::nullopt;
  for (const FieldChange& change : changes) {
    put(machine_, change, change.before);
  }
  return results;
}

Tried Trial::judged(const std::optional<AxisResults>& results) const {
  if (!results) {
    return Tried::unsound;
  }
  return reaches(*results) ? Tried::reached : Tried::short_of;
}

Tried Trial::with(std::span<const FieldChange> changes) {
  return judged(sized(changes));
}

Tried Trial::with(const ListedPart& part) {
  Machine kept = machine_;
  const bool taken = take_part(machine_, 0, slot_of(part.kind), part);
  const Tried tried =
      taken ? judged(size_now(!is_prepared_from(slot_of(part.kind)))) : Tried::unsound;
  machine_ = std::move(kept);
  return tried;
}

const Unit& Trial::unit_of(const FieldView& field) const {
  const Unit* usual = find_unit(field.info.kind, field.info.unit);
  if (!field.note.text.empty()) {
    const auto typed = read_quantity(field.note.text, field.info.kind, usual);
    if (typed && typed->unit != nullptr) {
      return *typed->unit;
    }
  }
  return units_.unit_of(field.info.kind, field.info.unit);
}

std::optional<FieldChange> Trial::change_to(PartSlot slot, std::string_view member,
                                            const FieldValue& value) const {
  const auto field = field_of(machine_, 0, slot, member);
  if (!field || field->value == value) {
    return std::nullopt;
  }
  FieldChange change{slot, field->info.member, field->value, value, {}};
  if (const auto* quantity = std::get_if<AnyQuantity>(&value)) {
    change.text = write_exact(*quantity, unit_of(*field));
  }
  return change;
}

} // namespace feedwright::choosing
