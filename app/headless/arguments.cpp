// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/arguments.h"

#include "headless/command_line.h"
#include "headless/headless.h"

#include <algorithm>

namespace feedwright {

namespace headless {

bool is_command_name(std::string_view text) {
  return std::ranges::find(command_names, text) != command_names.end();
}

/// Arguments other than --language and its value.
std::vector<std::string_view> without_language(int argc, char** argv) {
  std::vector<std::string_view> rest;
  for (int i = 1; i < argc; ++i) {
    const std::string_view argument = argv[i];
    if (argument == language_option) {
      ++i;
    } else if (!argument.starts_with(std::string(language_option) + "=")) {
      rest.push_back(argument);
    }
  }
  return rest;
}

bool is_command(int argc, char** argv) {
  const auto arguments = without_language(argc, argv);
  const auto asks = [](std::string_view argument) {
    return is_command_name(argument) || argument.starts_with("-");
  };
  return std::ranges::any_of(arguments, [](std::string_view a) { return a.starts_with("-"); }) ||
         (!arguments.empty() && asks(arguments.front())) || arguments.size() > 1;
}

} // namespace headless

std::string path_to_open(int argc, char** argv) {
  const auto arguments = headless::without_language(argc, argv);
  return arguments.empty() || headless::is_command(argc, argv) ? std::string()
                                                               : std::string(arguments.front());
}

std::string language_asked_for(int argc, char** argv) {
  const std::string with_value = std::string(headless::language_option) + "=";
  for (int i = 1; i < argc; ++i) {
    const std::string_view argument = argv[i];
    if (argument == headless::language_option && i + 1 < argc) {
      return argv[i + 1];
    }
    if (argument.starts_with(with_value)) {
      return std::string(argument.substr(with_value.size()));
    }
  }
  return {};
}

} // namespace feedwright
