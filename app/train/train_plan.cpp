// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_plan.h"

#include "train/label_train.h"
#include "train/place_figures.h"
#include "train/plan_drive.h"
#include "train/plan_parts.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class Planner {
public:
  Planner(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
          const QFontMetricsF& metrics)
      : train_(train), rect_(rect), room_(train, rect, options, metrics) {
    plan_.line = metrics.height();
    plan_.unit = plan_.line / 15.0;
  }

  TrainPlan planned() {
    room_.choose_scale(plan_);
    place_screw();
    place_carriage();
    place_drive(plan_, train_, room_, rect_);
    place_twin(plan_, train_, room_);
    place_machine_side();
    plan_whip();
    list_parts(plan_, train_);
    return plan_;
  }

private:
  double u(double n) const { return n * plan_.unit; }
  double half_screw() const { return room_.half_screw(plan_.scale); }

  void place_screw() {
    const double left = room_.left(plan_.scale, plan_.belt_upright);
    const double length = train_.span * plan_.scale;
    const double high = room_.above(plan_.scale, plan_.belt_upright);
    const double right = u(34) + (train_.haul ? half_screw() : 0.0);
    const double spare = rect_.width() - left - length - right;
    const double spare_height =
        rect_.height() - room_.title_height() - high - room_.below(plan_.scale, plan_.belt_upright);
    plan_.start =
        QPointF(rect_.left() + left + std::max(0.0, spare / 2.0),
                rect_.top() + room_.title_height() + high + std::max(0.0, spare_height / 2.0));
    plan_.end = plan_.start + QPointF(length, 0.0);
    plan_.screw =
        QRectF(plan_.start.x(), plan_.start.y() - half_screw(), length, 2.0 * half_screw());
  }

  QRectF nut_at(double place) const {
    const QPointF on_axis = plan_.start + QPointF(place * plan_.scale, 0.0);
    if (train_.haul) {
      QRectF clamp(0.0, 0.0, u(20), u(8));
      clamp.moveCenter(on_axis + QPointF(0.0, half_screw()));
      return clamp;
    }
    const double height = 2.0 * half_screw() * 1.7 + u(2);
    const double length = std::max(height * 0.9, u(16)) * (train_.preloaded_pair ? 2.0 : 1.0);
    QRectF nut(0.0, 0.0, length, height);
    nut.moveCenter(on_axis);
    return nut;
  }

  void place_carriage() {
    const double first = train_.nut_at_start;
    plan_.nut = nut_at(first + train_.nut_along);
    plan_.nut_at_start = nut_at(first);
    plan_.nut_at_end = nut_at(first + train_.travel);
    plan_.carriage_text = room_.carriage_text(plan_.scale);
    const double top = plan_.start.y() + room_.carriage_drop(plan_.scale);
    const double most = std::max(plan_.screw.width() * 0.2, u(40));
    const double width =
        std::max(room_.width_of(plan_.carriage_text) + u(16), std::min(most, u(150)));
    // A wide one at an end of its travel stays clear of what stands beyond.
    const double left = std::clamp(plan_.nut.center().x() - width / 2.0, plan_.start.x() - u(10),
                                   std::max(plan_.start.x() - u(10), rect_.right() - u(2) - width));
    plan_.carriage = QRectF(left, top, width, room_.carriage_height(plan_.scale));
    plan_.rail = plan_.carriage.bottom() + u(8);
    plan_.travel_line = plan_.rail + u(6) + plan_.line / 2.0 + u(2);
    plan_.span_line = plan_.travel_line + plan_.line + u(4);
    place_force_arrows();
  }

  void place_force_arrows() {
    const double middle = plan_.carriage.center().y();
    const bool room = plan_.carriage.right() + u(52) < rect_.right();
    const double near = room ? plan_.carriage.right() + u(8) : plan_.carriage.left() - u(8);
    plan_.cut_arrow = QLineF(near, middle, near + (room ? u(42) : -u(42)), middle);
    if (train_.down) {
      // A counterbalance that is too strong leaves a pull along the axis, upwards.
      const QPointF pull =
          train_.rises ? QPointF(train_.down->x() < 0.0 ? 1.0 : -1.0, 0.0) : *train_.down;
      const QPointF way(pull.x() * u(34), -pull.y() * u(34));
      const bool spring = train_.balanced && train_.down->x() > 0.0;
      const double right =
          (room ? plan_.carriage.left() : plan_.cut_arrow.x2()) - u(spring ? 54 : 10);
      const QPointF tail(way.x() > 0.0 ? right - way.x() : right, middle - way.y() / 2.0);
      plan_.gravity_arrow = QLineF(tail, tail + way);
    }
    if (train_.balanced) {
      // Against what gravity does along the axis.
      const double sense = train_.down->x() < 0.0 ? 1.0 : -1.0;
      const QPointF from(sense > 0.0 ? plan_.carriage.right() : plan_.carriage.left(),
                         plan_.carriage.top() + u(5));
      plan_.balance = QLineF(from, from + QPointF(sense * u(40), 0.0));
    }
    if (train_.brake) {
      plan_.brake = QRectF(plan_.carriage.center().x() - u(7), plan_.carriage.bottom(), u(14),
                           plan_.rail + u(8) - plan_.carriage.bottom());
    }
  }

  void place_machine_side() {
    const QSizeF box = room_.box(PartSlot::controller);
    const QSizeF above = room_.box(PartSlot::supply);
    plan_.supply_text = room_.box_text(PartSlot::supply);
    plan_.controller_text = room_.box_text(PartSlot::controller);
    const double left = plan_.start.x() - room_.left(plan_.scale, plan_.belt_upright);
    // Level with the dimensions, but never under the motor or the belt.
    double drive_bottom = plan_.motor.bottom();
    if (plan_.loop) {
      drive_bottom = rect_.bottom() - room_.boxes_height() - u(6);
    } else if (train_.belt) {
      drive_bottom = std::max(drive_bottom, plan_.belt.boundingRect().bottom());
    }
    const double bottom =
        std::max(plan_.span_line + plan_.line / 2.0, drive_bottom + u(6) + room_.boxes_height());
    plan_.controller = QRectF(QPointF(left, bottom - box.height()), box);
    plan_.supply = QRectF(plan_.controller.topLeft() - QPointF(0.0, above.height() + u(5)), above);
  }

  void plan_whip() {
    if (!train_.whip) {
      return;
    }
    const WhipDrawing& whip = *train_.whip;
    // How far it bows out says how near it is.
    constexpr double without_target = 0.7;
    const double near = std::clamp(whip.nearness.value_or(without_target), 0.0, 1.0);
    const double height = half_screw() + u(4) + u(17) * near;
    for (const QPointF& point : whip.shape) {
      const double place = whip.from + point.x() * (whip.to - whip.from);
      plan_.whip << plan_.start + QPointF(place * plan_.scale, -point.y() * height);
    }
  }

  const TrainGeometry& train_;
  QRectF rect_;
  TrainRoom room_;
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
  if (found != nullptr) {
    return found;
  }
  const auto words = std::ranges::find_if(
      captions, [&](const PlannedCaption& each) { return each.area.contains(point); });
  const auto named = words == captions.end()
                         ? parts.end()
                         : std::ranges::find(parts, words->slot, &PlannedPart::slot);
  return named != parts.end() ? &*named : nullptr;
}

const PlannedFigure* TrainPlan::figure_at(const QPointF& point) const {
  for (const PlannedFigure& figure : figures) {
    if (figure.area.adjusted(-unit, -unit, unit, unit).contains(point)) {
      return &figure;
    }
  }
  return nullptr;
}

const PlannedFigure* TrainPlan::figure_near(const QPointF& point) const {
  const PlannedFigure* near = figure_at(point);
  const auto words = std::ranges::find_if(
      captions, [&](const PlannedCaption& each) { return each.area.contains(point); });
  if (near != nullptr || words == captions.end()) {
    return near;
  }
  double least = HUGE_VAL;
  for (const PlannedFigure& figure : figures) {
    const double away = QLineF(figure.area.center(), point).length();
    if (words->area.contains(figure.area.center()) && !figure.area.isNull() && away < least) {
      least = away;
      near = &figure;
    }
  }
  return near;
}

std::optional<std::size_t> TrainPlan::pulley_at(const QPointF& point,
                                                const LoopDrawing& drawing) const {
  if (!loop) {
    return std::nullopt;
  }
  for (std::size_t i = 0; i < loop->centres.size(); ++i) {
    const double radius = std::max(drawing.pulleys[i].diameter * loop->scale / 2.0, 5.0 * unit);
    if (QLineF(point, loop->centres[i]).length() <= radius) {
      return i;
    }
  }
  return std::nullopt;
}

TrainPlan plan_train(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
                     QPaintDevice* device) {
  const TextMeasure measure(options.font, device);
  const QFontMetricsF& metrics = measure.metrics();
  TrainPlan plan = Planner(train, rect, options, metrics).planned();
  label_train(plan, train, rect, options, metrics);
  place_figures(plan, train, measure);
  return plan;
}

} // namespace feedwright
