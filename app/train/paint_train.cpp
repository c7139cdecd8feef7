// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/paint_train.h"

#include "train/paint_drive.h"
#include "train/paint_shapes.h"

#include <QPainter>
#include <QTransform>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class TrainPainter {
public:
  TrainPainter(QPainter& painter, const TrainGeometry& train, const TrainPlan& plan,
               const Look& look, const TrainOptions& options)
      : p_(painter), train_(train), plan_(plan), look_(look), options_(options),
        shapes_(painter, look, plan.unit) {}

  void paint() {
    p_.save();
    p_.setRenderHint(QPainter::Antialiasing);
    p_.setFont(options_.font);
    paint_marks();
    paint_dimensions();
    paint_guides();
    DrivePainter(p_, shapes_, look_, train_, plan_).paint();
    paint_screw();
    paint_nut();
    paint_whip();
    paint_carriage();
    paint_arrows();
    paint_standing();
    paint_machine_side();
    paint_labels();
    p_.restore();
  }

private:
  double u(double n) const { return n * plan_.unit; }

  QColor colour_of(Tone tone) const {
    switch (tone) {
    case Tone::ink: return look_.ink;
    case Tone::faint: return look_.faint_ink;
    case Tone::accent: return look_.accent;
    case Tone::clear: return look_.clear;
    case Tone::close: return look_.close;
    case Tone::over: return look_.over;
    }
    return look_.ink;
  }

  void paint_marks() {
    for (const PlannedPart& part : plan_.parts) {
      const QRectF area = part.area.adjusted(-u(4), -u(4), u(4), u(4));
      if (options_.selected == part.slot) {
        shapes_.mark_selected(area);
      }
      if (options_.focused == part.slot) {
        shapes_.mark_focused(area.adjusted(-u(2), -u(2), u(2), u(2)));
      }
    }
  }

  void paint_dimensions() {
    shapes_.extension(plan_.start.x(), plan_.start.y() + plan_.screw.height() / 2.0 + u(16),
                      plan_.span_line + u(4));
    shapes_.extension(plan_.end.x(), plan_.start.y() + plan_.screw.height() / 2.0 + u(16),
                      plan_.span_line + u(4));
    shapes_.dimension(plan_.start.x(), plan_.end.x(), plan_.span_line, label_gap(train_.span_text));
    const double first = plan_.nut_at_start.center().x();
    const double last = plan_.nut_at_end.center().x();
    shapes_.extension(first, plan_.nut_at_start.bottom() + u(2), plan_.travel_line + u(4));
    shapes_.extension(last, plan_.nut_at_end.bottom() + u(2), plan_.travel_line + u(4));
    shapes_.dimension(first, last, plan_.travel_line, label_gap(train_.travel_text));
  }

  QRectF label_gap(const DimensionText& text) const {
    for (const PlannedLabel& label : plan_.labels) {
      const bool elided = label.text.size() > 1 && label.text.endsWith(QChar(0x2026)) &&
                          text.words.startsWith(label.text.chopped(1));
      if (label.text == text.words || label.text == text.figure || elided) {
        return label.area;
      }
    }
    return {};
  }

  void paint_guides() {
    p_.setPen(shapes_.pen(look_.ink, 1.4));
    p_.drawLine(QPointF(plan_.start.x() - u(4), plan_.rail), QPointF(plan_.end.x(), plan_.rail));
    p_.setPen(shapes_.pen(look_.faint_ink, 0.8));
    p_.drawLine(QPointF(plan_.start.x() - u(4), plan_.rail + u(4)),
                QPointF(plan_.end.x(), plan_.rail + u(4)));
  }

  void paint_screw() {
    if (train_.haul) {
      return;
    }
    const double core =
        plan_.screw.height() * train_.core_diameter / std::max(train_.nominal_diameter, 1e-9);
    // Every flank once; every second, third … where they would run together.
    double pitch = train_.lead * plan_.scale;
    const double least = u(3.5);
    if (pitch < least) {
      pitch *= std::ceil(least / pitch);
    }
    shapes_.screw(plan_.screw, core, pitch);
    const double half = plan_.screw.height() / 2.0;
    if (train_.nut_turns) {
      shapes_.clamp(plan_.start, train_.motor_end, half, -1.0);
      shapes_.clamp(plan_.end, train_.far_end, half, 1.0);
    } else {
      shapes_.support(plan_.start, train_.motor_end, half, -1.0);
      shapes_.support(plan_.end, train_.far_end, half, 1.0);
    }
  }

  void paint_nut() {
    p_.setBrush(Qt::NoBrush);
    p_.setPen(shapes_.pen(look_.faint_ink, 0.8, Qt::DotLine));
    p_.drawRect(plan_.nut_at_start);
    p_.drawRect(plan_.nut_at_end);
    p_.setPen(shapes_.pen(look_.ink, 1.2));
    p_.drawLine(plan_.nut.center(), QPointF(plan_.nut.center().x(), plan_.carriage.top()));
    if (train_.preloaded_pair) {
      shapes_.paired_nut(plan_.nut);
    } else {
      p_.setBrush(train_.haul ? look_.ink : look_.paper);
      p_.drawRect(plan_.nut);
    }
    if (train_.nut_turns) {
      shapes_.turning(plan_.nut.center(), plan_.turning_radius());
    }
  }

  /// Far off a faint dotted bow; near a bold one; past the edge both bows, as the eye sees it whip.
  void paint_whip() {
    if (plan_.whip.isEmpty()) {
      return;
    }
    const Verdict verdict = train_.whip->verdict;
    const bool near = verdict == Verdict::close || verdict == Verdict::over;
    constexpr double half_way = 0.5;
    const bool far = !near && train_.whip->nearness.value_or(1.0) < half_way;
    const QColor colour = near ? colour_of(tone_of(verdict)) : look_.faint_ink;
    p_.setBrush(Qt::NoBrush);
    p_.setPen(shapes_.pen(colour,
                          near  ? 2.2
                          : far ? 0.9
                                : 1.2,
                          far                        ? Qt::DotLine
                          : verdict == Verdict::over ? Qt::SolidLine
                                                     : Qt::DashLine));
    paint_bow(plan_.whip);
    if (verdict == Verdict::over) {
      const double axis = plan_.start.y();
      p_.setPen(shapes_.pen(colour, 1.2, Qt::DashLine));
      paint_bow(QTransform(1, 0, 0, -1, 0, 2.0 * axis).map(plan_.whip));
    }
  }

  /// In pieces, each dash where the whole line would have it: all the dashes of a tall bow at once
  /// take the rasterizer many times as long.
  void paint_bow(const QPolygonF& bow) {
    constexpr qsizetype piece = 6;
    QPen pen = p_.pen();
    double walked = 0.0;
    for (qsizetype from = 0; from + 1 < bow.size(); from += piece) {
      const QPolygonF part(bow.mid(from, piece + 1));
      if (pen.style() != Qt::SolidLine) {
        pen.setDashOffset(walked / pen.widthF());
        p_.setPen(pen);
      }
      p_.drawPolyline(part);
      for (qsizetype i = 1; i < part.size(); ++i) {
        walked += QLineF(part[i - 1], part[i]).length();
      }
    }
  }

  void paint_carriage() {
    p_.setPen(shapes_.pen(look_.ink, 1.4));
    p_.setBrush(look_.paper);
    p_.drawRoundedRect(plan_.carriage, u(2), u(2));
    const double block = u(18);
    for (const double x : {plan_.carriage.left() + u(4), plan_.carriage.right() - block - u(4)}) {
      p_.drawRect(QRectF(x, plan_.carriage.bottom(), block, plan_.rail - plan_.carriage.bottom()));
    }
    if (!plan_.brake.isNull()) {
      shapes_.brake(plan_.brake, plan_.rail);
    }
    if (!plan_.balance.isNull()) {
      shapes_.spring(plan_.balance);
    }
  }

  void paint_arrows() {
    shapes_.arrow(plan_.cut_arrow, train_.cuts ? look_.accent : look_.faint_ink, train_.cuts);
    for (const QLineF& opposing : plan_.opposing) {
      if (!opposing.isNull()) {
        shapes_.arrow(opposing, look_.ink, true);
      }
    }
    if (!plan_.gravity_arrow.isNull()) {
      shapes_.arrow(plan_.gravity_arrow, train_.can_fall ? look_.over : look_.ink, true);
    }
  }

  /// How the axis stands: its rail as it is inclined, with the motor's end and the carriage on it,
  /// and beside it which way is down.
  void paint_standing() {
    const QRectF& area = plan_.standing;
    if (area.isNull()) {
      return;
    }
    // The drawing lies; in it down points the other way than the axis is inclined.
    const double incline = std::atan2(-train_.down->x(), -train_.down->y());
    const double half = area.height() / 2.0 - u(1.5);
    const QPointF middle(area.left() + area.height() / 2.0, area.center().y());
    const QPointF along(std::cos(incline), -std::sin(incline));
    const QPointF above(along.y(), -along.x());
    const auto at = [&](double way, double up) { return middle + along * way + above * up; };
    p_.setPen(shapes_.pen(look_.ink, 1.6));
    p_.drawLine(at(-half, 0.0), at(half, 0.0));
    p_.drawLine(at(-half, -u(2)), at(-half, u(4))); // the motor's end
    p_.setPen(Qt::NoPen);
    p_.setBrush(look_.ink);
    p_.drawPolygon(
        QPolygonF{{at(-u(2.5), u(1)), at(u(2.5), u(1)), at(u(2.5), u(5)), at(-u(2.5), u(5))}});
    p_.setBrush(Qt::NoBrush);
    const double x = area.right() - u(4);
    const bool falls = train_.can_fall && !train_.rises;
    shapes_.arrow(QLineF(x, area.top() + u(2), x, area.bottom() - u(1)),
                  falls ? look_.over : look_.ink, true);
  }

  void paint_machine_side() {
    p_.setBrush(Qt::NoBrush);
    const std::pair<PartSlot, QRectF> boxes[] = {{PartSlot::supply, plan_.supply},
                                                 {PartSlot::controller, plan_.controller}};
    for (const auto& [slot, area] : boxes) {
      const bool governs = train_.governing && train_.governing->slot == slot;
      p_.setPen(governs ? shapes_.pen(look_.ink, 1.8) : shapes_.pen(look_.rule, 1.0));
      p_.drawRoundedRect(area, u(2), u(2));
    }
  }

  void paint_labels() {
    for (const PlannedLabel& label : plan_.labels) {
      QFont font = options_.font;
      font.setBold(label.bold);
      p_.setFont(font);
      p_.setPen(colour_of(label.tone));
      p_.drawText(label.area, int(label.alignment) | Qt::TextDontClip, label.text);
    }
  }

  QPainter& p_;
  const TrainGeometry& train_;
  const TrainPlan& plan_;
  const Look& look_;
  const TrainOptions& options_;
  ShapePainter shapes_;
};

} // namespace

void paint_train(QPainter& painter, const TrainGeometry& train, const TrainPlan& plan,
                 const Look& look, const TrainOptions& options) {
  TrainPainter(painter, train, plan, look, options).paint();
}

void paint_train(QPainter& painter, const TrainGeometry& train, const QRectF& rect,
                 const Look& look, const TrainOptions& options) {
  const TrainPlan plan = plan_train(train, rect, options, painter.device());
  paint_train(painter, train, plan, look, options);
}

double least_train_height(double line_height) {
  return line_height * 15.0;
}

} // namespace feedwright
