// SPDX-License-Identifier: GPL-3.0-or-later

// The window's menus but for files and editing.

#include "studies/studies_view.h"
#include "text/language.h"
#include "window/main_window.h"

#include <QActionGroup>
#include <QMenuBar>

namespace feedwright {

namespace {

constexpr Theme all_themes[] = {Theme::system, Theme::light, Theme::dark};

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
