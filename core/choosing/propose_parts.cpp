// SPDX-License-Identifier: GPL-3.0-or-later

// Parts from the lists. A row is taken whole: another lead of a screw comes with that screw's core
// diameter and ratings.

#include "choosing/trial.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace feedwright::choosing {

namespace {

const FieldValue* value_of(const ListedPart& part, std::string_view member) {
  const auto found = std::ranges::find(part.values, member, &ListedValue::member);
  return found != part.values.end() ? &found->value : nullptr;
}

/// A figure of the row in SI; nothing if the row leaves it out.
std::optional<double> figure(const ListedPart& part, std::string_view member) {
  const FieldValue* value = value_of(part, member);
  const auto* quantity = value != nullptr ? std::get_if<AnyQuantity>(value) : nullptr;
  return quantity != nullptr ? std::optional(quantity->si) : std::nullopt;
}

struct Candidate {
  std::size_t index;
  double size; ///< |ln| of what it is chosen by
  bool alike;  ///< in what else there is to choose (grade, finish)
  auto order() const { return std::tuple(size, !alike, index); }
};

class PartSearch {
public:
  PartSearch(Trial& trial, std::vector<Proposal>& proposals)
      : trial_(trial), proposals_(proposals) {}

  void all() {
    const auto* screw = std::get_if<Screw>(&trial_.axis().drive);
    const auto given = [](const auto& figure) { return figure ? si_value(**figure) : 0.0; };
    if (screw != nullptr) {
      screws(*screw);
    }
    motors();
    if (screw != nullptr && is_for(ListedKind::end_bearings)) {
      nearest(ListedKind::end_bearings, "bearing_thrust_limit", given(screw->bearing_thrust_limit));
    }
    if (is_for(ListedKind::guides)) {
      nearest(ListedKind::guides, "speed_limit", given(trial_.axis().guides.speed_limit));
    }
    const auto* coupling = std::get_if<Coupling>(&trial_.axis().transmission);
    if (coupling != nullptr && is_for(ListedKind::coupling)) {
      nearest(ListedKind::coupling, "torque_limit", given(coupling->torque_limit));
    }
    if (is_for(ListedKind::belt)) {
      belts();
    }
  }

private:
  /// Whether such a part is bought for the limit's sake: lighter bearings for less drag are not.
  bool is_for(ListedKind kind) const {
    const LimitId limit = trial_.limit();
    const bool gives_way = limit == LimitId::reversal_error || limit == LimitId::cutting_error;
    switch (kind) {
    case ListedKind::end_bearings: return gives_way || limit == LimitId::bearing_thrust;
    case ListedKind::guides: return limit == LimitId::guide_speed;
    case ListedKind::coupling: return gives_way || limit == LimitId::coupling_torque;
    case ListedKind::belt:
      return gives_way || limit == LimitId::belt_pull || limit == LimitId::belt_speed;
    default: return true;
    }
  }

  /// Whether a larger motor is the usual answer, whatever else it brings.
  bool asks_for_torque() const {
    switch (trial_.limit()) {
    case LimitId::motor_torque:
    case LimitId::motor_speed:
    case LimitId::motor_thrust:
    case LimitId::acceleration:
    case LimitId::rms_torque:
    case LimitId::load_cases: return true;
    default: return false;
    }
  }

  /// The least candidate that reaches and makes nothing else worse; if all do, the least that
  /// reaches, where `even_worse` allows it. `told` names the figures it is chosen by.
  bool take_first(std::vector<Candidate> candidates, std::span<const std::string_view> told,
                  double own_size, bool even_worse = true) {
    std::ranges::sort(candidates, {}, &Candidate::order);
    const Candidate* found = nullptr;
    for (const Candidate& candidate : candidates) {
      const TriedPart result = trial_.with(trial_.parts()[candidate.index]);
      if (result.tried != Tried::reached || (result.worse && (found != nullptr || !even_worse))) {
        continue;
      }
      found = &candidate;
      if (!result.worse) {
        break;
      }
    }
    if (found != nullptr) {
      propose(*found, told, own_size);
    }
    return found != nullptr;
  }

  void propose(const Candidate& candidate, std::span<const std::string_view> told,
               double own_size) {
    const ListedPart& part = trial_.parts()[candidate.index];
    Proposal made;
    made.part = candidate.index;
    made.size = std::max(candidate.size, own_size);
    for (const std::string_view member : told) {
      const auto listed = std::ranges::find(part.values, member, &ListedValue::member);
      auto change = listed != part.values.end()
                        ? trial_.change_to(slot_of(part.kind), member, listed->value)
                        : std::nullopt;
      if (change) {
        change->text = listed->text;
        made.changes.push_back(*std::move(change));
      }
    }
    proposals_.push_back(std::move(made));
  }

  std::vector<Candidate> chosen(
      ListedKind kind,
      const std::function<std::optional<Candidate>(const ListedPart&, std::size_t)>& choose) const {
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < trial_.parts().size(); ++i) {
      if (trial_.parts()[i].kind == kind) {
        if (auto candidate = choose(trial_.parts()[i], i)) {
          candidates.push_back(*candidate);
        }
      }
    }
    return candidates;
  }

  static double ratio_size(double after, double before) { return std::log(after / before); }
  static bool same(double a, double b) { return std::abs(a - b) <= 1e-6 * std::abs(b); }

  /// Another lead of the same diameter, another diameter of the same lead, each way; any other
  /// screw only if none of these does.
  void screws(const Screw& screw) {
    const double lead = si_value(*screw.lead);
    const double diameter = si_value(*screw.nominal_diameter);
    const std::string grade(fields::Names<LeadGrade>::list[static_cast<std::size_t>(screw.grade)]);
    const std::string thread(
        fields::Names<ThreadForm>::list[static_cast<std::size_t>(screw.thread)]);
    const auto pick = [&](auto&& wanted) {
      return chosen(ListedKind::screw, [&](const ListedPart& part, std::size_t i) {
        const auto l = figure(part, "lead");
        const auto d = figure(part, "nominal_diameter");
        const FieldValue* of_grade = value_of(part, "grade");
        const bool alike = of_grade != nullptr && *of_grade == FieldValue(grade);
        if (!l || !d || value_of(part, "thread") == nullptr) {
          return std::optional<Candidate>();
        }
        const bool form = *value_of(part, "thread") == FieldValue(thread);
        const auto size = wanted(*l, *d, form);
        return size ? std::optional(Candidate{i, *size, alike}) : std::nullopt;
      });
    };
    using Size = std::optional<double>;
    constexpr std::string_view by_lead[] = {"lead"};
    constexpr std::string_view by_diameter[] = {"nominal_diameter"};
    constexpr std::string_view by_both[] = {"nominal_diameter", "lead"};
    bool found = false;
    for (const double way : {1.0, -1.0}) {
      const auto other_lead = pick([&](double l, double d, bool form) {
        const double size = way * ratio_size(l, lead);
        return form && same(d, diameter) && size > 1e-6 ? Size(size) : Size();
      });
      found |= take_first(other_lead, by_lead, 0.0);
      const auto other_diameter = pick([&](double l, double d, bool form) {
        const double size = way * ratio_size(d, diameter);
        return form && same(l, lead) && size > 1e-6 ? Size(size) : Size();
      });
      found |= take_first(other_diameter, by_diameter, 0.0);
    }
    if (!found) {
      const auto other = pick([&](double l, double d, bool form) {
        const double other_form = form ? 0.0 : 1.0;
        return Size(std::abs(ratio_size(d, diameter)) + std::abs(ratio_size(l, lead)) + other_form);
      });
      take_first(other, by_both, 0.0);
    }
  }

  /// Whether the row is the motor that is there already, perhaps described in another way: by its
  /// ratings what was known by its curve.
  bool is_fitted(const ListedPart& part) const {
    constexpr std::string_view same_of_one[] = {"holding_torque", "rotor_inertia"};
    return std::ranges::all_of(same_of_one, [&](std::string_view member) {
      const auto listed = figure(part, member);
      const auto field = field_of(trial_.machine(), 0, PartSlot::motor, member);
      const auto* now = field ? std::get_if<AnyQuantity>(&field->value) : nullptr;
      return listed && now != nullptr && std::abs(ratio_size(*listed, now->si)) < 1e-6;
    });
  }

  /// The least motor that does it: of steppers by their holding torque, of servos by their
  /// continuous one.
  void motors() {
    constexpr std::string_view told[] = {"holding_torque", "continuous_torque"};
    const auto by_torque = [&](ListedKind kind, std::string_view member) {
      return chosen(kind, [&](const ListedPart& part, std::size_t i) -> std::optional<Candidate> {
        const auto torque = figure(part, member);
        return torque && !is_fitted(part) ? std::optional(Candidate{i, *torque, true})
                                          : std::nullopt;
      });
    };
    auto steppers = by_torque(ListedKind::stepper_by_points, "holding_torque");
    const auto by_ratings = by_torque(ListedKind::stepper_by_ratings, "holding_torque");
    steppers.insert(steppers.end(), by_ratings.begin(), by_ratings.end());
    motor(std::move(steppers), told);
    motor(by_torque(ListedKind::servo, "continuous_torque"), told);
  }

  void motor(std::vector<Candidate> candidates, std::span<const std::string_view> told) {
    constexpr double size_of_a_motor = 0.6;
    const std::size_t before = proposals_.size();
    // Torques are no sizes of change; they only put the motors in order.
    if (take_first(std::move(candidates), told, 0.0, asks_for_torque())) {
      proposals_[before].size = size_of_a_motor;
    }
  }

  /// The row with the least figure that does it.
  void nearest(ListedKind kind, std::string_view member, double now) {
    const std::string_view told[] = {member};
    constexpr double size_of_a_part = 0.5;
    take_first(chosen(kind,
                      [&](const ListedPart& part, std::size_t i) -> std::optional<Candidate> {
                        const auto value = figure(part, member);
                        if (!value) {
                          return std::nullopt;
                        }
                        const double size = now > 0.0 ? std::abs(ratio_size(*value, now)) : 0.0;
                        return Candidate{i, size, true};
                      }),
               told, size_of_a_part);
  }

  /// Another belt of the same profile, so that the pulleys stay.
  void belts() {
    const BeltBody* belt = belt_of(trial_.axis().transmission);
    if (belt == nullptr) {
      return;
    }
    constexpr std::string_view told[] = {"width"};
    take_first(chosen(ListedKind::belt,
                      [&](const ListedPart& part, std::size_t i) -> std::optional<Candidate> {
                        const FieldValue* profile = value_of(part, "profile");
                        const auto width = figure(part, "width");
                        if (profile == nullptr || !width || *profile != FieldValue(belt->profile)) {
                          return std::nullopt;
                        }
                        const double size = std::abs(ratio_size(*width, si_value(*belt->width)));
                        return Candidate{i, size, true};
                      }),
               told, 0.1);
  }

  Trial& trial_;
  std::vector<Proposal>& proposals_;
};

} // namespace

void propose_parts(Trial& trial, std::vector<Proposal>& proposals) {
  PartSearch(trial, proposals).all();
}

} // namespace feedwright::choosing
