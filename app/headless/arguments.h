// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A first look at the command line, before there is an application object.

#include <array>
#include <string_view>
#include <vector>

namespace feedwright::headless {

/// In the order of Task.
inline constexpr std::array<std::string_view, 4> command_names = {"check", "sheet", "schema",
                                                                  "picture"};
inline constexpr std::string_view language_option = "--language";

bool is_command_name(std::string_view text);

/// Arguments other than --language and its value.
std::vector<std::string_view> without_language(int argc, char** argv);

} // namespace feedwright::headless
