// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/number_text.h"
#include "limits/paint_ladder.h"

#include "window/text_measure.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

/// The words of a name, between which it may be parted.
QStringList words_of(const QString& text) {
  return text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

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
    const double head = place_head();
    place_columns();
    double y = place_bars(rect_.top() + head + u(1));
    if (has_bars()) {
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

  double easy_width() {
    plan_.unit = measure_.height() / 15.0;
    return u(name_indent + name_gap + 110.0) +
           widest_name([this](const LadderRow& row) { return width_of({row.name}, row); });
  }

private:
  static constexpr double name_indent = 28.0; ///< of names, behind their signs
  static constexpr double name_gap = 6.0;     ///< between a name and its bar

  static QFont bold(QFont font) {
    font.setBold(true);
    return font;
  }
  double u(double n) const { return n * plan_.unit; }

  bool has_bars() const { return !ladder_.rows.empty() && ladder_.rows.front().length; }

  /// Title, what is wanted and the unit: on one line, or on as many as they need. Returns their
  /// height.
  double place_head() {
    const double height = plan_.line + u(3);
    const double title = measure_.width(ladder_.title);
    const double unit = measure_.width(ladder_.unit);
    const QString wanted_text = LadderPlan::wanted_text(ladder_);
    const double wanted = wanted_text.isEmpty() ? 0.0 : measure_.width(wanted_text) + u(2);
    const double gap = u(10);
    const double room = rect_.width();
    const auto line = [&](int number) {
      return QRectF(rect_.left(), rect_.top() + number * height, room, height);
    };
    plan_.title = line(0);
    const bool unit_beside = title + gap + unit <= room;
    const double taken = unit_beside ? title + gap + unit : title;
    const bool all_beside = unit_beside && (wanted == 0.0 || taken + gap + wanted <= room);
    const int below = all_beside ? 0 : 1;
    plan_.unit_label = line(unit_beside ? 0 : below);
    const bool apart = !unit_beside && wanted > 0.0 && unit + gap + wanted > room;
    plan_.wanted_label = line(apart ? 2 : below);
    return (apart ? 3 : below + 1) * height;
  }

  const TextMeasure& measure_of(const LadderRow& row) const {
    return stands_out(row) ? bold_ : measure_;
  }

  double width_of(const QStringList& lines, const LadderRow& row) const {
    double widest = 0.0;
    for (const QString& line : lines) {
      widest = std::max(widest, measure_of(row).width(line));
    }
    return widest;
  }

  double figure_width(const LadderRow& row) const {
    return measure_of(row).width(figure_text(ladder_, row));
  }

  /// The row's name in one line, or in the two that are least wide.
  QStringList in_lines(const LadderRow& row, double room) const {
    const QStringList words = words_of(row.name);
    QStringList best{row.name};
    double least = width_of(best, row);
    if (least <= room) {
      return best;
    }
    for (qsizetype first = 1; first < words.size(); ++first) {
      const QStringList lines{words.mid(0, first).join(QLatin1Char(' ')),
                              words.mid(first).join(QLatin1Char(' '))};
      if (const double width = width_of(lines, row); width < least) {
        least = width;
        best = lines;
      }
    }
    return best;
  }

  /// Of a scale on which zero and its last tick have numbers, and bars a length.
  double least_scale() const {
    const double last = std::floor(ladder_.end / ladder_.tick + 1e-6) * ladder_.tick;
    const double numbers =
        (measure_.width(number_text(0.0, 3)) + measure_.width(number_text(last, 3))) / 2.0 + u(8);
    return std::max({u(60), rect_.width() * 0.26, numbers});
  }

  /// The longest scale at which every figure goes beyond its bar, that it governs as well.
  double longest_scale(double left) const {
    const double room = rect_.right() - left;
    double longest = room - u(10);
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) {
        const double share = std::min(*row.length / ladder_.end, 1.0);
        const double rest = room - u(10) - figure_width(row);
        longest = share > 0.0 ? std::min(longest, rest / share) : longest;
      }
    }
    return std::min(longest, clear_of_wanted(room, longest));
  }

  /// A figure that would stand on the wanted line goes beyond that, if bars keep a length.
  double clear_of_wanted(double room, double scale) const {
    for (const LadderRow& row : ladder_.rows) {
      if (!row.length || !row.governs) {
        continue;
      }
      const double line =
          std::min(row.wanted.value_or(ladder_.wanted.value_or(-1.0)) / ladder_.end, 1.0);
      const double bar = std::min(*row.length / ladder_.end, 1.0);
      const double width = figure_width(row);
      const bool meets = line >= bar && (line - bar) * scale < width + u(10);
      const double shorter = line > 0.0 ? (room - u(8) - width) / line : scale;
      if (meets && shorter < scale && shorter >= least_scale()) {
        return shorter;
      }
    }
    return scale;
  }

  /// The most that any row's name takes.
  template <class Width>
  double widest_name(const Width& width) const {
    double widest = 0.0;
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) {
        widest = std::max(widest, width(row));
      }
    }
    return widest;
  }

  /// Names beside the bars, in two lines where they must, or over them.
  void place_columns() {
    plan_.name_left = rect_.left() + u(name_indent);
    const double least = least_scale();
    const auto scale_left = [&](double column) { return plan_.name_left + column + u(name_gap); };
    double column = widest_name([this](const LadderRow& row) { return width_of({row.name}, row); });
    if (longest_scale(scale_left(column)) < least) {
      column =
          widest_name([this](const LadderRow& row) { return width_of(in_lines(row, 0.0), row); });
      plan_.names_above = longest_scale(scale_left(column)) < least;
    }
    plan_.scale_left = plan_.names_above ? plan_.name_left : scale_left(column);
    // Rather a figure on the bar's end than no bar.
    const double most = rect_.right() - plan_.scale_left - u(10);
    const double scale = std::min(std::max(longest_scale(plan_.scale_left), least), most);
    plan_.scale_right = plan_.scale_left + std::max(scale, 1.0);
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) {
        plan_.names.push_back(plan_.names_above ? QStringList{row.name}
                                                : in_lines(row, column + u(1)));
      }
    }
  }

  double place_bars(double y) {
    for (std::size_t i = 0; i < plan_.names.size(); ++i) { // open ones stand last
      const auto lines = plan_.names_above ? 2.0 : double(plan_.names[i].size());
      const double height = lines * plan_.line + u(3);
      plan_.rows.emplace_back(rect_.left(), y, rect_.width(), height);
      y += height;
    }
    return y;
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
    double bottom = y;
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
      const double around = measure_.width(row.sign + QLatin1Char(' ')) + u(10);
      const QStringList lines = in_lines(row, rect_.right() - start - around);
      const double width = std::min(width_of(lines, row) + around, rect_.right() - start);
      if (x + width > rect_.right() && x > start) {
        x = start;
        y = std::max(bottom, plan_.open_label.bottom());
      }
      const double height = plan_.row_height + double(lines.size() - 1) * plan_.line;
      plan_.rows.emplace_back(x, y, width, height);
      plan_.names.push_back(lines);
      bottom = std::max(bottom, y + height);
      x = lines.size() > 1 ? rect_.right() : x + width + u(8);
    }
    return bottom;
  }

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

QRectF LadderPlan::bar_line(std::size_t row) const {
  const QRectF& area = rows[row];
  return names_above ? QRectF(area.left(), area.top() + line, area.width(), area.height() - line)
                     : area;
}

QRectF LadderPlan::name_area(std::size_t row) const {
  const QRectF& area = rows[row];
  return names_above ? QRectF(name_left, area.top(), area.right() - name_left, line)
                     : QRectF(name_left, area.top(), scale_left - name_left, area.height());
}

QString LadderPlan::wanted_text(const Ladder& ladder) {
  if (ladder.rows.empty() || !ladder.rows.front().length) {
    return {};
  }
  const bool own = std::ranges::any_of(
      ladder.rows, [](const LadderRow& row) { return row.length && row.wanted; });
  return ladder.wanted ? ladder.wanted_label
         : own         ? QStringLiteral("│ ") + ladder.wanted_label
                       : QString();
}

int labelled_every(const Ladder& ladder, double scale_width, double widest, double gap) {
  const int ticks = static_cast<int>(std::floor(ladder.end / ladder.tick + 1e-6));
  const double apart = scale_width * ladder.tick / ladder.end;
  for (const int every : {1, 2, 5}) {
    if (every <= ticks && every * apart >= widest + gap) {
      return every;
    }
  }
  return std::max(ticks, 1);
}

bool stands_out(const LadderRow& row) {
  return row.governs || row.verdict == Verdict::over || row.verdict == Verdict::close;
}

QString figure_text(const Ladder& ladder, const LadderRow& row) {
  return row.governs ? row.value + QStringLiteral("  ") + ladder.governs_label : row.value;
}

LadderPlan plan_ladder(const Ladder& ladder, const QRectF& rect, const LadderOptions& options,
                       QPaintDevice* device) {
  return Planner(ladder, rect, options, device).made();
}

double easy_ladder_width(const Ladder& ladder, const LadderOptions& options, QPaintDevice* device) {
  return Planner(ladder, QRectF(), options, device).easy_width();
}

double ladder_height(const Ladder& ladder, double width, const LadderOptions& options,
                     QPaintDevice* device) {
  return plan_ladder(ladder, QRectF(0, 0, width, 0), options, device).bottom;
}

} // namespace feedwright
