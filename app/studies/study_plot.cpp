// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plots.h"

#include "studies/label_keeper.h"
#include "studies/panel_frames.h"
#include "studies/panel_layout.h"
#include "studies/plot_items.h"
#include "studies/stack_keeper.h"
#include "window/letters.h"

#include <QApplication>
#include <qcustomplot.h>

namespace feedwright {

namespace {

/// Strokes and gaps, in line widths; each number its own.
QList<qreal> dash_pattern(int number) {
  switch (number) {
  case 1: return {6.0, 3.0};
  case 2: return {2.0, 2.5};
  case 3: return {8.0, 3.0, 2.0, 3.0};
  case 4: return {12.0, 3.0, 2.0, 3.0, 2.0, 3.0};
  case 5: return {12.0, 4.0};
  case 6: return {4.0, 6.0};
  case 7: return {16.0, 3.0, 4.0, 3.0};
  case 8: return {2.0, 6.0};
  case 9: return {20.0, 5.0};
  case 10: return {6.0, 3.0, 6.0, 8.0};
  default: return {20.0, 3.0, 2.0, 3.0, 2.0, 3.0, 2.0, 3.0};
  }
}

/// A plot on the sheet, in its pixels.
constexpr QSize half_page(320, 175);

QList<double> list(const std::vector<double>& values) {
  return {values.begin(), values.end()};
}

class PlotFiller {
public:
  PlotFiller(QCustomPlot& plot, const StudyFigure& figure, const Look& look, const PlotShape& shape)
      : plot_(plot), figure_(figure), look_(look), shape_(shape), font_(shape.font),
        frames_(figure, look, shape_) {}

  void fill() {
    plot_.clearPlottables();
    plot_.clearItems();
    qDeleteAll(
        plot_.findChildren<QObject*>(QStringLiteral("label_keeper"), Qt::FindDirectChildrenOnly));
    plot_.setBackground(QBrush(look_.paper));
    const QList<QCPAxisRect*> rects = make_rects(plot_, figure_, shape_.abreast);
    for (std::size_t i = 0; i < figure_.panels.size(); ++i) {
      fill_panel(*rects[qsizetype(i)], figure_.panels[i], is_lowest(figure_, i, shape_.abreast));
    }
    frames_.tie_together(rects, *plot_.findChild<QObject*>(QStringLiteral("label_keeper")));
    reset_scales(plot_, figure_);
  }

private:
  QFont bold() const {
    QFont made = font_;
    made.setBold(true);
    return made;
  }

  bool many() const { return figure_.panels.size() > 1; }

  void fill_panel(QCPAxisRect& rect, const StudyPanel& panel, bool lowest) {
    rect_ = &rect;
    edge_ = shape_.edge ? *shape_.edge : edge_names(panel, font_, half_page);
    frames_.frame(rect, panel, lowest, edge_.width);
    if (!figure_.stacks.empty()) {
      new StackKeeper(plot_, rect, figure_, look_, font_);
      return;
    }
    keeper_ = new LabelKeeper(plot_, rect, look_.paper);
    edges_ = new EdgeKeeper(plot_, rect);
    if (shape_.headed) {
      keeper_->at_top(keeper_->label(y_axis_label(panel), look_.faint_ink, font_), many(),
                      lines_over(panel, many(), shape_));
    }
    if (figure_.is_empty()) {
      say_why();
    }
    for (const StudyBand& band : panel.bands) {
      add_band(band);
    }
    for (const StudyLine& line : panel.lines) {
      add_line(line);
    }
    // What might be first, so that what is lies on top.
    for (const bool present : {false, true}) {
      for (const StudyCurve& curve : panel.curves) {
        if (curve.present == present && (edge_.spare || !curve.spare)) {
          add_curve(curve);
        }
      }
    }
    if (!panel.over_word.isEmpty() && !panel.curves.empty()) {
      keeper_->above(keeper_->zone_word(panel.over_word, look_.faint_ink, font_),
                     panel.curves.front());
    }
    for (const StudyMark& mark : panel.marks) {
      add_mark(mark);
    }
  }

  void say_why() {
    QCPItemText* item = plain_text(plot_, *rect_, broken(figure_.summary), look_.faint_ink, font_);
    item->position->setType(QCPItemPosition::ptAxisRectRatio);
    item->position->setCoords(0.5, 0.5);
    item->setPositionAlignment(Qt::AlignCenter);
    item->setTextAlignment(Qt::AlignCenter);
  }

  /// In lines that fit a plot of half a page.
  static QString broken(const QString& sentence) {
    constexpr qsizetype longest = 56;
    QStringList lines{QString()};
    for (const QString& word : sentence.split(QLatin1Char(' '))) {
      if (lines.back().size() + word.size() > longest) {
        lines << QString();
      }
      lines.back() += lines.back().isEmpty() ? word : QLatin1Char(' ') + word;
    }
    return lines.join(QLatin1Char('\n'));
  }

  QCPGraph* graph(const QString& name, const std::vector<double>& x, const std::vector<double>& y) {
    QCPGraph* made = plot_.addGraph(rect_->axis(QCPAxis::atBottom), rect_->axis(QCPAxis::atLeft));
    made->setName(name);
    made->setData(list(x), list(y), true);
    made->setAdaptiveSampling(false);
    return made;
  }

  void add_band(const StudyBand& band) {
    QCPGraph* low = graph(QString(), band.x, band.low);
    QCPGraph* high = graph(band.label, band.x, band.high);
    const bool hatched = band.ground == StudyBand::Ground::hatched;
    // A hatched one lies between a plain one and a curve, which have edges of their own.
    const QPen edge = hatched ? QPen(Qt::NoPen) : QPen(look_.faint_ink, 0.7);
    low->setPen(edge);
    high->setPen(edge);
    high->setBrush(hatched ? QBrush(look_.bar, Qt::BDiagPattern) : QBrush(look_.panel));
    high->setChannelFillGraph(low);
    high->setAntialiasedFill(false); // its edges are lines, which are
    keeper_->keep_off({QString(), band.x, band.high});
    if (many()) {
      keeper_->in_caption(keeper_->label(band.label, look_.faint_ink, font_),
                          QPen(look_.faint_ink, 0.7));
    } else {
      keeper_->inside(keeper_->zone_word(band.label, look_.faint_ink, font_), band);
    }
  }

  void add_curve(const StudyCurve& curve) {
    QCPGraph* made = graph(curve.label, curve.x, curve.y);
    const QColor colour = curve.present ? look_.ink : look_.faint_ink;
    QPen pen(colour, curve.present ? 2.0 : 1.0);
    if (curve.dash != 0) {
      pen.setDashPattern(dash_pattern(curve.dash));
    }
    made->setPen(pen);
    if (curve.x.empty()) {
      return;
    }
    if (!curve.named) {
      keeper_->keep_off(curve);
      return;
    }
    const bool short_one = many() || curve.at_edge;
    HaloText* words = keeper_->label(short_one ? short_name(curve) : curve.label, colour,
                                     curve.present ? bold() : font_);
    if (many()) {
      keeper_->keep_off(curve);
      keeper_->in_caption(words, pen);
    } else if (curve.at_edge) {
      keeper_->keep_off(curve);
      words->setText(edge_lines(words->text(), edge_, words->font()).join(QLatin1Char('\n')));
      words->setProperty(hint_property, curve.label);
      edges_->add(words, curve, pen);
    } else {
      keeper_->along(words, curve);
    }
  }

  void add_line(const StudyLine& line) {
    auto* item = item_on<QCPItemStraightLine>(plot_, *rect_);
    item->point1->setCoords(line.upright ? QPointF(line.value, 0.0) : QPointF(0.0, line.value));
    item->point2->setCoords(line.upright ? QPointF(line.value, 1.0) : QPointF(1.0, line.value));
    const QColor colour = line.target ? look_.accent : look_.ink;
    QPen pen(colour, 1.4);
    if (!line.target) {
      pen.setDashPattern({4.0, 3.0});
    }
    item->setPen(pen);
    keeper_->along(keeper_->label(line.label, colour, font_), line);
  }

  void add_mark(const StudyMark& mark) {
    QCPGraph* made = graph(mark.label, {mark.x}, {mark.y});
    made->setLineStyle(QCPGraph::lsNone);
    const QColor colour = mark.verdict == Verdict::over    ? look_.over
                          : mark.verdict == Verdict::close ? look_.close
                                                           : look_.accent;
    made->setScatterStyle(
        QCPScatterStyle(mark.wanted ? QCPScatterStyle::ssCircle : QCPScatterStyle::ssDiamond,
                        QPen(colour, 2.0), QBrush(look_.paper), 9.0));
    keeper_->beside(keeper_->label(mark_text(mark), colour, bold()), QPointF(mark.x, mark.y));
  }

  QCustomPlot& plot_;
  const StudyFigure& figure_;
  const Look& look_;
  PlotShape shape_;
  QFont font_;
  PanelFrames frames_;
  QCPAxisRect* rect_ = nullptr;
  LabelKeeper* keeper_ = nullptr;
  EdgeKeeper* edges_ = nullptr;
  EdgeNames edge_;
};

} // namespace

void reset_scales(QCustomPlot& plot, const StudyFigure& figure) {
  const QList<QCPAxisRect*> rects = panel_rects(plot);
  for (qsizetype i = 0; i < rects.size() && i < qsizetype(figure.panels.size()); ++i) {
    const StudyPanel& panel = figure.panels[static_cast<std::size_t>(i)];
    rects[i]->axis(QCPAxis::atBottom)->setRange(figure.x_start, figure.x_end);
    rects[i]->axis(QCPAxis::atLeft)->setRange(panel.y_start, panel.y_end);
    const double per_x = figure.top ? figure.top->per_x : 1.0;
    rects[i]->axis(QCPAxis::atTop)->setRange(figure.x_start * per_x, figure.x_end * per_x);
  }
}

void fill_plot(QCustomPlot& plot, const StudyFigure& figure, const Look& look,
               const PlotShape& shape) {
  PlotFiller(plot, figure, look, shape).fill();
}

bool names_fit(QCustomPlot& plot, const PlotShape& shape, const QSize& size) {
  auto* keeper = plot.findChild<StackKeeper*>();
  return (!shape.edge || shape.edge->fit) && (keeper == nullptr || keeper->names_fit(size));
}

bool fill_to_size(QCustomPlot& plot, const StudyFigure& figure, const Look& look,
                  const QFont& usual, const QSize& size, PlotShape& shape) {
  shape = plot_shape(figure, size, usual);
  fill_plot(plot, figure, look, shape);
  const bool fit = names_fit(plot, shape, size);
  const QFont small = fitted(usual, 0.0);
  if (fit || shape.font == small) {
    return fit;
  }
  shape.font = small;
  fill_plot(plot, figure, look, shape);
  return names_fit(plot, shape, size);
}

void fill_plot(QCustomPlot& plot, Study study, const Machine& machine, std::size_t axis,
               const AxisResults& results, const Look& look, double point_size) {
  QFont font = QApplication::font();
  font.setPointSizeF(point_size);
  const FileUnits units(machine);
  PlotShape shape;
  shape.font = font;
  fill_plot(plot, study_figure(study, {machine, axis, results, units}), look, shape);
}

} // namespace feedwright
