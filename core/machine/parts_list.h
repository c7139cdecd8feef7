// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Parts lists: data beside the program and the user's own, each row a part's figures with where
// they are from. A machine takes a whole row; it never depends on the list afterwards.

#include "machine/fault.h"

#include <tl/expected.hpp>

namespace feedwright {

inline constexpr std::string_view parts_format_name = "feedwright-parts";
inline constexpr int parts_format_major = 1;

/// What a list's rows describe: a part, some of a part's figures, or a row of the load cases.
enum class ListedKind : std::uint8_t {
  screw,
  belt, ///< fits a belt stage, a belt loop and a hauling belt
  end_bearings,
  guides,
  coupling,
  stepper_by_points,
  stepper_by_ratings,
  servo,
  material, ///< to cut
};

/// One figure of a listed part, by the member it goes to.
struct ListedValue {
  std::string member;
  FieldValue value;
  std::string text; ///< as written in the list
};

struct ListedPart {
  ListedKind kind{};
  std::string name;
  std::string source;
  std::vector<ListedValue> values;
};

/// Every row of a list, or every fault of its text.
tl::expected<std::vector<ListedPart>, std::vector<Fault>> read_parts(std::string_view json);

/// The kind's name in lists: "screw".
std::string_view list_name(ListedKind kind);
/// The place of a machine that a listed part goes to.
PartSlot slot_of(ListedKind kind);
/// Whether a list of this kind has something for what stands in the slot, or may stand there.
bool fits(ListedKind kind, PartSlot slot);

/// Puts a listed part in its place: what stands there changes its type if it must, takes the row's
/// figures as from a list, and names the row as their source. A material goes to one load case.
/// False if a figure does not fit.
bool take_part(Machine& machine, std::size_t axis, PartSlot slot, const ListedPart& part,
               std::size_t load_case = 0);

/// Whether `source`, as a part's notes have it, names that row.
bool is_source(std::string_view source, const ListedPart& part);

/// The lists a part of a machine could stand in: by the slot and the type of what stands there.
/// Nothing where there are none (targets, load cases).
std::optional<ListedKind> list_for(const Machine& machine, std::size_t axis, PartSlot slot);

/// A row for the user's own list with the figures of what stands in the slot. Only figures that
/// belong to the part as it is bought: not how long it is cut, nor how it is used.
ListedPart as_listed(const Machine& machine, std::size_t axis, PartSlot slot, ListedKind kind,
                     std::string name, std::string source);

/// A whole list of rows of one kind, as `read_parts` reads it.
std::string write_parts(ListedKind kind, std::span<const ListedPart> parts);

} // namespace feedwright
