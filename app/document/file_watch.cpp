// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/file_watch.h"

#include "document/machine_store.h"

#include <QFileInfo>

namespace feedwright {

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  constexpr int settling_ms = 150;
  settling_.setInterval(settling_ms);
  settling_.setSingleShot(true);
  connect(&settling_, &QTimer::timeout, this, &FileWatch::look);
  connect(&watcher_, &QFileSystemWatcher::fileChanged, &settling_, qOverload<>(&QTimer::start));
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, &settling_,
          qOverload<>(&QTimer::start));
}

void FileWatch::watch(const QString& path, const QString& fingerprint) {
  if (!watcher_.files().isEmpty()) {
    watcher_.removePaths(watcher_.files());
  }
  if (!watcher_.directories().isEmpty()) {
    watcher_.removePaths(watcher_.directories());
  }
  path_ = path;
  known_ = fingerprint;
  if (!path.isEmpty()) {
    add_paths();
  }
}

void FileWatch::add_paths() {
  // A file replaced by another of its name is no longer watched; its folder still is.
  watcher_.addPath(path_);
  watcher_.addPath(QFileInfo(path_).absolutePath());
}

void FileWatch::look() {
  if (path_.isEmpty()) {
    return;
  }
  add_paths();
  const QString now = fingerprint_of_file(path_);
  if (now.isEmpty() || now == known_) {
    return;
  }
  known_ = now;
  emit changed_outside();
}

} // namespace feedwright
