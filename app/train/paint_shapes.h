// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The signs a drive train is drawn with. `unit` is a hair over a pixel at an ordinary text size;
// line weights are in it.

#include "parts/screw.h"
#include "window/style.h"

#include <QPainter>

namespace feedwright {

class ShapePainter {
public:
  ShapePainter(QPainter& painter, const Look& look, double unit)
      : p_(painter), look_(look), unit_(unit) {}

  QPen pen(const QColor& colour, double weight, Qt::PenStyle style = Qt::SolidLine) const;

  void motor_from_the_end(const QRectF& flange, bool size_known);
  void motor_from_the_side(const QRectF& body, bool size_known);
  void pulley(const QPointF& centre, double pitch_radius, int teeth);
  /// A smooth idler.
  void roller(const QPointF& centre, double radius);
  /// A toothed pulley seen across its shaft.
  void pulley_from_the_side(const QRectF& rect);
  void belt(const QPainterPath& path, bool fits);
  void coupling(const QRectF& rect);
  /// Outline at the nominal diameter, core, and flanks every `pitch`.
  void screw(const QRectF& rect, double core_diameter, double pitch);
  /// Fixed: two blocks on ground. Supported: two rolling circles on ground. Free: nothing.
  /// `outward` is −1 at the motor's end and 1 at the far end.
  void support(const QPointF& at, EndSupport support, double half_screw, double outward);
  /// Holds a shaft that does not turn.
  void clamp(const QPointF& at, EndSupport support, double half_screw, double outward);
  /// Two halves with what winds them against each other.
  void paired_nut(const QRectF& rect);
  /// Round a nut that turns.
  void turning(const QPointF& centre, double radius);
  /// Two shoes that grip the rail.
  void brake(const QRectF& rect, double rail);
  /// Hangs on a wall at the line's end and pulls at its start.
  void spring(const QLineF& line);
  void double_arrow(const QLineF& line, const QColor& colour);
  void arrow(const QLineF& line, const QColor& colour, bool solid);
  void extension(double x, double from, double to);
  void dimension(double from, double to, double y, const QRectF& gap);
  void mark_selected(const QRectF& area);
  void mark_focused(const QRectF& area);

private:
  double u(double n) const { return n * unit_; }
  void head(const QPointF& tip, const QPointF& along, double size, const QColor& colour);
  void ground(double x, double y, double width);

  QPainter& p_;
  const Look& look_;
  double unit_;
};

} // namespace feedwright
