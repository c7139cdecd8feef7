// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/paint_shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace feedwright {

QPen ShapePainter::pen(const QColor& colour, double weight, Qt::PenStyle style) const {
  QPen made(colour, u(weight), style);
  made.setCapStyle(Qt::FlatCap);
  made.setJoinStyle(Qt::MiterJoin);
  return made;
}

void ShapePainter::motor_from_the_end(const QRectF& flange, bool size_known) {
  p_.setPen(pen(look_.ink, 1.4, size_known ? Qt::SolidLine : Qt::DashLine));
  p_.setBrush(look_.panel);
  const double corner = flange.width() * 0.08;
  p_.drawRoundedRect(flange, corner, corner);
  p_.setPen(pen(look_.faint_ink, 0.8));
  p_.setBrush(Qt::NoBrush);
  const double hole = flange.width() * 0.045;
  const double reach = flange.width() * 0.41;
  for (const double x : {-reach, reach}) {
    for (const double y : {-reach, reach}) {
      p_.drawEllipse(flange.center() + QPointF(x, y), hole, hole);
    }
  }
}

void ShapePainter::motor_from_the_side(const QRectF& body, bool size_known) {
  p_.setPen(pen(look_.ink, 1.4, size_known ? Qt::SolidLine : Qt::DashLine));
  p_.setBrush(look_.panel);
  p_.drawRoundedRect(body, u(2), u(2));
  p_.setPen(pen(look_.faint_ink, 0.8));
  for (const double share : {0.18, 0.82}) {
    const double x = body.left() + body.width() * share;
    p_.drawLine(QPointF(x, body.top()), QPointF(x, body.bottom()));
  }
}

void ShapePainter::pulley(const QPointF& centre, double pitch_radius, int teeth) {
  p_.setPen(pen(look_.ink, 0.9));
  p_.setBrush(look_.paper);
  p_.drawEllipse(centre, pitch_radius, pitch_radius);
  const double step = 2.0 * std::numbers::pi / std::max(teeth, 1);
  const bool can_be_told_apart = step * pitch_radius > u(2.2);
  if (can_be_told_apart) {
    p_.setPen(pen(look_.faint_ink, 1.0));
    const double depth = std::min(step * pitch_radius * 0.45, pitch_radius * 0.3);
    for (int i = 0; i < teeth; ++i) {
      const QPointF way(std::cos(i * step), std::sin(i * step));
      p_.drawLine(centre + way * (pitch_radius - depth), centre + way * pitch_radius);
    }
  }
  p_.setPen(Qt::NoPen);
  p_.setBrush(look_.ink);
  const double bore = std::max(u(1.5), pitch_radius * 0.14);
  p_.drawEllipse(centre, bore, bore);
}

void ShapePainter::roller(const QPointF& centre, double radius) {
  p_.setPen(pen(look_.ink, 0.9));
  p_.setBrush(look_.paper);
  p_.drawEllipse(centre, std::max(radius, u(1.5)), std::max(radius, u(1.5)));
  const double cross = std::min(radius * 0.5, u(4));
  p_.setPen(pen(look_.faint_ink, 0.8));
  p_.drawLine(centre - QPointF(cross, 0.0), centre + QPointF(cross, 0.0));
  p_.drawLine(centre - QPointF(0.0, cross), centre + QPointF(0.0, cross));
}

void ShapePainter::pulley_from_the_side(const QRectF& rect) {
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(look_.paper);
  p_.drawRect(rect);
  p_.setPen(pen(look_.faint_ink, 0.7));
  const double step = std::max(u(3), rect.height() / 12.0);
  for (double y = rect.top() + step; y < rect.bottom() - step / 2.0; y += step) {
    p_.drawLine(QPointF(rect.left(), y), QPointF(rect.right(), y));
  }
}

void ShapePainter::belt(const QPainterPath& path, bool fits) {
  p_.setBrush(Qt::NoBrush);
  p_.setPen(pen(look_.ink, 2.2, fits ? Qt::SolidLine : Qt::DashLine));
  p_.drawPath(path);
}

void ShapePainter::coupling(const QRectF& rect) {
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(look_.paper);
  const double middle = rect.center().x();
  p_.drawRect(QRectF(rect.left(), rect.top(), rect.width() / 2.0 - u(2), rect.height()));
  p_.drawRect(QRectF(middle + u(2), rect.top(), rect.width() / 2.0 - u(2), rect.height()));
  p_.fillRect(QRectF(middle - u(2), rect.top() + u(3), u(4), rect.height() - u(6)),
              look_.faint_ink);
}

void ShapePainter::screw(const QRectF& rect, double core_diameter, double pitch) {
  const double middle = rect.center().y();
  const QRectF core(rect.left(), middle - core_diameter / 2.0, rect.width(), core_diameter);
  p_.fillRect(rect, look_.panel);
  QVector<QLineF> flanks;
  const double lean = std::min(pitch * 0.5, rect.height());
  for (double x = rect.left() + pitch / 2.0; x + lean < rect.right(); x += pitch) {
    flanks << QLineF(x, rect.bottom(), x + lean, rect.top());
  }
  p_.setPen(pen(look_.faint_ink, 0.7));
  p_.drawLines(flanks);
  if (rect.height() - core_diameter > u(1.5)) {
    p_.drawLine(core.topLeft(), core.topRight());
    p_.drawLine(core.bottomLeft(), core.bottomRight());
  }
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(Qt::NoBrush);
  p_.drawRect(rect);
}

void ShapePainter::support(const QPointF& at, EndSupport support, double half_screw,
                           double outward) {
  if (support == EndSupport::free) {
    return;
  }
  const double reach = half_screw + u(9);
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(look_.paper);
  if (support == EndSupport::fixed) {
    for (const double offset : {1.0, 7.0}) {
      const double near = at.x() + outward * u(offset);
      const double left = outward > 0.0 ? near : near - u(5);
      p_.drawRect(QRectF(left, at.y() - reach, u(5), 2.0 * reach));
    }
  } else {
    const double radius = u(4.5);
    for (const double side : {-1.0, 1.0}) {
      p_.drawEllipse(QPointF(at.x() + outward * u(6), at.y() + side * (half_screw + radius)),
                     radius, radius);
    }
    p_.drawLine(QPointF(at.x(), at.y()), QPointF(at.x() + outward * u(12), at.y()));
  }
  ground(at.x() + outward * u(6), at.y() + reach + u(1), u(24));
}

void ShapePainter::ground(double x, double y, double width) {
  const double left = x - width / 2.0;
  p_.setPen(pen(look_.ink, 1.2));
  p_.drawLine(QPointF(left, y), QPointF(left + width, y));
  p_.setPen(pen(look_.faint_ink, 0.8));
  const int strokes = int(width / u(4));
  for (int stroke = 1; stroke <= strokes; ++stroke) {
    const double at = left + stroke * u(4);
    p_.drawLine(QPointF(at, y), QPointF(at - u(4), y + u(4)));
  }
}

void ShapePainter::clamp(const QPointF& at, EndSupport support, double half_screw, double outward) {
  if (support == EndSupport::free) {
    return;
  }
  const double reach = half_screw + u(7);
  const double near = at.x() + outward * u(1);
  const QRectF block(QPointF(std::min(near, near + outward * u(11)), at.y() - reach),
                     QSizeF(u(11), 2.0 * reach));
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(look_.paper);
  p_.drawRect(block);
  p_.setPen(pen(look_.faint_ink, 0.8));
  constexpr double most = 200.0;
  const double step = std::max(u(5.5), block.height() / most);
  for (double y = block.top() + step; y + step < block.bottom(); y += step) {
    p_.drawLine(QPointF(block.left(), y + u(5.5)), QPointF(block.right(), y - u(5.5)));
  }
  ground(block.center().x(), at.y() + reach + u(1), u(24));
}

void ShapePainter::head(const QPointF& tip, const QPointF& along, double size,
                        const QColor& colour) {
  const QPointF across(-along.y(), along.x());
  const QPointF neck = tip - along * size;
  p_.setPen(Qt::NoPen);
  p_.setBrush(colour);
  p_.drawPolygon(QPolygonF{tip, neck + across * size * 0.44, neck - across * size * 0.44});
}

void ShapePainter::paired_nut(const QRectF& rect) {
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(look_.paper);
  const double half = rect.width() / 2.0 - u(1.5);
  p_.drawRect(QRectF(rect.left(), rect.top(), half, rect.height()));
  p_.drawRect(QRectF(rect.right() - half, rect.top(), half, rect.height()));
  const QPointF middle = rect.center();
  const double size = std::min({u(7), half * 0.6, rect.height() * 0.7});
  const double off = rect.width() / 4.0 - size / 2.0 + u(0.5);
  head(middle - QPointF(off, 0.0), QPointF(1.0, 0.0), size, look_.ink);
  head(middle + QPointF(off, 0.0), QPointF(-1.0, 0.0), size, look_.ink);
}

void ShapePainter::turning(const QPointF& centre, double radius) {
  const QRectF round(centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius);
  p_.setPen(pen(look_.ink, 1.2));
  p_.setBrush(Qt::NoBrush);
  constexpr int sixteenths = 16;
  p_.drawArc(round, 45 * sixteenths, 105 * sixteenths);
  const double tip = 30.0 / 180.0 * std::numbers::pi;
  const QPointF along(std::sin(tip), std::cos(tip));
  head(centre + radius * QPointF(std::cos(tip), -std::sin(tip)), along, u(8), look_.ink);
}

void ShapePainter::brake(const QRectF& rect, double rail) {
  p_.setPen(pen(look_.ink, 1.0));
  p_.setBrush(look_.ink);
  p_.drawRect(QRectF(rect.left(), rail - u(4), rect.width(), u(3.2)));
  p_.drawRect(QRectF(rect.left(), rail + u(4.8), rect.width(), u(3.2)));
}

void ShapePainter::spring(const QLineF& line) {
  constexpr int turns = 10;
  QPolygonF zigzag;
  zigzag << line.p1() << line.pointAt(0.12);
  for (int i = 0; i < turns; ++i) {
    const double at = 0.12 + 0.76 * (i + 0.5) / turns;
    zigzag << line.pointAt(at) + QPointF(0.0, i % 2 == 0 ? u(-3) : u(3));
  }
  zigzag << line.pointAt(0.88) << line.p2();
  p_.setBrush(Qt::NoBrush);
  p_.setPen(pen(look_.ink, 1.0));
  p_.drawPolyline(zigzag);
  p_.drawLine(line.p2() - QPointF(0.0, u(6)), line.p2() + QPointF(0.0, u(6)));
}

void ShapePainter::double_arrow(const QLineF& line, const QColor& colour) {
  const QLineF way = line.unitVector();
  const QPointF along(way.dx(), way.dy());
  p_.setPen(pen(colour, 1.0));
  p_.drawLine(line.p1() + along * u(5), line.p2() - along * u(5));
  head(line.p1(), -along, u(6), colour);
  head(line.p2(), along, u(6), colour);
}

void ShapePainter::arrow(const QLineF& line, const QColor& colour, bool solid) {
  p_.setPen(pen(colour, solid ? 1.6 : 1.0, solid ? Qt::SolidLine : Qt::DashLine));
  const QLineF way = line.unitVector();
  const QPointF along(way.dx(), way.dy());
  p_.drawLine(line.p1(), line.p2() - along * u(8));
  head(line.p2(), along, u(8), colour);
}

void ShapePainter::extension(double x, double from, double to) {
  p_.setPen(pen(look_.rule, 0.8));
  p_.drawLine(QPointF(x, from), QPointF(x, to));
}

void ShapePainter::dimension(double from, double to, double y, const QRectF& gap) {
  p_.setPen(pen(look_.faint_ink, 0.8));
  const bool inside = gap.left() > from && gap.right() < to;
  // Under words wider than itself only its ends are drawn.
  if (inside || gap.right() <= from || gap.left() >= to) {
    p_.drawLine(QPointF(from, y), QPointF(inside ? gap.left() : to, y));
  }
  if (inside) {
    p_.drawLine(QPointF(gap.right(), y), QPointF(to, y));
  }
  for (const double x : {from, to}) {
    p_.drawLine(QPointF(x - u(3), y + u(3)), QPointF(x + u(3), y - u(3)));
  }
}

void ShapePainter::mark_selected(const QRectF& area) {
  QColor wash = look_.accent;
  wash.setAlphaF(0.10F);
  p_.setPen(pen(look_.accent, 1.4));
  p_.setBrush(wash);
  p_.drawRoundedRect(area, u(3), u(3));
}

void ShapePainter::mark_focused(const QRectF& area) {
  p_.setPen(pen(look_.ink, 1.0, Qt::DotLine));
  p_.setBrush(Qt::NoBrush);
  p_.drawRoundedRect(area, u(4), u(4));
}

} // namespace feedwright
