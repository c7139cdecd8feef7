// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/label_train.h"

#include "limits/number_text.h"
#include "text/words.h"
#include "train/label_marks.h"
#include "train/label_wider.h"
#include "train/label_writer.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace feedwright {

namespace {

class Labeller {
public:
  Labeller(TrainPlan& plan, const TrainGeometry& train, const QRectF& rect,
           const TrainOptions& options, const QFontMetricsF& metrics)
      : plan_(plan), train_(train), rect_(rect), options_(options),
        writer_(plan, rect, options, metrics) {}

  void label() {
    take_shapes();
    label_fixed();
    label_loop_head(writer_, plan_, options_);
    label_title();
    // A danger has the first choice of places.
    if (train_.can_fall) {
      label_gravity();
    }
    label_whip();
    label_marks(writer_, train_, plan_);
    label_motor();
    label_transmission();
    // On paper, where nothing is chosen, what is usual need not be said.
    if (!says(train_.sides_text) && (options_.title || train_.twin)) {
      label_sides(writer_, train_, plan_);
    }
    label_nut(writer_, train_, plan_);
    label_loop(writer_, train_, plan_);
    label_carriage(writer_, train_, plan_);
    label_parts();
    if (!says(train_.duty_text) && (options_.title || train_.works)) {
      label_duty(writer_, train_, plan_);
    }
  }

private:
  using enum Beside;
  double u(double n) const { return n * plan_.unit; }

  std::optional<QRectF> beside(const QString& text, const QRectF& area,
                               const std::vector<Beside>& sides, Tone tone, bool bold = false) {
    return writer_.beside(text, area, sides, tone, bold);
  }

  void take_shapes() {
    writer_.take(plan_.motor);
    if (train_.belt) {
      writer_.take(plan_.belt.boundingRect());
    }
    writer_.take(plan_.coupling);
    train_.haul ? take_haul(writer_, train_, plan_) : take_screw();
    take_loop(writer_, train_, plan_);
    take_twin(writer_, train_, plan_);
    writer_.take(plan_.nut);
    writer_.take(
        QRectF(plan_.nut.center(), QPointF(plan_.nut.center().x() + 1.0, plan_.carriage.top()))
            .adjusted(-u(3), 0.0, u(3), 0.0));
    writer_.take(plan_.carriage.adjusted(-u(2), 0.0, u(2), u(8)));
    writer_.take(QRectF(plan_.start.x(), plan_.rail - u(1), plan_.screw.width(), u(6)));
    for (const double x : {plan_.nut_at_start.center().x(), plan_.nut_at_end.center().x()}) {
      take_extension(x, plan_.travel_line);
    }
    for (const double x : {plan_.start.x(), plan_.end.x()}) {
      take_extension(x, plan_.span_line);
    }
    writer_.take(plan_.supply);
    writer_.take(plan_.controller);
    writer_.take(plan_.cut_arrow, u(5));
    if (!plan_.balance.isNull()) {
      writer_.take(plan_.balance, u(7));
    }
    if (!plan_.gravity_arrow.isNull()) {
      writer_.take(QRectF(plan_.gravity_arrow.p1(), plan_.gravity_arrow.p2())
                       .normalized()
                       .adjusted(-u(5), -u(5), u(5), u(5)));
    }
    for (qsizetype i = 1; i < plan_.whip.size(); ++i) {
      const QRectF bow = QRectF(plan_.whip[i - 1], plan_.whip[i]).normalized();
      writer_.take(bow.adjusted(0, -u(2), 0, 1));
      if (train_.whip->verdict == Verdict::over) { // drawn on both sides then
        const double top = 2.0 * plan_.start.y() - bow.bottom();
        writer_.take(QRectF(bow.left(), top - 1.0, bow.width(), bow.height() + u(2)));
      }
    }
  }

  void take_screw() {
    const double grip = plan_.screw.height() / 2.0 + u(9);
    writer_.take(QRectF(plan_.start - QPointF(u(14), grip), QSizeF(u(28), 2.0 * grip + u(8))));
    writer_.take(QRectF(plan_.end - QPointF(u(12), grip), QSizeF(u(30), 2.0 * grip + u(8))));
    writer_.take(plan_.screw.adjusted(-u(30), -u(2), u(2), u(2)));
    // A frame stands there while the screw is selected.
    const double frame = std::max(plan_.screw.height() / 2.0, u(7)) + u(10);
    writer_.take(QRectF(plan_.start, plan_.end).adjusted(-u(16), -frame, u(20), frame));
  }

  /// The thin line from what is measured down to its dimension.
  void take_extension(double x, double bottom) {
    writer_.take(
        QRectF(QPointF(x - u(1), plan_.screw.bottom()), QPointF(x + u(1), bottom)).normalized());
  }

  void label_fixed() {
    writer_.add(plan_.carriage_text, plan_.carriage, Tone::ink, false, Qt::AlignCenter);
    boxed(plan_.supply_text, plan_.supply, PartSlot::supply);
    boxed(plan_.controller_text, plan_.controller, PartSlot::controller);
    writer_.dimension(train_.span_text, plan_.start.x(), plan_.end.x(), plan_.span_line);
    writer_.dimension(train_.travel_text, plan_.nut_at_start.center().x(),
                      plan_.nut_at_end.center().x(), plan_.travel_line);
  }

  /// Text in a box, standing out where the box governs.
  void boxed(const QString& text, const QRectF& area, PartSlot slot) {
    writer_.add(text, area, marks_at(train_, slot).tone, false, Qt::AlignCenter);
  }

  void label_title() {
    if (options_.title) {
      writer_.take(QRectF(rect_.topLeft(), QSizeF(rect_.width(), plan_.line)));
    }
    const bool twin_said = label_twin(writer_, train_, plan_);
    if (!options_.title) {
      return;
    }
    const QString scale = scale_text(plan_, options_);
    const QSizeF size = writer_.size_of(scale);
    const QRectF scale_area(rect_.right() - size.width(), rect_.top(), size.width(), size.height());
    writer_.add(scale, scale_area, Tone::faint, false, Qt::AlignRight | Qt::AlignVCenter);
    double bound = title_word(PartSlot::duty, train_.duty_text, scale_area.left());
    if (!twin_said) {
      bound = title_word(PartSlot::sides, train_.sides_text, bound);
    }
    QFont bold = options_.font;
    bold.setBold(true);
    const double room = bound - rect_.left() - u(16) - room_of_standing();
    const QString title = QFontMetricsF(bold).elidedText(train_.title, Qt::ElideRight, room * 0.96);
    const QRectF title_area(rect_.left(), rect_.top(),
                            std::min(room, writer_.size_of(title, true).width()), size.height());
    writer_.add(title, title_area, Tone::ink, true);
    plan_.parts.push_back({PartSlot::axis, QString(), title_area});
    if (train_.down && room > 0.0) {
      plan_.standing = QRectF(title_area.right() + u(6), rect_.top(), standing_width(), plan_.line);
    }
  }

  /// Of the sign that shows how an axis stands which is not level.
  double standing_width() const { return 1.7 * plan_.line; }
  double room_of_standing() const { return train_.down ? standing_width() + u(10) : 0.0; }

  /// A word that stands for a part, in the title's line left of `bound` if the title leaves it
  /// room; what bounds the title then.
  double title_word(PartSlot slot, const QString& text, double bound) {
    const QSizeF size = writer_.size_of(text);
    const QRectF area(QPointF(bound - u(18) - size.width(), rect_.top()), size);
    const double title = writer_.size_of(train_.title, true).width() + u(24) + room_of_standing();
    if (area.left() < rect_.left() + title) {
      return bound;
    }
    writer_.add(text, area, Tone::faint);
    plan_.parts.push_back({slot, QString(), area});
    return area.left();
  }

  bool says(const QString& text) const {
    return std::any_of(plan_.labels.begin(), plan_.labels.end(),
                       [&](const PlannedLabel& label) { return label.text == text; });
  }

  void label_whip() {
    if (!train_.whip || plan_.whip.isEmpty()) {
      return;
    }
    const Verdict verdict = train_.whip->verdict;
    const bool near = verdict == Verdict::over || verdict == Verdict::close;
    const GoverningMark* stands = whip_mark(train_);
    const QString mark = stands != nullptr ? stands->text : QString();
    const QString one_line =
        mark.isEmpty() ? train_.whip->text : mark + QStringLiteral(" · ") + train_.whip->text;
    const QString two_lines =
        mark.isEmpty() ? train_.whip->text : mark + QLatin1Char('\n') + train_.whip->text;
    QRectF apex = plan_.whip.boundingRect();
    apex.setHeight(u(2));
    const Tone tone = near ? tone_of(verdict) : mark.isEmpty() ? Tone::faint : Tone::ink;
    const bool bold = near || !mark.isEmpty();
    const bool said = beside(one_line, apex, {above}, tone, bold) ||
                      beside(two_lines, apex, {above, below}, tone, bold);
    if (!said) {
      beside(mark, apex, {above}, tone, bold);
    }
  }

  /// Its torque alone where its size has no room.
  void label_motor() {
    const std::vector<Beside> sides = train_.belt && plan_.belt_upright
                                          ? std::vector{right, left, above, below}
                                          : std::vector{above, below, right, left};
    QString one_line = train_.motor_text;
    one_line.replace(QLatin1Char('\n'), QStringLiteral(" · "));
    beside(train_.motor_text, plan_.motor, sides, Tone::faint) ||
        beside(one_line, plan_.motor, sides, Tone::faint) ||
        beside(train_.motor_text.section(QLatin1Char('\n'), 1), plan_.motor, sides, Tone::faint);
  }

  void label_gravity() {
    if (plan_.gravity_arrow.isNull()) {
      return;
    }
    const Tone tone = train_.can_fall ? Tone::over : Tone::ink;
    const QRectF way = QRectF(plan_.gravity_arrow.p1(), plan_.gravity_arrow.p2()).normalized();
    QStringList texts{train_.gravity_text};
    if (!train_.lying_text.isEmpty()) {
      texts.prepend(train_.gravity_text + QLatin1Char('\n') + train_.lying_text);
    }
    if (train_.can_fall) {
      texts << train_.fall_text << in_two_lines(train_.fall_text);
    }
    for (const QString& text : texts) {
      if (beside(text, way, {left, above, below, right}, tone)) {
        return;
      }
    }
    // A danger is never left unsaid for want of room beside its arrow.
    if (train_.can_fall && !writer_.anywhere(train_.fall_text, tone)) {
      writer_.anywhere(in_two_lines(train_.fall_text), tone);
    }
  }

  /// Broken at its last space.
  static QString in_two_lines(QString text) {
    const qsizetype space = text.lastIndexOf(QLatin1Char(' '));
    return space > 0 ? text.replace(space, 1, QLatin1Char('\n')) : text;
  }

  void label_parts() {
    QRectF far_half = plan_.screw;
    far_half.setLeft(plan_.carriage.right());
    far_half.setRight(plan_.end.x() - u(14));
    beside(train_.screw_text, far_half, {below, above}, Tone::faint) ||
        beside(train_.screw_text, plan_.screw, {below, above}, Tone::faint);
    const QRectF arrow(plan_.cut_arrow.p1(), plan_.cut_arrow.p2());
    beside(train_.cut_text, arrow.adjusted(0, -u(5), u(2), u(5)), {right, below, above},
           train_.cuts ? Tone::accent : Tone::faint);
    if (!train_.can_fall) {
      label_gravity();
    }
    const QRectF rail_end(plan_.end.x() - u(2), plan_.rail - u(4), u(2), u(8));
    beside(train_.guides_text, rail_end, {right, above, left}, Tone::faint);
  }

  void label_transmission() {
    if (train_.haul && !train_.belt && !train_.loop) {
      writer_.part_word(PartSlot::transmission, "", train_.transmission_text, plan_.motor,
                        {below, left, above, right});
      return;
    }
    const QRectF drive = plan_.loop    ? plan_.loop->area
                         : train_.belt ? plan_.belt.boundingRect()
                                       : plan_.coupling;
    const bool upright = train_.belt && plan_.belt_upright;
    const std::vector<Beside> sides =
        upright ? std::vector{right, left, below, above} : std::vector{below, above, right, left};
    QString one_line = train_.transmission_text;
    one_line.replace(QLatin1Char('\n'), QStringLiteral(" · "));
    // The ratio alone where the belt has no room.
    beside(train_.transmission_text, drive, sides, Tone::faint) ||
        beside(one_line, drive, sides, Tone::faint) ||
        beside(train_.transmission_text.section(QLatin1Char('\n'), 0, 0), drive, sides,
               Tone::faint);
  }

  TrainPlan& plan_;
  const TrainGeometry& train_;
  QRectF rect_;
  const TrainOptions& options_;
  LabelWriter writer_;
};

} // namespace

QString ratio_text(double scale, const TrainOptions& options) {
  const double n = options.units_per_mm / scale;
  return words::left_to_right(
      n >= 1.0 ? QCoreApplication::translate("Train", "1 : %1").arg(number_text(n))
               : QCoreApplication::translate("Train", "%1 : 1").arg(number_text(1 / n)));
}

QString scale_text(const TrainPlan& plan, const TrainOptions& options) {
  QString scale = ratio_text(plan.scale, options);
  if (plan.thickness < 1.05) {
    return scale;
  }
  return QCoreApplication::translate("Train", "%1, screw %2 times as thick")
      .arg(scale, number_text(plan.thickness, 2));
}

void label_train(TrainPlan& plan, const TrainGeometry& train, const QRectF& rect,
                 const TrainOptions& options, const QFontMetricsF& metrics) {
  Labeller(plan, train, rect, options, metrics).label();
}

} // namespace feedwright
