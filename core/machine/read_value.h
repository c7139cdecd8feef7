// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/fault_list.h"

namespace feedwright {

/// The value of a field as it stands in the file, and in `note` the text it was given in; nothing,
/// and a fault in the list, if it cannot be read. Bounds are left to the field itself.
std::optional<FieldValue> read_value(FaultList& faults, std::string_view source,
                                     const FieldInfo& info, const Place& at, const JsonNode& node,
                                     EntryNote& note);

} // namespace feedwright
