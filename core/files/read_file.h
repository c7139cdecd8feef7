// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "files/file_error.h"

#include <tl/expected.hpp>

namespace feedwright {

/// The bytes of a regular file (symbolic links followed) of at most `limit` bytes. Never waits on a
/// pipe, never takes more memory than `limit` and a little. `changed_while_reading` if the file's
/// size or time of change moved meanwhile.
tl::expected<std::string, FileError> read_file(const std::filesystem::path& path,
                                               std::size_t limit);

} // namespace feedwright
