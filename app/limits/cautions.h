// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Findings as sentences, for window, sheet and report.

#include "sheet/file_units.h"
#include "sizing/results.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace feedwright {

struct Caution {
  QString subjects; ///< "Screw"; several where the same is said of each
  QString text;
  /// Whether somebody or the machine may come to harm, or the axis cannot do its work at all.
  bool grave = false;
  /// What the builder answered, as a sentence with its sign; empty if nothing. The caution stays.
  QString answer;
};

/// The gravest first, otherwise in the order found, each with its answer.
std::vector<Caution> cautions_of(const std::vector<Finding>& findings,
                                 const std::vector<Answer>& answers, const FileUnits& units);

/// Answers to the limits of an axis, each as "whip: ✎ answered: …".
QStringList answered_limits(std::span<const Limit> limits, const std::vector<Answer>& answers,
                            const FileUnits& units);

} // namespace feedwright
