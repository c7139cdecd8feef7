// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_canvas.h"

#include "studies/plot_cursor.h"
#include "studies/plot_or_table.h"
#include "studies/plot_scales.h"
#include "studies/plot_tips.h"
#include "studies/read_out_label.h"
#include "studies/study_picture.h"
#include "studies/study_table_view.h"
#include "text/whole_quantities.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QMimeData>
#include <QToolButton>
#include <QVBoxLayout>
#include <qcustomplot.h>

namespace feedwright {

StudyCanvas::StudyCanvas(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("study_canvas"));
  make_plot();
  make_table();
  read_out_ = new ReadOutLabel(this);
  read_out_->setObjectName(QStringLiteral("study_read_out"));
  read_out_->setAccessibleName(tr("Read-out under the cursor"));
  nothing_ = new QLabel(this);
  nothing_->setObjectName(QStringLiteral("study_nothing"));
  nothing_->setTextFormat(Qt::PlainText);
  nothing_->setWordWrap(true);
  nothing_->setAlignment(Qt::AlignCenter);
  make_actions();
  lay_out();
  show_nothing(QString());
}

void StudyCanvas::lay_out() {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(plot_, 1);
  layout->addWidget(table_, 1);
  auto* below = new QHBoxLayout;
  below->addWidget(read_out_, 1);
  below->addWidget(whole_, 0, Qt::AlignTop);
  below->addWidget(as_table_, 0, Qt::AlignTop);
  layout->addLayout(below);
  layout->addWidget(nothing_, 1);
}

void StudyCanvas::make_plot() {
  plot_ = new QCustomPlot(this);
  plot_->setObjectName(QStringLiteral("study_plot"));
  plot_->setFocusPolicy(Qt::StrongFocus);
  plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
  plot_->setNoAntialiasingOnDrag(true);
  // Painted with the rest of the window, once, not at once by itself.
  plot_->setPlottingHint(QCP::phImmediateRefresh, false);
  plot_->setPlottingHint(QCP::phFastPolylines, true);
  // One picture for all layers, not one each to be cleared and laid over the others.
  plot_->layer(QStringLiteral("overlay"))->setMode(QCPLayer::lmLogical);
  cursor_ = new PlotCursor(*plot_);
  scales_ = new PlotScales(*plot_);
  connect(scales_, &PlotScales::zoomed_changed, this, &StudyCanvas::show_whole_button);
  plot_->setContextMenuPolicy(Qt::ActionsContextMenu);
  plot_->installEventFilter(this);
}

void StudyCanvas::make_table() {
  table_ = new StudyTableView(this);
  table_->setObjectName(QStringLiteral("study_table"));
  table_->setAccessibleName(tr("The study as a table"));
  table_->installEventFilter(this);
  table_->hide();
}

QAction* StudyCanvas::add_action(const char* name, const QString& text) {
  auto* action = new QAction(text, this);
  action->setObjectName(QString::fromLatin1(name));
  plot_->addAction(action);
  table_->addAction(action);
  return action;
}

void StudyCanvas::make_actions() {
  connect(add_action("study_copy", tr("Copy")), &QAction::triggered, this, &StudyCanvas::copy);
  connect(add_action("study_save_picture", tr("Save picture…")), &QAction::triggered, this,
          &StudyCanvas::picture_to_save);
  connect(add_action("study_save_numbers", tr("Save numbers…")), &QAction::triggered, this,
          &StudyCanvas::numbers_to_save);
  auto* whole = add_action("study_whole", tr("Whole plot"));
  whole->setToolTip(tr("Back to the scales that show everything (0)"));
  connect(whole, &QAction::triggered, this, [this] { scales_->show_all(figure_); });
  auto* other = add_action("study_as_table", QString());
  const auto button = [this](QAction* action, const char* name) {
    auto* made = new QToolButton(this);
    made->setObjectName(QString::fromLatin1(name));
    made->setDefaultAction(action);
    made->setFocusPolicy(Qt::TabFocus);
    made->setAccessibleName(action->text());
    return made;
  };
  whole_ = button(whole, "study_whole_button");
  as_table_ = button(other, "study_table_button");
  shown_as_ = new PlotOrTable(*plot_, *table_, *other, *as_table_, *this);
  connect(shown_as_, &PlotOrTable::wanted, this, &StudyCanvas::show_plot_or_table);
}

void StudyCanvas::show_figure(Study study, StudyFigure figure) {
  if (study_ != study) {
    scales_->set_zoomed(false);
    cursor_->drop();
  }
  study_ = study;
  figure_ = std::move(figure);
  if (figure_.is_empty()) {
    const QString why = figure_.summary;
    show_nothing(why);
    study_ = study;
    return;
  }
  plot_->setAccessibleName(tr("Plot: %1").arg(figure_.title));
  plot_->setAccessibleDescription(figure_.summary);
  nothing_->hide();
  read_out_->show();
  as_table_->show();
  fill();
  show_plot_or_table();
}

void StudyCanvas::show_nothing(const QString& why) {
  study_.reset();
  figure_ = {};
  for (QWidget* each :
       std::initializer_list<QWidget*>{plot_, table_, read_out_, as_table_, whole_}) {
    each->hide();
  }
  nothing_->setText(with_whole_quantities(why));
  nothing_->setAccessibleName(why);
  nothing_->show();
}

void StudyCanvas::show_whole_button() {
  whole_->setVisible(scales_->zoomed() && !figure_.is_empty() && !shown_as_->is_table());
}

void StudyCanvas::show_plot_or_table() {
  if (figure_.is_empty()) {
    return;
  }
  show_whole_button();
  shown_as_->show();
  if (shown_as_->is_table()) {
    table_->show_figure(figure_);
  }
}

void StudyCanvas::fill() {
  if (figure_.is_empty()) {
    return;
  }
  const PlotScales::Kept scales = scales_->kept();
  const QSize size = shown_as_->room();
  const Look look = Look::of(palette());
  if (isVisible()) {
    shown_as_->set_room_for_plot(fill_to_size(*plot_, figure_, look, font(), size, shape_));
  } else { // before it is laid out its size says nothing
    shape_ = plot_shape(figure_, size, font());
    fill_plot(*plot_, figure_, look, shape_);
    shown_as_->set_room_for_plot(true);
  }
  scales_->put_back(scales);
  if (cursor_->at()) {
    read_off(*cursor_->at());
  } else {
    read_out_->say(figure_.summary);
  }
  // Out of sight it is filled anew when it comes in sight; without a size there is nothing to
  // paint.
  if (isVisible() && !plot_->viewport().isEmpty()) {
    plot_->replot(QCustomPlot::rpQueuedReplot);
  }
}

QString StudyCanvas::reading() const {
  return read_out_->said();
}

void StudyCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (!figure_.is_empty()) {
    read_out_->fit();
  }
}

void StudyCanvas::forget_cursor() {
  cursor_->forget();
  read_out_->say(figure_.summary);
}

void StudyCanvas::read_off(double x) {
  cursor_->put(x, figure_.stacks.size(), Look::of(palette()).faint_ink);
  read_out_->read_off(figure_.summary, read_out(figure_, *cursor_->at()));
}

void StudyCanvas::point_at(const QPointF& at) {
  if (const QCPAxisRect* rect = plot_->axisRectAt(at)) {
    read_off(cursor_->x_at(*rect, at.x()));
    cursor_->set_pointed(true);
  }
}

bool StudyCanvas::take_key(int key, bool shift) {
  constexpr double pan_step = 0.1;
  const auto read_at = [this](double x) {
    cursor_->set_pointed(false);
    read_off(x);
  };
  const auto step = [&](int way) {
    shift ? scales_->pan(way * pan_step, 0.0) : read_at(cursor_->after(way, figure_.stacks.size()));
  };
  switch (key) {
  case Qt::Key_Left: step(-1); return true;
  case Qt::Key_Right: step(1); return true;
  case Qt::Key_Up:
  case Qt::Key_Down:
    if (shift) {
      scales_->pan(0.0, key == Qt::Key_Up ? pan_step : -pan_step);
    }
    return shift;
  case Qt::Key_Home:
  case Qt::Key_End: read_at(cursor_->end(key == Qt::Key_End)); return true;
  case Qt::Key_Plus: scales_->zoom(0.8); return true;
  case Qt::Key_Minus: scales_->zoom(1.25); return true;
  case Qt::Key_0: scales_->show_all(figure_); return true;
  default: return false;
  }
}

bool StudyCanvas::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_ && event->type() == QEvent::Resize && !shown_as_->has_room_for_plot()) {
    QMetaObject::invokeMethod(this, &StudyCanvas::refit, Qt::QueuedConnection);
  }
  if (watched == plot_ && event->type() == QEvent::Resize && plot_->size().isEmpty()) {
    return true; // before it is laid out, or squeezed to nothing: there is nothing to paint on
  }
  const bool ours = watched == plot_ || watched == table_;
  if (!ours || figure_.is_empty()) {
    return QWidget::eventFilter(watched, event);
  }
  if (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Copy)) {
      event->accept();
      if (event->type() == QEvent::KeyPress) {
        copy();
        return true;
      }
    }
  }
  return (watched == plot_ && take_plot_event(*event)) || QWidget::eventFilter(watched, event);
}

bool StudyCanvas::take_plot_event(QEvent& event) {
  switch (event.type()) {
  case QEvent::Wheel: {
    const auto& wheel = static_cast<QWheelEvent&>(event);
    // Without the focus the wheel scrolls what the plot stands in.
    if (!plot_->hasFocus() && !wheel.modifiers().testFlag(Qt::ControlModifier)) {
      event.ignore();
      return true;
    }
    scales_->set_zoomed(true);
    return false;
  }
  case QEvent::MouseButtonDblClick: scales_->show_all(figure_); return true;
  case QEvent::MouseMove: {
    const auto& mouse = static_cast<QMouseEvent&>(event);
    if ((mouse.buttons() & Qt::LeftButton) != 0) {
      scales_->set_zoomed(true);
    }
    point_at(mouse.position());
    return false;
  }
  case QEvent::Leave:
    if (cursor_->pointed()) {
      forget_cursor();
    }
    return false;
  case QEvent::KeyPress: {
    const auto& key = static_cast<QKeyEvent&>(event);
    return take_key(key.key(), key.modifiers().testFlag(Qt::ShiftModifier));
  }
  case QEvent::ToolTip: {
    const auto& help = static_cast<QHelpEvent&>(event);
    show_full_text(*plot_, help.pos(), help.globalPos());
    return true;
  }
  case QEvent::Resize: {
    const auto& to = static_cast<QResizeEvent&>(event).size();
    if (plot_shape(figure_, to, font()) != shape_ || !names_fit(*plot_, shape_, to)) {
      QMetaObject::invokeMethod(this, &StudyCanvas::refit, Qt::QueuedConnection);
    }
    return false;
  }
  default: return false;
  }
}

QImage StudyCanvas::picture() const {
  if (shown_as_->is_table()) {
    return study_picture(figure_, Look::of(palette()), font(), shown_as_->room());
  }
  return plot_->toPixmap(plot_->width(), plot_->height(), picture_fineness).toImage();
}

void StudyCanvas::copy() {
  if (figure_.is_empty()) {
    return;
  }
  auto* copied = new QMimeData;
  const bool part = shown_as_->is_table() && !table_->selectedRanges().isEmpty();
  copied->setText(part ? table_->selected_text() : as_tab_separated(as_table(figure_)));
  if (!part && !shown_as_->wants_table()) {
    copied->setImageData(picture());
  }
  QGuiApplication::clipboard()->setMimeData(copied);
}

void StudyCanvas::refit() {
  if (figure_.is_empty()) {
    return;
  }
  const bool was = shown_as_->is_table();
  fill();
  if (shown_as_->is_table() != was) {
    show_plot_or_table();
  }
}

void StudyCanvas::changeEvent(QEvent* event) {
  const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
  if (looks) {
    refit();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
