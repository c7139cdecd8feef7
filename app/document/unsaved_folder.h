// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The folder of unsaved copies. Each copy has a lock file beside it, held by the process it belongs
// to: a copy whose lock nobody holds was left behind.

#include "document/unsaved_copy.h"
#include "files/file_error.h"

#include <tl/expected.hpp>

#include <QString>

#include <memory>
#include <vector>

class QLockFile;

namespace feedwright {

/// A place for one copy, held against every other instance while this object lives. The copy
/// itself outlives it.
class CopyPlace {
public:
  /// A new place; nullptr if the folder cannot be had.
  static std::unique_ptr<CopyPlace> make();
  /// That of a copy left behind; nullptr if a living process holds it.
  static std::unique_ptr<CopyPlace> take(const QString& path);
  ~CopyPlace();
  CopyPlace(const CopyPlace&) = delete;
  CopyPlace& operator=(const CopyPlace&) = delete;

  tl::expected<void, FileError> write(std::string_view bytes) const;
  void remove() const;
  /// Puts the copy among the discarded ones, where it stays for 30 days.
  void discard() const;
  const QString& path() const { return path_; }

private:
  CopyPlace(QString path, std::unique_ptr<QLockFile> lock);

  QString path_;
  std::unique_ptr<QLockFile> lock_;
};

struct LeftCopy {
  std::unique_ptr<CopyPlace> place;
  UnsavedCopy copy;
};

QString unsaved_folder();
QString discarded_folder();

/// The copies that no living process holds, oldest first; from now on held by this one. What cannot
/// be read stays where it is.
std::vector<LeftCopy> take_left_copies();

/// Removes what was discarded more than 30 days ago and what a killed writer left half written.
void tidy_unsaved_folder();

} // namespace feedwright
