// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/read_file.h"

#include "files/file_descriptor.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>

namespace feedwright {
namespace {

using Failure = tl::unexpected<FileError>;

Failure because(FileFault fault, const std::filesystem::path& path) {
  return Failure(FileError{fault, 0, path.string()});
}

bool same_state(const struct stat& a, const struct stat& b) {
  const auto same_time = [](const timespec& s, const timespec& t) {
    return s.tv_sec == t.tv_sec && s.tv_nsec == t.tv_nsec;
  };
  return a.st_size == b.st_size && same_time(a.st_mtim, b.st_mtim);
}

/// Looks before opening: opening some devices does something. Looks again at what was opened.
tl::expected<FileDescriptor, FileError> open_regular(const std::filesystem::path& path,
                                                     struct stat& state) {
  if (path.empty() || path.native().find('\0') != std::string::npos) {
    return because(FileFault::bad_name, path);
  }
  if (::stat(path.c_str(), &state) != 0) {
    return Failure(file_error(errno, path));
  }
  if (S_ISDIR(state.st_mode)) {
    return because(FileFault::is_directory, path);
  }
  if (!S_ISREG(state.st_mode)) {
    return because(FileFault::not_regular_file, path);
  }
  FileDescriptor file(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
  if (!file.valid() || ::fstat(file.number(), &state) != 0) {
    return Failure(file_error(errno, path));
  }
  if (!S_ISREG(state.st_mode)) {
    return because(FileFault::not_regular_file, path);
  }
  return file;
}

/// Appends up to `most` bytes; the errno value of a failure, 0 otherwise.
int append(int file, std::size_t most, std::string& bytes) {
  constexpr std::size_t chunk = std::size_t{256} << 10U;
  while (bytes.size() < most) {
    const std::size_t had = bytes.size();
    const std::size_t wanted = std::min(chunk, most - had);
    bytes.resize(had + wanted);
    const ssize_t got = ::read(file, bytes.data() + had, wanted);
    const int code = errno;
    bytes.resize(had + (got > 0 ? static_cast<std::size_t>(got) : 0));
    if (got == 0) {
      return 0;
    }
    if (got < 0 && code != EINTR) {
      return code;
    }
  }
  return 0;
}

} // namespace

tl::expected<std::string, FileError> read_file(const std::filesystem::path& path,
                                               std::size_t limit) {
  struct stat before {};
  tl::expected<FileDescriptor, FileError> file = open_regular(path, before);
  if (!file) {
    return Failure(std::move(file.error()));
  }
  const auto size = static_cast<std::size_t>(before.st_size);
  if (size > limit) {
    return because(FileFault::too_large, path);
  }
  std::string bytes;
  bytes.reserve(size + 1);
  // One byte more than is expected shows a file that grew.
  const int code = append(file->number(), size + 1, bytes);
  if (code != 0) {
    return Failure(file_error(code, path));
  }
  struct stat after {};
  if (::fstat(file->number(), &after) != 0) {
    return Failure(file_error(errno, path));
  }
  if (bytes.size() != size || !same_state(before, after)) {
    return because(FileFault::changed_while_reading, path);
  }
  return bytes;
}

} // namespace feedwright
