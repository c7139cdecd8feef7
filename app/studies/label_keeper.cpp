// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/label_keeper.h"

#include "studies/plot_labels.h"

#include <qcustomplot.h>

#include <algorithm>

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

/// A point, and places over and under it where others crowd it.
QPolygonF about(const QPointF& at, double line) {
  QPolygonF anchors{at};
  for (const double lines : {1.0, 2.0, 3.0}) {
    anchors << at - QPointF(0.0, lines * line) << at + QPointF(0.0, lines * line);
  }
  return anchors;
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
  item->setText(text);
  item->setColor(colour);
  item->setFont(font);
  item->setPadding(QMargins());
  item->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
  item->position->setType(QCPItemPosition::ptAbsolute);
  item->setClipToAxisRect(false);
  // Over every curve and filled region, in whatever order they came.
  item->setLayer(QStringLiteral("axes"));
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
  QCPItemText* item = plain_text(plot_, rect_, text, colour, font);
  // Where a word must lie on a line, the line gives way to it.
  item->setBrush(paper_);
  return item;
}

void LabelKeeper::at_top(QCPItemText* item, bool one_of_many) {
  heading_ = item;
  one_of_many_ = one_of_many;
}
void LabelKeeper::along(QCPItemText* item, const StudyCurve& curve) {
  curves_.emplace_back(item, polygon(curve.x, curve.y));
}
void LabelKeeper::along(QCPItemText* item, const StudyLine& line) {
  lines_.emplace_back(item, line);
}
void LabelKeeper::beside(QCPItemText* item, const QPointF& point) {
  marks_.emplace_back(item, point);
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
    const double over = size_of(*heading_).height() + 3.0;
    heading_->position->setCoords(QPointF(room.left(), room.top() - over));
  }
  // In a low panel they would lie on the curves; the sentence below the plot says the same.
  const bool low = one_of_many_ && room.height() < 5.0 * size_of(*heading_).height();
  for (const auto& [item, point] : marks_) {
    const QPointF at = pixel(point);
    // A word on a mark hides it, which is worse than a word on some curves.
    constexpr std::size_t curves_worth = 40;
    placing.taken.insert(placing.taken.end(), curves_worth,
                         QRectF(at - QPointF(5, 5), QSizeF(10, 10)));
    // A mark on the frame is in view.
    const bool in_view = QRectF(rect_.rect()).adjusted(-1, -1, 1, 1).contains(at);
    const QPointF inside(std::max(room.left(), std::min(at.x(), room.right() - 1.0)),
                         std::max(room.top(), std::min(at.y(), room.bottom() - 1.0)));
    placing.want(item, in_view && !low ? about(inside, size_of(*item).height()) : QPolygonF());
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
}

} // namespace feedwright
