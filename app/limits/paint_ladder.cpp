// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/paint_ladder.h"

#include "limits/number_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class LadderPainter {
public:
  LadderPainter(QPainter& painter, const Ladder& ladder, const LadderPlan& plan, const Look& look,
                const LadderOptions& options)
      : p_(painter), ladder_(ladder), plan_(plan), look_(look), options_(options),
        metrics_(options.font, painter.device()) {}

  void paint() {
    p_.save();
    p_.setRenderHint(QPainter::Antialiasing);
    p_.setFont(options_.font);
    paint_title();
    if (has_bars()) {
      paint_scale();
    }
    for (std::size_t i = 0; i < ladder_.rows.size(); ++i) {
      paint_row(i);
    }
    paint_wanted_line();
    p_.restore();
  }

private:
  double u(double n) const { return n * plan_.unit; }

  double x_of(double value) const {
    return plan_.scale_left + value / ladder_.end * (plan_.scale_right - plan_.scale_left);
  }

  bool has_bars() const {
    return std::any_of(ladder_.rows.begin(), ladder_.rows.end(),
                       [](const LadderRow& row) { return row.length.has_value(); });
  }

  QRectF last_bar_row() const {
    QRectF last = plan_.rows.front();
    for (std::size_t i = 0; i < ladder_.rows.size(); ++i) {
      if (ladder_.rows[i].length) {
        last = plan_.rows[i];
      }
    }
    return last;
  }

  QColor colour_of(Verdict verdict) const {
    switch (verdict) {
    case Verdict::over: return look_.over;
    case Verdict::close: return look_.close;
    case Verdict::clear: return look_.clear;
    case Verdict::open: break;
    }
    return look_.faint_ink;
  }

  QColor bar_colour_of(const LadderRow& row) const {
    switch (row.verdict) {
    case Verdict::over: return look_.over;
    case Verdict::close: return look_.close;
    default: return look_.bar;
    }
  }

  void paint_title() {
    if (!options_.title) {
      return;
    }
    p_.setPen(look_.faint_ink);
    p_.drawText(plan_.title, Qt::AlignLeft | Qt::AlignVCenter, ladder_.title);
    p_.drawText(plan_.title, Qt::AlignRight | Qt::AlignVCenter, ladder_.unit);
  }

  void paint_scale() {
    const double top = plan_.rows.front().top();
    const double bottom = last_bar_row().bottom();
    double last_right = plan_.scale_left - u(40);
    const int ticks = int(std::floor(ladder_.end / ladder_.tick + 1e-6));
    for (int tick = 0; tick <= ticks; ++tick) {
      const double value = tick * ladder_.tick;
      const double x = x_of(value);
      p_.setPen(QPen(look_.rule, u(tick == 0 ? 1.2 : 0.7)));
      p_.drawLine(QPointF(x, top), QPointF(x, bottom + u(3)));
      const QString text = number_text(value, 3);
      const double half = metrics_.horizontalAdvance(text) / 2.0;
      if (x - half > last_right) {
        p_.setPen(look_.faint_ink);
        p_.drawText(QRectF(x - half - u(2), plan_.ticks_top, 2.0 * half + u(4), plan_.line),
                    Qt::AlignCenter, text);
        last_right = x + half + u(8);
      }
    }
  }

  void paint_row(std::size_t i) {
    const LadderRow& row = ladder_.rows[i];
    const QRectF area = plan_.rows[i];
    paint_row_marks(i, area);
    const bool trouble = row.verdict == Verdict::over || row.verdict == Verdict::close;
    p_.setPen(colour_of(row.verdict));
    p_.drawText(QRectF(area.left(), area.top(), u(20), area.height()), Qt::AlignCenter, row.sign);
    QFont font = options_.font;
    font.setBold(row.governs || trouble);
    p_.setFont(font);
    p_.setPen(row.length ? look_.ink : look_.faint_ink);
    const double name_room = plan_.scale_left - area.left() - u(34);
    const QFontMetricsF metrics(font, p_.device());
    p_.drawText(QRectF(area.left() + u(24), area.top(), name_room, area.height()),
                Qt::AlignLeft | Qt::AlignVCenter,
                metrics.elidedText(row.name, Qt::ElideRight, name_room));
    row.length ? paint_bar(row, area, metrics) : paint_open(row, area);
    p_.setFont(options_.font);
  }

  void paint_row_marks(std::size_t i, const QRectF& area) {
    if (options_.hovered == i) {
      p_.fillRect(area, look_.panel);
    }
    if (options_.focused == i) {
      p_.setPen(QPen(look_.ink, u(1.0), Qt::DotLine));
      p_.setBrush(Qt::NoBrush);
      p_.drawRect(area.adjusted(u(0.5), u(0.5), -u(0.5), -u(0.5)));
    }
  }

  void paint_open(const LadderRow& row, const QRectF& area) {
    p_.setPen(look_.accent);
    const double left = plan_.scale_left + u(6);
    const QRectF room(left, area.top(), area.right() - left - u(4), area.height());
    p_.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                metrics_.elidedText(row.value, Qt::ElideRight, room.width()));
  }

  void paint_bar(const LadderRow& row, const QRectF& area, const QFontMetricsF& metrics) {
    const bool cut = *row.length > ladder_.end * 1.0001;
    const double right = x_of(std::min(*row.length, ladder_.end));
    const QRectF bar(plan_.scale_left, area.top() + area.height() * 0.18,
                     std::max(right - plan_.scale_left, u(1)), area.height() * 0.64);
    p_.fillRect(bar, bar_colour_of(row));
    if (cut) {
      paint_break(bar);
    }
    if (row.wanted) {
      const double x = x_of(std::min(*row.wanted, ladder_.end));
      p_.setPen(QPen(look_.accent, u(2.2)));
      p_.drawLine(QPointF(x, area.top() + u(1)), QPointF(x, area.bottom() - u(1)));
    }
    paint_value(row, bar, area, metrics);
  }

  /// Two slanted strokes: the bar is longer than the scale.
  void paint_break(const QRectF& bar) {
    p_.setPen(QPen(look_.paper, u(2)));
    for (const double back : {14.0, 9.0}) {
      const double x = bar.right() - u(back);
      p_.drawLine(QPointF(x, bar.bottom() + u(2)), QPointF(x + u(5), bar.top() - u(2)));
    }
  }

  void paint_value(const LadderRow& row, const QRectF& bar, const QRectF& area,
                   const QFontMetricsF& metrics) {
    double left = bar.right() + u(6);
    const double wanted = row.wanted.value_or(ladder_.wanted.value_or(-1.0));
    const double width = metrics.horizontalAdvance(row.value);
    if (wanted >= 0.0) {
      const double line = x_of(std::min(wanted, ladder_.end));
      if (line > left - u(4) && line < left + width + u(4)) {
        left = line + u(5);
      }
    }
    const double most = area.right() - width - u(2);
    p_.setPen(look_.ink);
    if (left <= most) {
      p_.drawText(QRectF(left, area.top(), width + u(2), area.height()),
                  Qt::AlignLeft | Qt::AlignVCenter, row.value);
      return;
    }
    // No room beyond the bar: on a patch of paper at its end.
    const QRectF patch(most - u(4), area.top() + u(2), width + u(6), area.height() - u(4));
    p_.fillRect(patch, look_.paper);
    p_.drawText(patch, Qt::AlignCenter, row.value);
  }

  void paint_wanted_line() {
    if (!ladder_.wanted || !has_bars()) {
      return;
    }
    const double x = x_of(*ladder_.wanted);
    const double top = plan_.rows.front().top();
    p_.setPen(QPen(look_.accent, u(1.8)));
    p_.drawLine(QPointF(x, top - u(4)), QPointF(x, last_bar_row().bottom() + u(3)));
    const double width = metrics_.horizontalAdvance(ladder_.wanted_label) + u(4);
    const double unit_width = metrics_.horizontalAdvance(ladder_.unit) + u(10);
    const double most = plan_.title.right() - unit_width - width;
    const double least = plan_.title.left() + metrics_.horizontalAdvance(ladder_.title) + u(16);
    const double left = std::max(std::min(x + u(4), most), least);
    p_.setPen(look_.accent);
    p_.drawText(QRectF(left, plan_.title.top(), width, plan_.title.height()),
                Qt::AlignLeft | Qt::AlignVCenter, ladder_.wanted_label);
  }

  QPainter& p_;
  const Ladder& ladder_;
  const LadderPlan& plan_;
  const Look& look_;
  const LadderOptions& options_;
  QFontMetricsF metrics_;
};

} // namespace

LadderPlan plan_ladder(const Ladder& ladder, const QRectF& rect, const LadderOptions& options,
                       QPaintDevice* device) {
  QFont bold = options.font;
  bold.setBold(true);
  const QFontMetricsF metrics(options.font, device);
  const QFontMetricsF bold_metrics(bold, device);
  LadderPlan plan;
  plan.line = metrics.height();
  plan.unit = plan.line / 15.0;
  plan.row_height = plan.line + 7.0 * plan.unit;
  plan.title = QRectF(rect.left(), rect.top(), rect.width(), plan.line + 6.0 * plan.unit);
  double names = 0.0;
  double values = 0.0;
  for (const LadderRow& row : ladder.rows) {
    names = std::max(names, bold_metrics.horizontalAdvance(row.name));
    if (row.length) {
      values = std::max(values, bold_metrics.horizontalAdvance(row.value));
    }
  }
  plan.scale_left = rect.left() + std::min(names + 38.0 * plan.unit, rect.width() * 0.36);
  const double room = rect.right() - plan.scale_left;
  plan.scale_right = rect.right() - std::min(values + 10.0 * plan.unit, room * 0.45);
  double y = plan.title.bottom() + 2.0 * plan.unit;
  bool scale_done = false;
  for (const LadderRow& row : ladder.rows) {
    if (!row.length && !scale_done) {
      scale_done = true;
      if (!plan.rows.empty()) { // open limits stand below the scale's numbers
        plan.ticks_top = y + 4.0 * plan.unit;
        y = plan.ticks_top + plan.line + 4.0 * plan.unit;
      }
    }
    plan.rows.emplace_back(rect.left(), y, rect.width(), plan.row_height);
    y += plan.row_height;
  }
  if (!scale_done) {
    plan.ticks_top = y + 4.0 * plan.unit;
  }
  return plan;
}

double ladder_height(const Ladder& ladder, const LadderOptions& options, QPaintDevice* device) {
  constexpr double any_width = 600.0;
  const LadderPlan plan = plan_ladder(ladder, QRectF(0, 0, any_width, 0), options, device);
  const double below_rows = plan.rows.empty() ? plan.title.bottom() : plan.rows.back().bottom();
  return std::max(below_rows, plan.ticks_top + plan.line) + 2.0 * plan.unit;
}

void paint_ladder(QPainter& painter, const Ladder& ladder, const QRectF& rect, const Look& look,
                  const LadderOptions& options) {
  const LadderPlan plan = plan_ladder(ladder, rect, options, painter.device());
  LadderPainter(painter, ladder, plan, look, options).paint();
}

} // namespace feedwright
