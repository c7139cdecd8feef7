// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "files/file_descriptor.h"

#include <sys/types.h>

#include <string>
#include <string_view>

namespace feedwright {

/// A file of its own beside the one it is to replace, named .<name>.feedwright-XXXXXX. Removed
/// again unless it was renamed.
class TemporaryFile {
public:
  /// `folder` must outlive it. If it cannot be made it is not valid, and errno says why.
  TemporaryFile(const FileDescriptor& folder, std::string_view name, mode_t mode);
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile();

  bool valid() const { return file_.valid(); }
  int number() const { return file_.number(); }
  /// False, with errno set, on failure.
  bool close() { return file_.close(); }
  /// Takes the place of `name` in the folder. False, with errno set, on failure.
  bool rename_to(const std::string& name);

private:
  const FileDescriptor& folder_;
  std::string name_; ///< empty once there is nothing to remove
  FileDescriptor file_;
};

/// Whether write_file could have named a temporary file so.
bool is_temporary_name(std::string_view name);

} // namespace feedwright
