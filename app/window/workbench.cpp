// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/workbench.h"

#include "document/machine_store.h"
#include "document/new_machine.h"
#include "document/recent_files.h"
#include "document/true_path.h"
#include "studies/studies_view.h"
#include "text/language.h"
#include "window/banner.h"
#include "window/window_place.h"

#include <QApplication>
#include <QSettings>

#include <algorithm>

namespace feedwright {

namespace {

constexpr QLatin1String theme_key("theme");
constexpr QLatin1String language_key("language");
constexpr QSize first_size(1280, 800);

Theme stored_theme(const QSettings& settings) {
  const int stored = settings.value(theme_key, 0).toInt();
  return stored >= 0 && stored <= static_cast<int>(Theme::dark) ? static_cast<Theme>(stored)
                                                                : Theme::system;
}

} // namespace

Workbench::Workbench(Autosave::Pace pace) : pace_(pace) {}

Workbench::~Workbench() = default;

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
  tidy_unsaved_folder();
  MainWindow& first = make_window(KeptDocument::of(new_machine(), pace_));
  show_in_last_place(first, first_size);
  open_first(path);
  offers_.look(first);
  return true;
}

void Workbench::open_first(const QString& path) {
  MainWindow& first = *windows_.front();
  if (path.startsWith(QLatin1String(":/"))) {
    first.open_sample(path);
    return;
  }
  if (!path.isEmpty()) {
    first.show_start_page(); // behind what is said of a file that cannot be read
    first.open_files({path});
    return;
  }
  // Nobody asked for the last file by name: if it is gone, or open in another run of the program,
  // the start page says enough.
  const QString last = RecentFiles::paths().value(0);
  auto loaded = load_machine(last);
  if (loaded && !FileClaim().claim(last)) {
    first.files().put(*std::move(loaded), last);
  } else {
    first.show_start_page();
  }
}

MainWindow* Workbench::window() const {
  auto* active = qobject_cast<MainWindow*>(QApplication::activeWindow());
  const auto is_active = [&](const auto& window) { return window.get() == active; };
  if (std::ranges::any_of(windows_, is_active)) {
    return active;
  }
  return windows_.empty() ? nullptr : windows_.back().get();
}

std::vector<MainWindow*> Workbench::windows() const {
  std::vector<MainWindow*> all;
  for (const auto& window : windows_) {
    all.push_back(window.get());
  }
  return all;
}

MainWindow* Workbench::showing(const QString& path) {
  const QString wanted = true_path(path);
  for (const auto& window : windows_) {
    const QString file = window->document().file_path();
    if (!file.isEmpty() && true_path(file) == wanted) {
      return window.get();
    }
  }
  return nullptr;
}

MainWindow& Workbench::another() {
  const MainWindow* present = window();
  const QRect place = present != nullptr ? present->geometry() : QRect(QPoint(), first_size);
  MainWindow& made = make_window(KeptDocument::of(new_machine(), pace_));
  // Beside the one before, not on top of it.
  const int step = 2 * made.fontMetrics().height();
  made.setGeometry(on_screen(place.translated(step, step), made));
  made.show();
  return made;
}

void Workbench::close_all() {
  for (MainWindow* window : windows()) {
    if (!window->close()) {
      return;
    }
  }
}

MainWindow& Workbench::make_window(KeptDocument kept) {
  windows_.push_back(std::make_unique<MainWindow>(std::move(kept)));
  MainWindow& window = *windows_.back();
  if (prompts_ != nullptr) {
    window.files().set_prompts(*prompts_);
  }
  window.set_windows(*this);
  window.mark_settings(theme_, language_);
  connect(&window, &MainWindow::theme_chosen, this, &Workbench::change_theme);
  connect(&window, &MainWindow::language_chosen, this, &Workbench::change_language,
          Qt::QueuedConnection);
  connect(&window, &MainWindow::machine_opened, this, [this, &window](const QString& path) {
    RecentFiles::add(path);
    if (!path.isEmpty()) {
      offers_.look_for_file(window, path);
    }
  });
  connect(&window, &MainWindow::closing, this, [this, &window] { let_go(window); });
  return window;
}

void Workbench::let_go(MainWindow& window) {
  remember_place(window);
  const bool was_offering = window.banner().speaks_of(RecoveryOffers::topic);
  const auto found =
      std::ranges::find_if(windows_, [&](const auto& kept) { return kept.get() == &window; });
  if (found != windows_.end()) {
    // It is in the middle of its own closing.
    found->release()->deleteLater();
    windows_.erase(found);
  }
  if (was_offering && !windows_.empty()) {
    offers_.offer(*windows_.front());
  }
}

void Workbench::change_language(const QString& code) {
  if (code == language_ || !use_language(code)) {
    return;
  }
  language_ = code;
  QSettings().setValue(language_key, code);
  std::vector<std::unique_ptr<MainWindow>> before;
  before.swap(windows_);
  for (const auto& window : before) {
    make_anew(*window);
  }
}

/// Every word of a window is made in the language: a new window says them all.
void Workbench::make_anew(MainWindow& before) {
  const QByteArray geometry = before.saveGeometry();
  const int study = before.studies().study();
  const QString help = before.shown_help();
  const bool start_page = before.is_on_start_page();
  const bool was_offering = before.banner().speaks_of(RecoveryOffers::topic);
  before.hide();
  MainWindow& window = make_window(before.release_document());
  window.restoreGeometry(geometry);
  window.studies().show_study(study);
  if (start_page) {
    window.show_start_page();
  }
  if (was_offering) {
    offers_.offer(window);
  }
  window.show();
  if (!help.isEmpty()) {
    window.show_help(help);
  }
}

void Workbench::change_theme(Theme theme) {
  theme_ = theme;
  QSettings().setValue(theme_key, static_cast<int>(theme));
  apply_theme(theme);
  for (const auto& window : windows_) {
    window->mark_settings(theme_, language_);
  }
}

} // namespace feedwright
