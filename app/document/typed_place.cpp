// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/typed_place.h"

#include <QString>

#include <charconv>

namespace feedwright {

namespace {

std::optional<int> whole_number(std::string_view text) {
  int number = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
  return read.ec == std::errc() ? std::optional(number) : std::nullopt;
}

AxisPlaces inverse(const AxisPlaces& places, std::size_t axes_after) {
  AxisPlaces back(axes_after);
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (places[i] && *places[i] < axes_after) {
      back[*places[i]] = i;
    }
  }
  return back;
}

bool all_stay(const AxisPlaces& places) {
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (places[i] != i) {
      return false;
    }
  }
  return true;
}

TypedMove along(AxisPlaces places) {
  return [places = std::move(places)](const TypedAt& at) -> std::optional<TypedAt> {
    if (!at.axis_or_machine()) {
      return at;
    }
    const auto to = at.axis < places.size() ? places[at.axis] : std::nullopt;
    if (!to) {
      return std::nullopt;
    }
    TypedAt moved = at;
    moved.axis = *to;
    return moved;
  };
}

/// The cell's row and column if the place is a cell of the table.
std::optional<std::pair<int, std::size_t>> cell_of(const TypedAt& table, const TypedAt& at) {
  const bool there =
      !at.answer && at.axis == table.axis && at.slot == table.slot && at.field() == table.member;
  return there ? at.row_and_column() : std::nullopt;
}

} // namespace

TypedAt TypedAt::of(std::size_t axis, PartSlot slot, std::string_view member) {
  return {of_machine(slot) ? 0 : axis, slot, std::string(member)};
}

TypedAt TypedAt::cell(TypedAt table, int row, std::size_t column) {
  table.member += QStringLiteral("/%1/%2").arg(row).arg(column).toStdString();
  return table;
}

TypedAt TypedAt::answer_to(std::optional<std::size_t> axis, AnsweredThing thing) {
  return {axis.value_or(0), axis ? PartSlot::axis : PartSlot::supply, {}, std::move(thing)};
}

std::string_view TypedAt::field() const {
  return std::string_view(member).substr(0, member.find('/'));
}

std::optional<std::pair<int, std::size_t>> TypedAt::row_and_column() const {
  const std::size_t begin = member.find('/');
  const std::size_t middle =
      begin != std::string::npos ? member.find('/', begin + 1) : std::string::npos;
  if (middle == std::string::npos) {
    return std::nullopt;
  }
  const auto row = whole_number(std::string_view(member).substr(begin + 1));
  const auto column = whole_number(std::string_view(member).substr(middle + 1));
  return row && column ? std::optional(std::pair(*row, static_cast<std::size_t>(*column)))
                       : std::nullopt;
}

std::optional<std::size_t> TypedAt::axis_or_machine() const {
  return of_machine(slot) ? std::nullopt : std::optional(axis);
}

TypedMoves TypedMoves::by_axes(const AxisPlaces& places, std::size_t axes_after) {
  AxisPlaces back = inverse(places, axes_after);
  if (all_stay(places) && all_stay(back)) {
    return {};
  }
  return {along(places), along(std::move(back)), true};
}

TypedMoves TypedMoves::without_row(const TypedAt& table, int row) {
  const auto forth = [table, row](const TypedAt& at) -> std::optional<TypedAt> {
    const auto cell = cell_of(table, at);
    if (!cell || cell->first < row) {
      return at;
    }
    return cell->first == row ? std::nullopt
                              : std::optional(TypedAt::cell(table, cell->first - 1, cell->second));
  };
  const auto back = [table, row](const TypedAt& at) -> std::optional<TypedAt> {
    const auto cell = cell_of(table, at);
    return cell && cell->first >= row ? TypedAt::cell(table, cell->first + 1, cell->second) : at;
  };
  return {forth, back};
}

TypedMoves TypedMoves::over_cells(const TypedAt& table, int first,
                                  std::vector<std::size_t> counts) {
  const auto drop = [table, first,
                     counts = std::move(counts)](const TypedAt& at) -> std::optional<TypedAt> {
    const auto cell = cell_of(table, at);
    if (!cell || cell->first < first) {
      return at;
    }
    const auto line = static_cast<std::size_t>(cell->first - first);
    return line < counts.size() && cell->second < counts[line] ? std::nullopt : std::optional(at);
  };
  return {drop, drop};
}

TypedMoves TypedMoves::over_table(const TypedAt& table) {
  const auto drop = [table](const TypedAt& at) {
    return cell_of(table, at) ? std::nullopt : std::optional(at);
  };
  return {drop, drop};
}

} // namespace feedwright
