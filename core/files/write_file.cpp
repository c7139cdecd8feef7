// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/write_file.h"

#include "files/replaced_file.h"
#include "files/temporary_file.h"

#include <array>
#include <cerrno>

namespace feedwright {
namespace {

using Failure = tl::unexpected<FileError>;

/// 0, or the errno value of the write that failed.
int write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(file, bytes.data(), bytes.size());
    if (written == 0) {
      return EIO;
    }
    if (written < 0 && errno != EINTR) {
      return errno;
    }
    bytes.remove_prefix(written > 0 ? static_cast<std::size_t>(written) : 0);
  }
  return 0;
}

/// Reads the file from its start; false if it holds anything but `bytes` or cannot be read.
bool holds(int file, std::string_view bytes) {
  std::array<char, std::size_t{64} << 10U> chunk{};
  std::size_t at = 0;
  for (;;) {
    const ssize_t got = ::pread(file, chunk.data(), chunk.size(), static_cast<off_t>(at));
    if (got < 0 && errno == EINTR) {
      continue;
    }
    if (got <= 0) {
      return got == 0 && at == bytes.size();
    }
    const std::string_view read(chunk.data(), static_cast<std::size_t>(got));
    if (bytes.substr(at, read.size()) != read) {
      return false;
    }
    at += read.size();
  }
}

/// Owner and group of the file replaced, as far as permitted. Rights of a group that could not be
/// kept go to nobody rather than to the writer's own group.
mode_t take_over_owner(int file, const struct stat& old, const struct stat& now) {
  const mode_t mode = old.st_mode & 07777U;
  if (old.st_uid == now.st_uid && old.st_gid == now.st_gid) {
    return mode;
  }
  if (::fchown(file, old.st_uid, old.st_gid) == 0 ||
      ::fchown(file, static_cast<uid_t>(-1), old.st_gid) == 0) {
    return mode;
  }
  return old.st_gid == now.st_gid ? mode : mode & ~mode_t{S_ISGID | S_IRWXG};
}

/// 0, or an errno value.
int take_over_rights(int file, const std::optional<struct stat>& old) {
  if (!old) {
    return 0;
  }
  struct stat now {};
  if (::fstat(file, &now) != 0) {
    return errno;
  }
  const mode_t mode = take_over_owner(file, *old, now);
  return (now.st_mode & 07777U) == mode || ::fchmod(file, mode) == 0 ? 0 : errno;
}

/// Whether a rename in the folder will outlast a power failure.
bool made_durable(const FileDescriptor& folder) {
  // EINVAL: a file system without such a thing. EBADF: a folder that may not be read, only used.
  return ::fsync(folder.number()) == 0 || errno == EINVAL || errno == EBADF;
}

} // namespace

tl::expected<void, FileError> write_file(const std::filesystem::path& path,
                                         std::string_view bytes) {
  const auto because = [&](int code) { return Failure(file_error(code, path)); };
  tl::expected<ReplacedFile, FileError> target = find_replaced_file(path);
  if (!target) {
    return Failure(std::move(target.error()));
  }
  TemporaryFile temporary(target->folder, target->name, target->state ? 0600 : 0666);
  if (!temporary.valid()) {
    return because(errno);
  }
  if (const int code = write_all(temporary.number(), bytes); code != 0) {
    return because(code);
  }
  if (const int code = take_over_rights(temporary.number(), target->state); code != 0) {
    return because(code);
  }
  if (::fsync(temporary.number()) != 0) {
    return because(errno);
  }
  if (!holds(temporary.number(), bytes)) {
    return Failure(FileError{FileFault::read_back_differs, 0, path.string()});
  }
  if (!temporary.close() || !temporary.rename_to(target->name)) {
    return because(errno);
  }
  if (!made_durable(target->folder)) {
    return Failure(FileError{FileFault::not_durable, errno, path.string()});
  }
  return {};
}

} // namespace feedwright
