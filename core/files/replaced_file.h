// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "files/file_descriptor.h"
#include "files/file_error.h"

#include <sys/stat.h>

#include <tl/expected.hpp>

#include <optional>

namespace feedwright {

/// Where a file is to be put: all links followed, and what stands there now.
struct ReplacedFile {
  FileDescriptor folder;
  std::string name;                 ///< in the folder
  std::optional<struct stat> state; ///< of the file there; nothing if there is none yet
};

/// Refuses all that write_file must not replace.
tl::expected<ReplacedFile, FileError> find_replaced_file(const std::filesystem::path& path);

} // namespace feedwright
