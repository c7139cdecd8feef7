// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/paint_drive.h"

#include "train/belt_path.h"

#include <algorithm>

namespace feedwright {

void DrivePainter::paint() {
  twin();
  if (plan_.loop) {
    loop();
  } else if (train_.belt) {
    belt();
  } else if (train_.haul) {
    shapes_.motor_from_the_end(plan_.motor, train_.motor_face_known);
  } else {
    coupling();
  }
  leader();
  if (train_.haul) {
    hauling_belt(plan_.screw, 2.2);
    for (const QPointF& centre : {plan_.start, plan_.end}) {
      shapes_.pulley(centre, plan_.screw.height() / 2.0, train_.haul->teeth);
    }
  }
}

void DrivePainter::shaft(double from, double to, double y) {
  p_.setPen(shapes_.pen(look_.ink, 3.0));
  p_.drawLine(QPointF(from, y), QPointF(to, y));
}

void DrivePainter::hauling_belt(const QRectF& run, double weight) {
  const double radius = run.height() / 2.0;
  p_.setPen(shapes_.pen(look_.ink, weight));
  p_.setBrush(Qt::NoBrush);
  p_.drawPath(belt_path(QPointF(run.left(), run.center().y()), radius,
                        QPointF(run.right(), run.center().y()), radius));
}

/// Thin outlines: it is the same again.
void DrivePainter::twin() {
  if (!plan_.twin) {
    return;
  }
  const TwinPlan& twin = *plan_.twin;
  if (train_.haul) {
    hauling_belt(twin.screw, 0.9);
  }
  p_.setPen(shapes_.pen(look_.ink, 0.9));
  p_.setBrush(look_.paper);
  const double y = twin.screw.center().y();
  if (!train_.haul) {
    const QPointF end(twin.screw.right() + u(6), y);
    p_.drawLine(QPointF(twin.screw.left() - u(train_.nut_turns ? 6 : 12), y), end);
    p_.drawRect(twin.screw);
  }
  if (!twin.motor.isNull()) {
    p_.drawRoundedRect(twin.motor, u(2), u(2));
    if (!train_.nut_turns) {
      p_.drawLine(QPointF(twin.motor.right(), y), QPointF(twin.screw.left(), y));
    }
    p_.drawRect(twin.coupling);
  }
  p_.drawRect(twin.nut);
  if (train_.preloaded_pair) {
    const double middle = twin.nut.center().x();
    p_.drawLine(QPointF(middle, twin.nut.top()), QPointF(middle, twin.nut.bottom()));
  }
}

void DrivePainter::loop() {
  const LoopDrawing& drawing = *train_.loop;
  shapes_.motor_from_the_end(plan_.motor, train_.motor_face_known);
  for (std::size_t i = 0; i < drawing.pulleys.size(); ++i) {
    loop_pulley(i);
  }
  shapes_.belt(plan_.loop->belt, true);
  if (!plan_.loop->slide.isNull()) {
    shapes_.double_arrow(plan_.loop->slide, look_.ink);
  }
  if (!plan_.coupling.isNull()) {
    loop_from_the_side();
  }
}

void DrivePainter::loop_pulley(std::size_t pulley) {
  const LoopPulleyDrawing& drawing = train_.loop->pulleys[pulley];
  const QPointF& centre = plan_.loop->centres[pulley];
  const double radius = drawing.diameter * plan_.loop->scale / 2.0;
  if (drawing.teeth > 0) {
    shapes_.pulley(centre, std::max(radius, u(1.5)), drawing.teeth);
  } else {
    shapes_.roller(centre, radius);
  }
}

void DrivePainter::loop_from_the_side() {
  if (!train_.nut_turns) {
    shaft(plan_.coupling.center().x(), plan_.start.x() - u(10), plan_.start.y());
  }
  const LoopPlan& loop = *plan_.loop;
  const double half = plan_.coupling.width() / 2.0 - u(0.5);
  p_.setPen(shapes_.pen(look_.ink, 0.9));
  for (const double x : {-half, half}) {
    if (!loop.band.isNull()) {
      p_.drawLine(loop.band.translated(x, 0.0));
    }
  }
  if (!loop.twin_pulley.isNull()) {
    shaft(loop.twin_pulley.center().x(), plan_.twin->screw.left(), loop.twin_pulley.center().y());
    shapes_.pulley_from_the_side(loop.twin_pulley);
  }
  shapes_.pulley_from_the_side(plan_.coupling);
}

void DrivePainter::belt() {
  const BeltDrawing& drawing = *train_.belt;
  shapes_.motor_from_the_end(plan_.motor, train_.motor_face_known);
  const QPointF driven = plan_.coupling.center();
  if (!train_.nut_turns && !train_.haul) {
    shaft(driven.x(), plan_.start.x() - u(10), plan_.start.y());
  }
  const double s = plan_.scale / 2.0;
  shapes_.pulley(plan_.motor_axis, drawing.motor_pulley.pitch_diameter * s,
                 drawing.motor_pulley.teeth);
  shapes_.pulley(driven, drawing.screw_pulley.pitch_diameter * s, drawing.screw_pulley.teeth);
  shapes_.belt(plan_.belt, drawing.centre_distance.has_value());
}

void DrivePainter::coupling() {
  shapes_.motor_from_the_side(plan_.motor, train_.motor_face_known);
  const double y = plan_.start.y();
  shaft(plan_.motor.right(), plan_.coupling.left(), y);
  if (!train_.nut_turns) {
    shaft(plan_.coupling.right(), plan_.start.x() - u(10), y);
  }
  shapes_.coupling(plan_.coupling);
}

/// The way from the drive to a nut that turns, without saying how it goes.
void DrivePainter::leader() {
  if (plan_.leader.isEmpty()) {
    return;
  }
  p_.setPen(shapes_.pen(look_.faint_ink, 1.0, Qt::DashLine));
  p_.setBrush(Qt::NoBrush);
  p_.drawPolyline(plan_.leader);
}

} // namespace feedwright
