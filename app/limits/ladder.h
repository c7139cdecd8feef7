// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Limits as rows of bars on one scale. Words and numbers ready to paint; no colours, no pixels.

#include "sheet/file_units.h"
#include "sizing/results.h"

#include <QString>

#include <optional>
#include <vector>

namespace feedwright {

struct LadderRow {
  LimitId id{};
  Verdict verdict = Verdict::open;
  QString sign;
  QString name;
  QString value;                ///< "4.5"; "4.5 of 6" where each row has its own wanted value; for
                                ///< an open limit why it is
  QString tooltip;              ///< one sentence with the verdict's word
  std::optional<double> length; ///< on the ladder's scale; nothing for an open limit
  std::optional<double> wanted; ///< on the scale, where it differs from row to row
  bool governs = false;
  bool ties = false; ///< governs together with another close to it
};

struct Ladder {
  LimitScale scale = LimitScale::feed;
  QString title;
  QString unit;
  std::optional<double> wanted; ///< the same for every row: a line across all
  QString wanted_label;         ///< of the line; of the strokes where each row has its own
  QString governs_label;        ///< what is written at the row that governs
  QString open_label;           ///< before the open limits
  QString tie; ///< sentence on the limits that govern together; empty if one does alone
  std::vector<LadderRow> rows; ///< the lowest first, open ones last
  double end = 1.0;            ///< where the scale ends; longer bars are cut there
  double tick = 0.2;
};

/// Limits that do not apply are left out. The scale of `other` limits is their margin. Values are
/// in the machine's own units.
Ladder ladder_of(const AxisResults& results, LimitScale scale, const FileUnits& units);

} // namespace feedwright
