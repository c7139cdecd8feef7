// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/read_quantity.h"

#include <string>
#include <string_view>

namespace feedwright {

/// A typed text as it is kept: one without a unit says the unit it was read in, so that it means
/// the same bits wherever it is read again. "5" is kept as "5 mm", "1200+400" as "(1200+400) mm".
/// Where that would not be exact the value itself is written.
///
/// `read` is what `read_quantity` made of the text.
std::string kept_text(std::string_view typed, const ReadQuantity& read);

} // namespace feedwright
