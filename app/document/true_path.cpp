// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/true_path.h"

#include <QDir>
#include <QFileInfo>

namespace feedwright {

QString true_path(const QString& path) {
  if (path.isEmpty()) {
    return {};
  }
  const QFileInfo file(path);
  if (QString found = file.canonicalFilePath(); !found.isEmpty()) {
    return found;
  }
  const QString folder = file.dir().canonicalPath();
  return folder.isEmpty() ? file.absoluteFilePath() : QDir(folder).filePath(file.fileName());
}

bool same_file(const QString& a, const QString& b) {
  return a == b || true_path(a) == true_path(b);
}

} // namespace feedwright
