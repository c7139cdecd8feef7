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

class HaloText;

class LabelKeeper : public QObject {
  Q_OBJECT
public:
  /// Dies with the plot or with the next figure.
  LabelKeeper(QCustomPlot& plot, QCPAxisRect& rect, const QColor& paper);

  HaloText* label(const QString& text, const QColor& colour, const QFont& font);
  /// A word on a hatching, with the paper behind it.
  HaloText* zone_word(const QString& text, const QColor& colour, const QFont& font);

  /// Over the frame. In a low one of many panels marks go without their words.
  void at_top(QCPItemText* item, bool one_of_many, int caption_lines);
  /// Over the frame too, behind a piece of its line.
  void in_caption(QCPItemText* item, const QPen& pen);
  static double caption_width(const QString& name, const QFont& font);
  void along(HaloText* item, const StudyCurve& curve);
  void along(HaloText* item, const StudyLine& line);
  void beside(HaloText* item, const QPointF& point);
  void inside(HaloText* item, const StudyBand& band);
  void above(HaloText* item, const StudyCurve& curve);
  /// Words keep off a curve that has none of its own, too.
  void keep_off(const StudyCurve& curve);

private:
  struct Band {
    HaloText* item;
    QPolygonF low, high;
  };
  struct Line {
    HaloText* item;
    QCPItemLine* leader;
    StudyLine line;
  };
  struct Mark {
    HaloText* item;
    QCPItemLine* leader;
    QString words; ///< in one line
    QPointF point;
  };
  struct Placing;

  void draw_leaders();
  QPointF foot_of(const Line& line) const;
  bool meets_words(const QLineF& leader, const QCPItemText& own) const;
  void draw_leader(QCPItemLine& leader, const QCPItemText& item, const QPointF& from, double radius,
                   double near) const;
  void arrange_caption(const QRectF& room);

  QPointF pixel(const QPointF& point) const;
  QPolygonF pixels(const QPolygonF& points) const;
  QPolygonF anchors_on(const StudyLine& line, double height, const QRectF& room) const;
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
  std::vector<std::pair<HaloText*, QPolygonF>> curves_; ///< without an item: only kept off
  std::vector<Line> lines_;
  std::vector<Mark> marks_;
  std::vector<std::pair<QCPItemText*, QCPItemLine*>> captions_;
  std::vector<Band> bands_;
};

} // namespace feedwright
