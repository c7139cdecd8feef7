// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/file_error.h"

#include <cerrno>

namespace feedwright {
namespace {

FileFault fault_of(int system_code) {
  switch (system_code) {
  case ENOENT:
  case ENOTDIR: return FileFault::not_found;
  case EACCES:
  case EPERM: return FileFault::no_permission;
  case EROFS: return FileFault::read_only_medium;
  case ENOSPC:
  case EDQUOT: return FileFault::no_space;
  case EFBIG:
  case EOVERFLOW: return FileFault::too_large;
  case EISDIR: return FileFault::is_directory;
  case ENXIO:
  case ENODEV: return FileFault::not_regular_file;
  case ELOOP: return FileFault::link_loop;
  case ENAMETOOLONG: return FileFault::name_too_long;
  case EMFILE:
  case ENFILE:
  case ENOMEM: return FileFault::no_resources;
  default: return FileFault::input_output;
  }
}

} // namespace

FileError file_error(int system_code, const std::filesystem::path& path) {
  return {fault_of(system_code), system_code, path.string()};
}

} // namespace feedwright
