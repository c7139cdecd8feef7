// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/stack_keeper.h"

#include "studies/label_keeper.h"
#include "studies/plot_labels.h"
#include "studies/plots.h"
#include "window/letters.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

/// Each reads without colour, on screen and on paper.
QBrush hatching(int number, const Look& look) {
  constexpr Qt::BrushStyle styles[] = {
      Qt::SolidPattern, Qt::BDiagPattern,  Qt::Dense6Pattern, Qt::FDiagPattern,     Qt::HorPattern,
      Qt::CrossPattern, Qt::Dense4Pattern, Qt::VerPattern,    Qt::DiagCrossPattern,
  };
  const Qt::BrushStyle style = styles[static_cast<std::size_t>(number) % std::size(styles)];
  return {style == Qt::SolidPattern ? look.bar : look.faint_ink, style};
}

void draw(QCPItemLine& line, const QPointF& from, const QPointF& to) {
  line.start->setCoords(from);
  line.end->setCoords(to);
}

} // namespace

StackKeeper::StackKeeper(QCustomPlot& plot, QCPAxisRect& rect, const StudyFigure& figure,
                         const Look& look, const QFont& font)
    : QObject(&plot), plot_(plot), rect_(rect), look_(look), font_(font),
      top_(figure.panels.front().y_end) {
  setObjectName(QStringLiteral("label_keeper"));
  for (const StudyStack& stack : figure.stacks) {
    add(stack, figure.panels.front().y_unit);
  }
  connect(&plot, &QCustomPlot::afterLayout, this, qOverload<>(&StackKeeper::arrange));
}

StackKeeper::Word StackKeeper::word(const QString& text, double at, double weight,
                                    const QColor& colour, bool strong) {
  QFont font = font_;
  font.setBold(strong);
  auto* leader = item_on<QCPItemLine>(plot_, rect_);
  leader->setPen(QPen(look_.faint_ink, 0.7));
  leader->setClipToAxisRect(false);
  leader->start->setType(QCPItemPosition::ptAbsolute);
  leader->end->setType(QCPItemPosition::ptAbsolute);
  QCPItemText* item = plain_text(plot_, rect_, text, colour, font);
  item->setProperty(full_text_property, text);
  return {item, leader, at, weight};
}

/// With an arrow where the level lies above the scale.
QString StackKeeper::beyond(double at, const QString& text) const {
  return at > top_ ? tr("↑ %1", "a level above the scale").arg(text) : text;
}

void StackKeeper::add(const StudyStack& stack, const QString& unit) {
  Column column{plain_text(plot_, rect_, stack.name, look_.ink, font_), {}, {}, {}, {}};
  column.name->setProperty(full_text_property, stack.name);
  double low = 0.0;
  for (const StackPart& part : stack.parts) {
    auto* item = item_on<QCPItemRect>(plot_, rect_);
    item->setPen(QPen(look_.ink, 1.0));
    item->setBrush(hatching(part.hatching, look_));
    column.parts.push_back({item, low, low + part.size});
    column.words.push_back(
        word(part_text(part, unit), low + part.size / 2.0, part.size, look_.ink, false));
    low += part.size;
  }
  constexpr double always = 1e300;
  for (const StackTick& tick : stack.ticks) {
    const QColor colour = tick.verdict == Verdict::over ? look_.over
                          : tick.target                 ? look_.accent
                                                        : look_.ink;
    auto* item = item_on<QCPItemLine>(plot_, rect_);
    QPen pen(colour, tick.target ? 2.0 : 1.4);
    if (!tick.target) {
      pen.setDashPattern({3.0, 2.0});
    }
    item->setPen(pen);
    item->setClipToAxisRect(false);
    item->start->setType(QCPItemPosition::ptAbsolute);
    item->end->setType(QCPItemPosition::ptAbsolute);
    column.levels.push_back({item, tick.at});
    column.words.push_back(
        word(beyond(tick.at, tick_text(tick, unit)), tick.at, always, colour, !tick.target));
  }
  for (const StackNote& note : stack.notes) {
    column.notes.push_back(word(note.label, 0.0, always, look_.accent, false));
    column.notes.back().item->setProperty(hint_property, note.full);
    column.notes.back().leader->setVisible(false);
    column.notes.back().item->setTextAlignment(Qt::AlignLeft);
  }
  columns_.push_back(std::move(column));
}

double StackKeeper::height_of(double at) const {
  const QRectF room(rect_.rect());
  const double wanted = rect_.axis(QCPAxis::atLeft)->coordToPixel(at);
  return std::max(room.top(), std::min(wanted, room.bottom())); // a window may leave no room at all
}

double StackKeeper::bar_width(double usual) {
  return std::clamp(usual * 0.11, 12.0, 64.0);
}

/// From the column's edge: past its bar and what leads to the words.
double StackKeeper::words_left(double usual) const {
  return 0.03 * usual + bar_width(usual) + 1.6 * QFontMetricsF(font_).averageCharWidth() + 6.0;
}

double StackKeeper::wanted_width(std::size_t number, double usual) const {
  const Column& column = columns_[number];
  double widest = 0.0;
  const auto wide = [](const Word& each) {
    const QString full = each.item->property(full_text_property).toString();
    return QFontMetricsF(each.item->font()).horizontalAdvance(full);
  };
  // Over an empty column words go on.
  const std::size_t next = plot_.layoutDirection() == Qt::RightToLeft ? number - 1 : number + 1;
  if (next >= columns_.size() || !columns_[next].words.empty()) {
    for (const Word& each : column.words) {
      widest = std::max(widest, wide(each));
    }
  }
  // A long one may take two lines, broken not quite in its middle.
  constexpr double broken_share = 0.65;
  for (const Word& each : column.notes) {
    widest = std::max(widest, broken_share * wide(each));
  }
  const double name =
      QFontMetricsF(font_).horizontalAdvance(column.name->property(full_text_property).toString());
  return std::max(words_left(usual) + widest + 6.0, name + 8.0);
}

/// Alike while every word has room; else a column with room to spare gives of it to the others.
std::vector<double> StackKeeper::widths(double room) const {
  const double usual = room / double(std::max<std::size_t>(1, columns_.size()));
  std::vector<double> made(columns_.size(), usual);
  double spare = 0.0;
  double lacking = 0.0;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const double over = usual - wanted_width(i, usual);
    (over > 0.0 ? spare : lacking) += std::abs(over);
  }
  if (lacking <= 0.0) {
    return made;
  }
  const double given = std::min(spare, lacking);
  for (std::size_t i = 0; i < made.size(); ++i) {
    const double over = usual - wanted_width(i, usual);
    made[i] -= over > 0.0 ? over * given / std::max(spare, 1e-9) : over * given / lacking;
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
  const double gap = QFontMetricsF(font_).averageCharWidth();
  for (std::size_t next = place + 1; next < order.size(); ++next) {
    const Column& column = columns_[order[next]];
    const auto beside = [&](const QRectF& area) {
      return !area.isNull() && area.top() < word.bottom() && area.bottom() > word.top();
    };
    const auto any = [&](const std::vector<Word>& words) {
      return std::ranges::any_of(words, [&](const Word& each) { return beside(each.area); });
    };
    double top = rect_.rect().bottom();
    for (const Level& level : column.levels) {
      top = std::min(top, height_of(level.at) - 4.0);
    }
    for (const Part& part : column.parts) {
      top = std::min(top, height_of(part.high));
    }
    if (any(column.words) || any(column.notes) || word.bottom() > top) {
      return edges_[next] - gap;
    }
  }
  return rect_.rect().right() - 4.0;
}

void StackKeeper::write_words(const std::vector<std::size_t>& order) {
  for (std::size_t place = 0; place < order.size(); ++place) {
    for (Word& each : columns_[order[place]].words) {
      if (!each.area.isNull()) {
        const QString full = each.item->property(full_text_property).toString();
        const double right = free_to(order, place, each.area);
        each.item->setText(QFontMetricsF(each.item->font())
                               .elidedText(full, Qt::ElideRight, right - each.area.left()));
      }
    }
  }
}

void StackKeeper::arrange(Column& column, double left, double width) {
  const QRectF room(rect_.rect());
  const QFontMetricsF metrics(font_);
  const double usual = room.width() / double(columns_.size());
  const double bar = bar_width(usual);
  const double start = left + 0.03 * usual;
  QCPAxis& across = *rect_.axis(QCPAxis::atBottom);
  for (const Part& part : column.parts) {
    part.item->topLeft->setCoords(across.pixelToCoord(start), part.high);
    part.item->bottomRight->setCoords(across.pixelToCoord(start + bar), part.low);
  }
  for (const Level& level : column.levels) {
    const double y = height_of(level.at);
    draw(*level.item, {start - 4.0, y}, {start + bar + 6.0, y});
  }
  arrange_words(column, start + bar, left + words_left(usual), left + width - 4.0);
  const QString full = column.name->property(full_text_property).toString();
  column.name->setText(metrics.elidedText(full, Qt::ElideRight, width - 4.0));
  column.name->position->setCoords(
      left + (width - metrics.horizontalAdvance(column.name->text())) / 2.0, room.bottom() + 3.0);
}

/// From the foot up; a long one takes two lines where the column has them.
void StackKeeper::arrange_notes(Column& column, double left, double right) {
  const QRectF room(rect_.rect());
  const double height = QFontMetricsF(font_).height();
  const auto free = int(room.height() / height) - int(column.words.size() + column.notes.size());
  int spare = std::max(0, free);
  double bottom = room.bottom();
  for (std::size_t i = column.notes.size(); i-- > 0;) {
    Word& note = column.notes[i];
    const QString full = note.item->property(full_text_property).toString();
    const int lines = spare > 0 ? 2 : 1;
    const QString shown = cut_to_lines(full, note.item->font(), int(right - left), lines);
    const auto used = int(broken(shown, note.item->font(), int(right - left)).size());
    spare -= used - 1;
    note.item->setText(
        used > 1 ? broken(shown, note.item->font(), int(right - left)).join(QLatin1Char('\n'))
                 : shown);
    bottom -= used * height;
    note.item->position->setCoords(left, bottom);
    note.area = QRectF(left, bottom, right - left, used * height);
  }
}

void StackKeeper::arrange_words(Column& column, double bar_end, double left, double right) {
  const QRectF room(rect_.rect());
  const double height = QFontMetricsF(font_).height();
  arrange_notes(column, left, right);
  const double notes_top = column.notes.empty() ? room.bottom() : column.notes.front().area.top();
  std::vector<Word*> shown;
  for (Word& each : column.words) {
    each.area = QRectF();
    shown.push_back(&each);
  }
  // The smallest parts go without a word where there is no room; table and read-out have them.
  std::ranges::stable_sort(shown, std::ranges::greater(), &Word::weight);
  const auto fitting = static_cast<std::size_t>(std::max(0.0, (notes_top - room.top()) / height));
  for (std::size_t i = 0; i < shown.size(); ++i) {
    shown[i]->item->setVisible(i < fitting);
    shown[i]->leader->setVisible(i < fitting);
  }
  shown.resize(std::min(shown.size(), fitting));
  std::ranges::stable_sort(shown, std::ranges::greater(), &Word::at);
  std::vector<double> middles;
  middles.reserve(shown.size());
  for (const Word* each : shown) {
    middles.push_back(height_of(each->at));
  }
  const std::vector<double> tops = spread_labels(middles, height, room.top(), notes_top);
  for (std::size_t i = 0; i < shown.size(); ++i) {
    shown[i]->area = QRectF(left, tops[i], right - left, height);
    shown[i]->item->position->setCoords(left, tops[i]);
    draw(*shown[i]->leader, {bar_end, middles[i]}, {left - 3.0, tops[i] + height / 2.0});
  }
}

} // namespace feedwright
