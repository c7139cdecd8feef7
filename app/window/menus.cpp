// SPDX-License-Identifier: GPL-3.0-or-later

// The window's menus and its bar of buttons.

#include "sheet/print_sheet.h"
#include "studies/studies_view.h"
#include "text/language.h"
#include "window/axis_actions.h"
#include "window/main_window.h"

#include <QActionGroup>
#include <QDir>
#include <QFileInfo>
#include <QMenuBar>
#include <QToolBar>

namespace feedwright {

namespace {

constexpr Theme all_themes[] = {Theme::system, Theme::light, Theme::dark};

/// What is undone may quote the machine's texts: they must not be taken for markup in the tip.
void set_up_history(QAction* action, const QString& name, const QKeySequence& keys) {
  action->setObjectName(name);
  action->setShortcut(keys);
  QObject::connect(action, &QAction::changed, action, [action] {
    const QString tip = QStringLiteral("<p>%1</p>").arg(action->text().toHtmlEscaped());
    if (action->toolTip() != tip) {
      action->setToolTip(tip);
    }
  });
}

} // namespace

QAction* MainWindow::add_action(QMenu& menu, const QString& name, const QString& text,
                                const QKeySequence& keys, std::function<void()> act) {
  QAction* action = menu.addAction(text);
  action->setObjectName(name);
  action->setShortcut(keys);
  connect(action, &QAction::triggered, this, std::move(act));
  return action;
}

void MainWindow::make_menus() {
  make_file_menu();
  make_edit_menu();
  make_axis_menu();
  make_view_menu();
  make_help_menu();
}

void MainWindow::make_file_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&File"));
  QToolBar& bar = *addToolBar(tr("Buttons"));
  bar.setObjectName(QStringLiteral("buttons"));
  bar.setMovable(false);
  bar.setToolButtonStyle(Qt::ToolButtonTextOnly);
  bar.setContextMenuPolicy(Qt::PreventContextMenu);
  add_action(menu, QStringLiteral("new"), tr("&New machine"), QKeySequence::New, [this] {
    files_->start_new();
    document_->select({0, PartSlot::targets, {}});
  });
  bar.addAction(add_action(menu, QStringLiteral("open"), tr("&Open…"), QKeySequence::Open,
                           [this] { files_->ask_and_open(); }));
  QMenu* samples = menu.addMenu(tr("Open a sa&mple"));
  const QDir folder(QStringLiteral(":/sample-machines"));
  for (const QFileInfo& file : folder.entryInfoList({QStringLiteral("*.feedwright")})) {
    add_action(*samples, file.baseName(), file.baseName(), {}, [this, file] {
      if (files_->may_leave() && files_->open(file.filePath())) {
        suggest_a_change();
      }
    });
  }
  bar.addAction(add_action(menu, QStringLiteral("save"), tr("&Save"), QKeySequence::Save,
                           [this] { files_->save(); }));
  add_action(menu, QStringLiteral("save_as"), tr("Save &as…"), QKeySequence::SaveAs,
             [this] { files_->save_as(); });
  menu.addSeparator();
  bar.addAction(add_action(menu, QStringLiteral("sheet_pdf"), tr("Sheet as P&DF…"),
                           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
                           [this] { files_->save_pdf(); }));
  add_action(menu, QStringLiteral("preview"), tr("Pre&view the sheet…"), {},
             [this] { preview_sheet(*document_, this); });
  add_action(menu, QStringLiteral("print"), tr("&Print the sheet…"), QKeySequence::Print,
             [this] { print_sheet(*document_, this); });
  menu.addSeparator();
  add_action(menu, QStringLiteral("quit"), tr("&Quit"), QKeySequence::Quit, [this] { close(); });
}

void MainWindow::make_edit_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Edit"));
  QUndoStack& stack = *document_->undo_stack();
  QAction* undo = stack.createUndoAction(this, tr("Undo"));
  set_up_history(undo, QStringLiteral("undo"), QKeySequence::Undo);
  QAction* redo = stack.createRedoAction(this, tr("Redo"));
  set_up_history(redo, QStringLiteral("redo"), QKeySequence::Redo);
  menu.addAction(undo);
  menu.addAction(redo);
  auto* bar = findChild<QToolBar*>(QStringLiteral("buttons"));
  bar->addSeparator();
  bar->addAction(undo);
  bar->addAction(redo);
}

void MainWindow::make_axis_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Axis"));
  add_action(menu, QStringLiteral("add_axis"), tr("&Add axis"), {},
             [this] { feedwright::add_axis(*document_); });
  QAction* copy = add_action(menu, QStringLiteral("copy_axis"), tr("&Copy axis"), {},
                             [this] { copy_axis(*document_); });
  QAction* remove = add_action(menu, QStringLiteral("remove_axis"), tr("&Remove axis"), {},
                               [this] { remove_axis(*document_); });
  const auto update = [this, copy, remove] {
    copy->setEnabled(document_->current_axis() != nullptr);
    remove->setEnabled(document_->machine().axes.size() > 1);
  };
  connect(document_.get(), &MachineDocument::changed, this, update);
  update();
}

void MainWindow::make_view_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&View"));
  for (int study = 0; study < StudiesView::study_count(); ++study) {
    add_action(menu, QStringLiteral("study_%1").arg(study), studies_->study_title(study),
               QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + study)),
               [this, study] { show_study(study); });
  }
  menu.addSeparator();
  add_pane_actions(menu);
  menu.addSeparator();
  auto* themes = new QActionGroup(this);
  const QString theme_names[] = {tr("Colours of the &desktop"), tr("&Light"), tr("D&ark")};
  for (const Theme theme : all_themes) {
    const auto at = static_cast<std::size_t>(theme);
    QAction* action = add_action(menu, QStringLiteral("theme_%1").arg(at), theme_names[at], {},
                                 [this, theme] { emit theme_chosen(theme); });
    action->setCheckable(true);
    themes->addAction(action);
    theme_actions_.push_back(action);
  }
  QMenu* language_menu = menu.addMenu(tr("Lan&guage"));
  auto* group = new QActionGroup(this);
  for (const Language& language : languages()) {
    const QString code = QString::fromLatin1(language.code);
    QAction* action = add_action(*language_menu, QStringLiteral("language_") + code,
                                 QString::fromUtf8(language.name), {},
                                 [this, code] { emit language_chosen(code); });
    action->setCheckable(true);
    group->addAction(action);
    language_actions_.push_back(action);
  }
}

void MainWindow::mark_settings(Theme theme, const QString& language) {
  theme_actions_[static_cast<std::size_t>(theme)]->setChecked(true);
  for (QAction* action : language_actions_) {
    action->setChecked(action->objectName() == QStringLiteral("language_") + language);
  }
}

} // namespace feedwright
