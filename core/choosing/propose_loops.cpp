// SPDX-License-Identifier: GPL-3.0-or-later

// Pulleys of a belt loop: the next size that reaches, with a belt of whole teeth that still fits.

#include "choosing/pulley_sizes.h"
#include "choosing/trial.h"
#include "machine/loop_layout.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace feedwright::choosing {

namespace {

/// The belt that fits the loop and is nearest to its own; nothing if the slide takes up none.
std::optional<int> nearest_belt(const BeltLoopDrive& loop) {
  constexpr int looked_at = 12;
  const auto belts = fitting_belts(loop, looked_at);
  const auto nearest = std::ranges::min_element(belts, {}, [&](const TakeUpPosition& belt) {
    return std::abs(belt.belt_teeth - loop.belt_teeth);
  });
  return nearest != belts.end() ? std::optional(nearest->belt_teeth) : std::nullopt;
}

std::optional<FieldValue> pulleys_of(const BeltLoopDrive& loop) {
  for (const Field<BeltLoopDrive>& field : FieldsOf<BeltLoopDrive>::list()) {
    if (field.info.member == "pulleys") {
      return field.get(loop);
    }
  }
  return std::nullopt;
}

class LoopSearch {
public:
  LoopSearch(Trial& trial, const BeltLoopDrive& loop, std::vector<Proposal>& proposals)
      : trial_(trial), loop_(loop), proposals_(proposals) {}

  /// Sizes up and down from the present one, of the motor's pulley or of the screws'.
  void sizes_of(PulleyRole role) {
    const auto driven = std::ranges::find(loop_.pulleys, role, &LoopMember::role);
    if (driven == loop_.pulleys.end()) {
      return;
    }
    const int now = driven->teeth;
    std::vector<int> larger;
    std::vector<int> smaller;
    for (const std::int64_t size : usual_pulleys) {
      if (size != now && size >= loop_.least_teeth) {
        (size > now ? larger : smaller).push_back(static_cast<int>(size));
      }
    }
    std::ranges::reverse(smaller);
    first_of(role, now, larger);
    first_of(role, now, smaller);
  }

private:
  std::vector<FieldChange> changes_to(PulleyRole role, int teeth) const {
    BeltLoopDrive changed = loop_;
    for (LoopMember& member : changed.pulleys) {
      if (member.role == role) {
        member.teeth = teeth;
      }
    }
    const auto belt = nearest_belt(changed);
    const auto rows = pulleys_of(changed);
    std::vector<FieldChange> changes;
    if (!belt || !rows) {
      return changes;
    }
    if (auto pulleys = trial_.change_to(PartSlot::transmission, "pulleys", *rows)) {
      changes.push_back(*std::move(pulleys));
    }
    if (auto length = trial_.change_to(PartSlot::transmission, "belt_teeth", std::int64_t{*belt})) {
      changes.push_back(*std::move(length));
    }
    return changes;
  }

  void first_of(PulleyRole role, int now, const std::vector<int>& sizes) {
    // Laying out a loop takes time; so many sizes off it is another loop anyway.
    constexpr std::size_t most_sizes = 6;
    for (std::size_t i = 0; i < std::min(sizes.size(), most_sizes); ++i) {
      auto changes = changes_to(role, sizes[i]);
      const auto results = changes.empty() ? std::nullopt : trial_.sized(changes);
      if (!results) {
        continue; // no belt, or the pulleys are in each other's way
      }
      if (trial_.reaches(*results)) {
        const double ratio = double(sizes[i]) / double(now);
        proposals_.push_back({RemedyNature::change, ChangeSense::exactly, std::move(changes),
                              std::nullopt, std::abs(std::log(ratio))});
        return;
      }
      const auto& margin = results->limit(trial_.limit()).margin;
      const auto& before = trial_.before().limit(trial_.limit()).margin;
      if (margin && before && *margin <= *before) {
        return; // it does not depend on the pulley, or this is the wrong way
      }
    }
  }

  Trial& trial_;
  const BeltLoopDrive& loop_;
  std::vector<Proposal>& proposals_;
};

} // namespace

void propose_loops(Trial& trial, std::vector<Proposal>& proposals) {
  if (const auto* present = std::get_if<BeltLoopDrive>(&trial.axis().transmission)) {
    const BeltLoopDrive loop = *present; // what is tried stands in its place
    LoopSearch search(trial, loop, proposals);
    search.sizes_of(PulleyRole::motor);
    search.sizes_of(PulleyRole::screw);
  }
}

} // namespace feedwright::choosing
