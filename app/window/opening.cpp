// SPDX-License-Identifier: GPL-3.0-or-later

// Which window a machine comes into, what is dropped onto one, and the page a window without a
// machine begins with.

#include "document/axis_clip.h"
#include "document/new_machine.h"
#include "document/recent_files.h"
#include "help/help_topics.h"
#include "window/banner.h"
#include "window/main_window.h"
#include "window/start_page.h"
#include "window/windows.h"

#include <QDragEnterEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QStackedWidget>
#include <QUrl>

#include <algorithm>

namespace feedwright {

bool MainWindow::is_pristine() const {
  return document_->file_path().isEmpty() && !document_->is_modified() &&
         document_->undo_stack()->count() == 0 && document_->pending().empty();
}

MainWindow& MainWindow::window_for_another() {
  // What is just being typed here belongs to this machine, and makes it one to be kept.
  document_->gather_typed();
  return windows_ == nullptr || is_pristine() ? *this : windows_->another();
}

void MainWindow::open_files(const QStringList& paths) {
  for (const QString& path : paths) {
    if (MainWindow* there = windows_ != nullptr ? windows_->showing(path) : nullptr) {
      there->come_forward();
      continue;
    }
    if (windows_ == nullptr && !files_->may_leave()) {
      return;
    }
    // Read first: a file that is none leaves no empty window behind.
    if (auto read = files_->read(path)) {
      MainWindow& window = window_for_another();
      window.files().put(*std::move(read), path);
      window.come_forward();
    }
  }
}

void MainWindow::open_sample(const QString& path) {
  if (windows_ == nullptr && !files_->may_leave()) {
    return;
  }
  if (auto read = files_->read(path)) {
    MainWindow& window = window_for_another();
    window.files().put(*std::move(read), path);
    window.suggest_a_change();
    window.come_forward();
  }
}

void MainWindow::ask_and_open() {
  // Without other windows the machine here has to make room.
  if (windows_ == nullptr && !files_->may_leave()) {
    return;
  }
  const QString path = files_->ask_what_to_open();
  if (path.isEmpty()) {
    return;
  }
  if (windows_ == nullptr) {
    files_->open(path);
  } else {
    open_files({path});
  }
}

void MainWindow::open_recent(const QString& path) {
  if (QFileInfo::exists(path)) {
    open_files({path});
    return;
  }
  banner_->say(tr("%1 is not there any more, or its medium is not.").arg(path),
               {{tr("Take it off the list"), QStringLiteral("recent_remove"),
                 [this, path] {
                   RecentFiles::remove(path);
                   refresh_start_page();
                 }},
                {tr("Leave it there"), QStringLiteral("recent_leave"), [] {}}},
               QStringLiteral("recent"));
}

void MainWindow::start_new() {
  if (windows_ == nullptr) {
    files_->start_new();
    document_->select({0, PartSlot::targets, {}});
    return;
  }
  MainWindow& window = window_for_another();
  window.files().put_untitled(new_machine());
  window.document().select({0, PartSlot::targets, {}});
  window.come_forward();
}

void MainWindow::come_forward() {
  setWindowState(windowState() & ~Qt::WindowMinimized);
  show();
  raise();
  activateWindow();
}

void MainWindow::make_start_page() {
  start_page_ = new StartPage(this);
  pages_->addWidget(start_page_);
  connect(start_page_, &StartPage::new_wanted, this, &MainWindow::start_new);
  connect(start_page_, &StartPage::open_wanted, this, &MainWindow::ask_and_open);
  connect(start_page_, &StartPage::first_steps_wanted, this, [this] { show_help(first_topic); });
  connect(start_page_, &StartPage::back_wanted, this, &MainWindow::leave_start_page);
  connect(start_page_, &StartPage::file_chosen, this, &MainWindow::open_recent);
  connect(start_page_, &StartPage::sample_chosen, this, &MainWindow::open_sample);
  connect(document_.get(), &MachineDocument::changed, this, &MainWindow::leave_start_page);
  connect(document_.get(), &MachineDocument::selection_changed, this,
          &MainWindow::leave_start_page);
}

void MainWindow::show_start_page() {
  if (start_page_ == nullptr) {
    make_start_page();
  }
  refresh_start_page();
  pages_->setCurrentWidget(start_page_);
  update_title();
}

void MainWindow::refresh_start_page() {
  if (start_page_ != nullptr) {
    start_page_->refresh(is_pristine() ? QString() : document_->display_name());
  }
}

void MainWindow::leave_start_page() {
  if (is_on_start_page()) {
    pages_->setCurrentIndex(0);
    update_title();
  }
}

bool MainWindow::is_on_start_page() const {
  return start_page_ != nullptr && pages_->currentWidget() == start_page_;
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QMimeData& clip = *event->mimeData();
  const bool own =
      event->source() != nullptr && isAncestorOf(qobject_cast<QWidget*>(event->source()));
  const bool axis = clip.hasFormat(QLatin1String(axis_mime_type)) && !own;
  const auto urls = clip.urls();
  if (axis || std::ranges::any_of(urls, [](const QUrl& url) { return url.isLocalFile(); })) {
    event->acceptProposedAction();
  }
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QMimeData& clip = *event->mimeData();
  if (clip.hasFormat(QLatin1String(axis_mime_type))) {
    paste_axes(clip);
    return;
  }
  QStringList paths;
  for (const QUrl& url : clip.urls()) {
    if (url.isLocalFile()) {
      paths << url.toLocalFile();
    }
  }
  open_files(paths);
}

} // namespace feedwright
