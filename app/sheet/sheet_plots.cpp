// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_figures.h"

#include "studies/plots.h"
#include "window/style.h"

#include <qcustomplot.h>

#include <algorithm>
#include <memory>

namespace feedwright::sheet {

namespace {

constexpr double plot_point_size = 7.0;

/// Points become pixels of the sheet: on a screen of other than 96 dots to the inch the plot would
/// be laid out for other letters than are painted.
QFont in_pixels(QFont font) {
  if (font.pixelSize() < 0) {
    font.setPixelSize(qRound(font.pointSizeF() * 96.0 / 72.0));
  }
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

void set_fonts_in_pixels(QCustomPlot& plot) {
  for (QCPAxisRect* rect : plot.axisRects()) {
    for (QCPAxis* axis : rect->axes()) {
      axis->setLabelFont(in_pixels(axis->labelFont()));
      axis->setTickLabelFont(in_pixels(axis->tickLabelFont()));
    }
  }
  plot.legend->setFont(in_pixels(plot.legend->font()));
  for (int i = 0; i < plot.itemCount(); ++i) {
    if (auto* text = qobject_cast<QCPItemText*>(plot.item(i))) {
      text->setFont(in_pixels(text->font()));
    }
  }
}

} // namespace

namespace {

constexpr qreal gap = 12.0;
constexpr qreal least_height = 250.0; ///< of both rows of plots together
constexpr qreal most_height = 350.0;
constexpr qreal abreast_share = 0.47;

class PlotPlacer {
public:
  PlotPlacer(Pages& pages, const Machine& machine, std::size_t axis, const AxisResults& results)
      : pages_(pages), machine_(machine), axis_(axis), results_(results) {}

  void place(Study study, const QRectF& rect) {
    const auto plot = std::make_shared<QCustomPlot>();
    fill_plot(*plot, study, machine_, axis_, results_, Look::light_look(), plot_point_size);
    set_fonts_in_pixels(*plot);
    plot->setBackground(Qt::NoBrush);
    pages_.place({rect, {}, [plot](QCPPainter& painter, const QRectF& there) {
                    painter.translate(there.topLeft());
                    plot->toPainter(&painter, qRound(there.width()), qRound(there.height()));
                  }});
  }

private:
  Pages& pages_;
  const Machine& machine_;
  std::size_t axis_;
  const AxisResults& results_;
};

} // namespace

void add_plots(Pages& pages, const Machine& machine, std::size_t axis, const AxisResults& results) {
  PlotPlacer placer(pages, machine, axis, results);
  pages.skip(6.0);
  pages.ensure(least_height);
  const qreal height = std::min(pages.room(), most_height);
  const qreal abreast = abreast_share * height;
  const QRectF body = pages.body();
  const qreal half = (body.width() - gap) / 2.0;
  placer.place(Study::thrust, QRectF(body.left(), pages.y(), half, abreast));
  placer.place(Study::acceleration, QRectF(body.left() + half + gap, pages.y(), half, abreast));
  pages.skip(abreast);
  placer.place(Study::stretch, QRectF(body.left(), pages.y(), body.width(), height - abreast));
  pages.skip(height - abreast);
}

} // namespace feedwright::sheet
