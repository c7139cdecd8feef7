// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plots.h"

#include "limits/number_text.h"
#include "studies/plot_labels.h"
#include "text/words.h"

#include <QApplication>
#include <qcustomplot.h>

#include <array>

namespace feedwright {

namespace {

/// Strokes and gaps, in line widths; each number its own.
QList<qreal> dash_pattern(int number) {
  switch (number) {
  case 1: return {6.0, 3.0};
  case 2: return {2.0, 2.5};
  case 3: return {8.0, 3.0, 2.0, 3.0};
  default: return {12.0, 4.0};
  }
}

/// Knows where each word may stand and puts it there at every layout.
class LabelKeeper : public QObject {
public:
  LabelKeeper(QCustomPlot& plot, const QColor& paper) : QObject(&plot), plot_(plot), paper_(paper) {
    setObjectName(QStringLiteral("label_keeper"));
    connect(&plot, &QCustomPlot::afterLayout, this, [this] { arrange(); });
  }

  QCPItemText* label(const QString& text, const QColor& colour, const QFont& font) {
    auto* item = new QCPItemText(&plot_);
    item->setText(text);
    item->setColor(colour);
    item->setFont(font);
    item->setPadding(QMargins());
    // Where a word must lie on a line, the line gives way to it.
    item->setBrush(paper_);
    item->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
    item->position->setType(QCPItemPosition::ptAbsolute);
    item->setClipToAxisRect(false);
    return item;
  }

  void along(QCPItemText* item, const StudyCurve& curve) {
    curves_.push_back({item, polygon(curve)});
  }
  void along(QCPItemText* item, const StudyLine& line) { lines_.push_back({item, line}); }
  void beside(QCPItemText* item, const QPointF& point) { marks_.push_back({item, point}); }

private:
  static QPolygonF polygon(const StudyCurve& curve) {
    QPolygonF points;
    for (std::size_t i = 0; i < curve.x.size(); ++i) {
      points << QPointF(curve.x[i], curve.y[i]);
    }
    return points;
  }

  QPointF pixel(const QPointF& point) const {
    return {plot_.xAxis->coordToPixel(point.x()), plot_.yAxis->coordToPixel(point.y())};
  }

  static QSizeF size_of(const QCPItemText& item) {
    const QFontMetricsF metrics(item.font());
    return {metrics.horizontalAdvance(item.text()) + 3.0, metrics.height()};
  }

  /// Points of a curve a label may stand beside: those in view, from two thirds on, then about.
  static QPolygonF anchors_on(const QPolygonF& pixels, const QRectF& room) {
    QPolygonF seen;
    for (const QPointF& point : pixels) {
      if (room.contains(point)) {
        seen << point;
      }
    }
    QPolygonF anchors;
    for (const double share : {0.68, 0.55, 0.8, 0.42, 0.9, 0.3, 0.2, 0.1, 0.97, 0.03}) {
      if (!seen.isEmpty()) {
        anchors << seen[qsizetype(share * double(seen.size() - 1))];
      }
    }
    return anchors;
  }

  QPolygonF anchors_on(const StudyLine& line, const QRectF& room) const {
    QPolygonF anchors;
    for (const double share : {0.99, 0.9, 0.75, 0.6, 0.45, 0.3, 0.15}) {
      anchors << (line.upright ? QPointF(plot_.xAxis->coordToPixel(line.value),
                                         room.bottom() - share * room.height() + 14.0)
                               : QPointF(room.left() + share * room.width(),
                                         plot_.yAxis->coordToPixel(line.value)));
    }
    return anchors;
  }

  QPolygonF ends_of(const StudyLine& line, const QRectF& room) const {
    if (line.upright) {
      const double x = plot_.xAxis->coordToPixel(line.value);
      return {QPointF(x, room.top()), QPointF(x, room.bottom())};
    }
    const double y = plot_.yAxis->coordToPixel(line.value);
    return {QPointF(room.left(), y), QPointF(room.right(), y)};
  }

  void arrange() {
    const QRectF room = QRectF(plot_.axisRect()->rect()).adjusted(2, 2, -2, -2);
    std::vector<QRectF> taken;
    std::vector<PlotLabel> labels;
    std::vector<QCPItemText*> items;
    const auto take = [&](const std::vector<QRectF>& rects) {
      taken.insert(taken.end(), rects.begin(), rects.end());
    };
    const auto want = [&](QCPItemText* item, const QPolygonF& anchors, bool level = false) {
      items.push_back(item);
      labels.push_back({size_of(*item), anchors, level});
    };
    for (const auto& [item, point] : marks_) {
      const QPointF at = pixel(point);
      taken.emplace_back(at - QPointF(5, 5), QSizeF(10, 10));
      want(item, {at});
    }
    for (const auto& [item, line] : lines_) {
      take(cover(ends_of(line, room), room));
      want(item, anchors_on(line, room), !line.upright);
    }
    for (const auto& [item, points] : curves_) {
      QPolygonF pixels;
      for (const QPointF& point : points) {
        pixels << pixel(point);
      }
      take(cover(pixels, room));
      want(item, anchors_on(pixels, room));
    }
    const std::vector<QPointF> places = place_plot_labels(room, labels, taken);
    for (std::size_t i = 0; i < items.size(); ++i) {
      const bool in_view = !labels[i].anchors.isEmpty() &&
                           std::any_of(labels[i].anchors.begin(), labels[i].anchors.end(),
                                       [&](const QPointF& at) { return room.contains(at); });
      items[i]->setVisible(in_view);
      items[i]->position->setCoords(places[i]);
    }
  }

  QCustomPlot& plot_;
  QColor paper_;
  std::vector<std::pair<QCPItemText*, QPolygonF>> curves_;
  std::vector<std::pair<QCPItemText*, StudyLine>> lines_;
  std::vector<std::pair<QCPItemText*, QPointF>> marks_;
};

/// Scale numbers in the language's decimal mark, whatever the locale.
class PlainTicker : public QCPAxisTicker {
protected:
  QString getTickLabel(double tick, const QLocale&, QChar, int) override {
    return number_text(std::abs(tick) < 1e-12 ? 0.0 : tick, 4);
  }
};

class PlotFiller {
public:
  PlotFiller(QCustomPlot& plot, const StudyFigure& figure, const Look& look, const QFont& font)
      : plot_(plot), figure_(figure), look_(look), font_(font) {}

  void fill() {
    plot_.clearPlottables();
    plot_.clearItems();
    delete plot_.findChild<QObject*>(QStringLiteral("label_keeper"));
    keeper_ = new LabelKeeper(plot_, look_.paper);
    plot_.setBackground(QBrush(look_.paper));
    set_axis(*plot_.xAxis, x_axis_label(figure_));
    set_axis(*plot_.yAxis, y_axis_label(figure_));
    plot_.axisRect()->setupFullAxesBox();
    for (QCPAxis* axis : {plot_.xAxis2, plot_.yAxis2}) {
      axis->setTicks(false);
      axis->setTickLabels(false);
      axis->setBasePen(QPen(look_.rule, 1.0));
    }
    plot_.xAxis->setRange(figure_.x_start, figure_.x_end);
    plot_.yAxis->setRange(0.0, figure_.y_end);
    for (const StudyLine& line : figure_.lines) {
      add_line(line);
    }
    // What might be first, so that what is lies on top.
    for (const bool present : {false, true}) {
      for (const StudyCurve& curve : figure_.curves) {
        if (curve.present == present) {
          add_curve(curve);
        }
      }
    }
    for (const StudyMark& mark : figure_.marks) {
      add_mark(mark);
    }
  }

private:
  QFont bold() const {
    QFont made = font_;
    made.setBold(true);
    return made;
  }

  void set_axis(QCPAxis& axis, const QString& label) {
    axis.setLabel(label);
    axis.setLabelFont(font_);
    axis.setTickLabelFont(font_);
    axis.setLabelColor(look_.faint_ink);
    axis.setTickLabelColor(look_.faint_ink);
    axis.setBasePen(QPen(look_.faint_ink, 1.0));
    axis.setTickPen(QPen(look_.faint_ink, 1.0));
    axis.setSubTicks(false);
    axis.setTickLengthIn(0);
    axis.setTickLengthOut(4);
    axis.grid()->setPen(QPen(look_.rule, 0.7));
    axis.grid()->setZeroLinePen(QPen(look_.rule, 0.7));
    axis.setTicker(QSharedPointer<PlainTicker>(new PlainTicker));
    axis.setLabelPadding(3);
  }

  void add_curve(const StudyCurve& curve) {
    QCPGraph* graph = plot_.addGraph();
    graph->setName(curve.label);
    graph->setData(QList<double>(curve.x.begin(), curve.x.end()),
                   QList<double>(curve.y.begin(), curve.y.end()), true);
    graph->setAdaptiveSampling(false);
    QPen pen(curve.present ? look_.ink : look_.faint_ink, curve.present ? 2.0 : 1.0);
    if (curve.dash != 0) {
      pen.setDashPattern(dash_pattern(curve.dash));
    }
    graph->setPen(pen);
    if (!curve.x.empty()) {
      keeper_->along(keeper_->label(curve.label, curve.present ? look_.ink : look_.faint_ink,
                                    curve.present ? bold() : font_),
                     curve);
    }
  }

  void add_line(const StudyLine& line) {
    auto* item = new QCPItemStraightLine(&plot_);
    const QPointF first = line.upright ? QPointF(line.value, 0.0) : QPointF(0.0, line.value);
    const QPointF second = line.upright ? QPointF(line.value, 1.0) : QPointF(1.0, line.value);
    item->point1->setCoords(first);
    item->point2->setCoords(second);
    const QColor colour = line.target ? look_.accent : look_.ink;
    QPen pen(colour, 1.4);
    if (!line.target) {
      pen.setDashPattern({4.0, 3.0});
    }
    item->setPen(pen);
    keeper_->along(keeper_->label(line.label, colour, font_), line);
  }

  void add_mark(const StudyMark& mark) {
    QCPGraph* graph = plot_.addGraph();
    graph->setName(mark.label);
    graph->setLineStyle(QCPGraph::lsNone);
    const QColor colour = mark.verdict == Verdict::over ? look_.over : look_.accent;
    graph->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(colour, 2.0), QBrush(look_.paper), 9.0));
    graph->addData(mark.x, mark.y);
    QString text = mark.label;
    if (mark.verdict == Verdict::over) {
      text = words::verdict_sign(mark.verdict) + QLatin1Char(' ') + text;
    }
    keeper_->beside(keeper_->label(text, colour, bold()), QPointF(mark.x, mark.y));
  }

  QCustomPlot& plot_;
  const StudyFigure& figure_;
  const Look& look_;
  QFont font_;
  LabelKeeper* keeper_ = nullptr;
};

} // namespace

void fill_plot(QCustomPlot& plot, const StudyFigure& figure, const Look& look, const QFont& font) {
  PlotFiller(plot, figure, look, font).fill();
}

void fill_plot(QCustomPlot& plot, Study study, const Machine& machine, std::size_t axis,
               const AxisResults& results, const Look& look, double point_size) {
  QFont font = QApplication::font();
  font.setPointSizeF(point_size);
  fill_plot(plot, study_figure(study, machine, axis, results), look, font);
}

} // namespace feedwright
