// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A field's value as the machine file and the parts lists have it.

#include "parts/field.h"
#include "json/write_json.h"

namespace feedwright {

/// Writes what stands behind a member's name: the text as typed if `note` has one, else the
/// shortest that reads back to the same bits. A missing value must not be written (asserted by the
/// writer).
void write_value(JsonWriter& json, const FieldInfo& info, const FieldValue& value,
                 const EntryNote* note);

/// Whether what stands there can be the program's own: what a fresh part begins with, or what a
/// swap of parts put there so that the machine can be computed.
bool may_be_preset(const FieldInfo& info);

/// Whether a value read with this text is written as a program writes one that nobody typed.
bool is_plain(const FieldInfo& info, const FieldValue& value, const std::string& text);

} // namespace feedwright
