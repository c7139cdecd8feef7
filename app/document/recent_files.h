// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

namespace feedwright {

/// The machines opened or saved last, latest first, in the settings and stored at once. Never looks
/// whether they are still there: a folder on a network that is gone would stop the window.
class RecentFiles {
public:
  static constexpr qsizetype most = 10;

  static QStringList paths();
  static void add(const QString& path);
  static void remove(const QString& path);
  static void clear();

  static bool remembers();
  /// Off forgets everything, the machine last worked on included.
  static void set_remembers(bool on);
};

} // namespace feedwright
