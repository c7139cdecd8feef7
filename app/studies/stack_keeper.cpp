// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/stack_keeper.h"

#include "studies/label_keeper.h"
#include "studies/plot_labels.h"
#include "window/letters.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

void draw(QCPItemLine& line, const QPointF& from, const QPointF& to) {
  line.start->setCoords(from);
  line.end->setCoords(to);
}

double width_of(const QCPItemText& item, const QString& text) {
  return QFontMetricsF(item.font()).horizontalAdvance(text);
}

/// The least that holds a text broken once, where its words leave it.
double width_in_two_lines(const QString& text, const QFont& font) {
  const QFontMetricsF metrics(font);
  double least = metrics.horizontalAdvance(text);
  for (qsizetype at = text.indexOf(QLatin1Char(' ')); at >= 0;
       at = text.indexOf(QLatin1Char(' '), at + 1)) {
    least = std::min(least, std::max(metrics.horizontalAdvance(text.left(at)),
                                     metrics.horizontalAdvance(text.mid(at + 1))));
  }
  return least + 8.0;
}

} // namespace

double StackKeeper::height_of(double at) const {
  const QRectF room(rect_.rect());
  const double wanted = rect_.axis(QCPAxis::atLeft)->coordToPixel(at);
  return std::max(room.top(), std::min(wanted, room.bottom())); // a window may leave no room at all
}

double StackKeeper::letter() const {
  return QFontMetricsF(font_).averageCharWidth();
}

double StackKeeper::bar_width(double usual) {
  return std::clamp(usual * 0.11, 12.0, 64.0);
}

double StackKeeper::name_width(const Column& column) const {
  return widest_line(column.name_lines, font_);
}

double StackKeeper::number_width(const Column& column) const {
  double widest = 0.0;
  for (const Word& each : column.words) {
    widest = std::max(widest, width_of(*each.number, units_ ? each.with_unit : each.without_unit));
  }
  return widest;
}

/// The bar stands over the middle of its name, its numbers in a row beside it, their names last.
StackKeeper::Across StackKeeper::across(const Column& column, double usual) const {
  const double bar = bar_width(usual);
  const double middle = std::max(name_width(column) / 2.0 + 3.0, bar / 2.0 + 5.0);
  Across made{middle - bar / 2.0, middle + bar / 2.0, 0.0, 0.0};
  made.numbers = made.bar_end + 1.6 * letter() + 8.0;
  made.names = made.numbers + number_width(column) + 0.8 * letter();
  return made;
}

double StackKeeper::least_width(std::size_t number, double usual) const {
  const Column& column = columns_[number];
  return std::max(across(column, usual).names, name_width(column) + 6.0) + 4.0;
}

double StackKeeper::wanted_width(std::size_t number, double usual) const {
  const Column& column = columns_[number];
  double widest = 0.0;
  // Over an empty column words go on.
  const std::size_t next = plot_.layoutDirection() == Qt::RightToLeft ? number - 1 : number + 1;
  const Across at = across(column, usual);
  if (next >= columns_.size() || !columns_[next].words.empty()) {
    for (const Word& each : column.words) {
      widest = std::max(widest, at.names + width_of(*each.name, each.full));
    }
  }
  for (const Note& each : column.notes) {
    widest = std::max(widest, at.numbers + width_in_two_lines(each.full, each.item->font()));
  }
  return std::max(widest + 6.0, least_width(number, usual));
}

double StackKeeper::sum_wanted(double usual) const {
  double sum = 0.0;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    sum += wanted_width(i, usual);
  }
  return sum;
}

/// Alike while every word has room; else each as it wants, and where even that is too much, first
/// what its numbers take and of the rest its share.
std::vector<double> StackKeeper::widths(double room) const {
  const double usual = room / double(std::max<std::size_t>(1, columns_.size()));
  std::vector<double> made(columns_.size(), usual);
  std::vector<double> least;
  std::vector<double> wanted;
  double all_least = 0.0;
  double all_wanted = 0.0;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    least.push_back(least_width(i, usual));
    wanted.push_back(wanted_width(i, usual));
    all_least += least.back();
    all_wanted += wanted.back();
  }
  if (std::ranges::all_of(wanted, [&](double each) { return each <= usual; })) {
    return made;
  }
  for (std::size_t i = 0; i < made.size(); ++i) {
    if (all_wanted <= room) {
      made[i] = wanted[i] + (room - all_wanted) / double(made.size());
    } else if (all_least <= room) {
      made[i] = least[i] + (room - all_least) * (wanted[i] - least[i]) / (all_wanted - all_least);
    } else {
      made[i] = least[i] * room / all_least;
    }
  }
  return made;
}

std::size_t StackKeeper::column_at(double x) const {
  const auto after = std::upper_bound(edges_.begin(), edges_.end(), x);
  const auto place = std::size_t(std::max<std::ptrdiff_t>(0, after - edges_.begin() - 1));
  const bool mirrored = plot_.layoutDirection() == Qt::RightToLeft;
  return mirrored ? columns_.size() - 1 - place : place;
}

void StackKeeper::arrange() {
  const QRectF room(rect_.rect());
  const double usual = room.width() / double(std::max<std::size_t>(1, columns_.size()));
  units_ = true;
  units_ = sum_wanted(usual) <= room.width();
  const std::vector<double> wide = widths(room.width());
  const bool mirrored = plot_.layoutDirection() == Qt::RightToLeft;
  double left = room.left();
  edges_.clear();
  std::vector<std::size_t> order;
  for (std::size_t place = 0; place < columns_.size(); ++place) {
    const std::size_t i = mirrored ? columns_.size() - 1 - place : place;
    order.push_back(i);
    edges_.push_back(left);
    arrange(columns_[i], left, wide[i]);
    left += wide[i];
  }
  write_words(order);
}

double StackKeeper::free_to(const std::vector<std::size_t>& order, std::size_t place,
                            const QRectF& word) const {
  for (std::size_t next = place + 1; next < order.size(); ++next) {
    const Column& column = columns_[order[next]];
    const auto beside = [&](const auto& each) {
      return !each.area.isNull() && each.area.top() < word.bottom() &&
             each.area.bottom() > word.top();
    };
    double top = rect_.rect().bottom();
    for (const Level& level : column.levels) {
      top = std::min(top, height_of(level.at) - 4.0);
    }
    for (const Part& part : column.parts) {
      top = std::min(top, height_of(part.high));
    }
    if (std::ranges::any_of(column.words, beside) || std::ranges::any_of(column.notes, beside) ||
        word.bottom() > top) {
      return edges_[next] - letter();
    }
  }
  return rect_.rect().right() - 4.0;
}

void StackKeeper::write_words(const std::vector<std::size_t>& order) {
  for (std::size_t place = 0; place < order.size(); ++place) {
    for (Word& each : columns_[order[place]].words) {
      if (!each.area.isNull()) {
        write_name(each, free_to(order, place, each.area));
      }
    }
  }
}

/// Whole, or broken where it was given lines, or shortened; with less than a few letters, nothing.
void StackKeeper::write_name(Word& word, double right) const {
  constexpr double few_letters = 4.0;
  const QFont& font = word.name->font();
  const QFontMetricsF metrics(font);
  const double room = right - word.name->position->coords().x();
  const auto lines = int(std::round(word.area.height() / QFontMetricsF(font_).height()));
  word.name->setVisible(room >= few_letters * letter());
  if (lines > 1 && metrics.horizontalAdvance(word.full) > room) {
    const QString cut = cut_to_lines(word.full, font, int(room), lines);
    word.name->setText(broken(cut, font, int(room)).join(QLatin1Char('\n')));
  } else {
    word.name->setText(metrics.elidedText(word.full, Qt::ElideRight, room));
  }
}

void StackKeeper::arrange(Column& column, double left, double width) {
  const QRectF room(rect_.rect());
  const Across at = across(column, room.width() / double(columns_.size()));
  QCPAxis& scale = *rect_.axis(QCPAxis::atBottom);
  for (const Part& part : column.parts) {
    part.item->topLeft->setCoords(scale.pixelToCoord(left + at.bar), part.high);
    part.item->bottomRight->setCoords(scale.pixelToCoord(left + at.bar_end), part.low);
  }
  for (const Level& level : column.levels) {
    const double y = height_of(level.at);
    if (level.reach != nullptr) {
      const double beside = left + at.bar_end + 4.0;
      draw(*level.reach, {beside, height_of(level.foot)}, {beside, y});
      draw(*level.item, {left + at.bar_end, y}, {beside + 4.0, y});
    } else {
      draw(*level.item, {left + at.bar - 4.0, y}, {left + at.bar_end + 6.0, y});
    }
  }
  arrange_words(column, at, left, left + width - 4.0);
  column.name->position->setCoords(left + (at.bar + at.bar_end - name_width(column)) / 2.0,
                                   room.bottom() + 3.0);
}

/// From the foot up, clear of the axis; a long one takes two lines where the column has them.
void StackKeeper::arrange_notes(Column& column, double left, double right) {
  constexpr double over_axis = 3.0;
  const QRectF room(rect_.rect());
  const double height = QFontMetricsF(font_).height();
  const auto free = int(room.height() / height) - int(column.words.size() + column.notes.size());
  int spare = std::max(0, free);
  double bottom = room.bottom() - over_axis;
  for (std::size_t i = column.notes.size(); i-- > 0;) {
    Note& note = column.notes[i];
    const int lines = spare > 0 ? 2 : 1;
    const QString shown = cut_to_lines(note.full, note.item->font(), int(right - left), lines);
    const QStringList used = broken(shown, note.item->font(), int(right - left));
    const double high = double(used.size()) * height;
    spare -= int(used.size()) - 1;
    note.item->setText(used.size() > 1 ? used.join(QLatin1Char('\n')) : shown);
    bottom -= high;
    note.item->position->setCoords(left, bottom);
    note.area = QRectF(left, bottom, right - left, high);
  }
}

/// The smallest parts go without a word where there is no room; table and read-out have them.
std::vector<StackKeeper::Word*> StackKeeper::words_with_room(Column& column, double height) {
  std::vector<Word*> shown;
  for (Word& each : column.words) {
    each.area = QRectF();
    shown.push_back(&each);
  }
  std::ranges::stable_sort(shown, std::ranges::greater(), &Word::weight);
  const auto fitting =
      static_cast<std::size_t>(std::max(0.0, height / QFontMetricsF(font_).height()));
  for (std::size_t i = 0; i < shown.size(); ++i) {
    shown[i]->number->setVisible(i < fitting);
    shown[i]->name->setVisible(i < fitting);
    shown[i]->leader->setVisible(i < fitting);
  }
  shown.resize(std::min(shown.size(), fitting));
  std::ranges::stable_sort(shown, std::ranges::greater(), &Word::at);
  return shown;
}

/// A second line to names that are too long for one, while the column has lines to spare.
void StackKeeper::break_names(const std::vector<Word*>& words, double room, double height) {
  const double line = QFontMetricsF(font_).height();
  int spare = int(height / line) - int(words.size());
  for (Word* each : words) {
    const bool long_one = width_of(*each->name, each->full) > room &&
                          broken(each->full, each->name->font(), int(room)).size() > 1;
    const bool two = long_one && spare > 0;
    spare -= two ? 1 : 0;
    each->area.setHeight(two ? 2.0 * line : line);
  }
}

void StackKeeper::arrange_words(Column& column, const Across& at, double left, double right) {
  const QRectF room(rect_.rect());
  arrange_notes(column, left + at.numbers, right);
  const double bottom = column.notes.empty() ? room.bottom() : column.notes.front().area.top();
  const std::vector<Word*> shown = words_with_room(column, bottom - room.top());
  break_names(shown, right - left - at.names, bottom - room.top());
  std::vector<double> middles;
  std::vector<double> heights;
  for (const Word* each : shown) {
    middles.push_back(height_of(each->at));
    heights.push_back(each->area.height());
  }
  const std::vector<double> tops = spread_labels(middles, heights, room.top(), bottom);
  const double line = QFontMetricsF(font_).height();
  for (std::size_t i = 0; i < shown.size(); ++i) {
    Word& each = *shown[i];
    each.number->setText(units_ ? each.with_unit : each.without_unit);
    const double number =
        left + at.names - 0.8 * letter() - width_of(*each.number, each.number->text());
    each.area = QRectF(left + at.numbers, tops[i], right - left - at.numbers, heights[i]);
    each.number->position->setCoords(number, tops[i]);
    each.name->position->setCoords(left + at.names, tops[i]);
    draw(*each.leader, {left + at.bar_end, middles[i]}, {number - 3.0, tops[i] + line / 2.0});
  }
}

} // namespace feedwright
