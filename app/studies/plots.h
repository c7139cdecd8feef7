// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/edge_names.h"
#include "studies/study_figure.h"
#include "window/style.h"

#include <QFont>
#include <QList>

#include <optional>

class QCPAxisRect;
class QCustomPlot;
class QSize;

namespace feedwright {

/// Property of a word in a plot that holds it whole where it may be shortened.
inline constexpr char full_text_property[] = "full_text";
/// Property of a word in a plot that says more than it.
inline constexpr char hint_property[] = "hint";

/// Empties the plot and fills it with a study, on a window or for paper. Words find their places
/// whenever the plot is laid out, in the fonts its items then have.
void fill_plot(QCustomPlot& plot, Study study, const Machine& machine, std::size_t axis,
               const AxisResults& results, const Look& look, double point_size);

/// How a figure is drawn in a size.
struct PlotShape {
  int abreast = 1;     ///< panels beside each other: two where it is wide and low
  bool headed = false; ///< what goes up stands over the panel, not along its side
  int caption = 1;     ///< lines over one of many: its heading, and the names of its lines
  int numbers = 5;     ///< at most, up a panel
  int chief_numbers = 5;
  int given_numbers = 3;                        ///< of those a panel's scale is given
  int lowest_numbers = 3;                       ///< of those in the panel above the scale of x
  std::optional<EdgeNames> edge = std::nullopt; ///< for half a page where it is not given
  QFont font; ///< smaller than the window's where that would leave no room to the curves
  bool operator==(const PlotShape&) const = default;
};
PlotShape plot_shape(const StudyFigure& figure, const QSize& size, const QFont& usual);

void fill_plot(QCustomPlot& plot, const StudyFigure& figure, const Look& look,
               const PlotShape& shape);

/// Fills the plot for a size, in smaller letters where names have no room otherwise, and says
/// whether they have then.
bool fill_to_size(QCustomPlot& plot, const StudyFigure& figure, const Look& look,
                  const QFont& usual, const QSize& size, PlotShape& shape);

/// Whether a filled plot has room in that size for the names its numbers and curves have.
bool names_fit(QCustomPlot& plot, const PlotShape& shape, const QSize& size);

/// The axes of a filled plot in the order of the figure's panels.
QList<QCPAxisRect*> panel_rects(const QCustomPlot& plot);

/// Scales as the figure gives them.
void reset_scales(QCustomPlot& plot, const StudyFigure& figure);

} // namespace feedwright
