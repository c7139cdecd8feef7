// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Words of a working besides those of its fields and results.

#include "sizing/results.h"
#include "working/notation.h"

#include <QString>

namespace feedwright::words {

/// Where the equation holds and what it leaves out; empty where there is nothing to say.
QString result_validity(ResultId id);

/// What the results about it are about: "Belt"; every result is in one group.
QString result_group(ResultId id);

/// An equation as one would read it aloud.
QString spoken(const Notation& notation);

} // namespace feedwright::words
