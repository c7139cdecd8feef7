// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/read_value.h"

#include "machine/machine_file.h"
#include "units/read_quantity.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class ValueReader {
public:
  ValueReader(FaultList& faults, std::string_view source) : faults_(faults), source_(source) {}

  std::optional<FieldValue> read(const FieldInfo& info, const Place& at, const JsonNode& node,
                                 EntryNote& note) {
    using Type = JsonNode::Type;
    switch (info.type) {
    case FieldType::quantity: return read_quantity_value(info, at, node, note);
    case FieldType::count: return read_count(info, at, node);
    case FieldType::flag:
      if (node.type == Type::boolean) {
        return node.boolean;
      }
      faults_.wrong_type(at, info.member, node, "boolean");
      return std::nullopt;
    case FieldType::choice:
    case FieldType::text:
      if (node.type == Type::string) {
        return node.text;
      }
      faults_.wrong_type(at, info.member, node, "string", &info);
      return std::nullopt;
    case FieldType::table: break;
    }
    note.text = source_.substr(node.begin, node.end - node.begin);
    return read_table(info, at, node);
  }

private:
  std::optional<FieldValue> read_quantity_value(const FieldInfo& info, const Place& at,
                                                const JsonNode& node, EntryNote& note) {
    if (node.type == JsonNode::Type::number && info.kind == Kind::number) {
      note.text = node.text;
      return AnyQuantity{Kind::number, node.number};
    }
    if (node.type != JsonNode::Type::string) {
      faults_.wrong_type(at, info.member, node, "string", &info);
      return std::nullopt;
    }
    const auto read = read_quantity(node.text, info.kind);
    if (!read) {
      unreadable(info, at, node, read.error());
      return std::nullopt;
    }
    note.text = node.text;
    return read->value;
  }

  Fault& unreadable(const FieldInfo& info, const Place& at, const JsonNode& node,
                    const ReadError& error) {
    Fault& made = faults_.add(FaultCode::unreadable_quantity, at, info.member, &node);
    made.found = node.text;
    made.quantity = error;
    made.kind = error.wanted;
    made.unit = info.unit;
    return made;
  }

  std::optional<FieldValue> read_count(const FieldInfo& info, const Place& at,
                                       const JsonNode& node) {
    if (node.type != JsonNode::Type::number) {
      faults_.wrong_type(at, info.member, node, "number");
      return std::nullopt;
    }
    const bool whole = node.number == std::floor(node.number);
    if (!whole || node.number < double(info.least) || node.number > double(info.most)) {
      Fault& made = faults_.add(FaultCode::out_of_bounds, at, info.member, &node);
      made.found = node.text;
      made.least = info.least;
      made.most = info.most;
      return std::nullopt;
    }
    return static_cast<std::int64_t>(node.number);
  }

  std::optional<FieldValue> read_table(const FieldInfo& info, const Place& at,
                                       const JsonNode& node) {
    if (node.type != JsonNode::Type::array) {
      faults_.wrong_type(at, info.member, node, "array");
      return std::nullopt;
    }
    if (node.items.size() > most_table_rows) {
      Fault& made = faults_.add(FaultCode::out_of_bounds, at, info.member, &node);
      made.least = static_cast<std::int64_t>(info.table->least_rows);
      made.most = most_table_rows;
      return std::nullopt;
    }
    TableRows table;
    const std::size_t faults_before = faults_.list().size();
    for (const JsonNode& item : node.items) {
      auto row =
          info.table->plain_rows ? read_plain_row(info, at, item) : read_row_object(info, at, item);
      if (row) {
        table.rows.push_back(std::move(*row));
      }
    }
    if (faults_.list().size() != faults_before) {
      return std::nullopt;
    }
    return table.rows.empty() ? FieldValue() : FieldValue(std::move(table));
  }

  std::optional<std::vector<CellValue>> read_plain_row(const FieldInfo& info, const Place& at,
                                                       const JsonNode& item) {
    const auto columns = info.table->columns();
    if (item.type != JsonNode::Type::array || item.items.size() != columns.size()) {
      faults_.wrong_type(at, info.member, item, "pair");
      return std::nullopt;
    }
    std::vector<CellValue> row;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (auto cell = read_cell(columns[i], info, at, item.items[i])) {
        row.push_back(std::move(*cell));
      }
    }
    return row.size() == columns.size() ? std::optional(std::move(row)) : std::nullopt;
  }

  std::optional<std::vector<CellValue>> read_row_object(const FieldInfo& info, const Place& at,
                                                        const JsonNode& item) {
    if (item.type != JsonNode::Type::object) {
      faults_.wrong_type(at, info.member, item, "object");
      return std::nullopt;
    }
    const auto columns = info.table->columns();
    // A preset stands for a missing cell; an open one stays open.
    std::vector<CellValue> row = info.table->fresh_row();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (columns[i].presence == Presence::open) {
        row[i] = CellValue();
      }
    }
    bool whole = true;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const JsonNode* given = item.find(columns[i].member);
      if (given == nullptr) {
        if (columns[i].presence == Presence::required) {
          faults_.missing(at, columns[i].member, item, &columns[i]);
          whole = false;
        }
        continue;
      }
      auto cell = read_cell(columns[i], info, at, *given);
      whole = whole && cell.has_value();
      if (cell) {
        row[i] = std::move(*cell);
      }
    }
    return whole ? std::optional(std::move(row)) : std::nullopt;
  }

  /// One cell, its bounds included: a fault of a cell names its column.
  std::optional<CellValue> read_cell(const FieldInfo& column, const FieldInfo& table,
                                     const Place& at, const JsonNode& node) {
    FieldInfo named = column;
    named.member = table.member;
    EntryNote unused;
    auto value = read(named, at, node, unused);
    if (!value) {
      return std::nullopt;
    }
    const auto* quantity = std::get_if<AnyQuantity>(&*value);
    const auto* choice = std::get_if<std::string>(&*value);
    const bool known = column.type != FieldType::choice || choice == nullptr ||
                       std::ranges::find(column.choices, *choice) != column.choices.end();
    if ((quantity == nullptr || within(column.bound, quantity->si)) && known) {
      return cell_value(*value);
    }
    Fault& made = faults_.add(known ? FaultCode::out_of_bounds : FaultCode::unknown_choice, at,
                              table.member, &node);
    made.found = node.text;
    made.bound = column.bound;
    made.kind = column.kind;
    made.unit = column.unit;
    made.choices = column.choices;
    return std::nullopt;
  }

  FaultList& faults_;
  std::string_view source_;
};

} // namespace

std::optional<FieldValue> read_value(FaultList& faults, std::string_view source,
                                     const FieldInfo& info, const Place& at, const JsonNode& node,
                                     EntryNote& note) {
  return ValueReader(faults, source).read(info, at, node, note);
}

} // namespace feedwright
