// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/label_wider.h"

#include "train/label_train.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

using enum Beside;

QRectF square_of(const QPointF& centre, double radius) {
  return {centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius};
}

QRectF pulley_area(const TrainGeometry& train, const TrainPlan& plan, std::size_t pulley) {
  const LoopPulleyDrawing& drawing = train.loop->pulleys[pulley];
  const QRectF circle =
      square_of(plan.loop->centres[pulley],
                std::max(drawing.diameter * plan.loop->scale / 2.0, plan.unit * 2));
  return drawing.role == PulleyRole::motor ? circle.united(plan.motor) : circle;
}

/// Outwards of the loop's middle first.
std::vector<Beside> sides_of(const QRectF& pulley, const QRectF& loop) {
  const QPointF way = pulley.center() - loop.center();
  const Beside level = way.x() < 0.0 ? left : right;
  const Beside upright = way.y() < 0.0 ? above : below;
  const Beside other_level = level == left ? right : left;
  const Beside other_upright = upright == above ? below : above;
  return {upright, level, other_level, other_upright};
}

} // namespace

void take_loop(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  if (!plan.loop) {
    return;
  }
  for (std::size_t i = 0; i < plan.loop->centres.size(); ++i) {
    writer.take(pulley_area(train, plan, i));
  }
  writer.take_along(plan.loop->belt);
  if (!plan.loop->slide.isNull()) {
    writer.take(plan.loop->slide, writer.u(4));
  }
  if (!plan.loop->twin_pulley.isNull()) {
    writer.take(plan.loop->twin_pulley.united(plan.coupling));
  }
}

void take_twin(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  const double at_nut = writer.u(4);
  for (const QLineF& arrow : plan.opposing) {
    if (!arrow.isNull()) {
      writer.take(arrow, at_nut);
    }
  }
  if (train.nut_turns) {
    const double radius = plan.turning_radius();
    writer.take(square_of(plan.nut.center(), radius + writer.u(1)));
  }
  for (qsizetype i = 1; i < plan.leader.size(); ++i) {
    writer.take(QLineF(plan.leader[i - 1], plan.leader[i]), writer.u(2));
  }
  if (!plan.twin) {
    return;
  }
  const double ends = writer.u(16);
  // A frame stands there while the second side is selected.
  writer.take(
      plan.twin->screw.united(plan.twin->nut).adjusted(-ends, -writer.u(5), ends, writer.u(5)));
  if (!plan.twin->motor.isNull()) {
    const double around = writer.u(4);
    writer.take(
        plan.twin->motor.united(plan.twin->coupling).adjusted(-around, -around, around, around));
  }
}

void take_haul(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  if (!train.haul) {
    return;
  }
  const double radius = plan.screw.height() / 2.0;
  for (const QPointF& centre : {plan.start, plan.end}) {
    writer.take(square_of(centre, radius + writer.u(2)));
  }
  writer.take(plan.screw.adjusted(0.0, -writer.u(3), 0.0, writer.u(3)));
  if (plan.twin) {
    writer.take(plan.twin->screw.adjusted(-radius, 0.0, radius, 0.0));
  }
}

void label_loop_head(LabelWriter& writer, const TrainPlan& plan, const TrainOptions& options) {
  if (!plan.loop) {
    return;
  }
  const QString scale = QCoreApplication::translate("Train", "end view %1", "scale")
                            .arg(ratio_text(plan.loop->scale, options));
  const QRectF head(plan.loop->title, writer.size_of(scale));
  writer.take(head.adjusted(0.0, 0.0, writer.u(12), 0.0));
  writer.add(scale, head, Tone::faint);
}

void label_loop(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  if (!plan.loop) {
    return;
  }
  const LoopPlan& loop = *plan.loop;
  for (std::size_t i = 0; i < loop.centres.size(); ++i) {
    const QRectF area = pulley_area(train, plan, i);
    const std::vector<Beside> sides = sides_of(area, loop.area);
    const QString text = train.loop->pulleys[i].text;
    QString broken = text;
    broken.replace(QStringLiteral(", "), QStringLiteral(",\n"));
    // Near, so that it is plain whose they are.
    constexpr double near = 3.0;
    writer.beside(text, area, {sides[0], sides[1]}, Tone::faint, false, near) ||
        writer.beside(broken, area, sides, Tone::faint, false, near) ||
        writer.beside(text, area, sides, Tone::faint, false, near);
  }
}

void label_nut(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  // Past the frame that stands round a selected screw.
  const double frame = std::max(plan.screw.height() / 2.0, writer.u(7)) + writer.u(10);
  QRectF area(plan.nut.left(), plan.start.y() - frame, plan.nut.width(), 2.0 * frame);
  writer.beside(train.nut_text, area,
                train.nut_turns ? std::vector{above, below} : std::vector{below, above}, Tone::ink,
                false, 1.5);
}

bool label_twin(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  if (!plan.twin) {
    return false;
  }
  const QLineF& arrow = plan.opposing[1];
  if (!arrow.isNull()) {
    writer.beside(train.opposed_text, QRectF(arrow.p1(), arrow.p2()).normalized(), {right, left},
                  Tone::ink);
  }
  QRectF near = plan.twin->screw;
  near.setRight(plan.twin->nut.left() - writer.u(8));
  return writer.beside(train.sides_text, near, {above}, Tone::faint).has_value();
}

void label_sides(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  writer.part_word(PartSlot::sides, "layout", train.sides_text,
                   plan.twin ? plan.twin->screw : plan.screw, {below, above});
}

void label_duty(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  const QRectF arrow(plan.cut_arrow.p1(), plan.cut_arrow.p2());
  writer.part_word(PartSlot::duty, "", train.duty_text,
                   arrow.adjusted(0.0, -plan.line, plan.line, plan.line), {right});
}

void label_carriage(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  const QString rest = train.carriage_text.section(QLatin1Char('\n'), 1);
  if (rest.isEmpty() ||
      plan.carriage_text != train.carriage_text.section(QLatin1Char('\n'), 0, 0)) {
    return;
  }
  QString one_line = rest;
  one_line.replace(QLatin1Char('\n'), QStringLiteral(" · "));
  const std::vector<Beside> sides{left, right, above};
  const bool said = writer.beside(rest, plan.carriage, sides, Tone::ink) ||
                    writer.beside(one_line, plan.carriage, sides, Tone::ink);
  if (!said) {
    writer.anywhere(one_line, Tone::ink);
  }
}

} // namespace feedwright
