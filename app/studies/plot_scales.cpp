// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_scales.h"

#include "studies/plots.h"

#include <qcustomplot.h>

namespace feedwright {

PlotScales::PlotScales(QCustomPlot& plot) : QObject(&plot), plot_(plot) {}

void PlotScales::set_zoomed(bool zoomed) {
  zoomed_ = zoomed;
  emit zoomed_changed();
}

void PlotScales::show_all(const StudyFigure& figure) {
  set_zoomed(false);
  reset_scales(plot_, figure);
  plot_.replot(QCustomPlot::rpQueuedReplot);
}

void PlotScales::zoom(double factor) {
  set_zoomed(true);
  const auto rects = panel_rects(plot_);
  for (QCPAxisRect* rect : rects) {
    const auto scale = [&](QCPAxis::AxisType type, Qt::Orientation way) {
      if ((rect->rangeZoom() & way) != 0) {
        rect->axis(type)->scaleRange(factor, rect->axis(type)->range().center());
      }
    };
    scale(QCPAxis::atLeft, Qt::Vertical);
    // Across, the others follow the first.
    if (rect == rects.front()) {
      scale(QCPAxis::atBottom, Qt::Horizontal);
    }
  }
  plot_.replot(QCustomPlot::rpQueuedReplot);
}

void PlotScales::pan(double across, double up) {
  set_zoomed(true);
  QCPAxisRect* rect = panel_rects(plot_).front();
  const auto move = [&](QCPAxis::AxisType type, Qt::Orientation way, double share) {
    if ((rect->rangeDrag() & way) != 0) {
      rect->axis(type)->moveRange(share * rect->axis(type)->range().size());
    }
  };
  move(QCPAxis::atBottom, Qt::Horizontal, across);
  move(QCPAxis::atLeft, Qt::Vertical, up);
  plot_.replot(QCustomPlot::rpQueuedReplot);
}

PlotScales::Kept PlotScales::kept() const {
  Kept scales;
  if (zoomed_) {
    for (const QCPAxisRect* rect : panel_rects(plot_)) {
      scales.emplace_back(rect->axis(QCPAxis::atBottom)->range(),
                          rect->axis(QCPAxis::atLeft)->range());
    }
  }
  return scales;
}

void PlotScales::put_back(const Kept& scales) {
  const auto rects = panel_rects(plot_);
  for (qsizetype i = 0; i < rects.size() && i < qsizetype(scales.size()); ++i) {
    rects[i]->axis(QCPAxis::atBottom)->setRange(scales[std::size_t(i)].first);
    rects[i]->axis(QCPAxis::atLeft)->setRange(scales[std::size_t(i)].second);
  }
}

} // namespace feedwright
