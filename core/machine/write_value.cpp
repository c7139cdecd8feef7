// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/write_value.h"

#include "units/write_quantity.h"

namespace feedwright {

namespace {

std::string exact(const AnyQuantity& value, std::string_view unit) {
  const Unit* found = find_unit(value.kind, unit);
  return write_exact(value, found != nullptr ? *found : si_unit(value.kind));
}

void write_cell(JsonWriter& json, const FieldInfo& column, const CellValue& cell) {
  if (const auto* quantity = std::get_if<AnyQuantity>(&cell)) {
    if (column.kind == Kind::number && column.unit.empty()) {
      json.raw(json_number_text(quantity->si));
    } else {
      json.value(exact(*quantity, column.unit));
    }
  } else if (const auto* count = std::get_if<std::int64_t>(&cell)) {
    json.value(*count);
  } else if (const auto* text = std::get_if<std::string>(&cell)) {
    json.value(*text);
  } else if (const auto* flag = std::get_if<bool>(&cell)) {
    json.value(*flag);
  }
}

/// Whether a cell belongs in its row's object: presets only where they are another.
bool is_cell_written(const FieldInfo& column, const CellValue& cell, const CellValue& preset) {
  const auto* text = std::get_if<std::string>(&cell);
  const bool empty = std::holds_alternative<std::monostate>(cell) ||
                     (text != nullptr && text->empty() && column.type == FieldType::text);
  return !empty && (column.presence != Presence::preset || cell != preset);
}

void write_table(JsonWriter& json, const TableInfo& table, const TableRows& value) {
  const auto columns = table.columns();
  const auto fresh = table.fresh_row();
  json.begin_array();
  for (const auto& row : value.rows) {
    table.plain_rows ? json.begin_array() : json.begin_object();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (table.plain_rows) {
        write_cell(json, columns[i], row[i]);
      } else if (is_cell_written(columns[i], row[i], fresh[i])) {
        write_cell(json.member(columns[i].member), columns[i], row[i]);
      }
    }
    table.plain_rows ? json.end_array() : json.end_object();
  }
  json.end_array();
}

} // namespace

void write_value(JsonWriter& json, const FieldInfo& info, const FieldValue& value,
                 const EntryNote* note) {
  const bool typed_text = note != nullptr && !note->text.empty();
  if (const auto* quantity = std::get_if<AnyQuantity>(&value)) {
    const std::string text = typed_text ? note->text : exact(*quantity, info.unit);
    if (info.kind == Kind::number && text == json_number_text(quantity->si)) {
      json.raw(text);
    } else {
      json.value(text);
    }
  } else if (const auto* count = std::get_if<std::int64_t>(&value)) {
    json.value(*count);
  } else if (const auto* text = std::get_if<std::string>(&value)) {
    json.value(*text);
  } else if (const auto* flag = std::get_if<bool>(&value)) {
    json.value(*flag);
  } else if (typed_text) {
    json.raw(note->text);
  } else {
    write_table(json, *info.table, std::get<TableRows>(value));
  }
}

bool may_be_preset(const FieldInfo& info) {
  return info.type != FieldType::text;
}

bool is_plain(const FieldInfo& info, const FieldValue& value, const std::string& text) {
  const auto* quantity = std::get_if<AnyQuantity>(&value);
  return quantity == nullptr || text == exact(*quantity, info.unit);
}

} // namespace feedwright
