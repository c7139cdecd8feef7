// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/fault.h"

#include <tl/expected.hpp>

namespace feedwright {

inline constexpr std::string_view format_name = "feedwright machine";
inline constexpr int format_major = 2;
inline constexpr int format_minor = 1;
/// The oldest format still read; see read_machine for what is mended on the way.
inline constexpr int oldest_major = 1;
/// A file with more is refused.
inline constexpr std::size_t most_axes = 64;
/// Of a table field; a file with more is refused.
inline constexpr std::size_t most_table_rows = 1000;

/// A sound machine, or every fault of the text, each with its path and line.
tl::expected<Machine, std::vector<Fault>> read_machine(std::string_view json);

/// The machine as it stands in the text, sound or not: somebody may have put it aside half done.
/// Faults only where a member cannot be read at all.
tl::expected<Machine, std::vector<Fault>> read_machine_as_typed(std::string_view json);

/// Canonical text: members in their declared order, values as typed by the user, unknown members
/// kept. Written in the lowest minor version that holds what the machine has.
std::string write_machine(const Machine& machine);

/// JSON Schema (draft-07) of the machine file, made from the field descriptors.
std::string machine_schema();

/// What keeps a machine from being computed; empty if sound. Cheap enough for every edit.
std::vector<Fault> faults_of(const Machine& machine);

} // namespace feedwright
