// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "units/kind.h"

#include <QString>

#include <string_view>

namespace feedwright {

/// A bare number with the language's decimal mark, for scales and read-outs.
QString number_text(double value, int significant_digits = 4);

/// The number of a value in a unit of its kind, as on a scale marked in that unit.
double number_in(const AnyQuantity& value, std::string_view unit);

} // namespace feedwright
