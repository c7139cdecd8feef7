// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where the axes of a figure's panels stand in a plot.

#include "studies/study_figure.h"

#include <QList>

class QCPAxisRect;
class QCustomPlot;

namespace feedwright {

/// Rectangles of axes, one for each panel, in the order of the panels: in one column, or with the
/// chief panel beside the column of the others. One that is already there alone stays.
QList<QCPAxisRect*> make_rects(QCustomPlot& plot, const StudyFigure& figure, int abreast);

/// Whether nothing stands under that panel.
bool is_lowest(const StudyFigure& figure, std::size_t panel, int abreast);

} // namespace feedwright
