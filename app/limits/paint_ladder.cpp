// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/paint_ladder.h"

#include "limits/number_text.h"

#include "window/text_measure.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class LadderPainter {
public:
  LadderPainter(QPainter& painter, const Ladder& ladder, const QRectF& rect, const LadderPlan& plan,
                const Look& look, const LadderOptions& options)
      : p_(painter), ladder_(ladder), rect_(rect), plan_(plan), look_(look), options_(options),
        metrics_(options.font, painter.device()), bold_(bold(options.font), painter.device()) {}

  void paint() {
    p_.save();
    p_.setRenderHint(QPainter::Antialiasing);
    p_.setFont(options_.font);
    paint_title();
    if (bars() > 0) {
      paint_scale();
    }
    for (std::size_t i = 0; i < ladder_.rows.size(); ++i) {
      paint_row(i);
    }
    paint_wanted_line();
    // Over the line, which one of them may have to stand on.
    for (std::size_t i = 0; i < bars(); ++i) {
      paint_value(ladder_.rows[i], plan_.bar_line(i));
    }
    p_.setFont(options_.font);
    paint_ties();
    if (!plan_.open_label.isEmpty()) {
      write(plan_.open_label, start(), ladder_.open_label, look_.faint_ink);
    }
    p_.restore();
  }

private:
  double u(double n) const { return n * plan_.unit; }

  double x_of(double value) const {
    return plan_.scale_left + value / ladder_.end * (plan_.scale_right - plan_.scale_left);
  }

  // All is reckoned as if it ran from left to right; these three turn it round where it does not.
  double turned(double x) const { return options_.mirrored ? rect_.left() + rect_.right() - x : x; }
  QRectF turned(const QRectF& area) const {
    return options_.mirrored ? QRectF(turned(area.right()), area.top(), area.width(), area.height())
                             : area;
  }
  int start() const { return options_.mirrored ? Qt::AlignRight : Qt::AlignLeft; }
  int end() const { return options_.mirrored ? Qt::AlignLeft : Qt::AlignRight; }

  void write(const QRectF& area, int alignment, const QString& text, const QColor& colour) {
    p_.setPen(colour);
    p_.drawText(area, alignment | Qt::AlignVCenter | Qt::AlignAbsolute | Qt::TextDontClip, text);
  }

  std::size_t bars() const {
    return std::size_t(std::count_if(ladder_.rows.begin(), ladder_.rows.end(),
                                     [](const LadderRow& row) { return row.length.has_value(); }));
  }

  QRectF last_bar_row() const { return plan_.rows[bars() - 1]; }

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

  /// Title, what is wanted over its line, unit; each on its own line where the plan says so.
  void paint_title() {
    write(turned(plan_.title), start(),
          metrics_.elided(ladder_.title, std::max(plan_.title.width(), 0.0)), look_.faint_ink);
    write(turned(plan_.unit_label), end(), ladder_.unit, look_.faint_ink);
    paint_wanted_label();
  }

  /// As near to its line as what stands on the same line of text allows.
  void paint_wanted_label() {
    const QString label = LadderPlan::wanted_text(ladder_);
    if (label.isEmpty()) {
      return;
    }
    const QRectF& area = plan_.wanted_label;
    const auto beside = [&](const QRectF& other) { return other.top() == area.top(); };
    const double before = beside(plan_.title) ? metrics_.width(ladder_.title) + u(10) : 0.0;
    const double after = beside(plan_.unit_label) ? metrics_.width(ladder_.unit) + u(10) : 0.0;
    const double width = metrics_.width(label) + u(2);
    const double most = area.right() - after - width;
    const double wanted = ladder_.wanted ? x_of(*ladder_.wanted) + u(3) : most;
    const double left = std::min(std::max(wanted, area.left() + before), most);
    write(turned(QRectF(left, area.top(), width, area.height())), start(), label, look_.accent);
  }

  void paint_scale() {
    const int ticks = int(std::floor(ladder_.end / ladder_.tick + 1e-6));
    double widest = 0.0;
    for (int tick = 0; tick <= ticks; ++tick) {
      widest = std::max(widest, metrics_.width(number_text(tick * ladder_.tick, 3)));
    }
    const int every = labelled_every(ladder_, plan_.scale_right - plan_.scale_left, widest, u(8));
    for (int tick = 0; tick <= ticks; ++tick) {
      const double value = tick * ladder_.tick;
      const double x = turned(x_of(value));
      p_.setPen(QPen(look_.rule, u(tick == 0 ? 1.2 : 0.7)));
      draw_upright(x, 0.0);
      if (tick % every == 0) {
        // Whole also where the scale ends with the ladder.
        const QString number = number_text(value, 3);
        const double width = metrics_.width(number) + u(2);
        const double left =
            std::max(rect_.left(), std::min(x - width / 2.0, rect_.right() - width));
        write(QRectF(left, plan_.ticks_top, width, plan_.line), Qt::AlignHCenter, number,
              look_.faint_ink);
      }
    }
  }

  void paint_row(std::size_t i) {
    const LadderRow& row = ladder_.rows[i];
    const QRectF area = plan_.rows[i];
    paint_row_marks(i, area);
    row.length ? paint_bar_row(i) : paint_open(i);
    p_.setFont(options_.font);
  }

  void paint_row_marks(std::size_t i, const QRectF& area) {
    if (options_.hovered == i) {
      p_.fillRect(area, look_.panel);
    }
    if (options_.chosen == ladder_.rows[i].id) {
      paint_chosen(area);
    }
    if (options_.focused == i) {
      p_.setPen(QPen(look_.ink, u(1.0), Qt::DotLine));
      p_.setBrush(Qt::NoBrush);
      p_.drawRect(area.adjusted(u(0.5), u(0.5), -u(0.5), -u(0.5)));
    }
  }

  /// A frame with a wedge at its start that points at the row.
  void paint_chosen(const QRectF& area) {
    p_.fillRect(area, look_.panel);
    p_.setPen(QPen(look_.accent, u(1.2)));
    p_.setBrush(Qt::NoBrush);
    p_.drawRect(area.adjusted(u(0.6), u(0.6), -u(0.6), -u(0.6)));
    const double edge = options_.mirrored ? area.right() : area.left();
    const double inward = options_.mirrored ? -u(6) : u(6);
    const double middle = area.center().y();
    p_.setPen(Qt::NoPen);
    p_.setBrush(look_.accent);
    p_.drawPolygon(QPolygonF{{QPointF(edge, middle - u(5)), QPointF(edge + inward, middle),
                              QPointF(edge, middle + u(5))}});
    p_.setBrush(Qt::NoBrush);
  }

  void paint_open(std::size_t i) {
    const LadderRow& row = ladder_.rows[i];
    const QRectF& area = plan_.rows[i];
    QFont font = options_.font;
    p_.setFont(font);
    const QString sign = row.sign + QLatin1Char(' ');
    const double width = metrics_.width(sign);
    const QRectF inner = area.adjusted(u(3), 0, -u(3), 0);
    const QRectF first(inner.left(), inner.top(), inner.width(), plan_.row_height);
    write(first, start(), sign, look_.faint_ink);
    font.setUnderline(true);
    p_.setFont(font);
    const QRectF name =
        options_.mirrored ? inner.adjusted(0, 0, -width, 0) : inner.adjusted(width, 0, 0, 0);
    QStringList lines;
    for (const QString& line : plan_.names[i]) {
      lines << metrics_.elided(line, name.width() + u(3));
    }
    write(name, start(), lines.join(QLatin1Char('\n')), look_.accent);
  }

  void paint_bar_row(std::size_t i) {
    const LadderRow& row = ladder_.rows[i];
    const QRectF name = plan_.name_area(i);
    const QRectF sign(rect_.left() + u(9), name.top(), u(17), name.height());
    write(turned(sign), Qt::AlignHCenter, row.sign, colour_of(row.verdict));
    p_.setFont(font_of(row));
    QStringList lines;
    for (const QString& line : plan_.names[i]) {
      lines << measure_of(row).elided(line, name.width());
    }
    write(turned(name), start(), lines.join(QLatin1Char('\n')), look_.ink);
    paint_bar(row, plan_.bar_line(i));
  }

  static QFont bold(QFont font) {
    font.setBold(true);
    return font;
  }

  QFont font_of(const LadderRow& row) const {
    return stands_out(row) ? bold(options_.font) : options_.font;
  }

  const TextMeasure& measure_of(const LadderRow& row) const {
    return stands_out(row) ? bold_ : metrics_;
  }

  QRectF bar_of(const LadderRow& row, const QRectF& area) const {
    const double right = x_of(std::min(*row.length, ladder_.end));
    const double height = plan_.row_height * 0.64;
    return {plan_.scale_left, area.center().y() - height / 2.0,
            std::max(right - plan_.scale_left, u(1)), height};
  }

  void paint_bar(const LadderRow& row, const QRectF& area) {
    const bool cut = *row.length > ladder_.end * 1.0001;
    const QRectF bar = bar_of(row, area);
    p_.fillRect(turned(bar), bar_colour_of(row));
    if (cut) {
      paint_break(bar);
    }
    if (row.wanted) {
      const double x = turned(x_of(std::min(*row.wanted, ladder_.end)));
      p_.setPen(QPen(look_.accent, u(2.2)));
      p_.drawLine(QPointF(x, area.top() + u(1)), QPointF(x, area.bottom() - u(1)));
    }
  }

  /// Two slanted strokes: the bar is longer than the scale.
  void paint_break(const QRectF& bar) {
    p_.setPen(QPen(look_.paper, u(2)));
    for (const double back : {14.0, 9.0}) {
      const double x = bar.right() - u(back);
      p_.drawLine(QPointF(turned(x), bar.bottom() + u(2)),
                  QPointF(turned(x + u(5)), bar.top() - u(2)));
    }
  }

  /// Where a text stands beyond the bar, clear of the wanted line.
  double beyond(const QRectF& bar, const LadderRow& row, double width) const {
    const double left = bar.right() + u(6);
    const double wanted = row.wanted.value_or(ladder_.wanted.value_or(-1.0));
    if (wanted < 0.0) {
      return left;
    }
    const double line = x_of(std::min(wanted, ladder_.end));
    return line > left - u(4) && line < left + width + u(4) ? line + u(5) : left;
  }

  /// The figure, and that it governs. Only a bar so long that nothing goes beyond it is written
  /// over at its end: a short one would be gone.
  void paint_value(const LadderRow& row, const QRectF& area) {
    const QRectF bar = bar_of(row, area);
    p_.setFont(font_of(row));
    const QString text = figure_text(ladder_, row);
    const double width = measure_of(row).width(text);
    const double most = rect_.right() - width - u(3);
    // Rather across the wanted line than across the bar.
    for (const double left : {beyond(bar, row, width), bar.right() + u(6)}) {
      if (left <= most) {
        write(turned(QRectF(left, area.top(), width + u(2), area.height())), start(), text,
              look_.ink);
        return;
      }
    }
    const QRectF patch = turned(QRectF(most - u(4), bar.top(), width + u(6), bar.height()));
    p_.fillRect(patch, look_.paper);
    write(patch, Qt::AlignHCenter, text, look_.ink);
  }

  void paint_wanted_line() {
    if (!ladder_.wanted || bars() == 0) {
      return;
    }
    p_.setPen(QPen(look_.accent, u(1.8)));
    draw_upright(turned(x_of(*ladder_.wanted)), u(3));
  }

  /// A line across all bars, from `above` them on; not through names that stand over bars.
  void draw_upright(double x, double above) {
    if (!plan_.names_above) {
      p_.drawLine(QPointF(x, plan_.rows.front().top() - above),
                  QPointF(x, last_bar_row().bottom() + u(2)));
      return;
    }
    for (std::size_t i = 0; i < bars(); ++i) {
      const QRectF line = plan_.bar_line(i);
      p_.drawLine(QPointF(x, line.top()), QPointF(x, line.bottom()));
    }
  }

  /// A bracket before the rows that govern together, broken where another stands between them.
  void paint_ties() {
    if (ladder_.tie.isEmpty()) {
      return;
    }
    p_.setPen(look_.ink);
    p_.drawText(plan_.tie, int(start() | Qt::AlignTop | Qt::AlignAbsolute | Qt::TextWordWrap),
                ladder_.tie);
    const double spine = turned(rect_.left() + u(8));
    const double tip = turned(rect_.left() + u(11));
    p_.setPen(QPen(look_.ink, u(1.4)));
    for (std::size_t i = 0; i < bars(); ++i) {
      if (!ladder_.rows[i].ties) {
        continue;
      }
      const bool first = i == 0 || !ladder_.rows[i - 1].ties;
      const bool last = i + 1 >= bars() || !ladder_.rows[i + 1].ties;
      const double top = plan_.rows[i].top() + (first ? u(3) : 0.0);
      const double bottom = plan_.rows[i].bottom() - (last ? u(3) : 0.0);
      p_.drawLine(QPointF(spine, top), QPointF(spine, bottom));
      if (first) {
        p_.drawLine(QPointF(spine, top), QPointF(tip, top));
      }
      if (last) {
        p_.drawLine(QPointF(spine, bottom), QPointF(tip, bottom));
      }
    }
  }

  QPainter& p_;
  const Ladder& ladder_;
  const QRectF& rect_;
  const LadderPlan& plan_;
  const Look& look_;
  const LadderOptions& options_;
  TextMeasure metrics_;
  TextMeasure bold_;
};

} // namespace

void paint_ladder(QPainter& painter, const Ladder& ladder, const QRectF& rect, const Look& look,
                  const LadderOptions& options) {
  paint_ladder(painter, ladder, rect, plan_ladder(ladder, rect, options, painter.device()), look,
               options);
}

void paint_ladder(QPainter& painter, const Ladder& ladder, const QRectF& rect,
                  const LadderPlan& plan, const Look& look, const LadderOptions& options) {
  LadderPainter(painter, ladder, rect, plan, look, options).paint();
}

} // namespace feedwright
