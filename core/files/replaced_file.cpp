// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/replaced_file.h"

#include <fcntl.h>

#include <cerrno>

namespace feedwright {
namespace {

namespace fs = std::filesystem;
using Failure = tl::unexpected<FileError>;

/// `path` with the links of its last component followed. The folders' links are the system's
/// business. A link that leads nowhere gives the place it names.
tl::expected<fs::path, FileError> follow_links(const fs::path& path) {
  constexpr int most = 40; // as the system itself allows
  fs::path at = path;
  for (int links = 0; links <= most; ++links) {
    std::error_code error;
    const fs::file_status status = fs::symlink_status(at, error);
    if (status.type() == fs::file_type::none) {
      return Failure(file_error(error.value(), path));
    }
    if (status.type() != fs::file_type::symlink) {
      return at;
    }
    const fs::path target = fs::read_symlink(at, error);
    if (error) {
      return Failure(file_error(error.value(), path));
    }
    at = at.parent_path() / target; // an absolute target replaces the whole
  }
  return Failure(FileError{FileFault::link_loop, ELOOP, path.string()});
}

/// A folder that may be used but not read can still be written to.
FileDescriptor open_folder(const fs::path& folder) {
  const char* name = folder.empty() ? "." : folder.c_str();
  const int readable = ::open(name, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (readable >= 0 || errno != EACCES) {
    return FileDescriptor(readable);
  }
  return FileDescriptor(::open(name, O_PATH | O_DIRECTORY | O_CLOEXEC));
}

std::optional<FileError> refusal(const ReplacedFile& file, const fs::path& path) {
  const auto because = [&](FileFault fault, int code) {
    return FileError{fault, code, path.string()};
  };
  const mode_t mode = file.state->st_mode;
  if (S_ISDIR(mode)) {
    return because(FileFault::is_directory, 0);
  }
  if (!S_ISREG(mode)) {
    return because(FileFault::not_regular_file, 0);
  }
  // The superuser may write anything; a file marked read-only is meant to stay all the same.
  if ((mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0) {
    return because(FileFault::read_only_file, 0);
  }
  if (::faccessat(file.folder.number(), file.name.c_str(), W_OK, AT_EACCESS) != 0) {
    const int code = errno;
    return code == EACCES ? because(FileFault::read_only_file, code) : file_error(code, path);
  }
  return std::nullopt;
}

} // namespace

tl::expected<ReplacedFile, FileError> find_replaced_file(const fs::path& path) {
  if (path.empty() || path.native().find('\0') != std::string::npos) {
    return Failure(FileError{FileFault::bad_name, 0, path.string()});
  }
  const tl::expected<fs::path, FileError> place = follow_links(path);
  if (!place) {
    return Failure(place.error());
  }
  const std::string name = place->filename().string();
  if (name.empty() || name == "." || name == "..") {
    return Failure(FileError{FileFault::is_directory, 0, path.string()});
  }
  ReplacedFile file{open_folder(place->parent_path()), name, std::nullopt};
  if (!file.folder.valid()) {
    return Failure(file_error(errno, path));
  }
  struct stat state {};
  if (::fstatat(file.folder.number(), name.c_str(), &state, AT_SYMLINK_NOFOLLOW) != 0) {
    const int code = errno;
    return code == ENOENT ? tl::expected<ReplacedFile, FileError>(std::move(file))
                          : Failure(file_error(code, path));
  }
  file.state = state;
  if (std::optional<FileError> refused = refusal(file, path)) {
    return Failure(std::move(*refused));
  }
  return file;
}

} // namespace feedwright
