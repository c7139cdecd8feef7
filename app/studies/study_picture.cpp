// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_picture.h"

#include "studies/plots.h"

#include <qcustomplot.h>

#include <algorithm>

namespace feedwright {

QImage study_picture(const StudyFigure& figure, const Look& look, const QFont& font, QSize size) {
  constexpr QSize most(2000, 1400);
  constexpr double step = 1.15;
  QCustomPlot plot;
  PlotShape shape;
  while (!fill_to_size(plot, figure, look, font, size, shape) && size != most) {
    size = (QSizeF(size) * step + QSizeF(1.0, 1.0)).toSize().boundedTo(most);
  }
  return plot.toPixmap(size.width(), size.height(), picture_fineness).toImage();
}

} // namespace feedwright
