// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The sentence over what would do, or in its place.

#include "remedies/remedy_text.h"

namespace feedwright {

/// The machine has no remedies of its own; its axes have.
QString sentence_on_machine(const Machine& machine, const std::vector<AxisResults>& results);

/// Of an axis without a limit in trouble: what is not known is not well.
QString sentence_on_calm(const AxisResults& results);

/// Over the remedies of a limit, and whether there are any; a danger that they leave comes first.
QString sentence_on_limit(const RemedyContext& context, bool any);

} // namespace feedwright
