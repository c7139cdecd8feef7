// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drawing's read-out: a heading and rows of name and value.

#include "machine/loop_layout.h"
#include "sheet/file_units.h"
#include "sizing/at_position.h"

#include <QString>

#include <utility>
#include <vector>

namespace feedwright {

struct ReadOut {
  QString heading;
  std::vector<std::pair<QString, QString>> rows;

  /// In one sentence's length, for a screen reader.
  QString spoken() const;
};

/// Where the carriage stands and what depends on it, in the units the machine is typed in.
ReadOut position_read_out(const AtPosition& at, Length along, const FileUnits& units);

/// Where a loop's pulley stands (by its place in the table), and how the belt fits.
ReadOut pulley_read_out(const BeltLoopDrive& loop, std::size_t pulley, const FileUnits& units);

} // namespace feedwright
