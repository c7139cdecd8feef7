// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/stack_keeper.h"

#include "studies/plot_items.h"
#include "studies/plot_labels.h"
#include "studies/word_widths.h"
#include "window/letters.h"
#include "window/text_measure.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace feedwright {

namespace {

void draw(QCPItemLine& line, const QPointF& from, const QPointF& to) {
  line.start->setCoords(from);
  line.end->setCoords(to);
}

double width_of(const QCPItemText& item, const QString& text) {
  return TextMeasure(item.font()).width(text);
}

constexpr int most_lines = 3;     // of one name
constexpr double over_axis = 3.0; // between it and a note

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
    const QString& shown = units_ ? each.with_unit : each.without_unit;
    widest = is_written(each) ? std::max(widest, width_of(*each.number, shown)) : widest;
  }
  return widest;
}

/// The bar stands over the middle of its name, its numbers in a row beside it, their names last.
StackKeeper::Across StackKeeper::across(const Column& column, double usual) const {
  const double bar = bar_width(usual);
  const double middle = std::max(name_width(column) / 2.0 + 3.0, bar / 2.0 + 5.0);
  Across made{middle - bar / 2.0, middle + bar / 2.0, 0.0, 0.0};
  made.numbers = made.bar_end + 1.2 * letter() + 6.0;
  made.names = made.numbers + number_width(column) + 0.8 * letter();
  return made;
}

double StackKeeper::least_width(std::size_t number, double usual) const {
  const Column& column = columns_[number];
  return std::max(across(column, usual).names, name_width(column) + 6.0) + 4.0;
}

/// Words and notes.
int StackKeeper::written(const Column& column) const {
  return int(
      std::ranges::count_if(column.words, [&](const Word& each) { return is_written(each); }) +
      std::ssize(column.notes));
}

int StackKeeper::lines_up() const {
  return int((rect_.rect().height() - over_axis) / QFontMetricsF(font_).height());
}

/// Lines its words and notes take where names have that room; too many for any height where a word
/// would be cut.
int StackKeeper::lines_at(const Column& column, const Across& at, double names) const {
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
  for (const Word& each : column.words) {
    if (is_written(each)) {
      add(each.full, each.name->font(), names, most_lines);
    }
  }
  for (const Note& each : column.notes) {
    add(each.full, each.item->font(), names + at.names - at.numbers, 2);
  }
  return lines;
}

/// The narrowest room in which the names, broken, have as many lines as there are up the column.
double StackKeeper::named_width(std::size_t number, double usual) const {
  const Column& column = columns_[number];
  const Across at = across(column, usual);
  double widest = 0.0;
  for (const Word& each : column.words) {
    widest = is_written(each) ? std::max(widest, width_of(*each.name, each.full)) : widest;
  }
  for (const Note& each : column.notes) {
    widest = std::max(widest, width_of(*each.item, each.full) - (at.names - at.numbers));
  }
  // Where there are more words than lines, the least go without; the others have one each.
  const int lines = std::max(lines_up(), written(column));
  double room = std::ceil(widest) + 1.0;
  // The less room, the more lines: halved until it is found to two pixels.
  constexpr double step = 2.0;
  for (double low = 0.0; room - low > step;) {
    const double tried = (low + room) / 2.0;
    (lines_at(column, at, tried) > lines ? low : room) = tried;
  }
  return std::max(least_width(number, usual), at.names + room + letter() + 2.0);
}

double StackKeeper::wanted_width(std::size_t number, double usual, double named) const {
  const Column& column = columns_[number];
  const Across at = across(column, usual);
  double widest = 0.0;
  for (const Word& each : column.words) {
    widest = std::max(widest, at.names + width_of(*each.name, each.full));
  }
  for (const Note& each : column.notes) {
    widest = std::max(widest, at.numbers + width_of(*each.item, each.full));
  }
  return std::max(widest + letter() + 4.0, named);
}

double StackKeeper::sum_named() const {
  const double usual = rect_.rect().width() / double(std::max<std::size_t>(1, columns_.size()));
  double sum = 0.0;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    sum += named_width(i, usual);
  }
  return sum;
}

/// Beside each number, but rather whole names; and rather those of what is large.
void StackKeeper::choose_units() {
  units_ = littles_ = true;
  units_ = sum_named() <= rect_.rect().width();
  littles_ = units_ || sum_named() <= rect_.rect().width();
}

bool StackKeeper::names_fit(const QSize& plot) {
  plot_.setViewport(QRect(QPoint(), plot));
  for (const auto phase :
       {QCPLayoutElement::upPreparation, QCPLayoutElement::upMargins, QCPLayoutElement::upLayout}) {
    plot_.plotLayout()->update(phase);
  }
  choose_units();
  constexpr int least_lines = 4;
  const bool fit = lines_up() >= least_lines && sum_named() <= rect_.rect().width();
  plot_.setViewport(plot_.rect());
  return fit;
}

/// Alike while every word has room in one line; else each what its names take, broken, and of the
/// rest its share; where even that is too much, what its numbers take, and of the rest its share.
std::vector<double> StackKeeper::widths(double room) const {
  const double usual = room / double(std::max<std::size_t>(1, columns_.size()));
  std::vector<double> made(columns_.size(), usual);
  std::vector<double> wanted;
  std::vector<double> named;
  std::vector<double> least;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    named.push_back(named_width(i, usual));
    wanted.push_back(wanted_width(i, usual, named.back()));
    least.push_back(least_width(i, usual));
  }
  if (std::ranges::all_of(wanted, [&](double each) { return each <= usual; })) {
    return made;
  }
  const auto sum = [](const std::vector<double>& each) {
    return std::accumulate(each.begin(), each.end(), 0.0);
  };
  const auto between = [&](const std::vector<double>& low, const std::vector<double>& high) {
    const double share = (room - sum(low)) / std::max(1e-9, sum(high) - sum(low));
    for (std::size_t i = 0; i < made.size(); ++i) {
      made[i] = low[i] + share * (high[i] - low[i]);
    }
  };
  if (sum(wanted) <= room) {
    for (std::size_t i = 0; i < made.size(); ++i) {
      made[i] = wanted[i] + (room - sum(wanted)) / double(made.size());
    }
  } else if (sum(named) <= room) {
    between(named, wanted);
  } else if (sum(least) <= room) {
    between(least, named);
  } else {
    between(std::vector<double>(least.size(), 0.0), least);
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
  choose_units();
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
  arrange_words(column, at, left, left + width - letter());
  column.name->position->setCoords(left + (at.bar + at.bar_end - name_width(column)) / 2.0,
                                   room.bottom() + 3.0);
}

/// From the foot up, clear of the axis; a long one takes two lines where the column has them.
void StackKeeper::arrange_notes(Column& column, double left, double right) {
  const QRectF room(rect_.rect());
  const double height = QFontMetricsF(font_).height();
  const int free = lines_up() - written(column);
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
    written += is_written(each) ? 1 : 0;
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
    const int more = std::clamp(wanted, 0, std::min(spare, most_lines - 1));
    spare -= more;
    each->area.setHeight((1.0 + more) * line);
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
