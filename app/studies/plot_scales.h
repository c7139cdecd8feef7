// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/study_figure.h"

#include <QObject>

#include <utility>
#include <vector>

class QCPRange;
class QCustomPlot;

namespace feedwright {

/// What part of a plot is shown: all of it, or what somebody has zoomed and panned to.
class PlotScales : public QObject {
  Q_OBJECT
public:
  explicit PlotScales(QCustomPlot& plot);

  bool zoomed() const { return zoomed_; }
  void set_zoomed(bool zoomed);
  void show_all(const StudyFigure& figure);
  void zoom(double factor);
  /// By shares of what is shown.
  void pan(double across, double up);

  /// Across and up, for each panel; none while all is shown.
  using Kept = std::vector<std::pair<QCPRange, QCPRange>>;
  Kept kept() const;
  /// Puts them back after the plot was filled anew.
  void put_back(const Kept& scales);

signals:
  void zoomed_changed();

private:
  QCustomPlot& plot_;
  bool zoomed_ = false;
};

} // namespace feedwright
