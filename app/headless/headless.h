// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The commands of the program that need no display.

#include <optional>
#include <string>

namespace feedwright {

/// What a command ends with. Part of the interface: scripts rely on it.
enum class ExitCode : int {
  none_over = 0, ///< done; `check`: no limit is over
  some_over = 1, ///< `check` only: some limit is over
  unusable = 2,  ///< the command line, the machine or the place to write to; sentences on stderr
};

/// Runs the command named on the command line and gives the exit code; nothing if the window is
/// to be opened. Makes its own application object, so call it before making one.
std::optional<int> run_headless(int argc, char** argv);

/// The machine named on a command line without a command; empty if none is.
std::string path_to_open(int argc, char** argv);

/// The language asked for by --language; empty if none is.
std::string language_asked_for(int argc, char** argv);

} // namespace feedwright
