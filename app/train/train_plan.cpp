// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_plan.h"

#include "train/belt_path.h"
#include "train/label_train.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

/// 1 : n. Near enough together that the drawing fills its room.
constexpr double scales[] = {0.2, 0.5, 1,  1.5, 2,  2.5, 3,  3.5, 4,   4.5, 5,   6,   7,   8,
                             9,   10,  11, 12,  13, 14,  15, 16,  18,  20,  22,  25,  28,  30,
                             35,  40,  45, 50,  60, 70,  80, 90,  100, 150, 200, 300, 500, 1000};

class Planner {
public:
  Planner(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
          const QFontMetricsF& metrics)
      : train_(train), rect_(rect), options_(options), metrics_(metrics) {
    plan_.line = metrics.height();
    plan_.unit = plan_.line / 15.0;
  }

  TrainPlan planned() {
    choose_scale();
    place_screw();
    place_drive();
    place_carriage();
    place_machine_side();
    plan_whip();
    list_parts();
    return plan_;
  }

private:
  double u(double n) const { return n * plan_.unit; }

  double width_of(const QString& text) const { return metrics_.horizontalAdvance(text); }

  double box_width() const {
    return std::max(width_of(train_.supply_text), width_of(train_.controller_text)) + u(14);
  }

  double half_screw() const {
    return train_.nominal_diameter * plan_.scale * plan_.thickness / 2.0;
  }

  double drawn_centre_distance() const {
    const BeltDrawing& belt = *train_.belt;
    return belt.centre_distance.value_or(
        (belt.motor_pulley.pitch_diameter + belt.screw_pulley.pitch_diameter) * 1.2);
  }

  /// How far the drive reaches from the motor-end bearing to the left.
  double left_reach(double scale) const {
    double reach = 0.0;
    if (!train_.belt) {
      reach = train_.motor_face * 1.3 * scale + u(56);
    } else {
      const double half_end = train_.belt->screw_pulley.pitch_diameter / 2.0;
      const double half_motor =
          std::max(train_.motor_face, train_.belt->motor_pulley.pitch_diameter) / 2.0;
      reach = (plan_.belt_upright ? 2.0 * std::max(half_end, half_motor)
                                  : half_end + drawn_centre_distance() + half_motor) *
                  scale +
              u(26);
    }
    return std::max(reach, box_width() + u(14));
  }

  double above(double scale) const {
    double drive = train_.motor_face / 2.0 * scale;
    if (train_.belt) {
      const double half = std::max(train_.motor_face, train_.belt->motor_pulley.pitch_diameter) / 2;
      drive = (plan_.belt_upright ? drawn_centre_distance() + half : half) * scale + u(4);
    }
    return std::max(drive, plan_.line * 2.0 + u(32) + half_screw_at(scale));
  }

  double half_screw_at(double scale) const {
    return train_.nominal_diameter * scale * thickness_at(scale) / 2.0;
  }

  /// A core thinner than this would not be seen to have a thread.
  double thickness_at(double scale) const {
    const double seen = u(4);
    return std::max(1.0, seen / (train_.core_diameter * scale));
  }

  double below(double scale) const {
    const double rows = half_screw_at(scale) + u(14) + plan_.line + u(4) + carriage_height() +
                        u(12) + 2.0 * (plan_.line + u(5));
    const double pulley =
        train_.belt ? train_.belt->screw_pulley.pitch_diameter / 2.0 * scale : 0.0;
    const double half_motor = train_.motor_face / 2.0 * scale;
    const bool level = !train_.belt || !plan_.belt_upright;
    const double boxes = 2.0 * (plan_.line + u(12));
    return std::max(rows, std::max(pulley, level ? half_motor : 0.0) + boxes);
  }

  double carriage_height() const { return plan_.line + u(12); }
  double title_height() const { return options_.title ? plan_.line + u(8) : 0.0; }

  bool fits(double scale) const {
    const double width = left_reach(scale) + train_.span * scale + u(34);
    return width <= rect_.width() && title_height() + above(scale) + below(scale) <= rect_.height();
  }

  void choose_scale() {
    for (const double n : scales) {
      for (const bool upright : {true, false}) {
        plan_.belt_upright = upright;
        plan_.scale = options_.units_per_mm / n;
        if (fits(plan_.scale)) {
          plan_.thickness = thickness_at(plan_.scale);
          return;
        }
      }
    }
    plan_.thickness = thickness_at(plan_.scale);
  }

  void place_screw() {
    const double left = left_reach(plan_.scale);
    const double length = train_.span * plan_.scale;
    const double spare = rect_.width() - left - length - u(34);
    const double high = above(plan_.scale);
    const double spare_height = rect_.height() - title_height() - high - below(plan_.scale);
    plan_.start = QPointF(rect_.left() + left + std::max(0.0, spare / 2.0),
                          rect_.top() + title_height() + high + std::max(0.0, spare_height / 2.0));
    plan_.end = plan_.start + QPointF(length, 0.0);
    plan_.screw =
        QRectF(plan_.start.x(), plan_.start.y() - half_screw(), length, 2.0 * half_screw());
  }

  void place_drive() {
    const double s = plan_.scale;
    const double face = train_.motor_face * s;
    if (!train_.belt) {
      plan_.coupling = QRectF(plan_.start.x() - u(44), plan_.start.y() - u(8), u(26), u(16));
      plan_.motor = QRectF(plan_.coupling.left() - u(10) - face * 1.3, plan_.start.y() - face / 2.0,
                           face * 1.3, face);
      plan_.motor_axis = QPointF(plan_.motor.right(), plan_.start.y());
      return;
    }
    const BeltDrawing& belt = *train_.belt;
    const double radius_1 = belt.motor_pulley.pitch_diameter * s / 2.0;
    const double radius_2 = belt.screw_pulley.pitch_diameter * s / 2.0;
    const double widest =
        plan_.belt_upright ? std::max({radius_1, radius_2, face / 2.0}) : radius_2;
    const QPointF screw_pulley(plan_.start.x() - u(24) - widest, plan_.start.y());
    const double distance = drawn_centre_distance() * s;
    plan_.motor_axis =
        screw_pulley + (plan_.belt_upright ? QPointF(0.0, -distance) : QPointF(-distance, 0.0));
    plan_.motor = QRectF(0.0, 0.0, face, face);
    plan_.motor.moveCenter(plan_.motor_axis);
    plan_.belt = belt_path(plan_.motor_axis, radius_1, screw_pulley, radius_2);
    // Where the screw's pulley stands: the end of its journal.
    plan_.coupling =
        QRectF(screw_pulley - QPointF(radius_2, radius_2), QSizeF(2.0 * radius_2, 2.0 * radius_2));
  }

  QRectF nut_at(double place) const {
    const double height = 2.0 * half_screw() * 1.7 + u(2);
    const double length = std::max(height * 0.9, u(16));
    QRectF nut(0.0, 0.0, length, height);
    nut.moveCenter(plan_.start + QPointF(place * plan_.scale, 0.0));
    return nut;
  }

  void place_carriage() {
    const double first = train_.nut_at_start;
    plan_.nut = nut_at(first + train_.travel / 2.0);
    plan_.nut_at_start = nut_at(first);
    plan_.nut_at_end = nut_at(first + train_.travel);
    const double top = plan_.start.y() + half_screw() + u(14) + plan_.line + u(4);
    const double most = std::max(plan_.screw.width() * 0.2, u(40));
    const double width = std::max(width_of(train_.carriage_text) + u(16), std::min(most, u(150)));
    plan_.carriage = QRectF(plan_.nut.center().x() - width / 2.0, top, width, carriage_height());
    plan_.rail = plan_.carriage.bottom() + u(8);
    plan_.travel_line = plan_.rail + u(6) + plan_.line / 2.0 + u(2);
    plan_.span_line = plan_.travel_line + plan_.line + u(4);
    const double middle = plan_.carriage.center().y();
    plan_.cut_arrow =
        QLineF(plan_.carriage.right() + u(8), middle, plan_.carriage.right() + u(50), middle);
    if (train_.down) {
      const QPointF way(train_.down->x() * u(34), -train_.down->y() * u(34));
      const double right = plan_.carriage.left() - u(10);
      const QPointF tail(way.x() > 0.0 ? right - way.x() : right, middle - way.y() / 2.0);
      plan_.gravity_arrow = QLineF(tail, tail + way);
    }
  }

  void place_machine_side() {
    const double height = plan_.line + u(6);
    const double left = plan_.start.x() - left_reach(plan_.scale);
    // Level with the dimensions, but never under the motor or the belt.
    double drive_bottom = plan_.motor.bottom();
    if (train_.belt) {
      drive_bottom = std::max(drive_bottom, plan_.belt.boundingRect().bottom());
    }
    const double bottom =
        std::max(plan_.span_line + plan_.line / 2.0, drive_bottom + u(6) + 2.0 * height + u(5));
    plan_.controller = QRectF(left, bottom - height, box_width(), height);
    plan_.supply = plan_.controller.translated(0.0, -height - u(5));
  }

  void plan_whip() {
    if (!train_.whip) {
      return;
    }
    const WhipDrawing& whip = *train_.whip;
    const double height = half_screw() + u(20);
    for (const QPointF& point : whip.shape) {
      const double place = whip.from + point.x() * (whip.to - whip.from);
      plan_.whip << plan_.start + QPointF(place * plan_.scale, -point.y() * height);
    }
  }

  void add(PartSlot slot, const char* member, const QRectF& area) {
    plan_.parts.push_back({slot, QString::fromLatin1(member), area});
  }

  void list_parts() {
    add(PartSlot::motor, "", plan_.motor);
    add(PartSlot::transmission, "",
        train_.belt ? plan_.belt.boundingRect()
                    : plan_.coupling.adjusted(-u(2), -u(4), u(2), u(4)));
    const double grip = std::max(half_screw(), u(7)) + u(6);
    add(PartSlot::drive, "",
        QRectF(plan_.start - QPointF(u(12), grip), plan_.end + QPointF(u(16), grip)));
    add(PartSlot::drive, "span",
        QRectF(plan_.start.x(), plan_.span_line - plan_.line / 2.0, plan_.screw.width(),
               plan_.line));
    add(PartSlot::axis, "travel",
        QRectF(plan_.nut_at_start.center().x(), plan_.travel_line - plan_.line / 2.0,
               train_.travel * plan_.scale, plan_.line));
    add(PartSlot::carriage, "", plan_.carriage);
    add(PartSlot::guides, "",
        QRectF(plan_.start.x(), plan_.carriage.bottom(), plan_.screw.width(), u(12)));
    add(PartSlot::targets, "thrust",
        QRectF(plan_.cut_arrow.p1(), plan_.cut_arrow.p2()).adjusted(-u(2), -u(7), u(4), u(7)));
    add(PartSlot::supply, "", plan_.supply);
    add(PartSlot::controller, "", plan_.controller);
  }

  const TrainGeometry& train_;
  QRectF rect_;
  const TrainOptions& options_;
  const QFontMetricsF& metrics_;
  TrainPlan plan_;
};

} // namespace

Tone tone_of(Verdict verdict) {
  switch (verdict) {
  case Verdict::clear: return Tone::clear;
  case Verdict::close: return Tone::close;
  case Verdict::over: return Tone::over;
  case Verdict::open: return Tone::faint;
  }
  return Tone::faint;
}

const PlannedPart* TrainPlan::part_at(const QPointF& point) const {
  const PlannedPart* found = nullptr;
  const auto size = [](const QRectF& r) { return r.width() * r.height(); };
  for (const PlannedPart& part : parts) {
    if (part.area.adjusted(-unit, -unit, unit, unit).contains(point) &&
        (found == nullptr || size(part.area) < size(found->area))) {
      found = &part;
    }
  }
  return found;
}

TrainPlan plan_train(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
                     QPaintDevice* device) {
  const QFontMetricsF metrics(options.font, device);
  TrainPlan plan = Planner(train, rect, options, metrics).planned();
  label_train(plan, train, rect, options, metrics);
  return plan;
}

} // namespace feedwright
