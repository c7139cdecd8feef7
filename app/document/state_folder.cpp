// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/state_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace feedwright {

QString state_folder() {
  // The specification bids us ignore a relative path.
  const QString given = qEnvironmentVariable("XDG_STATE_HOME");
  const QString base =
      QDir::isAbsolutePath(given) ? given : QDir::home().filePath(QStringLiteral(".local/state"));
  return QDir(base).filePath(QStringLiteral("feedwright"));
}

bool make_private_folder(const QString& path) {
  if (QFileInfo(path).isDir()) {
    return true;
  }
  return QDir().mkpath(path) &&
         QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
}

} // namespace feedwright
