// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_content.h"

#include "sheet/program_version.h"
#include "sizing/limits.h"
#include "sizing/size_axis.h"

#include <algorithm>

namespace feedwright {

namespace {

/// Whether a field says something of this axis: what two screws do to each other does only where
/// there are two.
bool tells(const Machine& machine, std::size_t axis, PartSlot slot, std::string_view member) {
  if (slot != PartSlot::sides || member != "pairing") {
    return true;
  }
  const Axis& held = machine.axes[axis];
  return held.sides.layout != DriveLayout::one && std::holds_alternative<Screw>(held.drive);
}

std::vector<FieldView> telling_fields(const Machine& machine, std::size_t axis, PartSlot slot) {
  std::vector<FieldView> fields = fields_of(machine, axis, slot);
  std::erase_if(fields, [&](const FieldView& field) {
    return !tells(machine, axis, slot, field.info.member);
  });
  return fields;
}

SheetInputs inputs_of(const Machine& machine, std::size_t axis, PartSlot slot) {
  return {slot, part_type(machine, axis, slot),
          visit_part(machine, axis, slot, [](const auto& part) { return part.notes.source; }),
          telling_fields(machine, axis, slot)};
}

std::vector<PurchasePiece> pieces(const Machine& machine, std::size_t axis, PartSlot slot,
                                  std::initializer_list<std::string_view> members) {
  std::vector<PurchasePiece> found;
  for (const std::string_view member : members) {
    if (auto field = field_of(machine, axis, slot, member);
        field && !std::holds_alternative<std::monostate>(field->value)) {
      found.push_back({slot, *std::move(field)});
    }
  }
  return found;
}

std::optional<AnyQuantity> target(const Machine& machine, std::size_t axis,
                                  std::string_view member) {
  const auto field = field_of(machine, axis, PartSlot::targets, member);
  const auto* value = field ? std::get_if<AnyQuantity>(&field->value) : nullptr;
  return value != nullptr ? std::optional(*value) : std::nullopt;
}

std::optional<AnyQuantity> value_of(ResultId id, const AxisResults& results) {
  return descriptor(id).get(results);
}

SummaryRow summary_row(const Machine& machine, std::size_t axis, const AxisResults& results) {
  SummaryRow row;
  row.letter = machine.axes[axis].basics.letter;
  row.name = machine.axes[axis].basics.name;
  row.motor_type = part_type(machine, axis, PartSlot::motor);
  row.transmission_type = part_type(machine, axis, PartSlot::transmission);
  row.motor =
      pieces(machine, axis, PartSlot::motor, {"frame", "holding_torque", "continuous_torque"});
  row.transmission =
      pieces(machine, axis, PartSlot::transmission,
             {"profile", "width", "motor_pulley_teeth", "screw_pulley_teeth", "belt_teeth"});
  row.drive_type = part_type(machine, axis, PartSlot::drive);
  row.drive = pieces(machine, axis, PartSlot::drive,
                     {"thread", "nominal_diameter", "lead", "span", "profile", "width",
                      "pulley_teeth", "belt_length"});
  row.governing = results.governing;
  row.feed = value_of(ResultId::governing_feed, results);
  row.feed_wanted = target(machine, axis, "feed");
  row.acceleration = value_of(ResultId::acceleration_available, results);
  row.acceleration_wanted = target(machine, axis, "acceleration");
  row.governing_thrust_limit = results.governing_thrust_limit;
  row.thrust = value_of(ResultId::governing_thrust, results);
  // Some limits stand for a whole side, some for one screw: each has its own wanted value.
  if (results.governing_thrust_limit) {
    row.thrust_wanted = results.limit(*results.governing_thrust_limit).wanted;
  }
  row.resolution = value_of(ResultId::resolution, results);
  row.lost_motion = value_of(ResultId::lost_motion, results);
  row.lowest = lowest_margin(results);
  return row;
}

/// Limits on other scales have no common order: they keep their declared one. Those of a scale
/// stand by what they allow, or by margin where each has a target of its own.
bool stands_before(const Limit& a, const Limit& b, const std::vector<LimitScale>& by_margin) {
  const LimitScale scale_a = descriptor(a.id).scale;
  const LimitScale scale_b = descriptor(b.id).scale;
  if (scale_a != scale_b) {
    return scale_a < scale_b;
  }
  if (scale_a == LimitScale::other || !a.reached || !b.reached) {
    return a.reached.has_value() && !b.reached;
  }
  if (std::ranges::find(by_margin, scale_a) != by_margin.end()) {
    return *a.margin < *b.margin;
  }
  // A least value stands after one that ends there.
  return a.reached->si != b.reached->si ? a.reached->si < b.reached->si : !a.at_least && b.at_least;
}

/// Scales on which each limit that is reached has its margin, and not all the same target.
std::vector<LimitScale> scales_by_margin(const std::vector<Limit>& limits) {
  std::vector<LimitScale> found;
  for (const LimitScale scale : {LimitScale::feed, LimitScale::thrust}) {
    std::optional<double> target;
    bool judged = true;
    bool alike = true;
    for (const Limit& limit : limits) {
      if (descriptor(limit.id).scale == scale && limit.reached) {
        judged = judged && limit.margin && limit.wanted;
        alike = alike && (!target || !limit.wanted || limit.wanted->si == *target);
        target = limit.wanted ? limit.wanted->si : target;
      }
    }
    if (judged && !alike) {
      found.push_back(scale);
    }
  }
  return found;
}

/// Load cases and pulleys were reckoned in the order of their rows.
void name_rows(const Axis& axis, const AxisResults& results, SheetAxis& page) {
  for (std::size_t i = 0; i < results.cases.size() && i < axis.duty.load_cases.size(); ++i) {
    page.cases.push_back({axis.duty.load_cases[i].name, results.cases[i]});
  }
  const auto* loop = std::get_if<BeltLoopDrive>(&axis.transmission);
  for (std::size_t i = 0; loop != nullptr && i < results.loop.size(); ++i) {
    page.loop.push_back({loop->pulleys[i].role, results.loop[i]});
  }
}

SheetAxis sheet_axis(const Machine& machine, std::size_t axis, const AxisResults& results,
                     const Working& working) {
  SheetAxis page;
  page.letter = machine.axes[axis].basics.letter;
  page.name = machine.axes[axis].basics.name;
  for (const PartSlot slot : axis_slots) {
    page.inputs.push_back(inputs_of(machine, axis, slot));
  }
  for (const ResultDescriptor& result : result_descriptors()) {
    page.results.push_back({result.id, result.get(results)});
  }
  for (const Limit& limit : results.limits) {
    if (limit.applies) {
      page.limits.push_back(limit);
    } else {
      page.not_applying.push_back(limit.id);
    }
  }
  std::ranges::stable_sort(
      page.limits, [by_margin = scales_by_margin(page.limits)](const Limit& a, const Limit& b) {
        return stands_before(a, b, by_margin);
      });
  page.governing = results.governing;
  page.governing_thrust = results.governing_thrust_limit;
  page.findings = results.findings;
  page.answers = machine.axes[axis].answers;
  page.set_up = set_up_of(machine, axis, results);
  page.working = working.steps();
  name_rows(machine.axes[axis], results, page);
  return page;
}

} // namespace

SetUp set_up_of(const Machine& machine, std::size_t axis, const AxisResults& results) {
  SetUp figures;
  figures.steps_per_length = value_of(ResultId::steps_per_length, results);
  figures.steps = field_of(machine, axis, PartSlot::motor, "microsteps");
  if (!figures.steps) {
    figures.steps = field_of(machine, axis, PartSlot::motor, "steps_per_turn");
  }
  // What is typed into a controller leaves the governing limit its margin.
  if (const auto governing = value_of(ResultId::governing_feed, results)) {
    figures.top_feed = AnyQuantity{governing->kind, governing->si / clear_margin};
  }
  // The torque limit holds the feed to where the motor still gives the wanted acceleration, so up
  // to the governing feed that acceleration is there.
  figures.acceleration = target(machine, axis, "acceleration");
  figures.acceleration_as_wanted = figures.acceleration && results.motor_torque_feed;
  if (!figures.acceleration_as_wanted) {
    figures.acceleration = value_of(ResultId::acceleration_available, results);
  }
  return figures;
}

std::optional<LowestMargin> lowest_margin(const AxisResults& results) {
  std::optional<LowestMargin> lowest;
  for (const Limit& limit : results.limits) {
    if (limit.applies && limit.margin && !limit.at_least &&
        (!lowest || *limit.margin < lowest->margin)) {
      lowest = {limit.id, *limit.margin, limit.verdict};
    }
  }
  return lowest;
}

bool any_limit_over(const AxisResults& results) {
  return std::ranges::any_of(results.limits, [](const Limit& limit) {
    return limit.applies && limit.verdict == Verdict::over;
  });
}

SheetContent sheet_content(const Machine& machine, const SheetIdentity& identity) {
  SheetContent content;
  content.machine_name = machine.name;
  content.story = machine.story;
  content.identity = identity;
  content.program_version = program_version();
  content.units = FileUnits(machine);
  content.answers = machine.answers;
  content.purchases = purchases_of(machine);
  for (const PartSlot slot : machine_slots) {
    content.machine_inputs.push_back(inputs_of(machine, 0, slot));
  }
  std::vector<AxisResults> all;
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    Working working;
    all.push_back(size_axis(machine, machine.axes[axis], working));
    content.summary.push_back(summary_row(machine, axis, all.back()));
    content.axes.push_back(sheet_axis(machine, axis, all.back(), working));
  }
  content.together = size_machine(machine, all);
  return content;
}

} // namespace feedwright
