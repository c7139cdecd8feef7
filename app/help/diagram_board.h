// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/paint_shapes.h"
#include "window/style.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <functional>

namespace feedwright {

/// What a diagram is drawn on: the drawing's own shapes, and words that are never larger than
/// their place.
class DiagramBoard {
  Q_DECLARE_TR_FUNCTIONS(feedwright) // the context lupdate gives to what calls tr of a board

public:
  DiagramBoard(QPainter& painter, const Look& colours, const QFont& font, const QRectF& area)
      : p(painter), look(colours), room(area), metrics(font, painter.device()),
        line(metrics.height()), unit(line / 15.0), shapes(painter, colours, unit) {
    p.setRenderHint(QPainter::Antialiasing);
    p.setFont(font);
  }

  QPainter& p;
  const Look& look;
  const QRectF room;
  const QFontMetricsF metrics;
  const double line; ///< height of a line of text
  const double unit; ///< a hair over a pixel at an ordinary text size
  ShapePainter shapes;

  /// Whether a text had no room for all of it.
  bool cut_text() const { return cut_text_; }
  double width_of(const QString& text) const { return metrics.horizontalAdvance(text); }
  double u(double n) const { return n * unit; }

  /// One line; elided where it has no room.
  void write(const QRectF& area, const QString& text, const QColor& colour,
             Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter, bool bold = false);
  void stroke(const QColor& colour, double weight, Qt::PenStyle style = Qt::SolidLine);
  void rule(const QLineF& line_drawn);
  /// `y` over `x` from 0 to 1, scaled into the area: 0 on its middle, 1 on its top.
  void curve(const QRectF& area, const std::function<double(double)>& y, const QColor& colour,
             double weight);
  /// A dimension line between two places on a level, with its words in a gap or beside it.
  void dimension(double from, double to, double level, const QString& text);

private:
  bool cut_text_ = false;
};

} // namespace feedwright
