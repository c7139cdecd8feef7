// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"

#include "fields/wheel_guard.h"
#include "files/write_file.h"
#include "prompts/prompts.h"
#include "studies/lengthen_row.h"
#include "studies/move_distance.h"
#include "studies/study_canvas.h"
#include "studies/working_view.h"
#include "text/file_words.h"
#include "text/text_of.h"

#include <QBuffer>
#include <QComboBox>
#include <QDir>
#include <QEvent>
#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QStackedLayout>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>

namespace feedwright {

namespace {

constexpr int plots = int(std::size(all_studies));
constexpr int side = 8; // margin

} // namespace

StudiesView::StudiesView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("studies_view"));
  setAccessibleName(tr("Studies"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  QWidget* chooser = make_chooser();
  auto* plot = new QWidget(this);
  distance_ = new MoveDistance(plot);
  longer_ = new LengthenRow(document_, plot);
  canvas_ = new StudyCanvas(plot);
  auto* plot_layout = new QVBoxLayout(plot);
  plot_layout->setContentsMargins(0, 0, 0, 0);
  plot_layout->setSpacing(4);
  plot_layout->addWidget(distance_);
  plot_layout->addWidget(longer_);
  plot_layout->addWidget(canvas_, 1);
  working_ = new WorkingView(document_, this);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(side, 4, side, 8);
  layout->setSpacing(4);
  layout->addWidget(chooser);
  stack_ = new QStackedLayout;
  stack_->addWidget(plot);
  stack_->addWidget(working_);
  layout->addLayout(stack_, 1);
  connect(tabs_, &QTabBar::currentChanged, this, &StudiesView::refresh);
  connect(distance_, &MoveDistance::changed, this, &StudiesView::refresh);
  connect(canvas_, &StudyCanvas::picture_to_save, this, &StudiesView::save_picture);
  connect(canvas_, &StudyCanvas::numbers_to_save, this, &StudiesView::save_numbers);
  connect(&document_, &MachineDocument::changed, this, &StudiesView::refresh);
  connect(&document_, &MachineDocument::selection_changed, this, &StudiesView::refresh);
  refresh();
}

QWidget* StudiesView::make_chooser() {
  auto* chooser = new QWidget(this);
  tabs_ = new QTabBar(chooser);
  tabs_->setObjectName(QStringLiteral("study_tabs"));
  tabs_->setAccessibleName(tr("Study"));
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  for (const Study study : all_studies) {
    tabs_->addTab(study_name(study));
  }
  tabs_->addTab(tr("Working"));
  box_ = new QComboBox(chooser);
  box_->setObjectName(QStringLiteral("study_box"));
  box_->setAccessibleName(tabs_->accessibleName());
  box_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  new WheelGuard(box_);
  for (int i = 0; i < tabs_->count(); ++i) {
    box_->addItem(tabs_->tabText(i));
  }
  box_->hide();
  auto* row = new QHBoxLayout(chooser);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(tabs_, 1);
  row->addWidget(box_);
  row->addStretch();
  connect(box_, &QComboBox::activated, tabs_, &QTabBar::setCurrentIndex);
  connect(tabs_, &QTabBar::currentChanged, box_, &QComboBox::setCurrentIndex);
  return chooser;
}

void StudiesView::fit_chooser() {
  const bool room = tabs_->sizeHint().width() <= width() - 2 * side;
  if (room == box_->isHidden()) {
    return;
  }
  const bool focused = tabs_->hasFocus() || box_->hasFocus();
  tabs_->setVisible(room);
  box_->setVisible(!room);
  if (focused) {
    (room ? static_cast<QWidget*>(tabs_) : box_)->setFocus(Qt::OtherFocusReason);
  }
}

void StudiesView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_chooser();
}

void StudiesView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && tabs_ != nullptr) {
    fit_chooser();
  }
}

int StudiesView::study_count() {
  return plots + 1;
}

void StudiesView::show_study(int study) {
  tabs_->setCurrentIndex(study);
}

void StudiesView::show_lengthening() {
  show_study(int(std::ranges::find(all_studies, Study::stretch) - std::begin(all_studies)));
  longer_->take_keyboard();
}

int StudiesView::study() const {
  return tabs_->currentIndex();
}

QString StudiesView::study_title(int study) const {
  return tabs_->tabText(study);
}

void StudiesView::show_working(ResultId result) {
  working_->choose(result);
  show_study(plots);
}

void StudiesView::show_limit_working(LimitId limit) {
  working_->choose(descriptor(limit).result);
}

void StudiesView::showEvent(QShowEvent* event) {
  refresh();
  QWidget::showEvent(event);
}

void StudiesView::refresh() {
  const int shown = study();
  const bool plot = shown < plots;
  stack_->setCurrentIndex(plot ? 0 : 1);
  if (!plot) {
    working_->refresh();
    return;
  }
  show_plot(shown);
}

void StudiesView::show_plot(int study) {
  const Study chosen = all_studies[study];
  const AxisResults* results = document_.current();
  distance_->setVisible(chosen == Study::move && results != nullptr);
  longer_->setVisible(chosen == Study::stretch && document_.current_axis() != nullptr);
  if (chosen == Study::stretch) {
    longer_->show_axis();
  }
  if (results == nullptr) {
    canvas_->show_nothing(tr("Not computed: the machine has faults, listed with the limits."));
    return;
  }
  const std::size_t axis = document_.selection().axis;
  StudySubject subject{document_.machine(), axis, *results, document_.units()};
  if (chosen == Study::move) {
    distance_->show_axis(QStringLiteral("%1 %2").arg(axis).arg(document_.file_path()),
                         *document_.machine().axes.at(axis).basics.travel, document_.units());
    subject.move = distance_->distance();
  }
  canvas_->show_figure(chosen, study_figure(chosen, subject));
}

void StudiesView::save_picture() {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  canvas_->picture().save(&buffer, "PNG");
  save(QStringLiteral("png"), bytes);
}

void StudiesView::save_numbers() {
  save(QStringLiteral("csv"), as_comma_separated(as_table(canvas_->figure())).toUtf8());
}

void StudiesView::save(const QString& ending, const QByteArray& bytes) {
  const Axis* axis = document_.current_axis();
  if (!prompts_ || axis == nullptr || canvas_->figure().is_empty()) {
    return;
  }
  const QFileInfo file(document_.file_path());
  const QString base =
      document_.file_path().isEmpty() ? document_.display_name() : file.completeBaseName();
  QString name = QStringLiteral("%1 %2 %3.%4")
                     .arg(base, text_of(axis->basics.letter), canvas_->figure().title, ending);
  name.replace(QLatin1Char('/'), QLatin1Char('-'));
  const QDir folder = document_.file_path().isEmpty() ? QDir::home() : file.dir();
  const QString path = prompts_().study_to_save(this, folder.filePath(name));
  if (path.isEmpty()) {
    return;
  }
  const auto written = write_file(std::filesystem::path(QFile::encodeName(path).toStdString()),
                                  std::string_view(bytes.constData(), std::size_t(bytes.size())));
  if (!written) {
    prompts_().tell(this, tr("%1 is not written.").arg(QFileInfo(path).fileName()),
                    {words::file_error_text(written.error())});
  }
}

} // namespace feedwright
