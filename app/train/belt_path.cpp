// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/belt_path.h"

#include <QLineF>
#include <QtMath>

#include <cmath>

namespace feedwright {

namespace {

QRectF square_of(const QPointF& centre, double radius) {
  return {centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius};
}

} // namespace

QPainterPath belt_path(const QPointF& centre_1, double radius_1, const QPointF& centre_2,
                       double radius_2) {
  QPainterPath path;
  const QLineF centres(centre_1, centre_2);
  if (centres.length() <= std::abs(radius_1 - radius_2)) {
    radius_1 > radius_2 ? path.addEllipse(square_of(centre_1, radius_1))
                        : path.addEllipse(square_of(centre_2, radius_2));
    return path;
  }
  // Angles as painters have them: in degrees, anticlockwise. The tangent points of both pulleys
  // stand at the same angle to the line of centres.
  const double along = centres.angle();
  const double tangent = qRadiansToDegrees(std::acos((radius_1 - radius_2) / centres.length()));
  path.arcMoveTo(square_of(centre_1, radius_1), along + tangent);
  path.arcTo(square_of(centre_1, radius_1), along + tangent, 360.0 - 2.0 * tangent);
  path.arcTo(square_of(centre_2, radius_2), along - tangent, 2.0 * tangent);
  path.closeSubpath();
  return path;
}

} // namespace feedwright
