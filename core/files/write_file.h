// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The one place where files are written. POSIX.

#include "files/file_error.h"

#include <tl/expected.hpp>

#include <string_view>

namespace feedwright {

/// Puts a file with these bytes at `path`, whole or not at all, whatever interrupts it: a full
/// disk, a quota, a kill. On every error but `not_durable` an old file stays as it was, byte for
/// byte, and nothing is left beside it.
///
/// Symbolic links are followed and stay; what they point to is replaced, or made. The mode, and the
/// owner and group as far as permitted, are those of the file replaced; a new file gets what the
/// umask leaves of 0666. Other hard links to the file keep the old bytes. Only regular files are
/// replaced, and only if they may be written.
tl::expected<void, FileError> write_file(const std::filesystem::path& path, std::string_view bytes);

} // namespace feedwright
