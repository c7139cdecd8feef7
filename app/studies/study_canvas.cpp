// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_canvas.h"

#include "limits/number_text.h"
#include "studies/plots.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QMimeData>
#include <QVBoxLayout>
#include <qcustomplot.h>

#include <algorithm>

namespace feedwright {

namespace {

constexpr char cursor_layer[] = "cursor";

QString empty_hint() {
  return QCoreApplication::translate(
      "Studies", "Point at the plot, or press the arrow keys, to read it off. The wheel zooms, a "
                 "double click resets, Ctrl+C copies picture and numbers.");
}

/// On the straight between the two points about x; nothing outside the curve.
std::optional<double> value_at(const StudyCurve& curve, double x) {
  const auto above = std::lower_bound(curve.x.begin(), curve.x.end(), x);
  if (above == curve.x.end() || (above == curve.x.begin() && x < *above)) {
    return std::nullopt;
  }
  if (above == curve.x.begin()) {
    return curve.y.front();
  }
  const auto i = std::size_t(above - curve.x.begin());
  const double share = (x - curve.x[i - 1]) / (curve.x[i] - curve.x[i - 1]);
  return curve.y[i - 1] + share * (curve.y[i] - curve.y[i - 1]);
}

} // namespace

StudyCanvas::StudyCanvas(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("study_canvas"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  plot_ = new QCustomPlot(this);
  plot_->setObjectName(QStringLiteral("study_plot"));
  plot_->setFocusPolicy(Qt::StrongFocus);
  plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
  plot_->setNoAntialiasingOnDrag(true);
  // Painted with the rest of the window, once, not at once by itself.
  plot_->setPlottingHint(QCP::phImmediateRefresh, false);
  plot_->addLayer(QString::fromLatin1(cursor_layer), nullptr, QCustomPlot::limAbove);
  plot_->installEventFilter(this);
  setFocusProxy(plot_);
  read_out_ = new QLabel(this);
  read_out_->setObjectName(QStringLiteral("study_read_out"));
  read_out_->setAccessibleName(tr("Read-out under the cursor"));
  read_out_->setTextFormat(Qt::PlainText);
  read_out_->setWordWrap(true);
  read_out_->setForegroundRole(QPalette::PlaceholderText);
  nothing_ = new QLabel(this);
  nothing_->setObjectName(QStringLiteral("study_nothing"));
  nothing_->setTextFormat(Qt::PlainText);
  nothing_->setWordWrap(true);
  nothing_->setAlignment(Qt::AlignCenter);
  layout->addWidget(plot_, 1);
  layout->addWidget(read_out_);
  layout->addWidget(nothing_, 1);
  show_nothing(QString());
}

void StudyCanvas::show_figure(Study study, StudyFigure figure) {
  zoomed_ = zoomed_ && study_ == study;
  if (study_ != study) {
    cursor_.reset();
  }
  study_ = study;
  figure_ = std::move(figure);
  plot_->setAccessibleName(tr("Plot: %1").arg(figure_.title));
  plot_->setAccessibleDescription(figure_.summary);
  nothing_->hide();
  plot_->show();
  read_out_->show();
  fill();
}

void StudyCanvas::show_nothing(const QString& why) {
  study_.reset();
  figure_ = {};
  plot_->hide();
  read_out_->hide();
  nothing_->setText(why);
  nothing_->show();
}

void StudyCanvas::fill() {
  const QCPRange x = plot_->xAxis->range();
  const QCPRange y = plot_->yAxis->range();
  fill_plot(*plot_, figure_, Look::of(palette()), font());
  if (zoomed_) {
    plot_->xAxis->setRange(x);
    plot_->yAxis->setRange(y);
  }
  if (cursor_) {
    read_off(*cursor_);
  } else {
    read_out_->setText(figure_.summary);
    read_out_->setToolTip(empty_hint());
  }
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::read_off(double x) {
  cursor_ = std::clamp(x, plot_->xAxis->range().lower, plot_->xAxis->range().upper);
  QStringList parts{tr("%1 %2 %3", "what the axis shows, number, unit")
                        .arg(figure_.x_name, number_text(*cursor_, 3), figure_.x_unit)};
  for (const StudyCurve& curve : figure_.curves) {
    if (const auto y = value_at(curve, *cursor_)) {
      parts << tr("%1: %2 %3", "curve: number, unit")
                   .arg(curve.label, number_text(*y, 3), figure_.y_unit);
    }
  }
  read_out_->setText(parts.join(QStringLiteral("  ·  ")));
  auto* line = plot_->findChild<QCPItemStraightLine*>(QStringLiteral("cursor_line"));
  if (line == nullptr) {
    line = new QCPItemStraightLine(plot_);
    line->setObjectName(QStringLiteral("cursor_line"));
    line->setLayer(QString::fromLatin1(cursor_layer));
    line->setPen(QPen(Look::of(palette()).faint_ink, 1.0));
  }
  line->point1->setCoords(*cursor_, 0.0);
  line->point2->setCoords(*cursor_, 1.0);
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::reset_zoom() {
  zoomed_ = false;
  plot_->xAxis->setRange(figure_.x_start, figure_.x_end);
  plot_->yAxis->setRange(0.0, figure_.y_end);
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::zoom(double factor) {
  zoomed_ = true;
  for (QCPAxis* axis : {plot_->xAxis, plot_->yAxis}) {
    axis->scaleRange(factor, axis->range().center());
  }
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

bool StudyCanvas::take_key(int key) {
  const QCPRange range = plot_->xAxis->range();
  const double step = range.size() / 50.0;
  switch (key) {
  case Qt::Key_Left: read_off(cursor_.value_or(range.center()) - step); return true;
  case Qt::Key_Right: read_off(cursor_.value_or(range.center()) + step); return true;
  case Qt::Key_Plus: zoom(0.8); return true;
  case Qt::Key_Minus: zoom(1.25); return true;
  case Qt::Key_0: reset_zoom(); return true;
  default: return false;
  }
}

bool StudyCanvas::eventFilter(QObject* watched, QEvent* event) {
  if (watched != plot_ || !study_) {
    return QWidget::eventFilter(watched, event);
  }
  switch (event->type()) {
  case QEvent::Wheel:
    // Without the focus the wheel scrolls what the plot stands in.
    if (!plot_->hasFocus()) {
      event->ignore();
      return true;
    }
    zoomed_ = true;
    break;
  case QEvent::MouseButtonDblClick: reset_zoom(); return true;
  case QEvent::MouseMove: {
    const auto* mouse = static_cast<QMouseEvent*>(event);
    zoomed_ = zoomed_ || (mouse->buttons() & Qt::LeftButton) != 0;
    read_off(plot_->xAxis->pixelToCoord(mouse->position().x()));
    break;
  }
  case QEvent::KeyPress: {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Copy)) {
      copy();
      return true;
    }
    return take_key(key->key());
  }
  case QEvent::ShortcutOverride: {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Copy)) {
      event->accept();
    }
    break;
  }
  default: break;
  }
  return QWidget::eventFilter(watched, event);
}

void StudyCanvas::copy() {
  if (!study_) {
    return;
  }
  auto* copied = new QMimeData;
  copied->setImageData(plot_->toPixmap().toImage());
  copied->setText(as_table(figure_));
  QGuiApplication::clipboard()->setMimeData(copied);
}

void StudyCanvas::changeEvent(QEvent* event) {
  const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
  if (looks && study_) {
    fill();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
