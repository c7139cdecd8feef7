// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include "fields/fields_panel.h"
#include "limits/limits_view.h"
#include "machine/machine_file.h"
#include "overview/machine_view.h"
#include "remedies/remedies_view.h"
#include "studies/studies_view.h"
#include "train/train_view.h"
#include "window/axes_panel.h"
#include "window/axis_actions.h"
#include "window/banner.h"
#include "window/panes.h"
#include "window/scrolling.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QScrollArea>
#include <QStackedWidget>
#include <QUndoView>
#include <QVBoxLayout>

namespace feedwright {

namespace {

const QString outside_topic = QStringLiteral("changed outside");
const QString holder_topic = QStringLiteral("held elsewhere");

} // namespace

MainWindow::MainWindow(std::unique_ptr<MachineDocument> document, QWidget* parent)
    : MainWindow(KeptDocument{std::move(document)}, parent) {}

MainWindow::MainWindow(KeptDocument kept, QWidget* parent)
    : QMainWindow(parent), document_(std::move(kept.document)),
      safekeeping_(std::move(kept.safekeeping)),
      files_(std::make_unique<MachineFiles>(*document_, safekeeping_.get(), *this)) {
  setObjectName(QStringLiteral("main_window"));
  setAcceptDrops(true);
  make_views();
  make_menus();
  watch_document();
}

void MainWindow::watch_document() {
  connect(document_.get(), &MachineDocument::state_changed, this, &MainWindow::update_title);
  connect(files_.get(), &MachineFiles::opened, this, &MainWindow::greet);
  connect(files_.get(), &MachineFiles::saved, this, [this](const QString& path) {
    banner_->be_quiet(outside_topic);
    tell_of_typed();
    emit machine_opened(path);
  });
  connect(files_.get(), &MachineFiles::sheet_written, this, [this](const QString& path) {
    banner_->say(tr("The sheet is written: %1").arg(QDir::toNativeSeparators(path)));
  });
  connect(files_.get(), &MachineFiles::changed_outside, this, &MainWindow::tell_of_outside_change);
  connect(files_.get(), &MachineFiles::holder_changed, this, &MainWindow::tell_of_holder);
  if (safekeeping_ != nullptr) {
    connect(&safekeeping_->autosave, &Autosave::failed, this, [this](const QString& why) {
      banner_->say(tr("What you change here cannot be put aside for the case of a crash; save "
                      "often. %1")
                       .arg(why),
                   {}, QStringLiteral("autosave"));
    });
  }
  // Typing in one field is one step of Undo; typing there again, after another, is a second.
  connect(qApp, &QApplication::focusChanged, this, [this] {
    if (document_ != nullptr) {
      document_->end_merging();
    }
  });
  update_title();
  tell_of_holder();
}

MainWindow::~MainWindow() {
  disconnect(qApp, nullptr, this, nullptr);
  if (document_ != nullptr) { // it may have gone to another window
    take_views_away();
  }
}

/// What listens to the document goes before it does. What is typed outlives the views: those of
/// another window, in another language, show it again.
void MainWindow::take_views_away() {
  document_->put_typed_aside();
  disconnect(document_.get(), nullptr, this, nullptr);
  delete history_;
  delete takeCentralWidget();
}

void MainWindow::make_views() {
  // Before the fields take the keyboard they must be in sight.
  const auto panes = std::make_shared<Panes*>(nullptr);
  connect(document_.get(), &MachineDocument::selection_changed, this,
          [this, panes] { (*panes)->show_chosen(document_->selection()); });
  auto* axes = new AxesPanel(*document_, this);
  connect(axes, &AxesPanel::add_axis_wanted, this, [this] { add_axis(*document_); });
  train_ = new TrainView(*document_, this);
  connect(train_, &TrainView::part_pressed, this, [panes] { (*panes)->show_fields(); });
  limits_ = new LimitsView(*document_, this);
  studies_ = new StudiesView(*document_, this);
  studies_->set_prompts([this]() -> Prompts& { return files_->prompts(); });
  connect(limits_, &LimitsView::limit_chosen, studies_, &StudiesView::show_limit_working);
  fields_ = new FieldsPanel(*document_, this);
  connect(fields_, &FieldsPanel::help_wanted, this, &MainWindow::show_help_here);
  fields_->set_table_asker(
      [this](QWidget& parent) { return files_->prompts().table_to_import(&parent); });
  auto* remedies = new RemediesView(*document_, fields_->shelf(), this);
  connect(limits_, &LimitsView::limit_chosen, remedies, &RemediesView::choose);
  connect(fields_, &FieldsPanel::rebuilt, remedies, &RemediesView::follow);
  banner_ = new Banner(this);

  machine_ = new MachineView(*document_, this);
  connect(machine_, &MachineView::limit_chosen, studies_, &StudiesView::show_limit_working);
  auto* limits = scrolling(limits_, QStringLiteral("limits_scroll"));
  *panes = new Panes({axes, train_, limits, studies_, machine_, fields_, remedies});
  (*panes)->show_chosen(document_->selection());

  pages_ = new QStackedWidget(this);
  pages_->addWidget(*panes);
  auto* all = new QWidget(this);
  auto* layout = new QVBoxLayout(all);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(banner_);
  layout->addWidget(pages_, 1);
  setCentralWidget(all);
}

void MainWindow::show_axis(std::size_t axis) {
  const Selection& from = document_->selection();
  document_->select({axis, from.machine ? PartSlot::drive : from.slot, {}});
}

void MainWindow::show_study(int study) {
  studies_->show_study(study);
  findChild<Panes*>()->show_study();
}

void MainWindow::suggest_a_change() {
  banner_->say(tr("Try this: click the screw in the drawing, type a lead of 10 mm, and watch the "
                  "limits move. Undo takes it back."));
}

KeptDocument MainWindow::release_document() {
  take_views_away();
  files_.reset();
  return {std::move(document_), std::move(safekeeping_)};
}

bool MainWindow::keep_now() {
  return safekeeping_ == nullptr || safekeeping_->autosave.keep_now();
}

void MainWindow::update_title() {
  const QString name = document_->display_name();
  setWindowTitle(is_on_start_page() ? QStringLiteral("Feedwright[*]")
                 : files_->held_by()
                     ? tr("%1[*] (open elsewhere) – Feedwright", "title of the window").arg(name)
                     : tr("%1[*] – Feedwright", "title of the window").arg(name));
  setWindowModified(document_->is_modified());
  offer_files();
}

/// On the start page there is no machine to be seen, and a pristine one is nothing to save.
void MainWindow::offer_files() {
  const bool any = !is_on_start_page() || !is_pristine();
  for (const char* name : {"save", "save_as", "sheet_pdf", "preview", "print"}) {
    if (auto* action = findChild<QAction*>(QString::fromLatin1(name))) {
      action->setEnabled(any);
    }
  }
}

void MainWindow::greet(const QString& path) {
  banner_->be_quiet();
  banner_->be_quiet(outside_topic);
  if (const int minor = document_->machine().newer_minor; minor > 0) {
    banner_->say(tr("This file was written by a newer program (format %1.%2). It is opened as far "
                    "as understood; the rest is kept as it stands.")
                     .arg(format_major)
                     .arg(minor));
  }
  leave_start_page();
  tell_of_typed();
  update_title();
  emit machine_opened(path);
}

void MainWindow::tell_of_holder() {
  if (const auto& holder = files_->held_by()) {
    banner_->say(tr("%1 is open elsewhere: %2. Here you can look and change, but only save under "
                    "another name.")
                     .arg(document_->display_name(), holder_text(*holder)),
                 {}, holder_topic);
  } else {
    banner_->be_quiet(holder_topic);
  }
  update_title();
}

void MainWindow::tell_of_outside_change() {
  const QString name = document_->display_name();
  const QString text =
      document_->is_modified()
          ? tr("%1 was changed by another program, and you have changes that are not saved.")
                .arg(name)
          : tr("%1 was changed by another program.").arg(name);
  banner_->say(text,
               {{tr("Read it again"), QStringLiteral("reload"), [this] { files_->reload(); }},
                {tr("Keep what is here"), QStringLiteral("keep"), [] {}}},
               outside_topic);
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (document_ != nullptr) {
    document_->gather_typed();
  }
  if (may_lose_typed() && (document_ == nullptr || files_->may_leave())) {
    if (document_ != nullptr) {
      files_->let_go();
    }
    emit closing();
    event->accept();
  } else {
    event->ignore();
  }
}

void MainWindow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::ActivationChange && isActiveWindow() && files_ != nullptr) {
    files_->look();
  }
  QMainWindow::changeEvent(event);
}

} // namespace feedwright
