// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/plan_drive.h"

#include "train/belt_path.h"

#include <QTransform>

#include <algorithm>

namespace feedwright {

namespace {

QRectF square_at(const QPointF& centre, double side) {
  return {centre.x() - side / 2.0, centre.y() - side / 2.0, side, side};
}

class DrivePlanner {
public:
  DrivePlanner(TrainPlan& plan, const TrainGeometry& train, const TrainRoom& room,
               const QRectF& rect)
      : plan_(plan), train_(train), room_(room), rect_(rect) {}

  void place() {
    if (train_.loop) {
      place_loop();
    } else if (train_.belt) {
      place_belt();
    } else if (train_.haul) {
      place_motor_behind();
    } else {
      place_coupling();
    }
    if (train_.nut_turns && !plan_.coupling.isNull()) {
      place_leader();
    }
  }

private:
  double u(double n) const { return n * plan_.unit; }

  void place_coupling() {
    const double face = train_.motor_face * plan_.scale;
    plan_.coupling = QRectF(plan_.start.x() - u(44), plan_.start.y() - u(8), u(26), u(16));
    plan_.motor = QRectF(plan_.coupling.left() - u(10) - face * 1.3, plan_.start.y() - face / 2.0,
                         face * 1.3, face);
    plan_.motor_axis = QPointF(plan_.motor.right(), plan_.start.y());
  }

  /// The shaft of a hauling belt's pulley stands across the drawing, its motor behind it.
  void place_motor_behind() {
    plan_.motor_axis = plan_.start;
    plan_.motor = square_at(plan_.start, train_.motor_face * plan_.scale);
  }

  void place_belt() {
    const double s = plan_.scale;
    const double face = train_.motor_face * s;
    const BeltDrawing& belt = *train_.belt;
    const double radius_1 = belt.motor_pulley.pitch_diameter * s / 2.0;
    const double radius_2 = belt.screw_pulley.pitch_diameter * s / 2.0;
    const double widest =
        plan_.belt_upright ? std::max({radius_1, radius_2, face / 2.0}) : radius_2;
    const QPointF driven =
        train_.haul ? plan_.start : QPointF(plan_.start.x() - u(24) - widest, plan_.start.y());
    const double distance = room_.centre_distance() * s;
    plan_.motor_axis =
        driven + (plan_.belt_upright ? QPointF(0.0, -distance) : QPointF(-distance, 0.0));
    plan_.motor = square_at(plan_.motor_axis, face);
    plan_.belt = belt_path(plan_.motor_axis, radius_1, driven, radius_2);
    // Where the screw's pulley stands: the end of its journal.
    plan_.coupling = square_at(driven, 2.0 * radius_2);
  }

  /// The end view stands left of everything, between the title and the machine's boxes.
  void place_loop() {
    const LoopDrawing& drawing = *train_.loop;
    LoopPlan loop;
    loop.scale = room_.loop_scale(plan_.scale);
    const QRectF bounds = drawing.bounds(train_.motor_face);
    const QSizeF size = bounds.size() * loop.scale;
    const double left = plan_.start.x() - room_.left(plan_.scale, plan_.belt_upright);
    const double top = rect_.top() + room_.title_height() + plan_.line + u(5);
    const double spare = room_.loop_limits().height() - size.height();
    const double aside = (room_.loop_width(plan_.scale) - size.width()) / 2.0;
    const QPointF corner(left + aside, top + std::max(0.0, spare / 2.0));
    loop.title = QPointF(left, top - plan_.line - u(5));
    loop.area = QRectF(corner, size);
    const QPointF shift = corner - bounds.topLeft() * loop.scale;
    loop.origin = shift;
    for (const LoopPulleyDrawing& pulley : drawing.pulleys) {
      loop.centres.push_back(pulley.centre * loop.scale + shift);
      if (pulley.role == PulleyRole::motor) {
        plan_.motor_axis = loop.centres.back();
      }
    }
    loop.belt = QTransform(loop.scale, 0, 0, loop.scale, shift.x(), shift.y()).map(drawing.belt);
    if (drawing.sliding) {
      const double radius = drawing.pulleys[*drawing.sliding].diameter * loop.scale / 2.0;
      const QPointF reach = drawing.slide * (radius + u(13));
      const QPointF& centre = loop.centres[*drawing.sliding];
      loop.slide = QLineF(centre - reach, centre + reach);
    }
    plan_.motor = square_at(plan_.motor_axis, train_.motor_face * loop.scale);
    plan_.loop = loop;
    place_pulley_from_the_side();
  }

  /// On the screw's end the loop's pulley is seen from the side.
  void place_pulley_from_the_side() {
    const LoopPulleyDrawing* screw = train_.loop->screw();
    if (screw == nullptr || train_.haul) {
      return;
    }
    const double width = std::max(train_.loop->belt_width * plan_.scale, u(5));
    const double height = std::max(screw->diameter * plan_.scale, plan_.screw.height() + u(4));
    plan_.coupling =
        QRectF(plan_.start.x() - u(20) - width, plan_.start.y() - height / 2.0, width, height);
    if (train_.twin && !train_.twin_motor) {
      plan_.loop->twin_pulley = plan_.coupling.translated(0.0, -room_.twin_rise(plan_.scale));
      if (!train_.loop->belt.isEmpty()) {
        plan_.loop->band = QLineF(plan_.coupling.center(), plan_.loop->twin_pulley.center());
      }
    }
  }

  void place_leader() {
    const double arrow = plan_.start.y() - plan_.turning_radius();
    const double over =
        std::min(plan_.start.y() - plan_.screw.height() / 2.0 - u(17), arrow - u(5));
    const double from =
        train_.belt && !train_.loop && plan_.coupling.right() < plan_.start.x() - u(30)
            ? plan_.start.x() - u(22)
            : plan_.start.x() - u(16);
    const double nut = plan_.nut.center().x();
    plan_.leader << QPointF(plan_.coupling.right(), plan_.start.y())
                 << QPointF(from, plan_.start.y()) << QPointF(from, over) << QPointF(nut, over)
                 << QPointF(nut, arrow);
  }

  TrainPlan& plan_;
  const TrainGeometry& train_;
  const TrainRoom& room_;
  QRectF rect_;
};

} // namespace

void place_drive(TrainPlan& plan, const TrainGeometry& train, const TrainRoom& room,
                 const QRectF& rect) {
  DrivePlanner(plan, train, room, rect).place();
}

void place_twin(TrainPlan& plan, const TrainGeometry& train, const TrainRoom& room) {
  if (!train.twin) {
    return;
  }
  const double rise = room.twin_rise(plan.scale);
  TwinPlan twin;
  twin.screw = plan.screw.translated(0.0, -rise);
  twin.nut = plan.nut.translated(0.0, -rise);
  // Behind a belt or loop the second motor would stand on the first.
  if (train.twin_motor && !train.belt && !train.loop && !train.haul) {
    twin.motor = plan.motor.translated(0.0, -rise);
    twin.coupling = plan.coupling.translated(0.0, -rise);
  }
  plan.twin = twin;
  if (train.opposed_text.isEmpty()) {
    return;
  }
  const double reach = 11.0 * plan.unit;
  const QPointF first(plan.nut.center().x(), plan.nut.top() - 6.0 * plan.unit);
  const QPointF second = first - QPointF(0.0, rise);
  plan.opposing[0] = QLineF(first - QPointF(reach, 0.0), first + QPointF(reach, 0.0));
  plan.opposing[1] = QLineF(second + QPointF(reach, 0.0), second - QPointF(reach, 0.0));
}

} // namespace feedwright
