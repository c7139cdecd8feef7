// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"

#include "studies/study_canvas.h"
#include "studies/working_view.h"

#include <QStackedLayout>
#include <QTabBar>
#include <QVBoxLayout>

#include <iterator>

namespace feedwright {

namespace {

constexpr int plots = int(std::size(all_studies));

} // namespace

StudiesView::StudiesView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("studies_view"));
  setAccessibleName(tr("Studies"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  tabs_ = new QTabBar(this);
  tabs_->setObjectName(QStringLiteral("study_tabs"));
  tabs_->setAccessibleName(tr("Study"));
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  for (const Study study : all_studies) {
    tabs_->addTab(study_name(study));
  }
  tabs_->addTab(tr("Working"));
  canvas_ = new StudyCanvas(this);
  working_ = new WorkingView(document_, this);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 4, 8, 8);
  layout->setSpacing(4);
  layout->addWidget(tabs_);
  stack_ = new QStackedLayout;
  stack_->addWidget(canvas_);
  stack_->addWidget(working_);
  layout->addLayout(stack_, 1);
  connect(tabs_, &QTabBar::currentChanged, this, &StudiesView::refresh);
  connect(&document_, &MachineDocument::changed, this, &StudiesView::refresh);
  connect(&document_, &MachineDocument::selection_changed, this, &StudiesView::refresh);
  refresh();
}

int StudiesView::study_count() {
  return plots + 1;
}

void StudiesView::show_study(int study) {
  tabs_->setCurrentIndex(study);
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
  const AxisResults* results = document_.current();
  if (results == nullptr) {
    canvas_->show_nothing(tr("Not computed: the machine has faults, listed with the limits."));
    return;
  }
  const Study chosen = all_studies[shown];
  canvas_->show_figure(
      chosen, study_figure(chosen, document_.machine(), document_.selection().axis, *results));
}

} // namespace feedwright
