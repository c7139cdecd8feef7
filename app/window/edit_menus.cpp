// SPDX-License-Identifier: GPL-3.0-or-later

// The Edit and Axis menus.

#include "studies/studies_view.h"
#include "window/axis_actions.h"
#include "window/banner.h"
#include "window/main_window.h"
#include "window/panes.h"
#include "window/undo_keys.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QListWidget>
#include <QMenuBar>
#include <QToolBar>
#include <QUndoView>

namespace feedwright {

namespace {

/// What is undone may quote the machine's texts: they must not be taken for markup in the tip.
void set_up_history(QAction* action, const QString& name, QKeySequence::StandardKey keys) {
  action->setObjectName(name);
  action->setShortcuts(keys); // all that the desktop knows, so that the usual one is among them
  QObject::connect(action, &QAction::changed, action, [action] {
    const QString tip = QStringLiteral("<p>%1</p>").arg(action->text().toHtmlEscaped());
    if (action->toolTip() != tip) {
      action->setToolTip(tip);
    }
  });
}

} // namespace

void MainWindow::make_edit_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Edit"));
  QUndoStack& stack = *document_->undo_stack();
  QAction* undo = stack.createUndoAction(this, tr("Undo"));
  set_up_history(undo, QStringLiteral("undo"), QKeySequence::Undo);
  QAction* redo = stack.createRedoAction(this, tr("Redo"));
  set_up_history(redo, QStringLiteral("redo"), QKeySequence::Redo);
  new UndoKeys(*this);
  menu.addAction(undo);
  menu.addAction(redo);
  add_action(menu, QStringLiteral("history"), tr("&History…"), {}, [this] { show_history(); });
  menu.addSeparator();
  add_clipboard_entries(menu);
  auto* bar = findChild<QToolBar*>(QStringLiteral("buttons"));
  bar->addSeparator();
  bar->addAction(undo);
  bar->addAction(redo);
}

/// Their keys work in the list of axes only: elsewhere they copy and paste text.
void MainWindow::add_clipboard_entries(QMenu& menu) {
  QAction* copy = add_action(menu, QStringLiteral("copy_axis"), tr("&Copy axis"),
                             QKeySequence::Copy, [this] { copy_axis(*document_); });
  QAction* paste = add_action(
      menu, QStringLiteral("paste_axis"), tr("&Paste axis"), QKeySequence::Paste, [this] {
        if (const QMimeData* clip = QGuiApplication::clipboard()->mimeData()) {
          paste_axes(*clip);
        }
      });
  auto* list = findChild<QListWidget*>(QStringLiteral("axes_list"));
  for (QAction* action : {copy, paste}) {
    action->setShortcutContext(Qt::WidgetShortcut);
    list->addAction(action);
  }
}

void MainWindow::make_axis_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Axis"));
  QAction* add = add_action(menu, QStringLiteral("add_axis"), tr("&Add axis"), {},
                            [this] { feedwright::add_axis(*document_); });
  QAction* twin = add_action(menu, QStringLiteral("duplicate_axis"), tr("&Duplicate axis"), {},
                             [this] { feedwright::duplicate_axis(*document_); });
  QAction* longer =
      add_action(menu, QStringLiteral("lengthen_axis"), tr("&Lengthen axis…"), {}, [this] {
        show_axis(document_->selection().axis);
        findChild<Panes*>()->show_study();
        studies_->show_lengthening();
      });
  QAction* remove = add_action(menu, QStringLiteral("remove_axis"), tr("&Remove axis"), {},
                               [this] { feedwright::remove_axis(*document_); });
  menu.addSeparator();
  QAction* up = add_action(menu, QStringLiteral("move_axis_up"), tr("Move axis &up"),
                           QKeySequence(Qt::ALT | Qt::Key_Up),
                           [this] { feedwright::move_axis(*document_, -1); });
  QAction* down = add_action(menu, QStringLiteral("move_axis_down"), tr("Move axis d&own"),
                             QKeySequence(Qt::ALT | Qt::Key_Down),
                             [this] { feedwright::move_axis(*document_, 1); });
  auto* list = findChild<QListWidget*>(QStringLiteral("axes_list"));
  for (QAction* action : {up, down}) {
    // Elsewhere these keys open the list of a choice.
    action->setShortcutContext(Qt::WidgetShortcut);
    list->addAction(action);
  }
  const auto update = [this, add, twin, longer, remove, up, down] {
    add->setEnabled(has_room_for_axes(*document_));
    twin->setEnabled(document_->current_axis() != nullptr && has_room_for_axes(*document_));
    longer->setEnabled(document_->current_axis() != nullptr);
    remove->setEnabled(document_->machine().axes.size() > 1);
    up->setEnabled(can_move_axis(*document_, -1));
    down->setEnabled(can_move_axis(*document_, 1));
  };
  connect(document_.get(), &MachineDocument::changed, this, update);
  connect(document_.get(), &MachineDocument::selection_changed, this, update);
  update();
}

void MainWindow::paste_axes(const QMimeData& clip) {
  const QString why = feedwright::paste_axes(*document_, clip);
  if (!why.isEmpty()) {
    banner_->say(why);
  }
}

void MainWindow::show_history() {
  if (history_ == nullptr) {
    history_ = new QUndoView(document_->undo_stack(), this);
    history_->setObjectName(QStringLiteral("history_list"));
    history_->setWindowFlags(Qt::Tool);
    history_->setAttribute(Qt::WA_DeleteOnClose);
    history_->setWindowTitle(tr("History"));
    history_->setAccessibleName(tr("History of edits"));
    history_->setEmptyLabel(tr("As opened"));
    const int em = fontMetrics().height();
    history_->resize(24 * em, 20 * em);
  }
  history_->show();
  history_->raise();
  history_->activateWindow();
}

} // namespace feedwright
