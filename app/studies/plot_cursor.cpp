// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_cursor.h"

#include "studies/plot_items.h"
#include "studies/plots.h"
#include "studies/stack_keeper.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr char cursor_layer[] = "cursor";

QString line_name() {
  return QStringLiteral("cursor_line");
}

QCPRange in_view(const QCustomPlot& plot) {
  return panel_rects(plot).front()->axis(QCPAxis::atBottom)->range();
}

} // namespace

PlotCursor::PlotCursor(QCustomPlot& plot) : QObject(&plot), plot_(plot) {
  plot_.addLayer(QString::fromLatin1(cursor_layer), nullptr, QCustomPlot::limAbove);
}

void PlotCursor::drop() {
  at_.reset();
  pointed_ = false;
}

void PlotCursor::forget() {
  drop();
  for (auto* line : plot_.findChildren<QCPItemStraightLine*>(line_name())) {
    plot_.removeItem(line);
  }
  plot_.replot(QCustomPlot::rpQueuedReplot);
}

void PlotCursor::put(double x, std::size_t columns, const QColor& colour) {
  const QCPRange shown = in_view(plot_);
  at_ = std::clamp(x, shown.lower, shown.upper);
  if (columns == 0) {
    draw(colour);
  }
}

double PlotCursor::after(int steps, std::size_t columns) const {
  const QCPRange shown = in_view(plot_);
  if (columns > 0) {
    const double last = double(columns) - 0.5;
    return at_ ? std::clamp(std::floor(*at_) + 0.5 + steps, 0.5, last) : 0.5;
  }
  constexpr double steps_across = 50.0;
  return at_.value_or(shown.center()) + steps * shown.size() / steps_across;
}

double PlotCursor::end(bool last) const {
  const QCPRange shown = in_view(plot_);
  return last ? shown.upper : shown.lower;
}

double PlotCursor::x_at(const QCPAxisRect& rect, double pixel) const {
  const auto* keeper = plot_.findChild<StackKeeper*>();
  return keeper != nullptr ? double(keeper->column_at(pixel)) + 0.5
                           : rect.axis(QCPAxis::atBottom)->pixelToCoord(pixel);
}

void PlotCursor::draw(const QColor& colour) {
  auto lines = plot_.findChildren<QCPItemStraightLine*>(line_name());
  if (lines.isEmpty()) {
    for (QCPAxisRect* rect : panel_rects(plot_)) {
      auto* line = item_on<QCPItemStraightLine>(plot_, *rect);
      line->setObjectName(line_name());
      line->setLayer(QString::fromLatin1(cursor_layer));
      line->setPen(QPen(colour, 1.0));
      lines << line;
    }
  }
  for (QCPItemStraightLine* line : lines) {
    line->point1->setCoords(*at_, 0.0);
    line->point2->setCoords(*at_, 1.0);
  }
  plot_.replot(QCustomPlot::rpQueuedReplot);
}

} // namespace feedwright
