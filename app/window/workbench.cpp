// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/workbench.h"

#include "document/new_machine.h"
#include "studies/studies_view.h"
#include "text/language.h"

#include <QFile>
#include <QSettings>

namespace feedwright {

namespace {

constexpr QLatin1String theme_key("theme");
constexpr QLatin1String language_key("language");
constexpr QLatin1String last_key("last_machine");
constexpr QLatin1String geometry_key("geometry");
constexpr QLatin1String first_sample(":/sample-machines/plank-router.feedwright");
constexpr QSize first_size(1280, 800);

Theme stored_theme(const QSettings& settings) {
  const int stored = settings.value(theme_key, 0).toInt();
  return stored >= 0 && stored <= static_cast<int>(Theme::dark) ? static_cast<Theme>(stored)
                                                                : Theme::system;
}

} // namespace

bool Workbench::start(const QString& path, const QString& language) {
  const QSettings settings;
  language_ = settings.value(language_key, language_of_desktop()).toString();
  if (!language.isEmpty()) {
    language_ = language;
  }
  if (!use_language(language_)) {
    if (!language.isEmpty()) {
      return false;
    }
    // A stored language that is no longer there.
    language_ = QStringLiteral("en");
    use_language(language_);
  }
  theme_ = stored_theme(settings);
  apply_theme(theme_);
  make_window(std::make_unique<MachineDocument>(new_machine()));
  window_->resize(first_size);
  window_->restoreGeometry(settings.value(geometry_key).toByteArray());
  window_->show();
  open_first(path);
  return true;
}

void Workbench::open_first(const QString& path) {
  const QString last = QSettings().value(last_key).toString();
  const QString wanted = !path.isEmpty()                          ? path
                         : !last.isEmpty() && QFile::exists(last) ? last
                                                                  : QString(first_sample);
  if (window_->files().open(wanted) && wanted.startsWith(QLatin1String(":/"))) {
    window_->suggest_a_change();
  }
}

void Workbench::make_window(std::unique_ptr<MachineDocument> document) {
  window_ = std::make_unique<MainWindow>(std::move(document));
  window_->mark_settings(theme_, language_);
  connect(window_.get(), &MainWindow::theme_chosen, this, &Workbench::change_theme);
  connect(window_.get(), &MainWindow::language_chosen, this, &Workbench::change_language,
          Qt::QueuedConnection);
  connect(window_.get(), &MainWindow::machine_opened, this, [](const QString& path) {
    if (!path.isEmpty()) {
      QSettings().setValue(last_key, path);
    }
  });
  connect(window_.get(), &MainWindow::closing, this,
          [this] { QSettings().setValue(geometry_key, window_->saveGeometry()); });
}

void Workbench::change_language(const QString& code) {
  if (code == language_ || !use_language(code)) {
    return;
  }
  language_ = code;
  QSettings().setValue(language_key, code);
  // Every word of the window is made in the language: a new window says them all.
  const QByteArray geometry = window_->saveGeometry();
  const int study = window_->studies().study();
  const QString help = window_->shown_help();
  std::unique_ptr<MachineDocument> document = window_->release_document();
  make_window(std::move(document));
  window_->restoreGeometry(geometry);
  window_->show_study(study);
  window_->show();
  if (!help.isEmpty()) {
    window_->show_help(help);
  }
}

void Workbench::change_theme(Theme theme) {
  theme_ = theme;
  QSettings().setValue(theme_key, static_cast<int>(theme));
  apply_theme(theme);
}

} // namespace feedwright
