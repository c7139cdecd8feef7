// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/study_figure.h"

#include <QWidget>

#include <optional>

class QCPItemStraightLine;
class QCustomPlot;
class QLabel;

namespace feedwright {

/// One study as a plot with a line of text that reads it off under the cursor. Wheel (when it has
/// the focus) and + − zoom, double click and 0 reset, arrow keys move the cursor, Ctrl+C copies
/// picture and numbers.
class StudyCanvas : public QWidget {
  Q_OBJECT
public:
  explicit StudyCanvas(QWidget* parent = nullptr);

  /// Keeps the zoom while the study stays the same.
  void show_figure(Study study, StudyFigure figure);
  void show_nothing(const QString& why);

  const StudyFigure& figure() const { return figure_; }
  QCustomPlot& plot() { return *plot_; }
  void copy();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void fill();
  bool take_key(int key);
  void read_off(double x);
  void reset_zoom();
  void zoom(double factor);

  QCustomPlot* plot_ = nullptr;
  QLabel* read_out_ = nullptr;
  QLabel* nothing_ = nullptr;
  std::optional<Study> study_;
  StudyFigure figure_;
  std::optional<double> cursor_;
  bool zoomed_ = false;
};

} // namespace feedwright
