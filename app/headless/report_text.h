// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_content.h"

#include <QString>

namespace feedwright::headless {

/// All results of a machine as text, axis by axis, in aligned columns.
QString report_text(const SheetContent& content);

} // namespace feedwright::headless
