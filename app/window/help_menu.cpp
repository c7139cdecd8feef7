// SPDX-License-Identifier: GPL-3.0-or-later

// The Help menu, and the windows it opens beside the main one.

#include "help/about_window.h"
#include "help/help_window.h"
#include "help/keys_page.h"
#include "help/topic_at.h"
#include "window/main_window.h"

#include <QApplication>
#include <QMenu>
#include <QMenuBar>

namespace feedwright {

void MainWindow::make_help_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Help"));
  add_action(menu, QStringLiteral("help_here"), tr("Help on &this"), QKeySequence::HelpContents,
             [this] { show_help_here(); });
  add_action(menu, QStringLiteral("help_first_steps"), tr("&First steps"), {},
             [this] { show_help(first_topic); });
  add_action(menu, QStringLiteral("help_contents"), tr("&Contents"), {},
             [this] { show_help(first_topic); });
  add_action(menu, QStringLiteral("help_keys"), tr("&Keyboard shortcuts"), {},
             [this] { show_help(keys_topic); });
  add_action(menu, QStringLiteral("help_cautions"), tr("Ca&utions"), {},
             [this] { show_help(safety_topic); });
  menu.addSeparator();
  add_action(menu, QStringLiteral("about"), tr("&About Feedwright"), {}, [this] { show_about(); });
}

HelpWindow& MainWindow::help() {
  if (help_ == nullptr) {
    help_ = new HelpWindow(this);
    help_->set_made_page(keys_topic, [this] { return keys_page(*this); });
    connect(help_, &HelpWindow::part_wanted, this, [this](PartSlot slot, const QString& member) {
      document_->select({document_->selection().axis, slot, member});
      raise();
      activateWindow();
    });
  }
  return *help_;
}

void MainWindow::show_help(const QString& topic) {
  help().show_topic(topic);
  help().activateWindow();
}

void MainWindow::show_help_here() {
  show_help(is_on_start_page() ? QString(first_topic) : topic_at(focusWidget(), *document_));
}

QString MainWindow::shown_help() const {
  return help_ != nullptr && help_->isVisible() ? help_->topic() : QString();
}

void MainWindow::show_about() {
  if (about_ == nullptr) {
    about_ = new AboutWindow(this);
  }
  about_->show();
  about_->raise();
  about_->activateWindow();
}

} // namespace feedwright
