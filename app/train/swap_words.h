// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/swap_parts.h"

#include <QString>

namespace feedwright::swap_words {

QString title(const Swap& swap);                  ///< as a menu has it: "Belt and two pulleys"
QString step(const Swap& swap, const Axis& axis); ///< as Undo has it: "Transmission: …"
QString id(const Swap& swap);                     ///< stable, for object names
PartSlot slot_of(SwapKind kind);

} // namespace feedwright::swap_words
