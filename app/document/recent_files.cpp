// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/recent_files.h"

#include <QSettings>

namespace feedwright {

namespace {

constexpr QLatin1String list_key("recent_machines");
constexpr QLatin1String remember_key("remember_recent_machines");

void store(const QStringList& paths) {
  QSettings settings;
  paths.isEmpty() ? settings.remove(list_key) : settings.setValue(list_key, paths);
  settings.sync();
}

} // namespace

QStringList RecentFiles::paths() {
  return QSettings().value(list_key).toStringList().mid(0, most);
}

void RecentFiles::add(const QString& path) {
  if (!remembers() || path.isEmpty()) {
    return;
  }
  QStringList list = paths();
  list.removeAll(path);
  list.prepend(path);
  store(list.mid(0, most));
}

void RecentFiles::remove(const QString& path) {
  QStringList list = paths();
  list.removeAll(path);
  store(list);
}

void RecentFiles::clear() {
  store({});
}

bool RecentFiles::remembers() {
  return QSettings().value(remember_key, true).toBool();
}

void RecentFiles::set_remembers(bool on) {
  QSettings settings;
  settings.setValue(remember_key, on);
  settings.sync();
  if (!on) {
    clear();
  }
}

} // namespace feedwright
