// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Fields that are looked for where they are not.

#include "document/machine_document.h"

#include <QString>

#include <vector>

namespace feedwright {

/// Fields of other parts than are shown whose names have the text in them; on the axis at hand and
/// of the machine.
std::vector<Selection> found_elsewhere(const MachineDocument& document,
                                       const std::vector<PartSlot>& shown, const QString& text);

/// Names the first few of them with their parts, or says that there is none.
QString sentence_on(const std::vector<Selection>& found);

} // namespace feedwright
