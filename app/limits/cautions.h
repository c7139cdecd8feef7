// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Findings as sentences, for window, sheet and report.

#include "sizing/results.h"

#include <QString>

#include <vector>

namespace feedwright {

struct Caution {
  QString subjects; ///< "Screw"; several where the same is said of each
  QString text;
  /// Whether somebody or the machine may come to harm, or the axis cannot do its work at all.
  bool grave = false;
};

/// The gravest first, otherwise in the order found.
std::vector<Caution> cautions_of(const std::vector<Finding>& findings);

} // namespace feedwright
