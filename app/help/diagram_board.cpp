// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/diagram_board.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

void DiagramBoard::write(const QRectF& area, const QString& text, const QColor& colour,
                         Qt::Alignment alignment, bool bold) {
  p.save();
  QFont font = p.font();
  font.setBold(bold);
  p.setFont(font);
  p.setPen(colour);
  const QFontMetricsF written(font, p.device());
  const QString fitting = written.elidedText(text, Qt::ElideRight, area.width());
  cut_text_ = cut_text_ || fitting != text;
  p.drawText(area, int(alignment) | Qt::TextSingleLine, fitting);
  p.restore();
}

void DiagramBoard::stroke(const QColor& colour, double weight, Qt::PenStyle style) {
  p.setPen(shapes.pen(colour, weight, style));
  p.setBrush(Qt::NoBrush);
}

void DiagramBoard::rule(const QLineF& line_drawn) {
  stroke(look.rule, 1.0);
  p.drawLine(line_drawn);
}

void DiagramBoard::curve(const QRectF& area, const std::function<double(double)>& y,
                         const QColor& colour, double weight) {
  constexpr int steps = 96;
  QPolygonF points;
  for (int i = 0; i <= steps; ++i) {
    const double x = double(i) / steps;
    points << QPointF(area.left() + x * area.width(),
                      area.center().y() - y(x) * area.height() / 2.0);
  }
  stroke(colour, weight);
  p.drawPolyline(points);
}

void DiagramBoard::dimension(double from, double to, double level, const QString& text) {
  const double wide = width_of(text) + u(8);
  const bool inside = wide < to - from - u(12);
  const double left = inside ? (from + to - wide) / 2.0 : std::min(to + u(6), room.right() - wide);
  const QRectF words(left, level - line / 2.0, wide, line);
  shapes.dimension(from, to, level, inside ? words : QRectF(from, level, 0.0, 0.0));
  write(words, text, look.faint_ink, Qt::AlignCenter);
}

} // namespace feedwright
