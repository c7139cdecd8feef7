// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/print_sheet.h"

#include <QSize>

#include <filesystem>
#include <optional>
#include <string>

namespace feedwright::headless {

enum class Task : std::uint8_t { check, sheet, schema, picture };

struct Command {
  Task task = Task::check;
  std::filesystem::path file;
  std::filesystem::path output;
  bool json = false;
  bool working = false;
  bool dark = false;
  SheetPaper paper = SheetPaper::a4;
  std::optional<QDate> date; ///< today if not given
  QSize size = {1280, 800};
  std::optional<std::size_t> axis;  ///< from 0
  std::optional<std::size_t> study; ///< from 0
  std::optional<double> font_size;  ///< points
  bool machine = false;             ///< the page of the whole machine, not of an axis
  std::string page;                 ///< of help, in the window's stead
};

/// What the command line came to: a command, or a text to print and leave with.
struct CommandLine {
  std::optional<Command> command;
  std::string text; ///< help or version for stdout; a sentence for stderr if `wrong`
  bool wrong = false;
};

/// Whether the command line asks for something other than the window.
bool is_command(int argc, char** argv);

CommandLine read_command_line(int argc, char** argv);

} // namespace feedwright::headless
