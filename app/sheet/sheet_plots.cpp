// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_figures.h"

#include "studies/plots.h"
#include "window/style.h"

#include <qcustomplot.h>

#include <array>
#include <memory>

namespace feedwright::sheet {

namespace {

constexpr double plot_point_size = 7.0;
constexpr std::array plotted = {Study::thrust, Study::acceleration, Study::stretch};

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

void add_plots(Pages& pages, const Machine& machine, std::size_t axis, const AxisResults& results) {
  constexpr qreal height = 185.0;
  constexpr qreal gap = 10.0;
  pages.skip(8.0);
  pages.ensure(height);
  const QRectF body = pages.body();
  const qreal width = (body.width() - 2.0 * gap) / 3.0;
  qreal x = body.left();
  for (const Study study : plotted) {
    const auto plot = std::make_shared<QCustomPlot>();
    fill_plot(*plot, study, machine, axis, results, Look::light_look(), plot_point_size);
    set_fonts_in_pixels(*plot);
    plot->setBackground(Qt::NoBrush);
    pages.place(
        {QRectF(x, pages.y(), width, height), {}, [plot](QCPPainter& painter, const QRectF& rect) {
           painter.translate(rect.topLeft());
           plot->toPainter(&painter, qRound(rect.width()), qRound(rect.height()));
         }});
    x += width + gap;
  }
  pages.skip(height);
}

} // namespace feedwright::sheet
