// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "choosing/remedies.h"
#include "files/read_file.h"
#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

namespace feedwright::testing {

/// Every row of the program's lists, in the order of the files' names.
inline std::vector<ListedPart> listed_parts() {
  std::vector<std::filesystem::path> files;
  const auto folder = std::filesystem::path(FEEDWRIGHT_SOURCE_DIR) / "resources/parts";
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() == ".json") {
      files.push_back(entry.path());
    }
  }
  std::ranges::sort(files);
  std::vector<ListedPart> all;
  for (const auto& file : files) {
    const auto text = read_file(file, std::size_t{1} << 22U);
    REQUIRE(text);
    const auto parts = read_parts(*text);
    REQUIRE(parts);
    all.insert(all.end(), parts->begin(), parts->end());
  }
  return all;
}

inline Machine sample_machine(const char* name) {
  const auto text = read_file(std::filesystem::path(FEEDWRIGHT_SOURCE_DIR) / name, 1U << 20U);
  REQUIRE(text);
  const auto machine = read_machine(*text);
  REQUIRE(machine);
  return *machine;
}

inline std::vector<Remedy> remedies_of(const Machine& machine, LimitId limit,
                                       std::span<const ListedPart> parts = {},
                                       std::size_t axis = 0) {
  return remedies(machine, axis, limit, parts, FileUnits(machine));
}

/// The remedy named by a field; nothing if there is none.
inline const Remedy* by_field(const std::vector<Remedy>& found, PartSlot slot,
                              std::string_view member) {
  const auto remedy = std::ranges::find_if(found, [&](const Remedy& candidate) {
    return !candidate.changes.empty() && candidate.changes.front().slot == slot &&
           candidate.changes.front().member == member;
  });
  return remedy != found.end() ? &*remedy : nullptr;
}

inline double si_after(const Remedy& remedy, std::size_t change = 0) {
  return std::get<AnyQuantity>(remedy.changes.at(change).after).si;
}

} // namespace feedwright::testing
