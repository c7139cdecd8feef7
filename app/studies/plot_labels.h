// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where the words on a plot stand, so that they cover no curve and no other word.

#include <QPolygonF>
#include <QRectF>
#include <QSizeF>

#include <optional>
#include <vector>

namespace feedwright {

struct PlotLabel {
  enum class Stand : std::uint8_t {
    beside, ///< to the side of its point, or above or below it
    level,  ///< above or below a level line, ending at its point
    on,     ///< with its middle on its point, where it covers nothing at all
  };
  QSizeF size;
  QPolygonF anchors; ///< where it may stand, the best first
  Stand stand = Stand::beside;
  bool clear = stand == Stand::on; ///< of everything, or rather not at all
};

struct PlacedLabel {
  QPointF at;        ///< its top left corner
  bool clear = true; ///< of everything that is taken
};

/// Where each label stands, earlier ones first. Labels keep inside `room`; where nothing is free,
/// the place that covers the fewest of what is taken. Nothing for a label that is out of view,
/// would cover another word or, if it is to be clear, anything: it is better left out than
/// read wrongly.
std::vector<std::optional<PlacedLabel>> place_plot_labels(const QRectF& room,
                                                          const std::vector<PlotLabel>& labels,
                                                          std::vector<QRectF> taken);

/// Tops of labels one under another, each as near as can be to the middle it wants, in the order of
/// `middles`, which rise. They keep between `top` and `bottom` while they fit.
std::vector<double> spread_labels(const std::vector<double>& middles, double height, double top,
                                  double bottom);
/// The same of labels that are not alike in height.
std::vector<double> spread_labels(const std::vector<double>& middles,
                                  const std::vector<double>& heights, double top, double bottom);

/// Small rectangles that cover a curve, inside `room`.
std::vector<QRectF> cover(const QPolygonF& curve, const QRectF& room);

} // namespace feedwright
