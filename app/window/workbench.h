// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/main_window.h"
#include "window/recovery_offers.h"
#include "window/windows.h"

#include <QObject>

#include <memory>
#include <vector>

namespace feedwright {

/// The windows and what outlives them: the settings, the documents when the language changes and
/// the windows are made anew, and what an earlier run did not live to save.
class Workbench : public QObject, public Windows {
  Q_OBJECT
public:
  explicit Workbench(Autosave::Pace pace = {});
  ~Workbench() override;

  /// Shows a window: on the machine at `path`, else on the last one, else on the start page. False
  /// if there is no such language; an empty one is that of the settings or the desktop.
  bool start(const QString& path, const QString& language);

  /// The window that was used last; nullptr when all are closed.
  MainWindow* window() const;
  std::vector<MainWindow*> windows() const;
  /// Answers in place of the dialogs of every window to come.
  void set_prompts(Prompts& prompts) { prompts_ = &prompts; }

  MainWindow* showing(const QString& path) override;
  MainWindow& another() override;
  void close_all() override;

private:
  void open_first(const QString& path);
  MainWindow& make_window(KeptDocument kept);
  void let_go(MainWindow& window);
  void change_language(const QString& code);
  void make_anew(MainWindow& before);
  void change_theme(Theme theme);

  Autosave::Pace pace_;
  std::vector<std::unique_ptr<MainWindow>> windows_;
  RecoveryOffers offers_{*this};
  Prompts* prompts_ = nullptr;
  QString language_;
  Theme theme_ = Theme::system;
};

} // namespace feedwright
