// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_figures.h"

#include "train/paint_train.h"
#include "window/style.h"

#include <QFontMetricsF>
#include <QPainter>

namespace feedwright::sheet {

void add_train(Pages& pages, const Machine& machine, std::size_t axis, const AxisResults& results) {
  TrainOptions options;
  options.font = font(small_size);
  options.title = false; // the head of the page says it
  const qreal height = least_train_height(QFontMetricsF(options.font).height()) + 10.0;
  TrainGeometry train = train_geometry(machine, axis, &results);
  if (!train.lying_text.isEmpty()) { // first of all, for it tells how to read the drawing
    pages.paragraph(train.lying_text, {.size = small_size, .grey = true});
    train.lying_text.clear();
  }
  pages.add(height, [train, options](QPainter& painter, const QRectF& rect) {
    paint_train(painter, train, rect, Look::light_look(), options);
  });
}

} // namespace feedwright::sheet
