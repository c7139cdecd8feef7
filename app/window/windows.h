// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QString;

namespace feedwright {

class MainWindow;

/// The program's windows, as one of them sees the others.
class Windows {
public:
  Windows() = default;
  Windows(const Windows&) = delete;
  Windows& operator=(const Windows&) = delete;
  virtual ~Windows() = default;

  /// The window whose machine is of this file; nullptr if there is none.
  virtual MainWindow* showing(const QString& path) = 0;
  /// One more window, shown, on a new machine.
  virtual MainWindow& another() = 0;
  /// Closes all windows, each asking about its own changes, until one is kept.
  virtual void close_all() = 0;
};

} // namespace feedwright
