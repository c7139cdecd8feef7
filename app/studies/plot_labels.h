// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where the words on a plot stand, so that they cover no curve and no other word.

#include <QPolygonF>
#include <QRectF>
#include <QSizeF>

#include <vector>

namespace feedwright {

struct PlotLabel {
  QSizeF size;
  QPolygonF anchors;  ///< points to stand beside, the best first
  bool level = false; ///< above or below a level line rather than to the side
};

/// The top left corner of each label. Labels keep inside `room`; where nothing is free, the place
/// that covers no other word if there is one, and then the fewest of what is taken.
std::vector<QPointF> place_plot_labels(const QRectF& room, const std::vector<PlotLabel>& labels,
                                       std::vector<QRectF> taken);

/// Small rectangles that cover a curve, inside `room`.
std::vector<QRectF> cover(const QPolygonF& curve, const QRectF& room);

} // namespace feedwright
