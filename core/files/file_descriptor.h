// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <unistd.h>

#include <utility>

namespace feedwright {

/// Owns a POSIX file descriptor.
class FileDescriptor {
public:
  explicit FileDescriptor(int number) : number_(number) {}
  FileDescriptor(FileDescriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  FileDescriptor& operator=(FileDescriptor&&) = delete;
  ~FileDescriptor() { close(); }

  bool valid() const { return number_ >= 0; }
  int number() const { return number_; }

  /// Owns `number` instead of what it owned.
  void adopt(int number) {
    close();
    number_ = number;
  }

  /// False, with errno set, if the system reports trouble. The descriptor is gone either way.
  bool close() {
    const int number = std::exchange(number_, -1);
    return number < 0 || ::close(number) == 0;
  }

private:
  int number_;
};

} // namespace feedwright
