// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/column_measure.h"

#include "studies/plot_items.h"
#include "studies/word_widths.h"
#include "window/letters.h"
#include "window/text_measure.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

int ColumnWords::count(const StackColumn& column) const {
  const auto written = [this](const StackColumn::Word& each) { return has(each); };
  return int(std::ranges::count_if(column.words, written) + std::ssize(column.notes));
}

double ColumnMeasure::letter() const {
  return QFontMetricsF(font_).averageCharWidth();
}

double ColumnMeasure::bar() const {
  return std::clamp(usual_ * 0.11, 12.0, 64.0);
}

double ColumnMeasure::name_width(const StackColumn& column) const {
  return widest_line(column.name_lines, font_);
}

double ColumnMeasure::number_width(const StackColumn& column) const {
  double widest = 0.0;
  for (const StackColumn::Word& each : column.words) {
    const QString& shown = words_.units ? each.with_unit : each.without_unit;
    widest = words_.has(each) ? std::max(widest, width_of(*each.number, shown)) : widest;
  }
  return widest;
}

/// The bar stands over the middle of its name, its numbers in a row beside it, their names last.
ColumnMeasure::Across ColumnMeasure::across(const StackColumn& column) const {
  const double name = name_width(column);
  const double middle = std::max(name / 2.0 + 3.0, bar() / 2.0 + 5.0);
  Across made{0.0, middle - bar() / 2.0, middle + bar() / 2.0, 0.0, 0.0};
  made.name = (made.bar + made.bar_end - name) / 2.0;
  made.numbers = made.bar_end + 1.2 * letter() + 6.0;
  made.names = made.numbers + number_width(column) + 0.8 * letter();
  return made;
}

ColumnWants ColumnMeasure::wants(const StackColumn& column) const {
  const double whole = named(column);
  return {wanted(column, whole), whole, least(column)};
}

double ColumnMeasure::least(const StackColumn& column) const {
  return std::max(across(column).names, name_width(column) + 6.0) + 4.0;
}

/// Lines its words and notes take where names have that room; too many for any height where a word
/// would be cut.
int ColumnMeasure::lines_at(const StackColumn& column, const Across& at, double names) const {
  constexpr int never = 1000;
  int lines = 0;
  const auto add = [&](const QString& text, const QFont& font, double room, int most) {
    if (std::ceil(widest_word(text, font)) + 1.0 > room) {
      lines += never;
      return;
    }
    // Setting it in lines takes far longer than its width, which is kept.
    const bool one = std::ceil(TextMeasure(font).width(text)) + 1.0 <= room;
    const int taken = one ? 1 : int(broken(text, font, int(room)).size());
    lines += taken > most ? never : taken;
  };
  for (const StackColumn::Word& each : column.words) {
    if (words_.has(each)) {
      add(each.full, each.name->font(), names, most_name_lines);
    }
  }
  for (const StackColumn::Note& each : column.notes) {
    add(each.full, each.item->font(), names + at.names - at.numbers, 2);
  }
  return lines;
}

double ColumnMeasure::named(const StackColumn& column) const {
  const Across at = across(column);
  double widest = 0.0;
  for (const StackColumn::Word& each : column.words) {
    widest = words_.has(each) ? std::max(widest, width_of(*each.name, each.full)) : widest;
  }
  for (const StackColumn::Note& each : column.notes) {
    widest = std::max(widest, width_of(*each.item, each.full) - (at.names - at.numbers));
  }
  // Where there are more words than lines, the least go without; the others have one each.
  const int lines = std::max(lines_, words_.count(column));
  double room = std::ceil(widest) + 1.0;
  // The less room, the more lines: halved until it is found to two pixels.
  constexpr double step = 2.0;
  for (double low = 0.0; room - low > step;) {
    const double tried = (low + room) / 2.0;
    (lines_at(column, at, tried) > lines ? low : room) = tried;
  }
  return std::max(least(column), at.names + room + letter() + 2.0);
}

double ColumnMeasure::wanted(const StackColumn& column, double named) const {
  const Across at = across(column);
  double widest = 0.0;
  for (const StackColumn::Word& each : column.words) {
    widest = std::max(widest, at.names + width_of(*each.name, each.full));
  }
  for (const StackColumn::Note& each : column.notes) {
    widest = std::max(widest, at.numbers + width_of(*each.item, each.full));
  }
  return std::max(widest + letter() + 4.0, named);
}

} // namespace feedwright
