// SPDX-License-Identifier: GPL-3.0-or-later

// The File menu, and the bar of buttons that begins with it.

#include "document/recent_files.h"
#include "sheet/print_sheet.h"
#include "sheet/sheet_choices.h"
#include "window/main_window.h"
#include "window/windows.h"

#include <QDir>
#include <QFileInfo>
#include <QMenuBar>
#include <QToolBar>

namespace feedwright {

namespace {

/// What a path says of itself is no shortcut.
QString menu_text(QString text) {
  return text.replace(QLatin1Char('&'), QLatin1String("&&"));
}

} // namespace

void MainWindow::make_file_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&File"));
  QToolBar& bar = *addToolBar(tr("Buttons"));
  bar.setObjectName(QStringLiteral("buttons"));
  bar.setMovable(false);
  bar.setToolButtonStyle(Qt::ToolButtonTextOnly);
  bar.setContextMenuPolicy(Qt::PreventContextMenu);
  add_action(menu, QStringLiteral("new"), tr("&New machine"), QKeySequence::New,
             [this] { start_new(); });
  add_action(menu, QStringLiteral("new_window"), tr("New &window"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), [this] {
               if (windows_ != nullptr) {
                 windows_->another().show_start_page();
               }
             });
  bar.addAction(add_action(menu, QStringLiteral("open"), tr("&Open…"), QKeySequence::Open,
                           [this] { ask_and_open(); }));
  QMenu* recent = menu.addMenu(tr("Open &recent"));
  recent->setObjectName(QStringLiteral("recent_menu"));
  connect(recent, &QMenu::aboutToShow, this, [this, recent] { fill_recent_menu(*recent); });
  fill_recent_menu(*recent);
  add_sample_entries(*menu.addMenu(tr("Open a sa&mple")));
  add_action(menu, QStringLiteral("start_page"), tr("S&tart page"), {},
             [this] { show_start_page(); });
  menu.addSeparator();
  bar.addAction(add_action(menu, QStringLiteral("save"), tr("&Save"), QKeySequence::Save,
                           [this] { files_->save(); }));
  add_action(menu, QStringLiteral("save_as"), tr("Save &as…"), QKeySequence::SaveAs,
             [this] { files_->save_as(); });
  menu.addSeparator();
  bar.addAction(add_action(menu, QStringLiteral("sheet_pdf"), tr("Sheet as P&DF…"),
                           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
                           [this] { files_->save_pdf(); }));
  add_action(menu, QStringLiteral("preview"), tr("Pre&view the sheet…"), {}, [this] {
    document_->gather_typed();
    preview_sheet(*document_, this);
  });
  add_action(menu, QStringLiteral("print"), tr("&Print the sheet…"), QKeySequence::Print, [this] {
    document_->gather_typed();
    print_sheet(*document_, this);
  });
  QAction* working =
      add_action(menu, QStringLiteral("sheet_with_working"), tr("Sheet with the wor&king"), {},
                 [] { SheetChoices::set_with_working(!SheetChoices::with_working()); });
  working->setCheckable(true);
  working->setChecked(SheetChoices::with_working());
  // Another window may have changed it.
  connect(&menu, &QMenu::aboutToShow, working,
          [working] { working->setChecked(SheetChoices::with_working()); });
  menu.addSeparator();
  add_action(menu, QStringLiteral("close_window"), tr("&Close window"), QKeySequence::Close,
             [this] { close(); });
  add_action(menu, QStringLiteral("quit"), tr("&Quit"), QKeySequence::Quit,
             [this] { windows_ != nullptr ? windows_->close_all() : static_cast<void>(close()); });
}

void MainWindow::add_sample_entries(QMenu& menu) {
  const QDir folder(QStringLiteral(":/sample-machines"));
  for (const QFileInfo& file : folder.entryInfoList({QStringLiteral("*.feedwright")})) {
    add_action(menu, file.baseName(), file.baseName(), {},
               [this, path = file.filePath()] { open_sample(path); });
  }
}

void MainWindow::fill_recent_menu(QMenu& menu) {
  menu.clear();
  const QStringList paths = RecentFiles::paths();
  for (qsizetype i = 0; i < paths.size(); ++i) {
    const QString& path = paths[i];
    const QFileInfo file(path);
    const QString text =
        tr("%1 in %2", "file, folder").arg(file.fileName(), QDir::toNativeSeparators(file.path()));
    add_action(menu, QStringLiteral("recent_%1").arg(i), menu_text(text), {},
               [this, path] { open_recent(path); });
  }
  if (!paths.isEmpty()) {
    menu.addSeparator();
  }
  add_action(menu, QStringLiteral("recent_clear"), tr("&Clear the list"), {}, [this] {
    RecentFiles::clear();
    refresh_start_page();
  })->setEnabled(!paths.isEmpty());
  QAction* remember =
      add_action(menu, QStringLiteral("recent_remember"), tr("&Remember recent files"), {}, [this] {
        RecentFiles::set_remembers(!RecentFiles::remembers());
        refresh_start_page();
      });
  remember->setCheckable(true);
  remember->setChecked(RecentFiles::remembers());
}

} // namespace feedwright
