// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Values as they are set on paper. What is typed on, copied or read by programs is written by
// words::quantity and words::field_text.

#include "machine/machine.h"

#include <QString>

namespace feedwright::words {

/// As quantity, with whole digits from five on in groups of three, parted by thin spaces, and
/// powers of ten as such: "16 855 N", "6.966·10¹⁰".
QString printed_quantity(const AnyQuantity& value, std::string_view unit, int digits = 4);

/// What a field holds: as typed, but of something worked out ("(1200+400) mm") what it comes to, in
/// the unit it was typed in.
QString field_value(const FieldView& field);

/// What was typed where the value had to be worked out from it; otherwise empty.
QString worked_out_from(const FieldView& field);

} // namespace feedwright::words
