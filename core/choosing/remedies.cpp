// SPDX-License-Identifier: GPL-3.0-or-later
#include "choosing/remedies.h"

#include "choosing/trial.h"
#include "machine/machine_file.h"
#include "sizing/finding_weight.h"
#include "sizing/size_axis.h"

#include <algorithm>
#include <tuple>

namespace feedwright {

namespace {

using choosing::is_further_over;
using choosing::is_over;

bool in_trouble(const Limit& limit) {
  return limit.applies && (limit.verdict == Verdict::over || limit.verdict == Verdict::close);
}

/// A caution is news unless it, or a graver one of the same thing, was there before.
bool is_news(const Finding& finding, const std::vector<Finding>& before) {
  return std::ranges::none_of(before, [&](const Finding& known) {
    const bool eased =
        known.code == FindingCode::whip_beyond_critical && finding.code == FindingCode::near_whip;
    return known.subject == finding.subject && (known.code == finding.code || eased);
  });
}

/// Tells what a proposal does, on the machine as it would stand in the file.
class Judge {
public:
  Judge(const Machine& machine, std::size_t axis, LimitId limit, std::span<const ListedPart> parts,
        const AxisResults& before)
      : machine_(machine), axis_(axis), limit_(limit), parts_(parts), before_(before) {}

  std::optional<Remedy> judged(choosing::Proposal&& proposal) {
    Remedy remedy;
    remedy.nature = proposal.nature;
    remedy.sense = proposal.sense;
    remedy.changes = std::move(proposal.changes);
    remedy.part = proposal.part;
    remedy.size = proposal.size;
    const auto changed = with_remedy(machine_, axis_, remedy, parts_);
    if (!changed || !faults_of(*changed).empty()) {
      return std::nullopt;
    }
    const AxisResults after = size_axis(*changed, changed->axes[axis_]);
    remedy.limits = after.limits;
    remedy.governing = descriptor(limit_).scale == LimitScale::thrust ? after.governing_thrust_limit
                                                                      : after.governing;
    compare(remedy, after);
    if (bears_on_all(remedy)) {
      look_at_other_axes(remedy, *changed);
    }
    const bool worse =
        !remedy.newly_over.empty() || !remedy.further_over.empty() || !remedy.newly_grave.empty();
    const bool grave = std::ranges::any_of(after.findings, is_grave, &Finding::code);
    const bool unsettled = remedy.still_over > 0 || grave || !remedy.newly_open.empty();
    remedy.outcome = worse       ? RemedyOutcome::moves_trouble
                     : unsettled ? RemedyOutcome::reaches
                                 : RemedyOutcome::all_well;
    return remedy;
  }

private:
  void compare(Remedy& remedy, const AxisResults& after) const {
    for (const LimitDescriptor& about : limit_descriptors()) {
      const Limit& then = after.limit(about.id);
      const Limit& now = before_.limit(about.id);
      compare(remedy, {axis_, about.id}, now, then);
      if (is_over(then) && is_over(now)) {
        ++remedy.still_over;
      }
      if (then.applies && then.verdict == Verdict::open && now.applies && now.margin) {
        remedy.newly_open.push_back(about.id);
      }
    }
    for (const Finding& finding : after.findings) {
      if (is_news(finding, before_.findings)) {
        (is_grave(finding.code) ? remedy.newly_grave : remedy.new_cautions).push_back(finding);
      }
    }
  }

  static void compare(Remedy& remedy, AxisLimit limit, const Limit& now, const Limit& then) {
    if (is_over(then) && !is_over(now)) {
      remedy.newly_over.push_back(limit);
    } else if (is_further_over(now, then)) {
      remedy.further_over.push_back(limit);
    }
  }

  static bool bears_on_all(const Remedy& remedy) {
    return !remedy.part && std::ranges::any_of(remedy.changes, of_machine, &FieldChange::slot);
  }

  /// The supply and the controller are every axis' own.
  void look_at_other_axes(Remedy& remedy, const Machine& changed) const {
    for (std::size_t i = 0; i < changed.axes.size(); ++i) {
      if (i == axis_) {
        continue;
      }
      const AxisResults now = size_axis(machine_, machine_.axes[i]);
      const AxisResults then = size_axis(changed, changed.axes[i]);
      for (const LimitDescriptor& about : limit_descriptors()) {
        compare(remedy, {i, about.id}, now.limit(about.id), then.limit(about.id));
      }
    }
  }

  const Machine& machine_;
  std::size_t axis_;
  LimitId limit_;
  std::span<const ListedPart> parts_;
  const AxisResults& before_;
};

auto order_of(const Remedy& remedy) {
  return std::tuple(remedy.outcome == RemedyOutcome::moves_trouble,
                    remedy.nature == RemedyNature::asks_less,
                    remedy.outcome != RemedyOutcome::all_well, remedy.nature, remedy.size);
}

/// A figure that was open is the program's until the builder has looked it up.
EntryNote note_of(const FieldChange& change) {
  if (std::holds_alternative<std::monostate>(change.before) &&
      std::holds_alternative<AnyQuantity>(change.after)) {
    return {{}, Origin::preset};
  }
  return {change.text, Origin::entered};
}

} // namespace

std::vector<LimitId> limits_in_trouble(const AxisResults& results) {
  std::vector<LimitId> found;
  for (const LimitDescriptor& about : limit_descriptors()) {
    if (in_trouble(results.limit(about.id))) {
      found.push_back(about.id);
    }
  }
  std::ranges::stable_sort(found, {}, [&](LimitId id) { return *results.limit(id).margin; });
  return found;
}

std::optional<Machine> with_remedy(const Machine& machine, std::size_t axis, const Remedy& remedy,
                                   std::span<const ListedPart> parts) {
  if (axis >= machine.axes.size()) {
    return std::nullopt;
  }
  if (remedy.part) {
    if (*remedy.part >= parts.size()) {
      return std::nullopt;
    }
    Machine changed = machine;
    const ListedPart& part = parts[*remedy.part];
    return take_part(changed, axis, slot_of(part.kind), part) ? std::optional(std::move(changed))
                                                              : std::nullopt;
  }
  return with_changes(machine, axis, remedy.changes);
}

std::optional<Machine> with_changes(const Machine& machine, std::size_t axis,
                                    std::span<const FieldChange> changes) {
  if (axis >= machine.axes.size()) {
    return std::nullopt;
  }
  Machine changed = machine;
  for (const FieldChange& change : changes) {
    if (!set_field(changed, axis, change.slot, change.member, change.after, note_of(change))) {
      return std::nullopt;
    }
  }
  return changed;
}

std::vector<Remedy> remedies(const Machine& machine, std::size_t axis, LimitId limit,
                             std::span<const ListedPart> parts, const FileUnits& units) {
  choosing::Trial trial(machine, axis, limit, parts, units);
  if (!in_trouble(trial.before().limit(limit))) {
    return {};
  }
  std::vector<choosing::Proposal> proposals;
  choosing::propose_numbers(trial, proposals);
  choosing::propose_sizes(trial, proposals);
  choosing::propose_loops(trial, proposals);
  choosing::propose_arrangements(trial, proposals);
  choosing::propose_parts(trial, proposals);
  Judge judge(machine, axis, limit, parts, trial.before());
  std::vector<Remedy> found;
  for (choosing::Proposal& proposal : proposals) {
    if (auto remedy = judge.judged(std::move(proposal));
        remedy && trial.reaches(remedy->limit(limit))) {
      found.push_back(*std::move(remedy));
    }
  }
  std::ranges::stable_sort(found, {}, order_of);
  return found;
}

} // namespace feedwright
