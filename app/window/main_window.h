// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "window/machine_files.h"
#include "window/style.h"

#include <QMainWindow>
#include <QPointer>

#include <functional>
#include <memory>

class QMenu;
class QMimeData;
class QStackedWidget;
class QUndoView;

namespace feedwright {

class AboutWindow;
class Banner;
class FieldsPanel;
class MachineView;
class HelpWindow;
class LimitsView;
class StartPage;
class StudiesView;
class TrainView;
class Windows;

/// A window: axes, drive train, limits, studies, fields, all of one document.
class MainWindow : public QMainWindow {
  Q_OBJECT
public:
  /// On a document without safekeeping: nothing is put aside, no file is claimed.
  explicit MainWindow(std::unique_ptr<MachineDocument> document, QWidget* parent = nullptr);
  explicit MainWindow(KeptDocument kept, QWidget* parent = nullptr);
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
  KeptDocument release_document();

  /// The other windows; without them another machine takes the place of the one here.
  void set_windows(Windows& windows) { windows_ = &windows; }
  /// Nothing to lose here: a new machine or a sample that nobody has touched.
  bool is_pristine() const;
  /// Each in a window of its own; here, if this is pristine. One that is open is shown.
  void open_files(const QStringList& paths);
  void open_sample(const QString& path);
  void show_start_page();
  bool is_on_start_page() const;
  void come_forward();
  /// Puts what was not saved aside now; false if it cannot be.
  bool keep_now();

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
  void take_views_away();
  void watch_document();
  void make_menus();
  void make_file_menu();
  void make_edit_menu();
  void make_axis_menu();
  void add_sample_entries(QMenu& menu);
  void fill_recent_menu(QMenu& menu);
  void add_clipboard_entries(QMenu& menu);
  void make_start_page();
  void refresh_start_page();
  void leave_start_page();
  void ask_and_open();
  void open_recent(const QString& path);
  void start_new();
  MainWindow& window_for_another();
  void paste_axes(const QMimeData& clip);
  void show_history();
  void make_view_menu();
  void make_help_menu();
  void add_pane_actions(QMenu& menu);
  HelpWindow& help();
  QAction* add_action(QMenu& menu, const QString& name, const QString& text,
                      const QKeySequence& keys, std::function<void()> act);
  void update_title();
  void offer_files();
  void tell_of_outside_change();
  void greet(const QString& path);
  void tell_of_holder();
  void tell_of_typed();
  void show_typed();
  bool may_lose_typed();
  void show_about();

  std::unique_ptr<MachineDocument> document_;
  std::unique_ptr<Safekeeping> safekeeping_;
  std::unique_ptr<MachineFiles> files_;
  Windows* windows_ = nullptr;
  QStackedWidget* pages_ = nullptr; ///< the machine, the start page
  StartPage* start_page_ = nullptr;
  Banner* banner_ = nullptr;
  QPointer<QUndoView> history_;
  TrainView* train_ = nullptr;
  LimitsView* limits_ = nullptr;
  StudiesView* studies_ = nullptr;
  FieldsPanel* fields_ = nullptr;
  HelpWindow* help_ = nullptr; ///< made when first asked for
  AboutWindow* about_ = nullptr;
  std::vector<QAction*> theme_actions_;
  std::vector<QAction*> language_actions_;
  MachineView* machine_ = nullptr;
};

} // namespace feedwright
