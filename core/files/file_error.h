// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace feedwright {

enum class FileFault : std::uint8_t {
  not_found, ///< no such file, or the folder it should go to
  no_permission,
  read_only_file,   ///< it may not be written, though its folder may
  read_only_medium, ///<
  no_space,         ///< disk full or quota reached
  too_large,        ///< over the caller's limit, or over what the system lets a file grow to
  is_directory,
  not_regular_file, ///< a pipe, a device, a socket
  link_loop,        ///< symbolic links that lead round, or too many of them
  bad_name,         ///< empty, or with a NUL in it
  name_too_long,
  changed_while_reading,
  read_back_differs, ///< what was written does not read back the same
  not_durable,       ///< the new file is in place and whole, but may be lost if the power fails now
  no_resources,      ///< out of file descriptors or memory
  input_output,      ///< anything else; see the system's code
};

struct FileError {
  FileFault fault{};
  int system_code = 0; ///< errno; 0 if the fault is not the system's
  std::string path;    ///< the file as the caller named it

  friend bool operator==(const FileError&, const FileError&) = default;
};

/// The error for an errno value.
FileError file_error(int system_code, const std::filesystem::path& path);

} // namespace feedwright
