// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A belt loop as its end view needs it: seen along the shafts, in millimetres, y downwards as
// painters have it.

#include "machine/machine.h"
#include "sizing/results.h"

#include <QPainterPath>
#include <QPointF>
#include <QString>

#include <optional>
#include <vector>

namespace feedwright {

struct LoopPulleyDrawing {
  QPointF centre;        ///< where the slide stands for the belt; the drawn place if no belt fits
  double diameter = 0.0; ///< pitch circle of a toothed pulley, surface of a roller; 0 if unknown
  int teeth = 0;
  PulleyRole role = PulleyRole::idler;
  QString text;
};

struct LoopDrawing {
  std::vector<LoopPulleyDrawing> pulleys;
  QPainterPath belt; ///< its pitch line; empty where the loop has a fault
  std::optional<std::size_t> sliding;
  QPointF slide; ///< direction of the slide, of length 1
  double belt_width = 0.0;
  QString text;

  /// Of the two driven pulleys' shafts the first; nothing in a loop without one.
  const LoopPulleyDrawing* screw() const;
  /// Pulleys, belt and a motor with a flange of that side.
  QRectF bounds(double motor_face) const;
};

/// `results` may be missing: then the teeth in mesh are left out.
LoopDrawing loop_drawing(const BeltLoopDrive& drive, const AxisResults* results);

} // namespace feedwright
