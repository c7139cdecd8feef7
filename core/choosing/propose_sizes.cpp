// SPDX-License-Identifier: GPL-3.0-or-later

// Inputs that come in sizes: the next size either way that reaches the limit.

#include "choosing/pulley_sizes.h"
#include "choosing/trial.h"
#include "units/read_quantity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace feedwright::choosing {

namespace {

using S = PartSlot;

// common practice, no source: what shops keep and drives can be set to.
// Finer ones make motion smoother, hardly finer: friction and load angle are larger than a step of
// them. From sixteen on nothing is gained by more; common practice, no source.
constexpr std::int64_t microsteps[] = {1, 2, 4, 8, 16};
constexpr std::int64_t servo_steps[] = {400,  800,  1000, 1600,  2000,  2500,  3200, 4000,
                                        5000, 6400, 8000, 10000, 12800, 20000, 40000};
constexpr std::string_view voltages[] = {"12 V", "24 V", "36 V", "48 V", "60 V", "72 V"};
constexpr std::string_view metric_leads[] = {"1 mm",  "1.5 mm", "2 mm",  "2.5 mm", "3 mm",
                                             "4 mm",  "5 mm",   "6 mm",  "8 mm",   "10 mm",
                                             "12 mm", "16 mm",  "20 mm", "25 mm",  "32 mm"};
constexpr std::string_view inch_leads[] = {"0.05 in", "0.1 in", "0.125 in", "0.2 in",
                                           "0.25 in", "0.5 in", "1 in"};

double number_of(const FieldValue& value) {
  if (const auto* quantity = std::get_if<AnyQuantity>(&value)) {
    return quantity->si;
  }
  const auto* count = std::get_if<std::int64_t>(&value);
  return count != nullptr ? double(*count) : 0.0;
}

class SizeSearch {
public:
  SizeSearch(Trial& trial, std::vector<Proposal>& proposals)
      : trial_(trial), proposals_(proposals) {}

  template <std::size_t n>
  void counts(PartSlot slot, std::string_view member, const std::int64_t (&sizes)[n],
              std::string_view sized_with_it = {}, std::int64_t least = 0) {
    const auto field = field_of(trial_.machine(), 0, slot, member);
    if (!field) {
      return;
    }
    const double now = number_of(field->value);
    std::vector<FieldValue> larger;
    std::vector<FieldValue> smaller;
    for (const std::int64_t size : sizes) {
      if (double(size) != now && size >= least) {
        (double(size) > now ? larger : smaller).emplace_back(size);
      }
    }
    both_ways(slot, member, larger, smaller, sized_with_it);
  }

  void texts(PartSlot slot, std::string_view member, std::span<const std::string_view> sizes,
             double least, double most) {
    const auto field = field_of(trial_.machine(), 0, slot, member);
    if (!field) {
      return;
    }
    const double now = number_of(field->value);
    std::vector<FieldValue> larger;
    std::vector<FieldValue> smaller;
    for (const std::string_view text : sizes) {
      const auto read = read_quantity(text, field->info.kind);
      const double ratio = read ? read->value.si / now : 0.0;
      if (ratio >= least && ratio <= most && std::abs(ratio - 1.0) > 1e-9) {
        (ratio > 1.0 ? larger : smaller).emplace_back(read->value);
      }
    }
    both_ways(slot, member, larger, smaller, {});
  }

private:
  void both_ways(PartSlot slot, std::string_view member, const std::vector<FieldValue>& larger,
                 std::vector<FieldValue>& smaller, std::string_view sized_with_it) {
    std::ranges::reverse(smaller);
    for (const auto* sizes : {&larger, &std::as_const(smaller)}) {
      first_of(slot, member, *sizes, sized_with_it);
    }
  }

  std::vector<FieldChange> changes_to(PartSlot slot, std::string_view member,
                                      const FieldValue& size,
                                      std::string_view sized_with_it) const {
    std::vector<FieldChange> changes;
    if (auto change = trial_.change_to(slot, member, size)) {
      changes.push_back(*std::move(change));
      if (auto open = trial_.change_to(slot, sized_with_it, {})) {
        changes.push_back(*std::move(open));
      }
    }
    return changes;
  }

  /// Whether the limit does not depend on the size at all, as far as the last one tells.
  bool bears_not(const std::vector<FieldChange>& last) const {
    const auto results = trial_.sized(last);
    return results && results->limit(trial_.limit()).applies &&
           results->limit(trial_.limit()).margin == trial_.before().limit(trial_.limit()).margin;
  }

  /// The first size that reaches, before one that cannot be.
  void first_of(PartSlot slot, std::string_view member, const std::vector<FieldValue>& sizes,
                std::string_view sized_with_it) {
    if (sizes.empty() || bears_not(changes_to(slot, member, sizes.back(), sized_with_it))) {
      return;
    }
    for (const FieldValue& size : sizes) {
      auto changes = changes_to(slot, member, size, sized_with_it);
      const Tried tried = trial_.with(changes);
      if (tried == Tried::reached) {
        const double ratio = number_of(changes.front().after) / number_of(changes.front().before);
        proposals_.push_back({RemedyNature::change, ChangeSense::exactly, std::move(changes),
                              std::nullopt, std::abs(std::log(ratio))});
      }
      if (tried != Tried::short_of) {
        return;
      }
    }
  }

  Trial& trial_;
  std::vector<Proposal>& proposals_;
};

void pulley_sizes(Trial& trial, SizeSearch& search) {
  if (const auto* stage = std::get_if<BeltStage>(&trial.axis().transmission)) {
    const std::int64_t least = stage->least_teeth;
    search.counts(S::transmission, "motor_pulley_teeth", usual_pulleys, "motor_pulley_inertia",
                  least);
    search.counts(S::transmission, "screw_pulley_teeth", usual_pulleys, "screw_pulley_inertia",
                  least);
  }
  if (const auto* belt = std::get_if<HaulingBelt>(&trial.axis().drive)) {
    const std::int64_t least = belt->least_teeth;
    search.counts(S::drive, "pulley_teeth", usual_pulleys, "pulley_inertia", least);
  }
}

bool listed_by_diameter(const Trial& trial, const Screw& screw) {
  const AnyQuantity diameter = any(*screw.nominal_diameter);
  return std::ranges::any_of(trial.parts(), [&](const ListedPart& part) {
    return part.kind == ListedKind::screw &&
           std::ranges::any_of(part.values, [&](const ListedValue& value) {
             return value.member == "nominal_diameter" && value.value == FieldValue(diameter);
           });
  });
}

/// Usual leads for a screw that no list has.
void leads(Trial& trial, SizeSearch& search) {
  const auto* screw = std::get_if<Screw>(&trial.axis().drive);
  if (screw == nullptr || listed_by_diameter(trial, *screw)) {
    return;
  }
  const auto field = field_of(trial.machine(), 0, S::drive, "lead");
  const bool inches = trial.unit_of(*field).symbol == "in";
  const std::span<const std::string_view> sizes =
      inches ? std::span<const std::string_view>(inch_leads) : metric_leads;
  // A lead far above the diameter or a thread too fine for the screw is not made.
  const double diameter = si_value(*screw->nominal_diameter);
  const double now = si_value(Length(*screw->lead * (2.0 * pi * radian)));
  search.texts(S::drive, "lead", sizes, 0.08 * diameter / now, 1.6 * diameter / now);
}

/// Up to what the drives allow.
void supply_voltages(Trial& trial, SizeSearch& search) {
  const Supply& supply = trial.machine().supply;
  const double now = si_value(*supply.voltage);
  const double most = supply.voltage_limit ? si_value(**supply.voltage_limit) / now : 10.0;
  search.texts(S::supply, "voltage", voltages, 0.1, most);
}

} // namespace

void propose_sizes(Trial& trial, std::vector<Proposal>& proposals) {
  SizeSearch search(trial, proposals);
  pulley_sizes(trial, search);
  leads(trial, search);
  supply_voltages(trial, search);
  search.counts(S::motor, "microsteps", microsteps);
  search.counts(S::motor, "steps_per_turn", servo_steps);
}

} // namespace feedwright::choosing
