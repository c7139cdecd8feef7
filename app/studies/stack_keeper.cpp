// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/stack_keeper.h"

#include "studies/plot_items.h"
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

constexpr double over_axis = 3.0; // between it and a note

} // namespace

double StackKeeper::height_of(double at) const {
  const QRectF room(rect_.rect());
  const double wanted = rect_.axis(QCPAxis::atLeft)->coordToPixel(at);
  return std::max(room.top(), std::min(wanted, room.bottom())); // a window may leave no room at all
}

int StackKeeper::lines_up() const {
  return int((rect_.rect().height() - over_axis) / QFontMetricsF(font_).height());
}

ColumnMeasure StackKeeper::measure() const {
  const double usual = rect_.rect().width() / double(std::max<std::size_t>(1, columns_.size()));
  return {font_, usual, lines_up(), shown_};
}

double StackKeeper::sum_named() const {
  const ColumnMeasure measured = measure();
  double sum = 0.0;
  for (const Column& column : columns_) {
    sum += measured.named(column);
  }
  return sum;
}

/// Units beside each number, but rather whole names; and rather those of what is large.
void StackKeeper::choose_words() {
  shown_ = {};
  shown_.units = sum_named() <= rect_.rect().width();
  shown_.littles = shown_.units || sum_named() <= rect_.rect().width();
}

bool StackKeeper::names_fit(const QSize& plot) {
  const QRect before = plot_.viewport();
  plot_.setViewport(QRect(QPoint(), plot));
  for (const auto phase :
       {QCPLayoutElement::upPreparation, QCPLayoutElement::upMargins, QCPLayoutElement::upLayout}) {
    plot_.plotLayout()->update(phase);
  }
  choose_words();
  constexpr int least_lines = 4;
  const bool fit = lines_up() >= least_lines && sum_named() <= rect_.rect().width();
  plot_.setViewport(before);
  return fit;
}

std::size_t StackKeeper::column_at(double x) const {
  const auto after = std::upper_bound(edges_.begin(), edges_.end(), x);
  const auto place = std::size_t(std::max<std::ptrdiff_t>(0, after - edges_.begin() - 1));
  const bool mirrored = plot_.layoutDirection() == Qt::RightToLeft;
  return mirrored ? columns_.size() - 1 - place : place;
}

void StackKeeper::arrange() {
  const QRectF room(rect_.rect());
  choose_words();
  const ColumnMeasure measured = measure();
  std::vector<ColumnWants> wants;
  wants.reserve(columns_.size());
  for (const Column& column : columns_) {
    wants.push_back(measured.wants(column));
  }
  const std::vector<double> wide = column_widths(room.width(), wants);
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
      return edges_[next] - measure().letter();
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
  word.name->setVisible(room >= few_letters * measure().letter());
  if (lines > 1 && metrics.horizontalAdvance(word.full) > room) {
    const QString cut = cut_to_lines(word.full, font, int(room), lines);
    word.name->setText(broken(cut, font, int(room)).join(QLatin1Char('\n')));
  } else {
    word.name->setText(metrics.elidedText(word.full, Qt::ElideRight, room));
  }
}

void StackKeeper::arrange(Column& column, double left, double width) {
  const QRectF room(rect_.rect());
  const ColumnMeasure measured = measure();
  const ColumnMeasure::Across at = measured.across(column);
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
  arrange_words(column, at, left, left + width - measured.letter());
  column.name->position->setCoords(left + at.name, room.bottom() + 3.0);
}

/// From the foot up, clear of the axis; a long one takes two lines where the column has them.
void StackKeeper::arrange_notes(Column& column, double left, double right) {
  const QRectF room(rect_.rect());
  const double height = QFontMetricsF(font_).height();
  const int free = lines_up() - shown_.count(column);
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
  std::size_t written = 0;
  for (Word& each : column.words) {
    each.area = QRectF();
    shown.push_back(&each);
    written += shown_.has(each) ? 1 : 0;
  }
  // What is little in its column is the last.
  std::ranges::stable_sort(shown, std::ranges::greater(), &Word::weight);
  const auto lines =
      static_cast<std::size_t>(std::max(0.0, height / QFontMetricsF(font_).height()));
  const std::size_t fitting = std::min(lines, written);
  for (std::size_t i = 0; i < shown.size(); ++i) {
    shown[i]->number->setVisible(i < fitting);
    shown[i]->name->setVisible(i < fitting);
    shown[i]->leader->setVisible(i < fitting);
  }
  shown.resize(std::min(shown.size(), fitting));
  std::ranges::stable_sort(shown, std::ranges::greater(), &Word::at);
  return shown;
}

/// More lines to names that are too long for one, while the column has lines to spare.
void StackKeeper::break_names(const std::vector<Word*>& words, double room, double height) {
  const double line = QFontMetricsF(font_).height();
  int spare = std::max(0, int(height / line) - int(words.size()));
  for (Word* each : words) {
    const auto wanted = int(broken(each->full, each->name->font(), int(room)).size()) - 1;
    const int more = std::clamp(wanted, 0, std::min(spare, most_name_lines - 1));
    spare -= more;
    each->area.setHeight((1.0 + more) * line);
  }
}

void StackKeeper::arrange_words(Column& column, const ColumnMeasure::Across& at, double left,
                                double right) {
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
    each.number->setText(shown_.units ? each.with_unit : each.without_unit);
    const double number =
        left + at.names - 0.8 * measure().letter() - width_of(*each.number, each.number->text());
    each.area = QRectF(left + at.numbers, tops[i], right - left - at.numbers, heights[i]);
    each.number->position->setCoords(number, tops[i]);
    each.name->position->setCoords(left + at.names, tops[i]);
    draw(*each.leader, {left + at.bar_end, middles[i]}, {number - 3.0, tops[i] + line / 2.0});
  }
}

} // namespace feedwright
