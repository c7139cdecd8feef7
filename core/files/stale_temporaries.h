// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>

namespace feedwright {

/// Removes temporary files that a killed writer left in the folder: regular files named as
/// write_file names them, the caller's own, unchanged for a day. Says how many went; what cannot
/// be removed stays.
std::size_t sweep_stale_temporaries(const std::filesystem::path& folder);

} // namespace feedwright
