// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the axes ask of the machine together, as rows of text for sheet and report.

#include "sheet/file_units.h"
#include "sizing/size_machine.h"

#include <QStringList>

#include <vector>

namespace feedwright::sheet {

/// Sheet content that the rows need.
struct Together {
  const MachineResults& results;
  const std::vector<Answer>& answers;
  const std::vector<std::string>& letters; ///< of the axes, in their order
  const FileUnits& units;
};

/// Heads of the columns of machine_limit_rows.
QStringList machine_limit_heads();
/// One row a limit: verdict, limit, all at once, most of one axis, allowed, margin, note.
std::vector<QStringList> machine_limit_rows(const Together& together);

/// Answers to the limits of all at once, each with its limit.
QStringList machine_limit_answers(const Together& together);

QStringList share_heads(); ///< of share_rows
/// One row an axis and one for all: axis, motors, power, heat at rest, energy returned, step rate
/// at the feed reached.
std::vector<QStringList> share_rows(const Together& together);

/// What else is said of all axes at once, a sentence each.
QStringList together_sentences(const Together& together);

} // namespace feedwright::sheet
