// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/unsaved_folder.h"

#include "document/state_folder.h"
#include "files/read_file.h"
#include "files/stale_temporaries.h"
#include "files/write_file.h"

#include <QDir>
#include <QLockFile>
#include <QUuid>

#include <algorithm>

namespace feedwright {

namespace {

constexpr QLatin1String copy_ending(".json");
constexpr QLatin1String lock_ending(".lock");
constexpr int days_kept = 30;
/// A machine at its largest, and what stands round it.
constexpr std::size_t largest_copy = std::size_t{9} << 20U;

std::filesystem::path native(const QString& path) {
  return {QFile::encodeName(path).toStdString()};
}

std::unique_ptr<QLockFile> locked(const QString& copy) {
  auto lock = std::make_unique<QLockFile>(copy.chopped(copy_ending.size()) + lock_ending);
  // Age says nothing: a window may stand open for weeks.
  lock->setStaleLockTime(0);
  return lock->tryLock(0) ? std::move(lock) : nullptr;
}

QFileInfoList listed(const QString& folder, QLatin1String ending) {
  return QDir(folder).entryInfoList({QLatin1Char('*') + ending}, QDir::Files, QDir::Name);
}

} // namespace

QString unsaved_folder() {
  return QDir(state_folder()).filePath(QStringLiteral("unsaved"));
}

QString discarded_folder() {
  return QDir(unsaved_folder()).filePath(QStringLiteral("discarded"));
}

CopyPlace::CopyPlace(QString path, std::unique_ptr<QLockFile> lock)
    : path_(std::move(path)), lock_(std::move(lock)) {}

CopyPlace::~CopyPlace() = default;

std::unique_ptr<CopyPlace> CopyPlace::make() {
  if (!make_private_folder(unsaved_folder())) {
    return nullptr;
  }
  const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces) + copy_ending;
  return take(QDir(unsaved_folder()).filePath(name));
}

std::unique_ptr<CopyPlace> CopyPlace::take(const QString& path) {
  auto lock = locked(path);
  return lock == nullptr ? nullptr
                         : std::unique_ptr<CopyPlace>(new CopyPlace(path, std::move(lock)));
}

tl::expected<void, FileError> CopyPlace::write(std::string_view bytes) const {
  return write_file(native(path_), bytes);
}

void CopyPlace::remove() const {
  QFile::remove(path_);
}

void CopyPlace::discard() const {
  if (!make_private_folder(discarded_folder())) {
    return;
  }
  // Its days are counted from now, not from when it was written.
  std::error_code ignored;
  std::filesystem::last_write_time(native(path_), std::filesystem::file_time_type::clock::now(),
                                   ignored);
  QFile::rename(path_, QDir(discarded_folder()).filePath(QFileInfo(path_).fileName()));
}

std::vector<LeftCopy> take_left_copies() {
  std::vector<LeftCopy> left;
  for (const QFileInfo& file : listed(unsaved_folder(), copy_ending)) {
    auto place = CopyPlace::take(file.filePath());
    const auto bytes = place != nullptr ? read_file(native(file.filePath()), largest_copy)
                                        : tl::unexpected(FileError{});
    auto copy = bytes ? read_unsaved_copy(*bytes) : std::nullopt;
    if (copy) {
      left.push_back({std::move(place), *std::move(copy)});
    }
  }
  std::ranges::stable_sort(
      left, [](const LeftCopy& a, const LeftCopy& b) { return a.copy.time < b.copy.time; });
  return left;
}

void tidy_unsaved_folder() {
  const QDateTime oldest = QDateTime::currentDateTimeUtc().addDays(-days_kept);
  for (const QFileInfo& file : listed(discarded_folder(), copy_ending)) {
    if (file.lastModified() < oldest) {
      QFile::remove(file.filePath());
    }
  }
  // Taking a lock nobody holds, and letting it go, removes its file.
  for (const QFileInfo& file : listed(unsaved_folder(), lock_ending)) {
    CopyPlace::take(file.filePath().chopped(lock_ending.size()) + copy_ending);
  }
  sweep_stale_temporaries(native(unsaved_folder()));
}

} // namespace feedwright
