// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/label_keeper.h"

#include "studies/plot_items.h"
#include "studies/plot_labels.h"
#include "studies/word_widths.h"
#include "window/text_measure.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace feedwright {

namespace {

QPolygonF polygon(const std::vector<double>& x, const std::vector<double>& y) {
  QPolygonF points;
  for (std::size_t i = 0; i < x.size(); ++i) {
    points << QPointF(x[i], y[i]);
  }
  return points;
}

/// Points of a curve a label may stand beside: those in view, from two thirds on, then about.
QPolygonF anchors_on(const QPolygonF& pixels, const QRectF& room) {
  QPolygonF seen;
  for (const QPointF& point : pixels) {
    if (room.contains(point)) {
      seen << point;
    }
  }
  QPolygonF anchors;
  for (const double share : {0.68, 0.55, 0.8, 0.42, 0.9, 0.3, 0.2, 0.1, 0.97, 0.03, 0.74, 0.62,
                             0.48, 0.36, 0.25, 0.15}) {
    if (!seen.isEmpty()) {
      anchors << seen[qsizetype(share * double(seen.size() - 1))];
    }
  }
  return anchors;
}

/// A point, places over and under it where others crowd it, and where curves do, any in the room,
/// the nearest first.
QPolygonF about(const QPointF& at, double line, const QRectF& room) {
  QPolygonF anchors{at};
  for (const double lines : {1.0, 2.0, 3.0, 4.0, 5.0}) {
    anchors << at - QPointF(0.0, lines * line) << at + QPointF(0.0, lines * line);
  }
  constexpr double across = 14.0; // places in a row
  QPolygonF others;
  for (double y = room.top(); line > 0.0 && y < room.bottom(); y += line) {
    for (double share = 0.0; share <= 1.0; share += 1.0 / across) {
      others << QPointF(room.left() + share * room.width(), y);
    }
  }
  std::ranges::stable_sort(others, {}, [&](const QPointF& each) {
    return std::hypot(each.x() - at.x(), each.y() - at.y());
  });
  return anchors + others;
}

} // namespace

LabelKeeper::LabelKeeper(QCustomPlot& plot, QCPAxisRect& rect, const QColor& paper)
    : QObject(&plot), plot_(plot), rect_(rect), paper_(paper) {
  setObjectName(QStringLiteral("label_keeper"));
  connect(&plot, &QCustomPlot::afterLayout, this, &LabelKeeper::arrange);
}

HaloText* LabelKeeper::label(const QString& text, const QColor& colour, const QFont& font) {
  return halo_text(plot_, rect_, text, colour, font, paper_, Ground::lines);
}

HaloText* LabelKeeper::zone_word(const QString& text, const QColor& colour, const QFont& font) {
  return halo_text(plot_, rect_, text, colour, font, paper_, Ground::covered);
}

void LabelKeeper::at_top(QCPItemText* item, bool one_of_many, int caption_lines) {
  heading_ = item;
  one_of_many_ = one_of_many;
  caption_lines_ = caption_lines;
}
void LabelKeeper::in_caption(QCPItemText* item, const QPen& pen) {
  QCPItemLine* sample = leader_on(plot_, rect_, pen.color());
  sample->setPen(pen);
  captions_.push_back({item, sample});
}
void LabelKeeper::along(HaloText* item, const StudyCurve& curve) {
  curves_.emplace_back(item, polygon(curve.x, curve.y));
}
void LabelKeeper::along(HaloText* item, const StudyLine& line) {
  lines_.push_back({item, leader_on(plot_, rect_, item->color()), line});
}
void LabelKeeper::beside(HaloText* item, const QPointF& point) {
  marks_.push_back({item, leader_on(plot_, rect_, item->color()), item->text(), point});
}
void LabelKeeper::inside(HaloText* item, const StudyBand& band) {
  bands_.push_back({item, polygon(band.x, band.low), polygon(band.x, band.high)});
}
void LabelKeeper::above(HaloText* item, const StudyCurve& curve) {
  constexpr double far_up = 1e9;
  bands_.push_back({item, polygon(curve.x, curve.y),
                    polygon(curve.x, std::vector<double>(curve.x.size(), far_up))});
}
void LabelKeeper::keep_off(const StudyCurve& curve) {
  curves_.emplace_back(nullptr, polygon(curve.x, curve.y));
}

QPointF LabelKeeper::pixel(const QPointF& point) const {
  return {rect_.axis(QCPAxis::atBottom)->coordToPixel(point.x()),
          rect_.axis(QCPAxis::atLeft)->coordToPixel(point.y())};
}

QPolygonF LabelKeeper::pixels(const QPolygonF& points) const {
  QPolygonF made;
  for (const QPointF& point : points) {
    made << pixel(point);
  }
  return made;
}

/// Along the line; where other lines crowd it there, farther off, with a leader to it.
QPolygonF LabelKeeper::anchors_on(const StudyLine& line, double height, const QRectF& room) const {
  QPolygonF anchors;
  const QPointF at = pixel({line.value, line.value});
  const QRectF frame = QRectF(rect_.rect()).adjusted(-1, -1, 1, 1);
  if (line.upright ? at.x() < frame.left() || at.x() > frame.right()
                   : at.y() < frame.top() || at.y() > frame.bottom()) {
    return anchors;
  }
  const auto on_line = [&](double share, double off) {
    return line.upright ? QPointF(at.x() + off, room.bottom() - share * room.height() + 14.0)
                        : QPointF(room.left() + share * room.width(), at.y() + off);
  };
  for (const double share : {0.99, 0.9, 0.82, 0.75, 0.68, 0.6, 0.52, 0.45, 0.38, 0.3, 0.22, 0.15}) {
    anchors << on_line(share, 0.0);
  }
  const double step = line.upright ? 0.1 * room.width() : height;
  for (const double steps : {1.0, 2.0, 3.0, 4.0}) {
    for (const double share : {0.97, 0.8, 0.6, 0.4, 0.2}) {
      anchors << on_line(share, steps * step) << on_line(share, -steps * step);
    }
  }
  return anchors;
}

QPolygonF LabelKeeper::ends_of(const StudyLine& line, const QRectF& room) const {
  const QPointF at = pixel({line.value, line.value});
  return line.upright ? QPolygonF({QPointF(at.x(), room.top()), QPointF(at.x(), room.bottom())})
                      : QPolygonF({QPointF(room.left(), at.y()), QPointF(room.right(), at.y())});
}

/// Middles of the band, where it is highest first.
QPolygonF LabelKeeper::anchors_in(const Band& band, const QRectF& room) const {
  struct Place {
    double height;
    QPointF middle;
  };
  std::vector<Place> places;
  const qsizetype step = std::max<qsizetype>(1, band.low.size() / 25);
  for (qsizetype i = 0; i < band.low.size(); i += step) {
    const QPointF low = pixel(band.low[i]);
    const double bottom = std::min(low.y(), room.bottom());
    const double top = std::max(pixel(band.high[i]).y(), room.top());
    if (low.x() > room.left() && low.x() < room.right() && bottom > top) {
      places.push_back({bottom - top, QPointF(low.x(), (bottom + top) / 2.0)});
    }
  }
  std::ranges::stable_sort(places, std::ranges::greater(), &Place::height);
  QPolygonF anchors;
  for (const Place& place : places) {
    anchors << place.middle;
  }
  return anchors;
}

struct LabelKeeper::Placing {
  QRectF room;
  std::vector<QRectF> taken = {};
  std::vector<PlotLabel> labels = {};
  std::vector<HaloText*> items = {};

  /// `worth`: as how many pieces of curves they count for what words cover.
  void take(const std::vector<QRectF>& rects, std::size_t worth = 1) {
    for (const QRectF& rect : rects) {
      taken.insert(taken.end(), worth, rect);
    }
  }
  void want(HaloText* item, const QPolygonF& anchors,
            PlotLabel::Stand stand = PlotLabel::Stand::beside) {
    items.push_back(item);
    labels.push_back({size_of(*item), anchors, stand});
    // One in two lines hides much of a small plot, and the sentence below says the same.
    labels.back().clear = labels.back().clear || item->text().contains(QLatin1Char('\n'));
  }
};

void LabelKeeper::want_all(Placing& placing) const {
  const QRectF& room = placing.room;
  if (heading_ != nullptr) {
    const double over = caption_lines_ * size_of(*heading_).height() + 3.0;
    heading_->position->setCoords(QPointF(room.left(), room.top() - over));
  }
  // In a low or narrow panel they would lie on the curves; the sentence below the plot says the
  // same.
  const bool low = one_of_many_ && room.height() < 5.0 * size_of(*heading_).height();
  for (const auto& [item, leader, words, point] : marks_) {
    const bool in_one = TextMeasure(item->font()).width(words) + 3.0 < room.width();
    item->setText(broken_name(words, in_one ? 1 : 2, item->font()).join(QLatin1Char('\n')));
    const QPointF at = pixel(point);
    // A word on a mark hides it, which is worse than a word on some curves.
    constexpr std::size_t curves_worth = 40;
    placing.take({QRectF(at - QPointF(5, 5), QSizeF(10, 10))}, curves_worth);
    // A mark on the frame is in view.
    const bool in_view = QRectF(rect_.rect()).adjusted(-1, -1, 1, 1).contains(at);
    const QPointF inside(std::max(room.left(), std::min(at.x(), room.right() - 1.0)),
                         std::max(room.top(), std::min(at.y(), room.bottom() - 1.0)));
    const bool fits = size_of(*item).width() < room.width();
    placing.want(item, in_view && fits && !low ? about(inside, size_of(*item).height(), room)
                                               : QPolygonF());
  }
  for (const auto& [item, leader, line] : lines_) {
    // A level line strikes words out, which is worse than the pieces of a few curves.
    constexpr std::size_t level_worth = 12;
    placing.take(cover(ends_of(line, room), room), line.upright ? 1 : level_worth);
    placing.want(item, anchors_on(line, size_of(*item).height(), room),
                 line.upright ? PlotLabel::Stand::beside : PlotLabel::Stand::level);
  }
  for (const auto& [item, points] : curves_) {
    const QPolygonF drawn = pixels(points);
    placing.take(cover(drawn, room));
    if (item != nullptr) {
      placing.want(item, feedwright::anchors_on(drawn, room));
    }
  }
  for (const Band& band : bands_) {
    placing.want(band.item, anchors_in(band, room), PlotLabel::Stand::on);
  }
}

void LabelKeeper::arrange() {
  Placing placing{QRectF(rect_.rect()).adjusted(2, 2, -2, -2)};
  want_all(placing);
  const std::vector<std::optional<PlacedLabel>> places =
      place_plot_labels(placing.room, placing.labels, placing.taken);
  for (std::size_t i = 0; i < placing.items.size(); ++i) {
    const bool in_view = std::ranges::any_of(
        placing.labels[i].anchors, [&](const QPointF& at) { return placing.room.contains(at); });
    placing.items[i]->setVisible(in_view && places[i]);
    if (places[i]) {
      placing.items[i]->position->setCoords(places[i]->at);
      if (placing.labels[i].stand != PlotLabel::Stand::on) {
        placing.items[i]->set_ground(places[i]->clear ? Ground::lines : Ground::crossed);
      }
    }
  }
  draw_leaders();
  arrange_caption(placing.room);
}

/// To what words name, where they stand farther from it than is near.
void LabelKeeper::draw_leader(QCPItemLine& leader, const QCPItemText& item, const QPointF& from,
                              double radius, double near) const {
  const QRectF words(item.position->coords(), size_of(item));
  const QPointF nearest(std::max(words.left(), std::min(from.x(), words.right())),
                        std::max(words.top(), std::min(from.y(), words.bottom())));
  const double far = std::hypot(nearest.x() - from.x(), nearest.y() - from.y());
  leader.setVisible(item.visible() && far > near);
  leader.start->setCoords(from + (nearest - from) * (radius / std::max({far, radius, 1.0})));
  leader.end->setCoords(nearest);
}

void LabelKeeper::draw_leaders() {
  constexpr double radius = 6.0; // of a mark
  for (const Mark& mark : marks_) {
    draw_leader(*mark.leader, *mark.item, pixel(mark.point), radius, size_of(*mark.item).height());
  }
  for (const Line& line : lines_) {
    constexpr double beside = 7.0; // pixels
    draw_leader(*line.leader, *line.item, foot_of(line), 0.0, beside);
  }
}

/// Where a leader from its words meets a line, straight and through no other words if it can be.
QPointF LabelKeeper::foot_of(const Line& line) const {
  const QRectF words(line.item->position->coords(), size_of(*line.item));
  const QPointF at = pixel({line.line.value, line.line.value});
  if (line.line.upright) {
    return {at.x(), words.center().y()};
  }
  for (const double share : {0.5, 0.1, 0.9, 0.3, 0.7}) {
    const double x = words.left() + share * words.width();
    if (!meets_words({QPointF(x, words.center().y()), QPointF(x, at.y())}, *line.item)) {
      return {x, at.y()};
    }
  }
  return {words.center().x(), at.y()};
}

bool LabelKeeper::meets_words(const QLineF& leader, const QCPItemText& own) const {
  const QRectF area = QRectF(leader.p1(), leader.p2()).normalized().adjusted(-1.0, 0.0, 1.0, 0.0);
  const auto met = [&](const QCPItemText* item) {
    return item != nullptr && item != &own && item->visible() &&
           QRectF(item->position->coords(), size_of(*item)).intersects(area);
  };
  return std::ranges::any_of(marks_, [&](const Mark& mark) { return met(mark.item); }) ||
         std::ranges::any_of(lines_, [&](const Line& line) { return met(line.item); }) ||
         std::ranges::any_of(curves_, [&](const auto& curve) { return met(curve.first); }) ||
         std::ranges::any_of(bands_, [&](const Band& band) { return met(band.item); });
}

constexpr double caption_sample = 24.0; // of a line, before its name
constexpr double before_name = 4.0;

double LabelKeeper::caption_width(const QString& name, const QFont& font) {
  const QFontMetricsF metrics(font);
  return caption_sample + before_name + metrics.horizontalAdvance(name) + metrics.height();
}

/// Beside the heading, or in lines of their own under it: a piece of each line, and its name.
void LabelKeeper::arrange_caption(const QRectF& room) {
  if (heading_ == nullptr || captions_.empty()) {
    return;
  }
  const double line = size_of(*heading_).height();
  double top = room.top() - 3.0 - std::max(1, caption_lines_ - 1) * line;
  double left = room.left() + (caption_lines_ > 1 ? 0.0 : size_of(*heading_).width() + line);
  for (const auto& [item, drawn] : captions_) {
    const double wide = caption_width(item->text(), item->font());
    if (left > room.left() && left + wide - line > room.right()) {
      left = room.left();
      top += line;
    }
    drawn->start->setCoords(QPointF(left, top + line / 2.0));
    drawn->end->setCoords(QPointF(left + caption_sample, top + line / 2.0));
    drawn->setVisible(true);
    item->position->setCoords(QPointF(left + caption_sample + before_name, top));
    left += wide;
  }
}

} // namespace feedwright
