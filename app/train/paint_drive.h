// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/paint_shapes.h"
#include "train/train_plan.h"

namespace feedwright {

/// Paints what turns the screw: motor, coupling, belt or belt loop, the second side, and the belt
/// that hauls in a screw's stead.
class DrivePainter {
public:
  DrivePainter(QPainter& painter, ShapePainter& shapes, const Look& look,
               const TrainGeometry& train, const TrainPlan& plan)
      : p_(painter), shapes_(shapes), look_(look), train_(train), plan_(plan) {}

  void paint();

private:
  double u(double n) const { return n * plan_.unit; }
  void shaft(double from, double to, double y);
  void twin();
  void loop();
  void loop_pulley(std::size_t pulley);
  void loop_from_the_side();
  void belt();
  void coupling();
  void leader();
  void hauling_belt(const QRectF& run, double weight);

  QPainter& p_;
  ShapePainter& shapes_;
  const Look& look_;
  const TrainGeometry& train_;
  const TrainPlan& plan_;
};

} // namespace feedwright
