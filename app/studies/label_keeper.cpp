// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/label_keeper.h"

#include "studies/plot_labels.h"

#include <QStaticText>
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

/// Of a word on a line only the glyphs are cleared, and the line still shows through.
class HaloText : public QCPItemText {
public:
  explicit HaloText(QCustomPlot* plot) : QCPItemText(plot) {}
  QColor paper;
  bool whole = false; ///< nothing shows through, and the paper reaches farther

protected:
  void draw(QCPPainter* painter) override {
    // The word itself in the paper's colour, a hair beside its place all round: an outline of the
    // glyphs stroked anew took longer than all the rest of the plot.
    constexpr int through = 150;
    if (glyphs_.text() != text() || of_font_ != font()) {
      of_font_ = font();
      glyphs_.setText(text());
      glyphs_.setTextFormat(Qt::PlainText);
      glyphs_.prepare({}, of_font_);
    }
    QColor halo = paper;
    halo.setAlpha(whole ? 255 : through);
    painter->save();
    painter->setFont(of_font_);
    painter->setPen(halo);
    const QPointF at = topLeft->pixelPosition();
    for (double reach = 1.0; reach <= (whole ? 3.0 : 1.0); reach += 1.0) {
      for (const QPointF& beside : {QPointF(-1, -1), QPointF(0, -1), QPointF(1, -1), QPointF(-1, 0),
                                    QPointF(1, 0), QPointF(-1, 1), QPointF(0, 1), QPointF(1, 1)}) {
        painter->drawStaticText(at + reach * beside, glyphs_);
      }
    }
    painter->restore();
    QCPItemText::draw(painter);
  }

private:
  QStaticText glyphs_;
  QFont of_font_;
};

void dress(QCPItemText& item, const QString& text, const QColor& colour, const QFont& font) {
  item.setText(text);
  item.setColor(colour);
  item.setFont(font);
  item.setPadding(QMargins());
  item.setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
  item.position->setType(QCPItemPosition::ptAbsolute);
  item.setClipToAxisRect(false);
  // Over every curve and filled region, in whatever order they came.
  item.setLayer(QStringLiteral("axes"));
}

} // namespace

template <class Item>
Item* item_on(QCustomPlot& plot, QCPAxisRect& rect) {
  auto* item = new Item(&plot);
  for (QCPItemPosition* position : item->positions()) {
    position->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
    position->setAxisRect(&rect);
  }
  item->setClipAxisRect(&rect);
  return item;
}
template QCPItemText* item_on<QCPItemText>(QCustomPlot&, QCPAxisRect&);
template QCPItemLine* item_on<QCPItemLine>(QCustomPlot&, QCPAxisRect&);
template QCPItemRect* item_on<QCPItemRect>(QCustomPlot&, QCPAxisRect&);
template QCPItemStraightLine* item_on<QCPItemStraightLine>(QCustomPlot&, QCPAxisRect&);

QCPItemText* plain_text(QCustomPlot& plot, QCPAxisRect& rect, const QString& text,
                        const QColor& colour, const QFont& font) {
  auto* item = item_on<QCPItemText>(plot, rect);
  dress(*item, text, colour, font);
  return item;
}

QSizeF size_of(const QCPItemText& item) {
  const QFontMetricsF metrics(item.font());
  return {metrics.horizontalAdvance(item.text()) + 3.0, metrics.height()};
}

LabelKeeper::LabelKeeper(QCustomPlot& plot, QCPAxisRect& rect, const QColor& paper)
    : QObject(&plot), plot_(plot), rect_(rect), paper_(paper) {
  setObjectName(QStringLiteral("label_keeper"));
  connect(&plot, &QCustomPlot::afterLayout, this, &LabelKeeper::arrange);
}

QCPItemText* LabelKeeper::label(const QString& text, const QColor& colour, const QFont& font) {
  auto* item = item_on<HaloText>(plot_, rect_);
  dress(*item, text, colour, font);
  item->paper = paper_;
  return item;
}

QCPItemText* LabelKeeper::zone_word(const QString& text, const QColor& colour, const QFont& font) {
  auto* item = item_on<HaloText>(plot_, rect_);
  dress(*item, text, colour, font);
  item->paper = paper_;
  item->whole = true;
  return item;
}

QCPItemLine* LabelKeeper::leader(const QColor& colour) {
  auto* line = item_on<QCPItemLine>(plot_, rect_);
  line->setPen(QPen(colour, 0.8));
  line->setClipToAxisRect(false);
  line->start->setType(QCPItemPosition::ptAbsolute);
  line->end->setType(QCPItemPosition::ptAbsolute);
  line->setVisible(false);
  return line;
}

void LabelKeeper::at_top(QCPItemText* item, bool one_of_many, int caption_lines) {
  heading_ = item;
  one_of_many_ = one_of_many;
  caption_lines_ = caption_lines;
}
void LabelKeeper::in_caption(QCPItemText* item, const QPen& pen) {
  QCPItemLine* sample = leader(pen.color());
  sample->setPen(pen);
  captions_.push_back({item, sample});
}
void LabelKeeper::at_edge(QCPItemText* item, const StudyCurve& curve) {
  edges_.push_back({item, leader(item->color()), polygon(curve.x, curve.y)});
  keep_off(curve);
}
void LabelKeeper::along(QCPItemText* item, const StudyCurve& curve) {
  curves_.emplace_back(item, polygon(curve.x, curve.y));
}
void LabelKeeper::along(QCPItemText* item, const StudyLine& line) {
  lines_.emplace_back(item, line);
}
void LabelKeeper::beside(QCPItemText* item, const QPointF& point) {
  marks_.push_back({item, leader(item->color()), point});
}
void LabelKeeper::inside(QCPItemText* item, const StudyBand& band) {
  bands_.push_back({item, polygon(band.x, band.low), polygon(band.x, band.high)});
}
void LabelKeeper::above(QCPItemText* item, const StudyCurve& curve) {
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

QPolygonF LabelKeeper::anchors_on(const StudyLine& line, const QRectF& room) const {
  QPolygonF anchors;
  for (const double share : {0.99, 0.9, 0.82, 0.75, 0.68, 0.6, 0.52, 0.45, 0.38, 0.3, 0.22, 0.15}) {
    anchors << (line.upright
                    ? QPointF(pixel({line.value, 0.0}).x(),
                              room.bottom() - share * room.height() + 14.0)
                    : QPointF(room.left() + share * room.width(), pixel({0.0, line.value}).y()));
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
  std::vector<QCPItemText*> items = {};

  void take(const std::vector<QRectF>& rects) {
    taken.insert(taken.end(), rects.begin(), rects.end());
  }
  void want(QCPItemText* item, const QPolygonF& anchors,
            PlotLabel::Stand stand = PlotLabel::Stand::beside) {
    items.push_back(item);
    labels.push_back({size_of(*item), anchors, stand});
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
  for (const auto& [item, leader, point] : marks_) {
    const QPointF at = pixel(point);
    // A word on a mark hides it, which is worse than a word on some curves.
    constexpr std::size_t curves_worth = 40;
    placing.taken.insert(placing.taken.end(), curves_worth,
                         QRectF(at - QPointF(5, 5), QSizeF(10, 10)));
    // A mark on the frame is in view.
    const bool in_view = QRectF(rect_.rect()).adjusted(-1, -1, 1, 1).contains(at);
    const QPointF inside(std::max(room.left(), std::min(at.x(), room.right() - 1.0)),
                         std::max(room.top(), std::min(at.y(), room.bottom() - 1.0)));
    const bool fits = size_of(*item).width() < room.width();
    placing.want(item, in_view && fits && !low ? about(inside, size_of(*item).height(), room)
                                               : QPolygonF());
  }
  for (const auto& [item, line] : lines_) {
    placing.take(cover(ends_of(line, room), room));
    placing.want(item, anchors_on(line, room),
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
  const std::vector<std::optional<QPointF>> places =
      place_plot_labels(placing.room, placing.labels, placing.taken);
  for (std::size_t i = 0; i < placing.items.size(); ++i) {
    const bool in_view = std::ranges::any_of(
        placing.labels[i].anchors, [&](const QPointF& at) { return placing.room.contains(at); });
    placing.items[i]->setVisible(in_view && places[i]);
    if (places[i]) {
      placing.items[i]->position->setCoords(*places[i]);
    }
  }
  draw_leaders();
  arrange_caption(placing.room);
  arrange_edges(placing.room);
}

/// From a mark to its words, where they stand farther from it than a line is high.
void LabelKeeper::draw_leaders() {
  for (const Mark& mark : marks_) {
    const QRectF words(mark.item->position->coords(), size_of(*mark.item));
    const QPointF at = pixel(mark.point);
    const QPointF nearest(std::max(words.left(), std::min(at.x(), words.right())),
                          std::max(words.top(), std::min(at.y(), words.bottom())));
    const double far = std::hypot(nearest.x() - at.x(), nearest.y() - at.y());
    mark.leader->setVisible(mark.item->visible() && far > words.height());
    constexpr double radius = 6.0; // of the mark
    mark.leader->start->setCoords(at + (nearest - at) * (radius / std::max(far, radius)));
    mark.leader->end->setCoords(nearest);
  }
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

/// At the right of the frame, each as near as can be to where its curve meets it.
void LabelKeeper::arrange_edges(const QRectF& room) {
  struct Place {
    const Edge* edge;
    double y;
  };
  std::vector<Place> places;
  for (const Edge& edge : edges_) {
    std::optional<double> y;
    for (const QPointF& point : pixels(edge.points)) {
      if (point.x() <= room.right() + 3.0) {
        y = point.y();
      }
    }
    const bool in_view = y && *y >= room.top() && *y <= room.bottom();
    edge.item->setVisible(in_view);
    edge.leader->setVisible(in_view);
    if (in_view) {
      places.push_back({&edge, *y});
    }
  }
  std::ranges::stable_sort(places, {}, &Place::y);
  std::vector<double> middles;
  std::vector<double> heights;
  for (const Place& place : places) {
    middles.push_back(place.y);
    heights.push_back(size_of(*place.edge->item).height());
  }
  const std::vector<double> tops = spread_labels(middles, heights, room.top(), room.bottom());
  constexpr double away = 12.0;
  const double edge = room.right() + 2.0;
  for (std::size_t i = 0; i < places.size(); ++i) {
    places[i].edge->item->position->setCoords(QPointF(edge + away, tops[i]));
    places[i].edge->leader->start->setCoords(QPointF(edge, middles[i]));
    places[i].edge->leader->end->setCoords(QPointF(edge + away - 3.0, tops[i] + heights[i] / 2.0));
  }
}

double LabelKeeper::room_at_edge(const QString& name, const QFont& font) {
  constexpr double away = 16.0;
  return QFontMetricsF(font).horizontalAdvance(name) + away;
}

} // namespace feedwright
