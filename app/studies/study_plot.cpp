// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plots.h"

#include "limits/number_text.h"
#include "studies/label_keeper.h"
#include "studies/panel_layout.h"
#include "studies/plot_items.h"
#include "studies/stack_keeper.h"
#include "window/letters.h"

#include <QApplication>
#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

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

/// Scale numbers in the language's decimal mark, whatever the locale.
class PlainTicker : public QCPAxisTicker {
protected:
  QString getTickLabel(double tick, const QLocale&, QChar, int) override {
    return number_text(std::abs(tick) < 1e-12 ? 0.0 : tick, 4);
  }
  /// No finer than was asked: the count is what has room.
  double getTickStep(const QCPRange& range) override {
    const double exact = range.size() / std::max(1, tickCount());
    if (!(exact > 0.0)) {
      return QCPAxisTicker::getTickStep(range);
    }
    const double decade = std::pow(10.0, std::floor(std::log10(exact)));
    double chosen = 0.1 * decade;
    for (const double step : {0.2, 0.25, 0.5, 1.0, 2.0, 2.5, 5.0, 10.0}) {
      // One number alone gives no scale.
      if (in_range(range, step * decade) < 2.0) {
        break;
      }
      chosen = step * decade;
      if (exact <= chosen * (1.0 + 1e-9)) {
        break;
      }
    }
    return chosen;
  }

private:
  static double in_range(const QCPRange& range, double step) {
    return std::floor(range.upper / step) - std::ceil(range.lower / step) + 1.0;
  }
};

/// The numbers it is given.
class GivenTicker : public PlainTicker {
public:
  explicit GivenTicker(QVector<double> numbers) : numbers_(std::move(numbers)) {
    std::ranges::sort(numbers_);
  }

protected:
  QVector<double> createTickVector(double, const QCPRange&) override { return numbers_; }
  QString getTickLabel(double tick, const QLocale&, QChar, int) override {
    return number_text(tick, 3);
  }

private:
  QVector<double> numbers_;
};

/// A plot on the sheet, in its pixels.
constexpr QSize half_page(320, 175);

QList<double> list(const std::vector<double>& values) {
  return {values.begin(), values.end()};
}

class PlotFiller {
public:
  PlotFiller(QCustomPlot& plot, const StudyFigure& figure, const Look& look, const PlotShape& shape)
      : plot_(plot), figure_(figure), look_(look), shape_(shape), font_(shape.font) {}

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
    tie_together(rects);
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
    set_scales(panel, lowest);
    if (!figure_.stacks.empty()) {
      fill_stacks();
      return;
    }
    keeper_ = new LabelKeeper(plot_, rect, look_.paper);
    edges_ = new EdgeKeeper(plot_, rect);
    if (shape_.headed) {
      keeper_->at_top(keeper_->label(y_axis_label(panel), look_.faint_ink, font_), many(),
                      many() && panel.chief ? shape_.caption : 1);
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

  void set_scales(const StudyPanel& panel, bool lowest) {
    QCPAxis& across = *rect_->axis(QCPAxis::atBottom);
    QCPAxis& up = *rect_->axis(QCPAxis::atLeft);
    // Beside the chief panel the others have its scale, and need their height.
    const bool named = lowest && (panel.chief || shape_.abreast == 1);
    set_axis(across, named ? both_axes_label(figure_) : QString());
    set_axis(up, shape_.headed ? QString() : y_axis_label(panel));
    across.setTickLabels(lowest && figure_.stacks.empty());
    across.setTicks(lowest && figure_.stacks.empty());
    across.grid()->setVisible(figure_.stacks.empty());
    if (panel.numbers.empty()) {
      up.ticker()->setTickCount(panel.chief ? shape_.chief_numbers : shape_.numbers);
    } else {
      const auto fitting =
          std::min<qsizetype>(std::max(2, shape_.numbers), qsizetype(panel.numbers.size()));
      up.setTicker(
          QSharedPointer<GivenTicker>(new GivenTicker(list(panel.numbers).mid(0, fitting))));
    }
    // Room for each number with a gap of its own width.
    const double number = QFontMetricsF(font_).horizontalAdvance(QStringLiteral("0.25"));
    const double room = double(plot_.width()) / shape_.abreast - 4.0 * number;
    across.ticker()->setTickCount(std::clamp(int(room / (1.6 * number)), 2, 5));
    rect_->setupFullAxesBox();
    set_top(*rect_->axis(QCPAxis::atTop));
    for (const auto type : {QCPAxis::atTop, QCPAxis::atRight}) {
      rect_->axis(type)->setBasePen(QPen(look_.rule, 1.0));
    }
    QCPAxis& right = *rect_->axis(QCPAxis::atRight);
    right.setTicks(false);
    right.setTickLabels(false);
    const int below =
        figure_.stacks.empty()
            ? 0
            : StackKeeper::name_lines(figure_, font_) * QFontMetrics(font_).height() + 6;
    // The heading of one of many stands over its frame, where it covers no curve.
    const int lines = many() && panel.chief ? shape_.caption : 1;
    const int heading = lines * QFontMetrics(font_).height() + 3;
    const int right_of_it = edge_.width;
    rect_->setMinimumMargins(shape_.headed ? QMargins(0, heading, right_of_it, many() ? 1 : below)
                                           : QMargins(0, 0, right_of_it, below));
  }

  void set_top(QCPAxis& top) {
    const bool shown = figure_.top.has_value();
    if (shown) {
      set_axis(top, QString());
      top.grid()->setVisible(false);
    }
    top.setLabel(QString());
    top.setTicks(shown);
    top.setTickLabels(shown);
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
    axis.grid()->setZeroLinePen(QPen(many() ? look_.faint_ink : look_.rule, 0.7));
    axis.setTicker(QSharedPointer<PlainTicker>(new PlainTicker));
    axis.setLabelPadding(3);
  }

  /// One time (or feed) for all panels, and the scale along the top with the one below.
  void tie_together(const QList<QCPAxisRect*>& rects) {
    auto* keeper = plot_.findChild<QObject*>(QStringLiteral("label_keeper"));
    for (QCPAxisRect* rect : rects) {
      QCPAxis* across = rect->axis(QCPAxis::atBottom);
      QCPAxis* top = rect->axis(QCPAxis::atTop);
      const double per_x = figure_.top ? figure_.top->per_x : 1.0;
      QObject::connect(across, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), keeper,
                       [top, per_x, rects](const QCPRange& range) {
                         top->setRange(range.lower * per_x, range.upper * per_x);
                         for (QCPAxisRect* other : rects) {
                           other->axis(QCPAxis::atBottom)->setRange(range);
                         }
                       });
      const auto ways = many()                   ? Qt::Orientations(Qt::Horizontal)
                        : figure_.stacks.empty() ? Qt::Horizontal | Qt::Vertical
                                                 : Qt::Orientations(Qt::Vertical);
      rect->setRangeDrag(ways);
      rect->setRangeZoom(ways);
    }
  }

  void fill_stacks() { new StackKeeper(plot_, *rect_, figure_, look_, font_); }

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
