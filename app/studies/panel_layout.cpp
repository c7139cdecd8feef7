// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/panel_layout.h"

#include "studies/plots.h"

#include <qcustomplot.h>

#include <algorithm>

namespace feedwright {

namespace {

constexpr char panel_property[] = "panel";
constexpr double chief_height = 2.2; // in heights of the others
constexpr double chief_width = 1.5;
constexpr int between_rows = 4;

QCPAxisRect* rect_of(QCustomPlot& plot, int panel) {
  auto* rect = new QCPAxisRect(&plot);
  rect->setProperty(panel_property, panel);
  for (QCPAxis* axis : rect->axes()) {
    axis->setLayer(QStringLiteral("axes"));
    axis->grid()->setLayer(QStringLiteral("grid"));
  }
  return rect;
}

void set_main_axes(QCustomPlot& plot, QCPAxisRect& rect) {
  plot.xAxis = rect.axis(QCPAxis::atBottom);
  plot.yAxis = rect.axis(QCPAxis::atLeft);
  plot.xAxis2 = rect.axis(QCPAxis::atTop);
  plot.yAxis2 = rect.axis(QCPAxis::atRight);
}

} // namespace

QList<QCPAxisRect*> make_rects(QCustomPlot& plot, const StudyFigure& figure, int abreast) {
  const auto panels = int(figure.panels.size());
  QList<QCPAxisRect*> there = plot.axisRects();
  if (panels == 1 && there.size() == 1) {
    there.front()->setProperty(panel_property, 0);
    return there;
  }
  qDeleteAll(plot.findChildren<QCPMarginGroup*>(QString(), Qt::FindDirectChildrenOnly));
  QCPLayoutGrid& whole = *plot.plotLayout();
  whole.clear();
  whole.setRowSpacing(between_rows);
  QCPLayoutGrid* column = &whole;
  if (abreast > 1) {
    column = new QCPLayoutGrid;
    column->setRowSpacing(between_rows);
    whole.addElement(0, 0, column);
  }
  auto* group = new QCPMarginGroup(&plot);
  QList<QCPAxisRect*> rects;
  for (int i = 0; i < panels; ++i) {
    const bool chief = figure.panels[std::size_t(i)].chief;
    QCPAxisRect* rect = rect_of(plot, i);
    if (chief && abreast > 1) {
      whole.addElement(0, 1, rect);
      whole.setColumnStretchFactor(1, chief_width);
    } else {
      const int row = column->rowCount();
      column->addElement(row, 0, rect);
      column->setRowStretchFactor(row, chief ? chief_height : 1.0);
      if (panels > 1) {
        rect->setMarginGroup(QCP::msLeft | QCP::msRight, group);
      }
    }
    rects << rect;
  }
  set_main_axes(plot, *rects.front());
  return rects;
}

bool is_lowest(const StudyFigure& figure, std::size_t panel, int abreast) {
  const std::size_t last = figure.panels.size() - 1;
  return panel == last || (abreast > 1 && panel + 1 == last);
}

QList<QCPAxisRect*> panel_rects(const QCustomPlot& plot) {
  QList<QCPAxisRect*> rects = plot.axisRects();
  std::ranges::sort(rects, {},
                    [](const QCPAxisRect* rect) { return rect->property(panel_property).toInt(); });
  return rects;
}

} // namespace feedwright
