// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "window/machine_files.h"
#include "window/style.h"

#include <QMainWindow>

#include <functional>
#include <memory>

class QMenu;

namespace feedwright {

class AboutWindow;
class Banner;
class FieldsPanel;
class HelpWindow;
class LimitsView;
class StudiesView;
class TrainView;

/// The one window: axes, drive train, limits, studies, fields, all of one document.
class MainWindow : public QMainWindow {
  Q_OBJECT
public:
  explicit MainWindow(std::unique_ptr<MachineDocument> document, QWidget* parent = nullptr);
  ~MainWindow() override;

  MachineDocument& document() { return *document_; }
  MachineFiles& files() { return *files_; }
  FieldsPanel& fields() { return *fields_; }
  StudiesView& studies() { return *studies_; }
  Banner& banner() { return *banner_; }

  void show_axis(std::size_t axis);
  void show_study(int study);
  /// Opens help on a page ("limit/whip").
  void show_help(const QString& topic);
  /// Opens help on what has the keyboard, or on the chosen part.
  void show_help_here();
  /// The page of help on the screen; empty if help is closed.
  QString shown_help() const;
  /// A first thing to try, for somebody who has just opened a sample.
  void suggest_a_change();
  /// Marks what is chosen in the View menu.
  void mark_settings(Theme theme, const QString& language);
  /// The document, for another window; this one must not be used any more.
  std::unique_ptr<MachineDocument> release_document();

signals:
  void theme_chosen(feedwright::Theme theme);
  void language_chosen(const QString& code);
  /// A machine with a file of its own is in place.
  void machine_opened(const QString& path);
  void closing();

protected:
  void closeEvent(QCloseEvent* event) override;
  void changeEvent(QEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

private:
  void make_views();
  void make_menus();
  void make_file_menu();
  void make_edit_menu();
  void make_axis_menu();
  void make_view_menu();
  void make_help_menu();
  void add_pane_actions(QMenu& menu);
  HelpWindow& help();
  QAction* add_action(QMenu& menu, const QString& name, const QString& text,
                      const QKeySequence& keys, std::function<void()> act);
  void update_title();
  void tell_of_outside_change();
  void greet(const QString& path);
  void show_about();

  std::unique_ptr<MachineDocument> document_;
  std::unique_ptr<MachineFiles> files_;
  Banner* banner_ = nullptr;
  TrainView* train_ = nullptr;
  LimitsView* limits_ = nullptr;
  StudiesView* studies_ = nullptr;
  FieldsPanel* fields_ = nullptr;
  HelpWindow* help_ = nullptr; ///< made when first asked for
  AboutWindow* about_ = nullptr;
  std::vector<QAction*> theme_actions_;
  std::vector<QAction*> language_actions_;
};

} // namespace feedwright
