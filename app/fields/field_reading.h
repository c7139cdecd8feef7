// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a typed text comes to for a field. No widgets.

#include "machine/machine.h"

#include <QString>

namespace feedwright {

struct FieldReading {
  FieldValue value;
  EntryNote note;
  QString became; ///< "= 12.7 mm" where that is not what is kept as typed; else empty
  QString echo;   ///< the same, and where a text could be meant otherwise: while it is typed
  QString error;  ///< a sentence; empty if the text can be used
  /// The stretch of the text at fault, in characters.
  int error_at = 0;
  int error_length = 0;
};

/// The same for a cell of a table field.
struct CellReading {
  CellValue value;
  QString error;
};

/// Reads the text typed into a field of a part of that type. Nothing typed empties an open field
/// and brings a preset one back to its preset.
FieldReading read_field(const Machine& machine, std::size_t axis, PartSlot slot,
                        const FieldInfo& field, const QString& text);

/// Reads the text typed into a cell of the table field `table`. Of a choice either its own name or
/// the language's word for it.
CellReading read_cell(PartSlot slot, std::string_view table, const FieldInfo& column,
                      const QString& text);

/// The value a field has in a part of that type as it comes; `monostate` if it comes open.
FieldValue preset_of(const Machine& machine, std::size_t axis, PartSlot slot,
                     const FieldInfo& field);

} // namespace feedwright
