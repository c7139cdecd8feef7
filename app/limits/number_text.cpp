// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/number_text.h"

#include "text/words.h"
#include "units/unit_table.h"
#include "units/write_quantity.h"

namespace feedwright {

QString number_text(double value, int significant_digits) {
  return QString::fromStdString(write_number(value, significant_digits, words::decimal_mark()));
}

double number_in(const AnyQuantity& value, std::string_view unit) {
  const Unit* found = find_unit(value.kind, unit);
  return found != nullptr ? (value.si - found->offset) / found->factor : value.si;
}

} // namespace feedwright
