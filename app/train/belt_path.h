// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainterPath>
#include <QPointF>

namespace feedwright {

/// An open belt round two pulleys: two outer tangents and an arc on each pulley. One circle inside
/// the other gives the larger circle alone.
QPainterPath belt_path(const QPointF& centre_1, double radius_1, const QPointF& centre_2,
                       double radius_2);

} // namespace feedwright
