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

// What is prepared before a sizing.

bool bears_on_curve(PartSlot slot) {
  return slot == PartSlot::motor || slot == PartSlot::supply;
}
bool bears_on_belt(PartSlot slot) {
  return slot == PartSlot::transmission;
}

/// The figures of a listed part, without its notes; false if one does not fit.
bool put_figures(Machine& machine, PartSlot slot, const ListedPart& part) {
  return std::ranges::all_of(part.values, [&](const ListedValue& value) {
    return put(machine, {slot, value.member, {}, value.value, {}}, value.value);
  });
}

/// What must stand in the slot to take the part; empty where there is one type only.
std::string_view type_for(ListedKind kind, std::string_view present) {
  switch (kind) {
  case ListedKind::screw:
  case ListedKind::end_bearings: return part_type_name<Screw>;
  case ListedKind::coupling: return part_type_name<Coupling>;
  case ListedKind::stepper_by_points: return part_type_name<StepperByPoints>;
  case ListedKind::stepper_by_ratings: return part_type_name<StepperByRatings>;
  case ListedKind::servo: return part_type_name<Servo>;
  default: return present;
  }
}

bool set_part_type_if(Machine& machine, PartSlot slot, std::string_view type) {
  return type.empty() || set_part_type(machine, 0, slot, type);
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

bool is_over(const Limit& limit) {
  return limit.applies && limit.verdict == Verdict::over;
}

bool is_further_over(const Limit& now, const Limit& then) {
  constexpr double noticed = 0.98;
  return is_over(now) && is_over(then) && now.margin && then.margin &&
         *then.margin < noticed * *now.margin;
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

std::optional<AxisResults> Trial::size_now(bool same_motor, bool same_belt) const {
  if (!faults_of(machine_).empty()) {
    return std::nullopt;
  }
  if (!same_motor) {
    return size_axis(machine_, axis());
  }
  return size_axis(machine_, axis(), same_belt ? ready_ : AxisPreparation(ready_.motor, axis()));
}

std::optional<AxisResults> Trial::sized(std::span<const FieldChange> changes) {
  bool taken = true;
  for (const FieldChange& change : changes) {
    taken = taken && put(machine_, change, change.after);
  }
  const bool same_motor = std::ranges::none_of(changes, bears_on_curve, &FieldChange::slot);
  const bool same_belt = std::ranges::none_of(changes, bears_on_belt, &FieldChange::slot);
  auto results = taken ? size_now(same_motor, same_belt) : std::nullopt;
  for (const FieldChange& change : changes) {
    put(machine_, change, change.before);
  }
  return results;
}

bool Trial::is_worse(const AxisResults& results) const {
  return std::ranges::any_of(limit_descriptors(), [&](const LimitDescriptor& about) {
    const Limit& now = before_.limit(about.id);
    const Limit& then = results.limit(about.id);
    return is_over(then) && (!is_over(now) || is_further_over(now, then));
  });
}

bool Trial::shortens_too_far(const AxisResults& results) const {
  const auto* screw = std::get_if<Screw>(&axis().drive);
  return screw != nullptr && std::ranges::any_of(results.findings, [&](const Finding& finding) {
           return finding.code == FindingCode::screw_too_short &&
                  finding.actual->si < si_value(*screw->span);
         });
}

Tried Trial::judged(const std::optional<AxisResults>& results) const {
  if (!results || shortens_too_far(*results)) {
    return Tried::unsound;
  }
  return reaches(*results) ? Tried::reached : Tried::short_of;
}

Tried Trial::with(std::span<const FieldChange> changes) {
  return judged(sized(changes));
}

TriedPart Trial::with(const ListedPart& part) {
  const PartSlot slot = slot_of(part.kind);
  // Of the axis only what stands in the slot: the rest is costly to copy.
  Axis& axis = machine_.axes.front();
  const auto try_in = [&](auto& place) {
    const auto kept = place;
    const std::string_view present = part_type(machine_, 0, slot);
    const bool taken = set_part_type_if(machine_, slot, type_for(part.kind, present)) &&
                       put_figures(machine_, slot, part);
    const auto results =
        taken ? size_now(!bears_on_curve(slot), !bears_on_belt(slot)) : std::nullopt;
    place = kept;
    return TriedPart{judged(results), results && is_worse(*results)};
  };
  switch (slot) {
  case PartSlot::motor: return try_in(axis.motor);
  case PartSlot::transmission: return try_in(axis.transmission);
  case PartSlot::guides: return try_in(axis.guides);
  default: return try_in(axis.drive);
  }
}

const Unit& Trial::unit_of(const FieldView& field) const {
  return units_.unit_of(field);
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
