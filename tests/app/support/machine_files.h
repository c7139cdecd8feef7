// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Machines as they stand in files of the project.

#include "files/read_file.h"
#include "machine/machine_file.h"

#include <catch2/catch.hpp>

#include <string>

namespace feedwright::testing {

/// `folder` from the project's own, with a slash before and after it.
inline Machine machine_in(const std::string& folder, const std::string& name) {
  const auto text = read_file(FEEDWRIGHT_SOURCE_DIR + folder + name + ".feedwright", 1U << 20U);
  REQUIRE(text);
  const auto machine = read_machine(*text);
  REQUIRE(machine);
  return *machine;
}

inline Machine sample(const std::string& name) {
  return machine_in("/sample-machines/", name);
}

} // namespace feedwright::testing
