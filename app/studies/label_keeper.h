// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The words of one pair of axes: each knows where it may stand, and is put there at every layout.

#include "studies/study_figure.h"

#include <QColor>
#include <QFont>
#include <QObject>
#include <QPen>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>

#include <vector>

class QCPAxisRect;
class QCPItemLine;
class QCPItemText;
class QCustomPlot;

namespace feedwright {

/// An item that belongs to the axes of that rectangle.
template <class Item>
Item* item_on(QCustomPlot& plot, QCPAxisRect& rect);

/// Without room to the sides, so that its size is its text's.
QCPItemText* plain_text(QCustomPlot& plot, QCPAxisRect& rect, const QString& text,
                        const QColor& colour, const QFont& font);
QSizeF size_of(const QCPItemText& item);

class LabelKeeper : public QObject {
  Q_OBJECT
public:
  /// Dies with the plot or with the next figure.
  LabelKeeper(QCustomPlot& plot, QCPAxisRect& rect, const QColor& paper);

  QCPItemText* label(const QString& text, const QColor& colour, const QFont& font);
  /// A word on a hatching, with the paper behind it.
  QCPItemText* zone_word(const QString& text, const QColor& colour, const QFont& font);

  /// Over the frame. In a low one of many panels marks go without their words.
  void at_top(QCPItemText* item, bool one_of_many, int caption_lines);
  /// Over the frame too, behind a piece of its line.
  void in_caption(QCPItemText* item, const QPen& pen);
  /// At the right of the frame, where the margin has `room_at_edge`.
  void at_edge(QCPItemText* item, const StudyCurve& curve);
  static double caption_width(const QString& name, const QFont& font);
  static double room_at_edge(const QString& name, const QFont& font);
  void along(QCPItemText* item, const StudyCurve& curve);
  void along(QCPItemText* item, const StudyLine& line);
  void beside(QCPItemText* item, const QPointF& point);
  void inside(QCPItemText* item, const StudyBand& band);
  void above(QCPItemText* item, const StudyCurve& curve);
  /// Words keep off a curve that has none of its own, too.
  void keep_off(const StudyCurve& curve);

private:
  struct Band {
    QCPItemText* item;
    QPolygonF low, high;
  };
  struct Mark {
    QCPItemText* item;
    QCPItemLine* leader;
    QPointF point;
  };
  struct Edge {
    QCPItemText* item;
    QCPItemLine* leader;
    QPolygonF points;
  };
  struct Placing;

  QCPItemLine* leader(const QColor& colour);
  void draw_leaders();
  void arrange_caption(const QRectF& room);
  void arrange_edges(const QRectF& room);

  QPointF pixel(const QPointF& point) const;
  QPolygonF pixels(const QPolygonF& points) const;
  QPolygonF anchors_on(const StudyLine& line, const QRectF& room) const;
  QPolygonF ends_of(const StudyLine& line, const QRectF& room) const;
  QPolygonF anchors_in(const Band& band, const QRectF& room) const;
  void arrange();
  void want_all(Placing& placing) const;

  QCustomPlot& plot_;
  QCPAxisRect& rect_;
  QColor paper_;
  QCPItemText* heading_ = nullptr;
  bool one_of_many_ = false;
  int caption_lines_ = 1;
  std::vector<std::pair<QCPItemText*, QPolygonF>> curves_; ///< without an item: only kept off
  std::vector<std::pair<QCPItemText*, StudyLine>> lines_;
  std::vector<Mark> marks_;
  std::vector<Edge> edges_;
  std::vector<std::pair<QCPItemText*, QCPItemLine*>> captions_;
  std::vector<Band> bands_;
};

} // namespace feedwright
