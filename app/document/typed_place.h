// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where a text is typed, and where it stands when a step moves what it was typed for.

#include "machine/machine.h"

#include <functional>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

namespace feedwright {

/// What an answer is given to, within an axis or the machine.
struct AnsweredThing {
  AnswerTo to = AnswerTo::finding;
  std::string code;
  std::string part; ///< empty for a limit
  friend bool operator==(const AnsweredThing&, const AnsweredThing&) = default;
  friend bool operator<(const AnsweredThing& a, const AnsweredThing& b) {
    return std::tie(a.to, a.code, a.part) < std::tie(b.to, b.code, b.part);
  }
};

/// Where a text was typed. The cell of a table is "member/row/column".
struct TypedAt {
  std::size_t axis = 0; ///< zero for parts of the machine
  PartSlot slot = PartSlot::drive;
  std::string member;
  std::optional<AnsweredThing> answer = std::nullopt; ///< of an answer that is being written

  /// Members of what is no field: no field is named so.
  static constexpr std::string_view source = ".source";
  static constexpr std::string_view machine_name = ".name";
  static constexpr std::string_view machine_notes = ".notes";

  /// The place in one way of saying it: machine parts belong to no axis.
  static TypedAt of(std::size_t axis, PartSlot slot, std::string_view member);
  static TypedAt cell(TypedAt table, int row, std::size_t column);
  /// Of an answer to something of the axis, or of the machine itself.
  static TypedAt answer_to(std::optional<std::size_t> axis, AnsweredThing thing);

  /// The field's own member, without the cell.
  std::string_view field() const;
  /// Row and column; nothing if it is no cell of a table.
  std::optional<std::pair<int, std::size_t>> row_and_column() const;
  /// Its axis; nothing if it is the machine's.
  std::optional<std::size_t> axis_or_machine() const;

  /// Fields come before answers.
  friend bool operator<(const TypedAt& a, const TypedAt& b) {
    return std::tie(a.answer, a.axis, a.slot, a.member) <
           std::tie(b.answer, b.axis, b.slot, b.member);
  }
  friend bool operator==(const TypedAt&, const TypedAt&) = default;
};

/// Where each axis stands after a step; nothing for one that is gone.
using AxisPlaces = std::vector<std::optional<std::size_t>>;

/// Where a typed text stands after a step; nothing if its place is gone.
using TypedMove = std::function<std::optional<TypedAt>(const TypedAt&)>;

/// What a step and its undoing do to typed texts. Without functions all stay where they are.
struct TypedMoves {
  TypedMove forth = nullptr;
  TypedMove back = nullptr;
  bool of_axes = false; ///< whole axes change places

  /// Nothing is moved where every axis keeps its place.
  static TypedMoves by_axes(const AxisPlaces& places, std::size_t axes_after);
  /// A row is taken out of the table at `table`; the rows below it move up.
  static TypedMoves without_row(const TypedAt& table, int row);
  /// Cells of the table are given other values: from row `first` on, so many in each row.
  static TypedMoves over_cells(const TypedAt& table, int first, std::vector<std::size_t> counts);
  /// The whole table is another one.
  static TypedMoves over_table(const TypedAt& table);
};

} // namespace feedwright
