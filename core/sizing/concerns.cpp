// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/concerns.h"

#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

/// The field a finding leads to; empty where the whole part is meant, or its type has no such one.
std::string_view member_of(FindingCode code, PartSlot part) {
  switch (code) {
  case FindingCode::axis_can_fall:
  case FindingCode::held_unpowered_by_detent:
  case FindingCode::brake_not_judged: return "brake";
  case FindingCode::axis_can_rise: return "counterbalance";
  case FindingCode::lifting_axis_flat: return "incline";
  case FindingCode::near_whip:
  case FindingCode::whip_beyond_critical:
  case FindingCode::nut_near_shaft_frequency:
  case FindingCode::long_open_screw:
  case FindingCode::screw_too_short: return "span";
  case FindingCode::overall_below_span: return "overall_length";
  case FindingCode::preload_lost: return "preload";
  case FindingCode::slack_belt: return "tension";
  case FindingCode::motor_curve_ends: return "points";
  case FindingCode::points_at_other_voltage:
  case FindingCode::curve_of_less_voltage:
  case FindingCode::curve_reckoned_anew: return "points_voltage";
  case FindingCode::cut_capped_by_spindle: return "load_cases";
  case FindingCode::guard_moving_belt: return "belt_length";
  case FindingCode::bus_over_limit: return "capacitance";
  case FindingCode::few_teeth_in_mesh:
  case FindingCode::too_few_pulley_teeth:
    return part == PartSlot::drive ? "pulley_teeth" : "motor_pulley_teeth";
  default: return {};
  }
}

/// Whether the figure is what it was, to a hundredth; a figure that came or went is not.
bool is_same(const std::string& then, const std::optional<AnyQuantity>& now) {
  if (then.empty() || !now) {
    return then.empty() && !now;
  }
  const auto read = read_quantity(then, now->kind);
  if (!read) {
    return false;
  }
  constexpr double unnoticed = 0.01;
  const double largest = std::max(std::abs(read->value.si), std::abs(now->si));
  return std::abs(read->value.si - now->si) <= unnoticed * largest;
}

/// Lower stands first.
int rank(const Concern& concern) {
  if (concern.finding) {
    return concern.grave ? 0 : 3;
  }
  return concern.verdict == Verdict::over ? 1 : 2;
}

bool weighs_more(const Concern& a, const Concern& b) {
  if (rank(a) != rank(b)) {
    return rank(a) < rank(b);
  }
  return a.finding ? weight_of(a.finding->code) < weight_of(b.finding->code)
                   : *a.margin < *b.margin;
}

class Gatherer {
public:
  explicit Gatherer(const Machine& machine) : machine_(machine) {}

  void findings(std::optional<std::size_t> axis, const std::vector<Finding>& found) {
    for (const Finding& finding : found) {
      Concern made;
      made.axis = axis;
      made.finding = finding;
      made.part = finding.subject;
      made.member = member_of(finding.code, finding.subject);
      made.actual = finding.actual;
      made.allowed = finding.allowed;
      made.grave = is_grave(finding.code);
      add(made);
    }
  }

  void limits(std::size_t axis, const AxisResults& results) {
    for (const Limit& limit : results.limits) {
      if (!limit.applies || !limit.margin || limit.verdict == Verdict::clear) {
        continue;
      }
      Concern made;
      made.axis = axis;
      made.limit = limit.id;
      made.part = descriptor(limit.id).part;
      made.member = descriptor(limit.id).member;
      const AskedAndAllowed figures = asked_and_allowed(limit);
      made.actual = figures.asked;
      made.allowed = figures.allowed;
      made.margin = limit.margin;
      made.verdict = limit.verdict;
      add(made);
    }
  }

  void machine_limits(const MachineResults& together) {
    for (const MachineLimit& limit : together.limits) {
      if (!limit.margin || limit.verdict == Verdict::clear) {
        continue;
      }
      Concern made;
      made.machine_limit = limit.id;
      const InputRef input = machine_limit_input(limit.id);
      made.part = static_cast<PartSlot>(input.slot);
      made.member = input.member;
      made.actual = limit.reached;
      made.allowed = limit.allowed;
      made.margin = limit.margin;
      made.verdict = limit.verdict;
      add(made);
    }
  }

  Concerns take() {
    std::stable_sort(concerns_.list.begin(), concerns_.list.end(), weighs_more);
    idle(std::nullopt);
    for (std::size_t axis = 0; axis < machine_.axes.size(); ++axis) {
      idle(axis);
    }
    return std::move(concerns_);
  }

private:
  void add(Concern& made) {
    const Answer* answer =
        find_answer(answers_of(machine_, made.axis), made.kind(), made.code(), made.part_name());
    if (answer != nullptr) {
      made.answer = *answer;
      made.standing = standing_of(answer, made.actual, made.allowed);
    }
    concerns_.list.push_back(std::move(made));
  }

  void idle(std::optional<std::size_t> axis) {
    for (const Answer& answer : answers_of(machine_, axis)) {
      const bool used = std::ranges::any_of(concerns_.list, [&](const Concern& concern) {
        return concern.axis == axis && concern.answer == answer;
      });
      if (!used) {
        concerns_.idle.push_back({axis, answer});
      }
    }
  }

  const Machine& machine_;
  Concerns concerns_;
};

} // namespace

std::string answer_figure(const std::optional<AnyQuantity>& value) {
  // Six digits are plenty for a comparison to a hundredth.
  constexpr int digits = 6;
  return value && std::isfinite(value->si)
             ? write_quantity(*value, units_of(value->kind).front(), digits)
             : std::string();
}

AnswerStanding standing_of(const Answer* answer, const std::optional<AnyQuantity>& actual,
                           const std::optional<AnyQuantity>& allowed) {
  if (answer == nullptr) {
    return AnswerStanding::none;
  }
  return is_same(answer->actual, actual) && is_same(answer->allowed, allowed)
             ? AnswerStanding::stands
             : AnswerStanding::changed;
}

AskedAndAllowed asked_and_allowed(const Limit& limit) {
  return descriptor(limit.id).at_most ? AskedAndAllowed{limit.reached, limit.wanted}
                                      : AskedAndAllowed{limit.wanted, limit.reached};
}

std::string_view Concern::code() const {
  if (finding) {
    return finding_name(finding->code);
  }
  return limit ? descriptor(*limit).name : machine_limit_code(*machine_limit);
}

std::string_view Concern::part_name() const {
  return finding ? slot_name(finding->subject) : std::string_view();
}

Concerns concerns_of(const Machine& machine, std::span<const AxisResults> results,
                     const MachineResults& together) {
  Gatherer gatherer(machine);
  gatherer.findings(std::nullopt, together.findings);
  gatherer.machine_limits(together);
  for (std::size_t axis = 0; axis < results.size(); ++axis) {
    gatherer.findings(axis, results[axis].findings);
    gatherer.limits(axis, results[axis]);
  }
  return gatherer.take();
}

std::vector<Answer>& answers_of(Machine& machine, std::optional<std::size_t> axis) {
  return axis ? machine.axes.at(*axis).answers : machine.answers;
}

const std::vector<Answer>& answers_of(const Machine& machine, std::optional<std::size_t> axis) {
  return axis ? machine.axes.at(*axis).answers : machine.answers;
}

Answer answer_to(const Concern& concern, std::string note) {
  return {concern.kind(),
          std::string(concern.code()),
          std::string(concern.part_name()),
          std::move(note),
          answer_figure(concern.actual),
          answer_figure(concern.allowed),
          {}};
}

} // namespace feedwright
