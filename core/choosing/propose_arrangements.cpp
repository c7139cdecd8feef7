// SPDX-License-Identifier: GPL-3.0-or-later

// Choices: how the screw is held, what turns, how many nuts and motors.

#include "choosing/trial.h"
#include "mechanics/screw_life.h"
#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace feedwright::choosing {

namespace {

using S = PartSlot;

// How large a change each is, beside the |ln| of a ratio: new bearings are less than a new screw.
constexpr double size_of_an_end = 0.3;
constexpr double size_of_a_nut = 0.5;
constexpr double size_of_a_turning_nut = 1.0;
constexpr double size_of_a_second_motor = 1.2;

bool add(std::vector<FieldChange>& changes, std::optional<FieldChange> change) {
  if (!change) {
    return false;
  }
  changes.push_back(*std::move(change));
  return true;
}

std::string name_of(EndSupport end) {
  return std::string(fields::Names<EndSupport>::list[static_cast<std::size_t>(end)]);
}

/// The four usual pairs, each the way round that leaves more as it is; the one that changes least.
void end_supports(Trial& trial, std::vector<Proposal>& proposals) {
  using enum EndSupport;
  constexpr std::array<std::pair<EndSupport, EndSupport>, 6> pairs{{{fixed, fixed},
                                                                    {fixed, supported},
                                                                    {supported, fixed},
                                                                    {supported, supported},
                                                                    {fixed, free},
                                                                    {free, fixed}}};
  for (std::size_t changed = 1; changed <= 2; ++changed) {
    bool found = false;
    for (const auto& [motor_end, far_end] : pairs) {
      std::vector<FieldChange> changes;
      add(changes, trial.change_to(S::drive, "motor_end", name_of(motor_end)));
      add(changes, trial.change_to(S::drive, "far_end", name_of(far_end)));
      if (changes.size() == changed && trial.with(changes) == Tried::reached) {
        found = true;
        proposals.push_back({RemedyNature::change, ChangeSense::exactly, std::move(changes),
                             std::nullopt, size_of_an_end * double(changed)});
      }
    }
    if (found) {
      return;
    }
  }
}

/// The nut turns instead of the screw. Where the inertia of what turns with it is not known, the
/// largest that makes nothing worse is told with it.
void turning_nut(Trial& trial, std::vector<Proposal>& proposals) {
  std::vector<FieldChange> changes;
  if (!add(changes, trial.change_to(S::drive, "driven", std::string("nut")))) {
    return;
  }
  const auto* screw = std::get_if<Screw>(&trial.axis().drive);
  if (screw->nut_inertia) {
    if (trial.with(changes) == Tried::reached) {
      proposals.push_back({RemedyNature::change, ChangeSense::exactly, std::move(changes),
                           std::nullopt, size_of_a_turning_nut});
    }
    return;
  }
  constexpr std::string_view inertias[] = {"50 kg·cm²", "20 kg·cm²", "10 kg·cm²",
                                           "5 kg·cm²",  "2 kg·cm²",  "1 kg·cm²"};
  for (const std::string_view inertia : inertias) {
    auto tried = changes;
    const auto read = read_quantity(inertia, Kind::inertia);
    if (!add(tried, trial.change_to(S::drive, "nut_inertia", read->value))) {
      return;
    }
    tried.back().text = inertia;
    const auto results = trial.sized(tried);
    if (results && trial.reaches(*results) && !trial.is_worse(*results)) {
      proposals.push_back({RemedyNature::change, ChangeSense::at_most, std::move(tried),
                           std::nullopt, size_of_a_turning_nut});
      return;
    }
  }
}

/// The least preload that keeps both halves of a pair loaded: of balls by their power law, of
/// sliding nuts the whole force (common practice, no source).
std::optional<Force> preload_for(const Screw& screw, const AxisResults& now) {
  if (!now.axial_load || *now.axial_load <= Force()) {
    return std::nullopt;
  }
  const Force unit = from_si<Force>(1.0);
  const Force needed = screw.thread == ThreadForm::ball
                           ? Force(*now.axial_load * (unit / preload_holds_to(unit)))
                           : *now.axial_load;
  constexpr double step = 10.0;
  return from_si<Force>(std::ceil(si_value(needed) / step) * step);
}

void paired_nuts(Trial& trial, std::vector<Proposal>& proposals) {
  std::vector<FieldChange> changes;
  const auto* screw = std::get_if<Screw>(&trial.axis().drive);
  if (screw == nullptr ||
      !add(changes, trial.change_to(S::drive, "nuts", std::string("preloaded_pair")))) {
    return;
  }
  if (!screw->preload) {
    const auto preload = preload_for(*screw, trial.before());
    if (!preload || !add(changes, trial.change_to(S::drive, "preload", any(*preload)))) {
      return;
    }
  }
  if (trial.with(changes) == Tried::reached) {
    proposals.push_back({RemedyNature::change, ChangeSense::exactly, std::move(changes),
                         std::nullopt, size_of_a_nut});
  }
}

void second_motor(Trial& trial, std::vector<Proposal>& proposals) {
  std::vector<FieldChange> changes;
  if (trial.axis().sides.layout == DriveLayout::one &&
      add(changes, trial.change_to(S::sides, "layout", std::string("two_motors"))) &&
      trial.with(changes) == Tried::reached) {
    proposals.push_back({RemedyNature::change, ChangeSense::exactly, std::move(changes),
                         std::nullopt, size_of_a_second_motor});
  }
}

} // namespace

void propose_arrangements(Trial& trial, std::vector<Proposal>& proposals) {
  end_supports(trial, proposals);
  turning_nut(trial, proposals);
  paired_nuts(trial, proposals);
  second_motor(trial, proposals);
}

} // namespace feedwright::choosing
