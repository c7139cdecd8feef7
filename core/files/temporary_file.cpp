// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/temporary_file.h"

#include <fcntl.h>
#include <sys/random.h>

#include <array>
#include <cerrno>
#include <climits>

namespace feedwright {
namespace {

constexpr std::string_view mark = ".feedwright-";
constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz0123456789";
constexpr std::size_t suffix_length = 6;

/// False, with errno set, if the system has no random bytes.
bool append_random_letters(std::string& name) {
  std::array<unsigned char, suffix_length> random{};
  if (::getrandom(random.data(), random.size(), 0) != static_cast<ssize_t>(random.size())) {
    return false;
  }
  for (const unsigned char byte : random) {
    name += letters[byte % letters.size()];
  }
  return true;
}

/// The start of `name` that leaves room for the rest, cut between characters.
std::string_view shortened(std::string_view name, std::size_t most) {
  if (name.size() <= most) {
    return name;
  }
  while (most > 0 && (static_cast<unsigned char>(name[most]) & 0xC0U) == 0x80U) {
    --most;
  }
  return name.substr(0, most);
}

std::size_t longest_name(const FileDescriptor& folder) {
  const long most = ::fpathconf(folder.number(), _PC_NAME_MAX);
  return most > 0 ? static_cast<std::size_t>(most) : NAME_MAX;
}

} // namespace

TemporaryFile::TemporaryFile(const FileDescriptor& folder, std::string_view name, mode_t mode)
    : folder_(folder), file_(-1) {
  const std::size_t added = 1 + mark.size() + suffix_length;
  const std::size_t most = longest_name(folder);
  // A file name that the system would refuse is not made to fit here.
  if (name.size() > most || most <= added) {
    errno = ENAMETOOLONG;
    return;
  }
  constexpr int tries = 100;
  for (int i = 0; i < tries && !file_.valid(); ++i) {
    std::string own(1, '.');
    own += shortened(name, most - added);
    own += mark;
    if (!append_random_letters(own)) {
      return;
    }
    const int flags = O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC;
    const int number = ::openat(folder.number(), own.c_str(), flags, mode);
    if (number >= 0) {
      file_.adopt(number);
      name_ = std::move(own);
    } else if (errno != EEXIST && errno != EINTR) {
      return;
    }
  }
}

TemporaryFile::~TemporaryFile() {
  if (!name_.empty()) {
    const int code = errno; // the failure that led here is still to be told
    ::unlinkat(folder_.number(), name_.c_str(), 0);
    errno = code;
  }
}

bool TemporaryFile::rename_to(const std::string& name) {
  if (::renameat(folder_.number(), name_.c_str(), folder_.number(), name.c_str()) != 0) {
    return false;
  }
  name_.clear();
  return true;
}

bool is_temporary_name(std::string_view name) {
  if (name.size() <= 1 + mark.size() + suffix_length || !name.starts_with('.')) {
    return false;
  }
  const std::string_view suffix = name.substr(name.size() - suffix_length);
  name.remove_suffix(suffix_length);
  return name.ends_with(mark) && suffix.find_first_not_of(letters) == std::string_view::npos;
}

} // namespace feedwright
