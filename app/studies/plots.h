// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/study_figure.h"
#include "window/style.h"

class QCustomPlot;

namespace feedwright {

/// Empties the plot and fills it with a study, on a window or for paper. Words find their places
/// whenever the plot is laid out, in the fonts its items then have.
void fill_plot(QCustomPlot& plot, Study study, const Machine& machine, std::size_t axis,
               const AxisResults& results, const Look& look, double point_size);

void fill_plot(QCustomPlot& plot, const StudyFigure& figure, const Look& look, const QFont& font);

} // namespace feedwright
