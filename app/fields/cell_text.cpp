// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/cell_text.h"

#include "text/words.h"

namespace feedwright {

QString cell_text(const FieldInfo& column, const CellValue& cell) {
  if (const auto* quantity = std::get_if<AnyQuantity>(&cell)) {
    const Unit* unit = find_unit(quantity->kind, column.unit);
    return QString::fromStdString(write_exact(
        *quantity, unit != nullptr ? *unit : si_unit(quantity->kind), words::decimal_mark()));
  }
  if (const auto* count = std::get_if<std::int64_t>(&cell)) {
    return QString::number(*count);
  }
  const auto* text = std::get_if<std::string>(&cell);
  if (text == nullptr) {
    return {};
  }
  return column.type == FieldType::choice ? words::choice_name(column.member, *text)
                                          : QString::fromStdString(*text);
}

} // namespace feedwright
