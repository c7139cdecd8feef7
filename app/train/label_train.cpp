// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/label_train.h"

#include "limits/number_text.h"
#include "text/words.h"
#include "train/place_labels.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

class Labeller {
public:
  Labeller(TrainPlan& plan, const TrainGeometry& train, const QRectF& rect,
           const TrainOptions& options, const QFontMetricsF& metrics)
      : plan_(plan), train_(train), rect_(rect), options_(options), metrics_(metrics),
        placer_(rect) {}

  void label() {
    take_shapes();
    label_fixed();
    label_title();
    label_whip();
    label_parts();
    label_governing();
  }

private:
  using enum Beside;
  double u(double n) const { return n * plan_.unit; }

  QSizeF size_of(const QString& text, bool bold = false) const {
    QFont font = options_.font;
    font.setBold(bold);
    const QFontMetricsF metrics = bold ? QFontMetricsF(font) : metrics_;
    // Bold is measured on the screen's device; widened to be safe on any other.
    const QSizeF size = metrics_.size(0, text);
    return {bold ? std::max(size.width() * 1.15, metrics.size(0, text).width()) + u(2)
                 : size.width() + u(2),
            size.height()};
  }

  void take_shapes() {
    placer_.take(plan_.motor);
    if (train_.belt) {
      placer_.take(plan_.belt.boundingRect());
    }
    placer_.take(plan_.coupling);
    const double grip = plan_.screw.height() / 2.0 + u(9);
    placer_.take(QRectF(plan_.start - QPointF(u(14), grip), QSizeF(u(28), 2.0 * grip + u(8))));
    placer_.take(QRectF(plan_.end - QPointF(u(12), grip), QSizeF(u(30), 2.0 * grip + u(8))));
    placer_.take(plan_.screw.adjusted(-u(30), -u(2), u(2), u(2)));
    placer_.take(plan_.nut);
    placer_.take(
        QRectF(plan_.nut.center(), QPointF(plan_.nut.center().x() + 1.0, plan_.carriage.top()))
            .adjusted(-u(3), 0.0, u(3), 0.0));
    placer_.take(plan_.carriage.adjusted(-u(2), 0.0, u(2), u(8)));
    placer_.take(QRectF(plan_.start.x(), plan_.rail - u(1), plan_.screw.width(), u(6)));
    take_extension(plan_.nut_at_start.center().x(), plan_.travel_line);
    take_extension(plan_.nut_at_end.center().x(), plan_.travel_line);
    take_extension(plan_.start.x(), plan_.span_line);
    take_extension(plan_.end.x(), plan_.span_line);
    placer_.take(plan_.supply);
    placer_.take(plan_.controller);
    placer_.take(QRectF(plan_.cut_arrow.p1(), plan_.cut_arrow.p2()).adjusted(0, -u(5), u(4), u(5)));
    if (!plan_.gravity_arrow.isNull()) {
      placer_.take(QRectF(plan_.gravity_arrow.p1(), plan_.gravity_arrow.p2())
                       .normalized()
                       .adjusted(-u(5), -u(5), u(5), u(5)));
    }
    for (qsizetype i = 1; i < plan_.whip.size(); ++i) {
      placer_.take(QRectF(plan_.whip[i - 1], plan_.whip[i]).normalized().adjusted(0, -u(2), 0, 1));
    }
  }

  /// The thin line from what is measured down to its dimension.
  void take_extension(double x, double bottom) {
    placer_.take(
        QRectF(QPointF(x - u(1), plan_.screw.bottom()), QPointF(x + u(1), bottom)).normalized());
  }

  void add(const QString& text, const QRectF& area, Tone tone, bool bold = false,
           Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter) {
    plan_.labels.push_back({text, area, tone, bold, alignment});
  }

  std::optional<QRectF> beside(const QString& text, const QRectF& area,
                               const std::vector<Beside>& sides, Tone tone, bool bold = false) {
    if (text.isEmpty()) {
      return std::nullopt;
    }
    const auto rect = placer_.place(area, size_of(text, bold), sides, u(6));
    if (rect) {
      const bool left_of = rect->right() <= area.left();
      const bool stacked = rect->bottom() <= area.top() || rect->top() >= area.bottom();
      add(text, *rect, tone, bold,
          (stacked   ? Qt::AlignHCenter
           : left_of ? Qt::AlignRight
                     : Qt::AlignLeft) |
              Qt::AlignVCenter);
    }
    return rect;
  }

  void label_fixed() {
    add(train_.carriage_text, plan_.carriage, Tone::ink, false, Qt::AlignCenter);
    boxed(train_.supply_text, plan_.supply, PartSlot::supply);
    boxed(train_.controller_text, plan_.controller, PartSlot::controller);
    dimension(train_.span_text, plan_.start.x(), plan_.end.x(), plan_.span_line);
    dimension(train_.travel_text, plan_.nut_at_start.center().x(), plan_.nut_at_end.center().x(),
              plan_.travel_line);
  }

  Tone governing_tone() const {
    const Verdict verdict = train_.governing->verdict;
    return verdict == Verdict::clear ? Tone::ink : tone_of(verdict);
  }

  /// Text in a box, standing out where the box governs.
  void boxed(const QString& text, const QRectF& area, PartSlot slot) {
    const bool governs = train_.governing && train_.governing->slot == slot;
    add(text, area, governs ? governing_tone() : Tone::faint, false, Qt::AlignCenter);
  }

  void dimension(const QString& text, double from, double to, double height) {
    QRectF area(QPointF(), size_of(text) + QSizeF(u(8), 0.0));
    area.moveCenter(QPointF((from + to) / 2.0, height));
    if (area.width() > to - from - u(20)) {
      area.moveLeft(to + u(6));
    }
    placer_.take(QRectF(from, area.top(), std::max(to, area.right()) - from, area.height()));
    add(text, area, Tone::faint, false, Qt::AlignCenter);
  }

  void label_title() {
    if (!options_.title) {
      return;
    }
    const QString scale = scale_text(plan_, options_);
    const QSizeF size = size_of(scale);
    const QRectF scale_area(rect_.right() - size.width(), rect_.top(), size.width(), size.height());
    add(scale, scale_area, Tone::faint, false, Qt::AlignRight | Qt::AlignVCenter);
    placer_.take(scale_area);
    QFont bold = options_.font;
    bold.setBold(true);
    const double room = scale_area.left() - rect_.left() - u(16);
    const QString title = QFontMetricsF(bold).elidedText(train_.title, Qt::ElideRight, room * 0.96);
    const QRectF title_area(rect_.left(), rect_.top(), std::min(room, size_of(title, true).width()),
                            size.height());
    add(title, title_area, Tone::ink, true);
    placer_.take(title_area);
    plan_.parts.push_back({PartSlot::axis, QString(), title_area});
  }

  bool whip_governs() const {
    return train_.governing && train_.governing->slot == PartSlot::drive &&
           train_.governing->member == QLatin1String("span");
  }

  void label_whip() {
    if (!train_.whip || plan_.whip.isEmpty()) {
      return;
    }
    const Verdict verdict = train_.whip->verdict;
    const bool near = verdict == Verdict::over || verdict == Verdict::close;
    const QString mark = whip_governs() ? train_.governing->text : QString();
    const QString one_line =
        mark.isEmpty() ? train_.whip->text : mark + QStringLiteral(" · ") + train_.whip->text;
    const QString two_lines =
        mark.isEmpty() ? train_.whip->text : mark + QLatin1Char('\n') + train_.whip->text;
    QRectF apex = plan_.whip.boundingRect();
    apex.setHeight(u(2));
    const Tone tone = near ? tone_of(verdict) : mark.isEmpty() ? Tone::faint : Tone::ink;
    if (!beside(one_line, apex, {above}, tone, near || !mark.isEmpty())) {
      beside(two_lines, apex, {above, below}, tone, near || !mark.isEmpty());
    }
  }

  void label_parts() {
    beside(train_.motor_text, plan_.motor,
           train_.belt && plan_.belt_upright ? std::vector{right, left, above, below}
                                             : std::vector{above, below, right, left},
           Tone::faint);
    const QRectF drive = train_.belt ? plan_.belt.boundingRect() : plan_.coupling;
    beside(train_.transmission_text, drive,
           train_.belt && plan_.belt_upright ? std::vector{right, left, below, above}
                                             : std::vector{below, above, right, left},
           Tone::faint);
    QRectF far_half = plan_.screw;
    far_half.setLeft(plan_.carriage.right());
    far_half.setRight(plan_.end.x() - u(14));
    beside(train_.screw_text, far_half, {below, above}, Tone::faint) ||
        beside(train_.screw_text, plan_.screw, {below, above}, Tone::faint);
    const QRectF arrow(plan_.cut_arrow.p1(), plan_.cut_arrow.p2());
    beside(train_.cut_text, arrow.adjusted(0, -u(5), u(2), u(5)), {right, below, above},
           train_.cuts ? Tone::accent : Tone::faint);
    if (!plan_.gravity_arrow.isNull()) {
      const QRectF way = QRectF(plan_.gravity_arrow.p1(), plan_.gravity_arrow.p2()).normalized();
      const QString whole = train_.gravity_text + QLatin1Char('\n') + train_.lying_text;
      if (!beside(whole, way, {left, above, below, right}, Tone::ink)) {
        beside(train_.gravity_text, way, {left, above, below, right}, Tone::ink);
      }
    }
    const QRectF rail_end(plan_.end.x() - u(2), plan_.rail - u(4), u(2), u(8));
    beside(train_.guides_text, rail_end, {right, above, left}, Tone::faint);
  }

  QRectF area_of(PartSlot slot) const {
    for (const PlannedPart& part : plan_.parts) {
      if (part.slot == slot) {
        return part.area;
      }
    }
    return rect_;
  }

  void label_governing() {
    if (!train_.governing || (whip_governs() && !plan_.whip.isEmpty())) {
      return;
    }
    const GoverningMark& mark = *train_.governing;
    const bool in_box = mark.slot == PartSlot::supply || mark.slot == PartSlot::controller;
    beside(mark.text, area_of(mark.slot),
           in_box ? std::vector{left, right, below} : std::vector{above, right, below, left},
           governing_tone(), true);
  }

  TrainPlan& plan_;
  const TrainGeometry& train_;
  QRectF rect_;
  const TrainOptions& options_;
  const QFontMetricsF& metrics_;
  LabelPlacer placer_;
};

} // namespace

QString scale_text(const TrainPlan& plan, const TrainOptions& options) {
  const double n = options.units_per_mm / plan.scale;
  QString scale = n >= 1.0 ? QCoreApplication::translate("Train", "1 : %1").arg(number_text(n))
                           : QCoreApplication::translate("Train", "%1 : 1").arg(number_text(1 / n));
  if (plan.thickness < 1.005) {
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
