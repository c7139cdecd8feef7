// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"

#include <QString>

namespace feedwright::words {

/// A remark on a length or a lead beyond what any machine of this trade has, which is mostly a slip
/// of the hand; else empty.
QString beyond_any_machine(const FieldInfo& field, const FieldValue& value);

/// What a builder wants to know of a field before filling it: what it does, what is usual and
/// where to read it where that is known, and its symbol in the working. Plain text.
QString field_guide(PartSlot slot, const FieldInfo& field);

/// What a part does in the machine and what to look at in it, in one or two sentences.
QString part_guide(PartSlot slot);

/// Title of a stretch of a part's fields: "Thread".
QString section_name(PartSlot slot, std::string_view section);

} // namespace feedwright::words
