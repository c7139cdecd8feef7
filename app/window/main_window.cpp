// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include "fields/fields_panel.h"
#include "limits/limits_view.h"
#include "studies/studies_view.h"
#include "train/train_view.h"
#include "window/axes_panel.h"
#include "window/axis_actions.h"
#include "window/banner.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

constexpr int edge_width = 232;
constexpr int fields_width = 372;

QScrollArea* scrolling(QWidget* inside, const QString& name) {
  auto* area = new QScrollArea;
  area->setObjectName(name);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  return area;
}

} // namespace

MainWindow::MainWindow(std::unique_ptr<MachineDocument> document, QWidget* parent)
    : QMainWindow(parent), document_(std::move(document)),
      files_(std::make_unique<MachineFiles>(*document_, *this)) {
  setObjectName(QStringLiteral("main_window"));
  setAcceptDrops(true);
  make_views();
  make_menus();
  connect(document_.get(), &MachineDocument::state_changed, this, &MainWindow::update_title);
  connect(files_.get(), &MachineFiles::opened, this, &MainWindow::greet);
  connect(files_.get(), &MachineFiles::changed_outside, this, &MainWindow::tell_of_outside_change);
  update_title();
}

MainWindow::~MainWindow() {
  // The views listen to the document; they go first.
  delete takeCentralWidget();
}

void MainWindow::make_views() {
  auto* axes = new AxesPanel(*document_, this);
  connect(axes, &AxesPanel::add_axis_wanted, this, [this] { add_axis(*document_); });
  train_ = new TrainView(*document_, this);
  limits_ = new LimitsView(*document_, this);
  studies_ = new StudiesView(*document_, this);
  connect(limits_, &LimitsView::limit_chosen, studies_, &StudiesView::show_limit_working);
  fields_ = new FieldsPanel(*document_, this);
  fields_->set_table_asker(
      [this](QWidget& parent) { return files_->prompts().table_to_import(&parent); });
  banner_ = new Banner(this);

  auto* middle = new QSplitter(Qt::Vertical);
  middle->setObjectName(QStringLiteral("middle"));
  middle->addWidget(train_);
  auto* limits = scrolling(limits_, QStringLiteral("limits_scroll"));
  middle->addWidget(limits);
  middle->addWidget(studies_);
  middle->setStretchFactor(0, 2);
  middle->setStretchFactor(1, 3);
  middle->setStretchFactor(2, 3);
  middle->setSizes({250, 270, 280});
  middle->setChildrenCollapsible(false);

  auto* across = new QSplitter(Qt::Horizontal);
  across->setObjectName(QStringLiteral("across"));
  across->addWidget(axes);
  across->addWidget(middle);
  across->addWidget(fields_);
  across->setStretchFactor(0, 0);
  across->setStretchFactor(1, 1);
  across->setStretchFactor(2, 0);
  // Wider where the letters are larger than usual.
  const int letter = fontMetrics().averageCharWidth();
  const int edge_room = std::max(edge_width, 33 * letter);
  const int fields_room = std::max(fields_width, 53 * letter);
  across->setSizes({edge_room, 2 * fields_room, fields_room});
  across->setChildrenCollapsible(false);

  auto* all = new QWidget(this);
  auto* layout = new QVBoxLayout(all);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(banner_);
  layout->addWidget(across, 1);
  setCentralWidget(all);
}

void MainWindow::show_axis(std::size_t axis) {
  document_->select({axis, document_->selection().slot, {}});
}

void MainWindow::show_study(int study) {
  studies_->show_study(study);
}

void MainWindow::suggest_a_change() {
  banner_->say(tr("Try this: click the screw in the drawing, type a lead of 10 mm, and watch the "
                  "limits move. Undo takes it back."));
}

std::unique_ptr<MachineDocument> MainWindow::release_document() {
  disconnect(document_.get(), nullptr, this, nullptr);
  delete takeCentralWidget();
  files_.reset();
  return std::move(document_);
}

void MainWindow::update_title() {
  setWindowTitle(tr("%1[*] – Feedwright", "title of the window").arg(document_->display_name()));
  setWindowModified(document_->is_modified());
}

void MainWindow::greet(const QString& path) {
  banner_->be_quiet();
  if (const int minor = document_->machine().newer_minor; minor > 0) {
    banner_->say(tr("This file was written by a newer program (format 1.%1). It is opened as far "
                    "as understood; the rest is kept as it stands.")
                     .arg(minor));
  }
  update_title();
  emit machine_opened(path);
}

void MainWindow::tell_of_outside_change() {
  const QString name = document_->display_name();
  const QString text =
      document_->is_modified()
          ? tr("%1 was changed by another program, and you have changes that are not saved.")
                .arg(name)
          : tr("%1 was changed by another program.").arg(name);
  banner_->say(text, {{tr("Read it again"), QStringLiteral("reload"), [this] { files_->reload(); }},
                      {tr("Keep what is here"), QStringLiteral("keep"), [] {}}});
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (document_ == nullptr || files_->may_leave()) {
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

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.constFirst().isLocalFile()) {
    event->acceptProposedAction();
  }
}

void MainWindow::dropEvent(QDropEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && files_->may_leave()) {
    files_->open(urls.constFirst().toLocalFile());
  }
}

} // namespace feedwright
