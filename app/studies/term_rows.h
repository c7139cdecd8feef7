// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Rows of a working's tables, in words.

#include "document/machine_document.h"
#include "studies/terms_table.h"
#include "working/write_working.h"

namespace feedwright {

/// A symbol of the equation.
TermRow term_row(const WrittenTerm& term);

/// A result that stands for another, such as the limit that governs.
TermRow result_row(ResultId id, const AxisResults& results, const FileUnits& units);

/// An input of the selected axis; `share` is what one per cent on it does, if that is known.
TermRow input_row(const InputRef& input, std::optional<double> share,
                  const MachineDocument& document);

} // namespace feedwright
