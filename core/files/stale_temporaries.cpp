// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/stale_temporaries.h"

#include "files/temporary_file.h"

#include <dirent.h>
#include <fcntl.h>
#include <sys/stat.h>

#include <chrono>
#include <memory>
#include <vector>

namespace feedwright {
namespace {

std::vector<std::string> temporary_names(DIR* listing) {
  std::vector<std::string> names;
  while (const dirent* entry = ::readdir(listing)) {
    if (is_temporary_name(entry->d_name)) {
      names.emplace_back(entry->d_name);
    }
  }
  return names;
}

bool is_stale(int folder, const std::string& name) {
  struct stat state {};
  if (::fstatat(folder, name.c_str(), &state, AT_SYMLINK_NOFOLLOW) != 0) {
    return false;
  }
  const auto changed = std::chrono::system_clock::from_time_t(state.st_mtim.tv_sec);
  return S_ISREG(state.st_mode) && state.st_uid == ::geteuid() &&
         std::chrono::system_clock::now() - changed > std::chrono::hours(24);
}

} // namespace

std::size_t sweep_stale_temporaries(const std::filesystem::path& folder) {
  const std::unique_ptr<DIR, int (*)(DIR*)> listing(::opendir(folder.c_str()), ::closedir);
  if (!listing) {
    return 0;
  }
  const int number = ::dirfd(listing.get());
  std::size_t removed = 0;
  for (const std::string& name : temporary_names(listing.get())) {
    if (is_stale(number, name) && ::unlinkat(number, name.c_str(), 0) == 0) {
      ++removed;
    }
  }
  return removed;
}

} // namespace feedwright
