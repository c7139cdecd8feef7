// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <memory>
#include <optional>

class QLockFile;

namespace feedwright {

/// Who has a file open.
struct FileHolder {
  QString user; ///< empty if unknown
  QString host;
  qint64 process = 0;
};

/// One document's claim on its file, so that two windows do not save over each other. A lock file
/// beside the file, or in the program's own folder where that may not be written. A claim of a
/// killed process does not count.
class FileClaim {
public:
  FileClaim();
  ~FileClaim();

  /// Claims the file in place of the one claimed before; an empty path claims nothing. Gives the
  /// holder if somebody else has it: then the earlier claim stands. Where no lock file can be
  /// made at all, the file counts as free.
  std::optional<FileHolder> claim(const QString& path);

private:
  QString path_;
  std::unique_ptr<QLockFile> lock_;
};

} // namespace feedwright
