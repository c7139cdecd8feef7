// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/paint_read_out.h"

#include <algorithm>

namespace feedwright {

namespace {

struct Columns {
  double name = 0.0, value = 0.0, heading = 0.0;
};

Columns columns_of(const ReadOut& read_out, const QFontMetricsF& metrics) {
  Columns columns;
  // The heading is bold.
  columns.heading = metrics.horizontalAdvance(read_out.heading) * 1.15;
  for (const auto& [name, value] : read_out.rows) {
    columns.name = std::max(columns.name, metrics.horizontalAdvance(name));
    columns.value = std::max(columns.value, metrics.horizontalAdvance(value));
  }
  return columns;
}

double shared(const QRectF& a, const QRectF& b) {
  const QRectF both = a.intersected(b);
  return both.width() * both.height();
}

/// How much of words and shapes a place would cover; what is moved weighs most.
double covered(const QRectF& area, const TrainPlan& plan, const QPointF& shift) {
  double sum = 0.0;
  for (const PlannedLabel& label : plan.labels) {
    sum += shared(area, label.area.translated(shift));
  }
  for (const QRectF& shape : {plan.motor, plan.coupling, plan.screw}) {
    sum += shared(area, shape.translated(shift));
  }
  constexpr double weight = 20.0;
  sum += weight * shared(area, plan.nut.united(plan.carriage).translated(shift));
  if (plan.loop) {
    sum += shared(area, plan.loop->area.translated(shift));
  }
  return sum;
}

} // namespace

QRectF read_out_area(const ReadOut& read_out, const TrainPlan& plan, const QPointF& shift,
                     const QRectF& window, const QFontMetricsF& metrics) {
  const double gap = metrics.height() * 0.5;
  const Columns columns = columns_of(read_out, metrics);
  const QSizeF size(std::max(columns.heading, columns.name + 2.0 * gap + columns.value) + 2.0 * gap,
                    metrics.height() * double(read_out.rows.size() + 1) + gap);
  const QRectF room = window.adjusted(gap, gap, -gap, -gap);
  QRectF best;
  double least = -1.0;
  constexpr int steps = 6;
  for (int row = 0; row <= steps; ++row) {
    for (int column = 0; column <= steps; ++column) {
      const QRectF tried(room.left() + (room.width() - size.width()) * column / steps,
                         room.top() + (room.height() - size.height()) * row / steps, size.width(),
                         size.height());
      const double covers = covered(tried, plan, shift);
      if (least < 0.0 || covers < least) {
        least = covers;
        best = tried;
      }
    }
  }
  return best;
}

void paint_read_out(QPainter& painter, const ReadOut& read_out, const QRectF& area,
                    const Look& look, const QFont& font) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(font);
  const double line = QFontMetricsF(font).height();
  const double gap = line * 0.5;
  painter.setPen(QPen(look.accent, line / 15.0));
  painter.setBrush(look.paper);
  painter.drawRoundedRect(area, gap / 2.0, gap / 2.0);
  QRectF row(area.left() + gap, area.top() + gap / 2.0, area.width() - 2.0 * gap, line);
  QFont bold = font;
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(look.ink);
  painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, read_out.heading);
  painter.setFont(font);
  for (const auto& [name, value] : read_out.rows) {
    row.translate(0.0, line);
    painter.setPen(look.faint_ink);
    painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, name);
    painter.setPen(look.ink);
    painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, value);
  }
  painter.restore();
}

} // namespace feedwright
