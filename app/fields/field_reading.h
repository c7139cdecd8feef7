// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a typed text comes to for a field. No widgets.

#include "machine/machine.h"

#include <QString>

namespace feedwright {

struct FieldReading {
  FieldValue value;
  EntryNote note;
  QString became; ///< "= 12.7 mm" where that is not what was typed; else empty
  QString error;  ///< a sentence; empty if the text can be used
};

/// Reads the text typed into a field of a part of that type. Nothing typed empties an open field
/// and brings a preset one back to its preset.
FieldReading read_field(const Machine& machine, std::size_t axis, PartSlot slot,
                        const FieldInfo& field, const QString& text);

} // namespace feedwright
