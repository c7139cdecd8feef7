// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

namespace feedwright {

/// Notices when somebody else changes the file. The content decides, not the time.
class FileWatch : public QObject {
  Q_OBJECT
public:
  explicit FileWatch(QObject* parent = nullptr);

  /// Watches the file from now on, known by the fingerprint of its bytes; an empty path watches
  /// nothing.
  void watch(const QString& path, const QString& fingerprint);
  /// Looks now, without waiting for the system's notice.
  void look();

signals:
  /// The file's bytes are others than those known; told once for the same bytes.
  void changed_outside();

private:
  void add_paths();

  QFileSystemWatcher watcher_;
  QTimer settling_;
  QString path_;
  QString known_;
};

} // namespace feedwright
