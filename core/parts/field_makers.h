// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Makes a field's descriptor from a member of its part: kind, bound and whether it may be open come
// from the member's type. For the lists of fields only.

#include "parts/field.h"

namespace feedwright {

namespace fields {

template <class M>
struct MemberOf;
template <class P, class V>
struct MemberOf<V P::*> {
  using Part = P;
  using Value = V;
};
template <auto Member>
using PartOf = typename MemberOf<decltype(Member)>::Part;

template <class V>
struct QuantityMember {
  static constexpr bool optional = false;
  using Held = V;
};
template <class V>
struct QuantityMember<std::optional<V>> {
  static constexpr bool optional = true;
  using Held = V;
};

/// A quantity field; the kind, the bound and whether it may be open come from the member's type.
template <auto Member, class Part = PartOf<Member>>
constexpr auto quantity(std::string_view member, std::string_view symbol, std::string_view unit,
                        Presence presence = Presence::required) {
  using Traits = QuantityMember<typename MemberOf<decltype(Member)>::Value>;
  using Held = typename Traits::Held;
  using Q = typename Held::Value;
  Field<Part> field{};
  field.info = {member,
                symbol,
                FieldType::quantity,
                kind_of<Q>::value,
                unit,
                Held::bound,
                Traits::optional ? Presence::open : presence};
  field.get = [](const Part& part) -> FieldValue {
    if constexpr (Traits::optional) {
      return part.*Member ? FieldValue(any(**(part.*Member))) : FieldValue();
    } else {
      return any(*(part.*Member));
    }
  };
  field.set = [](Part& part, const FieldValue& value) {
    if constexpr (Traits::optional) {
      if (std::holds_alternative<std::monostate>(value)) {
        (part.*Member).reset();
        return true;
      }
    }
    const auto* given = std::get_if<AnyQuantity>(&value);
    if (given == nullptr || given->kind != kind_of<Q>::value) {
      return false;
    }
    const auto made = Held::make(typed<Q>(*given));
    if (made) {
      part.*Member = *made;
    }
    return made.has_value();
  };
  return field;
}

template <auto Member, class Part = PartOf<Member>>
constexpr auto count(std::string_view member, std::string_view symbol, std::int64_t least,
                     std::int64_t most, Presence presence = Presence::required) {
  Field<Part> field{};
  field.info = {member, symbol, FieldType::count, Kind::number, "", Bound::any, presence, {},
                least,  most};
  field.get = [](const Part& part) -> FieldValue { return std::int64_t{part.*Member}; };
  field.set = [](Part& part, const FieldValue& value) {
    const auto* given = std::get_if<std::int64_t>(&value);
    if (given == nullptr) {
      return false;
    }
    part.*Member = static_cast<int>(*given);
    return true;
  };
  return field;
}

/// A choice among named values.
template <auto Member, class Part = PartOf<Member>>
constexpr auto choice(std::string_view member, Presence presence = Presence::required) {
  using E = typename MemberOf<decltype(Member)>::Value;
  Field<Part> field{};
  field.info = {member, "",         FieldType::choice, Kind::number,
                "",     Bound::any, presence,          Names<E>::list};
  field.get = [](const Part& part) -> FieldValue {
    return std::string(Names<E>::list[static_cast<std::size_t>(part.*Member)]);
  };
  field.set = [](Part& part, const FieldValue& value) {
    const auto* given = std::get_if<std::string>(&value);
    if (given == nullptr) {
      return false;
    }
    for (std::size_t i = 0; i < std::size(Names<E>::list); ++i) {
      if (Names<E>::list[i] == *given) {
        part.*Member = static_cast<E>(i);
        return true;
      }
    }
    return false;
  };
  return field;
}

template <auto Member, class Part = PartOf<Member>>
constexpr auto flag(std::string_view member) {
  Field<Part> field{};
  field.info = {member, "", FieldType::flag, Kind::number, "", Bound::any, Presence::preset};
  field.get = [](const Part& part) -> FieldValue { return part.*Member; };
  field.set = [](Part& part, const FieldValue& value) {
    const auto* given = std::get_if<bool>(&value);
    if (given == nullptr) {
      return false;
    }
    part.*Member = *given;
    return true;
  };
  return field;
}

template <auto Member, class Part = PartOf<Member>>
constexpr auto text(std::string_view member, Presence presence = Presence::preset) {
  Field<Part> field{};
  field.info = {member, "", FieldType::text, Kind::number, "", Bound::any, presence};
  field.get = [](const Part& part) -> FieldValue { return part.*Member; };
  field.set = [](Part& part, const FieldValue& value) {
    const auto* given = std::get_if<std::string>(&value);
    if (given == nullptr) {
      return false;
    }
    part.*Member = *given;
    return true;
  };
  return field;
}

/// The columns of a row type as descriptors of its cells.
template <class Row>
std::span<const FieldInfo> columns_of() {
  static const std::vector<FieldInfo> columns = [] {
    std::vector<FieldInfo> made;
    for (const Field<Row>& column : FieldsOf<Row>::list()) {
      made.push_back(column.info);
    }
    return made;
  }();
  return columns;
}

template <class Row>
std::vector<CellValue> cells_of(const Row& row) {
  std::vector<CellValue> cells;
  for (const Field<Row>& column : FieldsOf<Row>::list()) {
    cells.push_back(cell_value(column.get(row)));
  }
  return cells;
}

template <class Row>
std::optional<Row> row_of(const std::vector<CellValue>& cells) {
  Row row;
  const auto columns = FieldsOf<Row>::list();
  if (cells.size() != columns.size()) {
    return std::nullopt;
  }
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (!columns[i].set(row, field_value(cells[i]))) {
      return std::nullopt;
    }
  }
  return row;
}

template <class Row>
inline constexpr TableInfo table_info{&columns_of<Row>, [] { return cells_of(Row()); },
                                      Row::plain_rows, Row::least_rows};

/// A list of rows, each of a struct with fields of its own; `Row::plain_rows` says how it is
/// written.
template <auto Member, class Part = PartOf<Member>>
constexpr auto table(std::string_view member, Presence presence = Presence::open) {
  using Row = typename MemberOf<decltype(Member)>::Value::value_type;
  Field<Part> field{};
  field.info.member = member;
  field.info.type = FieldType::table;
  field.info.presence = presence;
  field.info.table = &table_info<Row>;
  field.get = [](const Part& part) -> FieldValue {
    if ((part.*Member).empty()) {
      return FieldValue();
    }
    TableRows rows;
    for (const Row& row : part.*Member) {
      rows.rows.push_back(cells_of(row));
    }
    return rows;
  };
  field.set = [](Part& part, const FieldValue& value) {
    if (std::holds_alternative<std::monostate>(value)) {
      (part.*Member).clear();
      return true;
    }
    const auto* given = std::get_if<TableRows>(&value);
    if (given == nullptr) {
      return false;
    }
    std::vector<Row> made;
    for (const auto& cells : given->rows) {
      auto row = row_of<Row>(cells);
      if (!row) {
        return false;
      }
      made.push_back(std::move(*row));
    }
    part.*Member = std::move(made);
    return true;
  };
  return field;
}

/// One list of descriptors after another.
template <class Part, std::size_t... Sizes>
constexpr auto joined(const std::array<Field<Part>, Sizes>&... lists) {
  std::array<Field<Part>, (Sizes + ...)> all{};
  std::size_t at = 0;
  const auto add = [&](const auto& list) {
    for (const Field<Part>& field : list) {
      all[at++] = field;
    }
  };
  (add(lists), ...);
  return all;
}

} // namespace fields
} // namespace feedwright
