// SPDX-License-Identifier: GPL-3.0-or-later

// How a figure is drawn in a size: panels beside each other or not, letters, numbers of the scales.

#include "studies/label_keeper.h"
#include "studies/plots.h"
#include "studies/stack_keeper.h"
#include "window/letters.h"

#include <QFontMetricsF>
#include <QSize>

#include <algorithm>
#include <numeric>

namespace feedwright {

namespace {

/// Of the words that stand inside the frame, at a curve or a point.
double widest_inside(const StudyFigure& figure, QFont font) {
  font.setBold(true);
  const QFontMetricsF metrics(font);
  double widest = 0.0;
  for (const StudyPanel& panel : figure.panels) {
    for (const StudyMark& mark : panel.marks) {
      widest = std::max(widest, metrics.horizontalAdvance(mark_text(mark)));
    }
    for (const StudyCurve& curve : panel.curves) {
      const bool inside = curve.named && !curve.at_edge;
      widest = std::max(widest, inside ? metrics.horizontalAdvance(curve.label) : 0.0);
    }
  }
  return widest;
}

constexpr double chief_width = 0.5; // beside the others, less its numbers

/// Lines over the chief of many panels: its heading, and under it the names of its curves where
/// they do not fit beside it.
int caption_lines(const StudyPanel& panel, const QFont& font, double width) {
  QFont bold = font;
  bold.setBold(true);
  const QFontMetricsF metrics(bold);
  std::vector<double> names;
  for (const StudyBand& band : panel.bands) {
    names.push_back(LabelKeeper::caption_width(band.label, bold));
  }
  for (const StudyCurve& curve : panel.curves) {
    if (curve.named) {
      names.push_back(LabelKeeper::caption_width(short_name(curve), bold));
    }
  }
  const double heading = metrics.horizontalAdvance(y_axis_label(panel)) + metrics.height();
  if (std::accumulate(names.begin(), names.end(), heading) <= width) {
    return 1;
  }
  int lines = 1;
  double used = width;
  for (const double name : names) {
    used += name;
    if (used > width) {
      ++lines;
      used = name;
    }
  }
  return lines;
}

/// So many numbers up a panel as have room, and what stands over its chief one.
void shape_panels(PlotShape& shape, const StudyFigure& figure, const QSize& size) {
  const QFontMetricsF metrics(shape.font);
  const auto panels = int(figure.panels.size());
  const auto numbers = [&](double height) {
    constexpr double to_one = 2.2; // lines
    return std::clamp(int(height / (to_one * metrics.height())), 1, 5);
  };
  if (panels == 1) {
    shape.numbers = shape.chief_numbers = numbers(size.height() - 2.0 * metrics.height());
    return;
  }
  const bool beside = shape.abreast > 1;
  constexpr double chief_height = 2.2;
  const double share = size.height() / (beside ? panels - 1.0 : panels - 1.0 + chief_height);
  shape.numbers = std::max(2, numbers(share - 1.5 * metrics.height()));
  const auto apart = [&](double taken) {
    constexpr double one_to_next = 0.95; // lines
    return std::clamp(1 + int((share / metrics.height() - taken) / one_to_next), 1, 3);
  };
  shape.given_numbers = apart(1.2);
  shape.lowest_numbers = apart(2.4);
  shape.chief_numbers = std::max(
      2, numbers((beside ? size.height() : share * chief_height) - 4.0 * metrics.height()));
  shape.caption =
      caption_lines(figure.panels.back(), shape.font, size.width() * (beside ? chief_width : 0.85));
}

} // namespace

PlotShape plot_shape(const StudyFigure& figure, const QSize& size, const QFont& usual) {
  constexpr int lowest = 80; // a panel below that cannot be read
  const auto panels = int(figure.panels.size());
  const bool many = panels > 1;
  PlotShape made;
  made.abreast =
      many && size.height() < lowest * (panels + 1) && size.width() > 1.5 * size.height() ? 2 : 1;
  // In lines of text: the scales and their names, then each panel with its heading.
  constexpr double scales = 2.5;
  constexpr double one = 6.0;
  constexpr double of_many = 3.2;
  const int rows = made.abreast > 1 ? panels - 1 : panels + 1;
  const double beyond = scales + (figure.top ? 1.0 : 0.0);
  const bool stacks = !figure.stacks.empty();
  const double wanted = beyond + (many     ? rows * of_many
                                  : stacks ? StackKeeper::name_lines(figure, usual) +
                                                 StackKeeper::wanted_lines(figure)
                                           : one);
  const double line = QFontMetricsF(usual).height();
  const double across =
      stacks ? StackKeeper::wanted_width(figure, usual) : widest_inside(figure, usual);
  made.font = fitted(
      usual, std::min(size.height() / (wanted * line),
                      (double(size.width()) / made.abreast - 4.5 * line) / std::max(1.0, across)));
  made.edge = edge_names(figure.panels.front(), made.font, size);
  if (!made.edge->fit) {
    made.font = fitted(usual, 0.0);
    made.edge = edge_names(figure.panels.front(), made.font, size);
  }
  const QFontMetricsF metrics(made.font);
  const double side = size.height() - beyond * metrics.height();
  // A second scale stands where the heading would, and columns have short names.
  const bool may_be = !figure.top && !stacks;
  made.headed =
      many || (may_be && metrics.horizontalAdvance(y_axis_label(figure.panels.front())) > side);
  shape_panels(made, figure, size);
  return made;
}

} // namespace feedwright
