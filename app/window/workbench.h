// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/main_window.h"

#include <QObject>

#include <memory>

namespace feedwright {

/// The window and what outlives it: the settings, and the document when the language changes and
/// the window is made anew.
class Workbench : public QObject {
  Q_OBJECT
public:
  /// Shows the window: on the machine at `path`, else on the last one, else on a sample. False if
  /// there is no such language; an empty one is that of the settings or the desktop.
  bool start(const QString& path, const QString& language);

  MainWindow* window() { return window_.get(); }

private:
  void open_first(const QString& path);
  void make_window(std::unique_ptr<MachineDocument> document);
  void change_language(const QString& code);
  void change_theme(Theme theme);

  std::unique_ptr<MainWindow> window_;
  QString language_;
  Theme theme_ = Theme::system;
};

} // namespace feedwright
