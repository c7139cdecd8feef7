// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_content.h"

#include <span>
#include <string>

namespace feedwright {

/// All results as JSON in one canonical form: every member there is, always, in declared order,
/// by stable ids; values in SI and in the file's unit (see FileUnits); null for what is open. Of
/// the identity the file's name and fingerprint are written, not the date.
std::string write_results(const Machine& machine, std::span<const AxisResults> results,
                          const SheetIdentity& identity);

} // namespace feedwright
