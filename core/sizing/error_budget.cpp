// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/error_budget.h"

#include "sizing/limits.h"

namespace feedwright {

namespace {

InputRef missing_for(const Axis& axis, const AxisResults& results, ResultId term) {
  const bool screw = std::holds_alternative<Screw>(axis.drive);
  const Targets& targets = axis.targets;
  switch (term) {
  case ResultId::lost_motion: return input_ref(PartSlot::drive, screw ? "backlash" : "tooth_gap");
  case ResultId::tooth_gap_error: return input_ref(PartSlot::transmission, "tooth_gap");
  case ResultId::windup_error: return missing_for_stiffness(axis);
  case ResultId::lead_error: return input_ref(PartSlot::drive, "grade");
  case ResultId::heat_error: return input_ref(PartSlot::drive, "temperature_rise");
  case ResultId::cutting_deflection:
    return targets.thrust ? missing_for_stiffness(axis) : input_ref(PartSlot::targets, "thrust");
  case ResultId::cutting_load_angle:
    if (!results.cutting_torque) {
      return input_ref(PartSlot::targets, "thrust");
    }
    return targets.cutting_feed ? InputRef() : input_ref(PartSlot::targets, "cutting_feed");
  default: return {}; // past the motor's pull-out: nothing is missing but torque
  }
}

ErrorColumn column(const Axis& axis, const AxisResults& results, ErrorPlace place,
                   std::initializer_list<ResultId> terms) {
  ErrorColumn made{place, {}, {}, {}, {}, {}};
  for (const ResultId id : terms) {
    const auto size = descriptor(id).get(results);
    made.terms.push_back({id, size ? std::optional(typed<Length>(*size)) : std::nullopt,
                          size ? InputRef() : missing_for(axis, results, id)});
    made.known += size ? typed<Length>(*size) : Length();
  }
  return made;
}

template <class C>
std::optional<Length> target(const std::optional<C>& value) {
  return value ? std::optional<Length>(**value) : std::nullopt;
}

} // namespace

std::vector<ErrorColumn> error_budget(const Axis& axis, const AxisResults& results) {
  using enum ResultId;
  std::vector<ErrorColumn> columns;
  ErrorColumn reversal = column(axis, results, ErrorPlace::on_reversal,
                                {lost_motion, tooth_gap_error, windup_error, friction_load_angle});
  reversal.sum = results.reversal_error;
  reversal.root = results.reversal_error_rss;
  reversal.wanted = target(axis.targets.reversal_error);
  reversal.verdict = results.limit(LimitId::reversal_error).verdict;
  columns.push_back(std::move(reversal));
  if (std::holds_alternative<Screw>(axis.drive)) {
    ErrorColumn travel = column(axis, results, ErrorPlace::over_travel, {lead_error, heat_error});
    travel.sum = results.travel_error;
    travel.root = results.travel_error_rss;
    columns.push_back(std::move(travel));
  }
  ErrorColumn cut =
      column(axis, results, ErrorPlace::under_cut, {cutting_deflection, cutting_load_angle});
  cut.sum = results.cutting_error;
  cut.root = results.cutting_error_rss;
  cut.wanted = target(axis.targets.cutting_error);
  cut.verdict = results.limit(LimitId::cutting_error).verdict;
  columns.push_back(std::move(cut));
  return columns;
}

} // namespace feedwright
