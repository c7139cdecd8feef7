// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/panel_frames.h"

#include "studies/plot_tickers.h"
#include "studies/stack_keeper.h"

#include <qcustomplot.h>

#include <algorithm>

namespace feedwright {

int lines_over(const StudyPanel& panel, bool one_of_many, const PlotShape& shape) {
  return one_of_many && panel.chief ? shape.caption : 1;
}

PanelFrames::PanelFrames(const StudyFigure& figure, const Look& look, const PlotShape& shape)
    : figure_(figure), look_(look), shape_(shape) {}

void PanelFrames::frame(QCPAxisRect& rect, const StudyPanel& panel, bool lowest, int beside) const {
  set_across(rect, panel, lowest);
  set_up(rect, panel, lowest);
  rect.setupFullAxesBox();
  set_far_sides(rect);
  make_room(rect, panel, beside);
}

void PanelFrames::set_across(QCPAxisRect& rect, const StudyPanel& panel, bool lowest) const {
  QCPAxis& across = *rect.axis(QCPAxis::atBottom);
  // Beside the chief panel the others have its scale, and need their height.
  const bool named = lowest && (panel.chief || shape_.abreast == 1);
  set_axis(across, named ? both_axes_label(figure_) : QString());
  across.setTickLabels(lowest && figure_.stacks.empty());
  across.setTicks(lowest && figure_.stacks.empty());
  across.grid()->setVisible(figure_.stacks.empty());
  // Room for each number with a gap of its own width.
  const double number = QFontMetricsF(shape_.font).horizontalAdvance(QStringLiteral("0.25"));
  const double room = double(rect.parentPlot()->width()) / shape_.abreast - 4.0 * number;
  across.ticker()->setTickCount(std::clamp(int(room / (1.6 * number)), 2, 5));
}

void PanelFrames::set_up(QCPAxisRect& rect, const StudyPanel& panel, bool lowest) const {
  QCPAxis& up = *rect.axis(QCPAxis::atLeft);
  set_axis(up, shape_.headed ? QString() : y_axis_label(panel));
  if (panel.numbers.empty()) {
    up.ticker()->setTickCount(panel.chief ? shape_.chief_numbers : shape_.numbers);
  } else {
    const auto room = std::size_t(lowest ? shape_.lowest_numbers : shape_.given_numbers);
    // Three stand half as far apart as two: with room for two of them there is room for one.
    const auto fitting = panel.numbers.size() <= room ? panel.numbers.size() : std::size_t(1);
    up.setTicker(only_numbers(std::span(panel.numbers).first(fitting)));
  }
}

void PanelFrames::set_far_sides(QCPAxisRect& rect) const {
  QCPAxis& top = *rect.axis(QCPAxis::atTop);
  const bool shown = figure_.top.has_value();
  if (shown) {
    set_axis(top, QString());
    top.grid()->setVisible(false);
  }
  top.setLabel(QString());
  top.setTicks(shown);
  top.setTickLabels(shown);
  for (const auto type : {QCPAxis::atTop, QCPAxis::atRight}) {
    rect.axis(type)->setBasePen(QPen(look_.rule, 1.0));
  }
  QCPAxis& right = *rect.axis(QCPAxis::atRight);
  right.setTicks(false);
  right.setTickLabels(false);
}

void PanelFrames::make_room(QCPAxisRect& rect, const StudyPanel& panel, int beside) const {
  const int line = QFontMetrics(shape_.font).height();
  const int below =
      figure_.stacks.empty() ? 0 : StackKeeper::name_lines(figure_, shape_.font) * line + 6;
  // The heading of one of many stands over its frame, where it covers no curve.
  const int heading = lines_over(panel, many(), shape_) * line + 3;
  rect.setMinimumMargins(shape_.headed ? QMargins(0, heading, beside, many() ? 1 : below)
                                       : QMargins(0, 0, beside, below));
}

void PanelFrames::set_axis(QCPAxis& axis, const QString& label) const {
  axis.setLabel(label);
  axis.setLabelFont(shape_.font);
  axis.setTickLabelFont(shape_.font);
  axis.setLabelColor(look_.faint_ink);
  axis.setTickLabelColor(look_.faint_ink);
  axis.setBasePen(QPen(look_.faint_ink, 1.0));
  axis.setTickPen(QPen(look_.faint_ink, 1.0));
  axis.setSubTicks(false);
  axis.setTickLengthIn(0);
  axis.setTickLengthOut(4);
  axis.grid()->setPen(QPen(look_.rule, 0.7));
  axis.grid()->setZeroLinePen(QPen(many() ? look_.faint_ink : look_.rule, 0.7));
  axis.setTicker(round_numbers());
  axis.setLabelPadding(3);
}

void PanelFrames::tie_together(const QList<QCPAxisRect*>& rects, const QObject& keeper) const {
  const double per_x = figure_.top ? figure_.top->per_x : 1.0;
  for (QCPAxisRect* rect : rects) {
    QCPAxis* across = rect->axis(QCPAxis::atBottom);
    QCPAxis* top = rect->axis(QCPAxis::atTop);
    QObject::connect(across, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), &keeper,
                     [top, per_x, rects](const QCPRange& range) {
                       top->setRange(range.lower * per_x, range.upper * per_x);
                       for (QCPAxisRect* other : rects) {
                         other->axis(QCPAxis::atBottom)->setRange(range);
                       }
                     });
    const auto ways = many()                   ? Qt::Orientations(Qt::Horizontal)
                      : figure_.stacks.empty() ? Qt::Horizontal | Qt::Vertical
                                               : Qt::Orientations(Qt::Vertical);
    rect->setRangeDrag(ways);
    rect->setRangeZoom(ways);
  }
}

} // namespace feedwright
