// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// An input is declared once. Its descriptor makes its member in the machine file, its entry in the
// schema, its field in the window and its row on the sheet.

#include "units/constrained.h"
#include "units/kind.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace feedwright {

/// Where the number in a field came from.
enum class Origin : std::uint8_t {
  preset,    ///< the program's default; not in the file
  entered,   ///< typed by the user
  part_list, ///< taken with the part from a list or data sheet
};

/// What stands behind a field's value: the text as typed and where it came from.
struct EntryNote {
  std::string text;
  Origin origin = Origin::entered;
  friend bool operator==(const EntryNote&, const EntryNote&) = default;
};

/// What a part carries besides its numbers.
struct PartNotes {
  std::string source;                                    ///< list, data sheet or person behind it
  std::map<std::string, EntryNote, std::less<>> entries; ///< by member
  /// Members this version does not know, with their source text, in file order.
  std::vector<std::pair<std::string, std::string>> unknown;
  friend bool operator==(const PartNotes&, const PartNotes&) = default;
};

enum class FieldType : std::uint8_t { quantity, count, choice, flag, text, table };

/// Whether a part can do without the field.
enum class Presence : std::uint8_t {
  required, ///< the file must give it
  preset,   ///< the program has a default, named as such
  open,     ///< may be missing; results that need it are then open
};

/// A value in one cell of a table; `monostate` is a missing one.
using CellValue = std::variant<std::monostate, AnyQuantity, std::int64_t, std::string, bool>;

/// The rows of a table field, each with one cell to a column.
struct TableRows {
  std::vector<std::vector<CellValue>> rows;
  friend bool operator==(const TableRows&, const TableRows&) = default;
};

/// A field's value with its type known at run time; `monostate` is a missing one.
using FieldValue =
    std::variant<std::monostate, AnyQuantity, std::int64_t, std::string, bool, TableRows>;

/// A cell as a field's value, and back; a table fits no cell.
FieldValue field_value(const CellValue& cell);
CellValue cell_value(const FieldValue& value);

struct FieldInfo;
/// What a table needs besides a plain field.
struct TableInfo {
  std::span<const FieldInfo> (*columns)();
  /// A row as a new one starts.
  std::vector<CellValue> (*fresh_row)();
  /// Rows are written as plain arrays: few columns, none of them open.
  bool plain_rows = false;
  std::size_t least_rows = 0;
};

struct FieldInfo {
  std::string_view member; ///< in the machine file; also its id
  std::string_view symbol; ///< in equations, `_` before a subscript; may be empty
  FieldType type = FieldType::quantity;
  Kind kind = Kind::number;
  std::string_view unit; ///< a usual unit, for showing and for a bare number typed in
  Bound bound = Bound::any;
  Presence presence = Presence::required;
  std::span<const std::string_view> choices = {};
  std::int64_t least = 0; ///< of a count
  std::int64_t most = 0;
  const TableInfo* table = nullptr;
  /// Under which heading of the part's form it stands; empty where a form has no headings.
  std::string_view section = {};
};

template <class Part>
struct Field {
  FieldInfo info;
  FieldValue (*get)(const Part&);
  /// False, and the part unchanged, if the value is of the wrong type or out of bounds.
  bool (*set)(Part&, const FieldValue&);

  /// The same field under a heading of the part's form.
  constexpr Field in(std::string_view section) const {
    Field placed = *this;
    placed.info.section = section;
    return placed;
  }
};

/// Specialised beside each part: `static std::span<const Field<P>> list();`
template <class Part>
struct FieldsOf;

namespace fields {

/// Names of an enumeration's values; specialised per enumeration with `list`, in its order.
template <class E>
struct Names;

} // namespace fields
} // namespace feedwright
