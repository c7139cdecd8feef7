// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/paint_ladder.h"

#include "window/text_measure.h"

#include <algorithm>

namespace feedwright {

namespace {

class Planner {
public:
  Planner(const Ladder& ladder, const QRectF& rect, const LadderOptions& options,
          QPaintDevice* device)
      : ladder_(ladder), rect_(rect), options_(options), measure_(options.font, device),
        bold_(bold(options.font), device) {}

  LadderPlan made() {
    plan_.line = measure_.height();
    plan_.unit = plan_.line / 15.0;
    plan_.row_height = plan_.line + u(3);
    plan_.title = QRectF(rect_.left(), rect_.top(), rect_.width(), plan_.line + u(3));
    place_columns();
    double y = plan_.title.bottom() + u(1);
    bool bars = false;
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) { // open ones stand last
        plan_.rows.emplace_back(rect_.left(), y, rect_.width(), plan_.row_height);
        y += plan_.row_height;
        bars = true;
      }
    }
    if (bars) {
      plan_.ticks_top = y + u(2);
      y = plan_.ticks_top + plan_.line;
    }
    y = place_tie(y);
    plan_.bottom = place_open(y) + u(1);
    if (options_.mirrored) {
      mirror();
    }
    return std::move(plan_);
  }

private:
  static QFont bold(QFont font) {
    font.setBold(true);
    return font;
  }
  double u(double n) const { return n * plan_.unit; }

  void place_columns() {
    double names = 0.0;
    double values = 0.0;
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) {
        names = std::max(names, bold_.width(row.name));
        values = std::max(values, bold_.width(row.value));
      }
    }
    plan_.name_left = rect_.left() + u(28);
    // Bars a little shorter before words are cut.
    const double least_for_bars = std::max(u(60), rect_.width() * 0.26);
    const double most_for_names =
        std::max(0.0, rect_.right() - plan_.name_left - u(16) - values - least_for_bars);
    plan_.scale_left = plan_.name_left + std::min(names, most_for_names) + u(6);
    const double room = rect_.right() - plan_.scale_left;
    plan_.scale_right = rect_.right() - std::min(values + u(10), room * 0.45);
  }

  double place_tie(double y) {
    if (ladder_.tie.isEmpty()) {
      return y;
    }
    const QRectF room(rect_.left() + u(6), y, rect_.width() - u(6), 1e4);
    const QRectF needed = measure_.metrics().boundingRect(room, Qt::TextWordWrap, ladder_.tie);
    plan_.tie = QRectF(room.left(), y, room.width(), needed.height());
    return plan_.tie.bottom() + u(2);
  }

  /// Names side by side, in as many lines as they take.
  double place_open(double y) {
    double x = rect_.left() + u(6);
    const double start = x;
    bool any = false;
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) {
        continue;
      }
      if (!any) {
        any = true;
        const double width = measure_.width(ladder_.open_label);
        plan_.open_label = QRectF(x, y, width, plan_.row_height);
        x += width + u(6);
      }
      const QString text = open_text(row);
      const double width = std::min(bold_.width(text) + u(6), rect_.right() - start);
      if (x + width > rect_.right() && x > start) {
        x = start;
        y += plan_.row_height;
      }
      plan_.rows.emplace_back(x, y, width, plan_.row_height);
      x += width + u(8);
    }
    return any ? y + plan_.row_height : y;
  }

  static QString open_text(const LadderRow& row) { return row.sign + QLatin1Char(' ') + row.name; }

  void mirror() {
    const auto turned = [this](QRectF& area) {
      area.moveLeft(rect_.left() + rect_.right() - area.right());
    };
    turned(plan_.tie);
    turned(plan_.open_label);
    std::for_each(plan_.rows.begin(), plan_.rows.end(), turned);
  }

  const Ladder& ladder_;
  const QRectF& rect_;
  const LadderOptions& options_;
  TextMeasure measure_;
  TextMeasure bold_;
  LadderPlan plan_;
};

} // namespace

LadderPlan plan_ladder(const Ladder& ladder, const QRectF& rect, const LadderOptions& options,
                       QPaintDevice* device) {
  return Planner(ladder, rect, options, device).made();
}

double ladder_height(const Ladder& ladder, double width, const LadderOptions& options,
                     QPaintDevice* device) {
  return plan_ladder(ladder, QRectF(0, 0, width, 0), options, device).bottom;
}

} // namespace feedwright
