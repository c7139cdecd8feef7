// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A single change that brings a limit to where it should be, with everything it does besides.

#include "sizing/results.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace feedwright {

/// One field of the axis (or of the machine), from what it is to what it would be.
struct FieldChange {
  PartSlot slot{};
  std::string_view member;
  FieldValue before;
  FieldValue after;
  std::string text; ///< of a quantity as it would be typed, in the unit that field was typed in

  friend bool operator==(const FieldChange&, const FieldChange&) = default;
};

/// How the changed value stands to the limit.
enum class ChangeSense : std::uint8_t {
  exactly,  ///< this value, choice or part
  at_most,  ///< this value or less
  at_least, ///< this value or more
};

/// What a change asks of the builder.
enum class RemedyNature : std::uint8_t {
  change,      ///< another dimension, part or arrangement
  better_part, ///< a part with a better figure than the present one's, whichever part that is
  asks_less,   ///< the target itself
};

/// What became of everything else.
enum class RemedyOutcome : std::uint8_t {
  all_well, ///< nothing is over, nothing grave found
  reaches,  ///< this limit is well; what else was over stays over, or something is known no more
  moves_trouble, ///< something else is over or grave that was not, or further over than it
                 ///< was
};

/// A limit of one of the machine's axes.
struct AxisLimit {
  std::size_t axis = 0;
  LimitId id{};
  friend bool operator==(const AxisLimit&, const AxisLimit&) = default;
};

struct Remedy {
  RemedyNature nature{};
  ChangeSense sense{};
  /// What changes, the one it is named by first; the others go with it and cannot stay (a shorter
  /// screw's whole length, the inertia of a pulley that is no more). Empty for a listed part that
  /// is named by itself.
  std::vector<FieldChange> changes;
  /// Index of the listed part that is taken whole; `changes` then only tells which of its figures
  /// it is named by.
  std::optional<std::size_t> part;

  RemedyOutcome outcome{};
  /// All limits of the axis as they would be.
  std::array<Limit, limit_count> limits{};
  /// What would govern on this limit's scale; of limits on neither scale, the feed.
  std::optional<LimitId> governing;
  std::vector<AxisLimit> newly_over;
  std::vector<AxisLimit> further_over; ///< over before, and see is_further_over
  std::vector<LimitId> newly_open;     ///< judged before, and then for want of a figure no more
  std::vector<Finding> newly_grave;    ///< see is_grave
  std::vector<Finding> new_cautions;   ///< the others that were not there before
  std::size_t still_over = 0;          ///< limits of this axis that were over and stay so
  /// How large the change is, to put small ones first: |ln(after/before)|, and a fixed figure for
  /// what has no such ratio.
  double size = 0.0;

  const Limit& limit(LimitId id) const { return limits[static_cast<std::size_t>(id)]; }
};

} // namespace feedwright
