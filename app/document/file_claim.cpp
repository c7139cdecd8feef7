// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/file_claim.h"

#include "document/state_folder.h"
#include "document/true_path.h"
#include "files/content_fingerprint.h"

#include <QDir>
#include <QFileInfo>
#include <QLockFile>

namespace feedwright {

namespace {

QString lock_beside(const QString& path) {
  const QFileInfo file(path);
  return file.dir().filePath(QLatin1Char('.') + file.fileName() + QStringLiteral(".lock"));
}

QString lock_apart(const QString& path) {
  const QDir folder(state_folder() + QStringLiteral("/locks"));
  make_private_folder(folder.path());
  return folder.filePath(QString::fromStdString(content_fingerprint(path.toStdString())) +
                         QStringLiteral(".lock"));
}

std::unique_ptr<QLockFile> lock_at(const QString& place) {
  auto lock = std::make_unique<QLockFile>(place);
  lock->setStaleLockTime(0);
  lock->tryLock(0);
  return lock;
}

FileHolder holder_of(const QLockFile& lock) {
  FileHolder holder;
  QString program;
  lock.getLockInfo(&holder.process, &holder.host, &program);
  holder.user = QFileInfo(lock.fileName()).owner();
  return holder;
}

} // namespace

FileClaim::FileClaim() = default;
FileClaim::~FileClaim() = default;

std::optional<FileHolder> FileClaim::claim(const QString& path) {
  const QString wanted = true_path(path);
  if (wanted == path_) {
    return std::nullopt;
  }
  std::unique_ptr<QLockFile> lock;
  if (!wanted.isEmpty()) {
    lock = lock_at(lock_beside(wanted));
    if (lock->error() == QLockFile::PermissionError || lock->error() == QLockFile::UnknownError) {
      lock = lock_at(lock_apart(wanted));
    }
    if (lock->error() == QLockFile::LockFailedError) {
      return holder_of(*lock);
    }
  }
  path_ = wanted;
  lock_ = std::move(lock);
  return std::nullopt;
}

} // namespace feedwright
