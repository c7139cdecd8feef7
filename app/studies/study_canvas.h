// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/plots.h"
#include "studies/study_figure.h"

#include <QWidget>

#include <optional>

class QAction;
class QCustomPlot;
class QLabel;
class QToolButton;

namespace feedwright {

class StudyTableView;
class PlotCursor;
class PlotOrTable;
class PlotScales;
class ReadOutLabel;

/// One study as a plot, or as a table of the same, with a line of text that reads it off under the
/// cursor. Wheel (with the focus or Ctrl) and + − zoom, dragging and Shift with the arrows pan,
/// double click and 0 reset, arrow keys, Home and End move the cursor, Ctrl+C copies.
class StudyCanvas : public QWidget {
  Q_OBJECT
public:
  explicit StudyCanvas(QWidget* parent = nullptr);

  /// Keeps the zoom while the study stays the same.
  void show_figure(Study study, StudyFigure figure);
  void show_nothing(const QString& why);

  const StudyFigure& figure() const { return figure_; }
  QCustomPlot& plot() { return *plot_; }
  QString reading() const;
  /// Picture and numbers of the plot; of the table, its selected cells or all numbers, and the
  /// picture too where it only stands in.
  void copy();
  /// The plot, larger than on the screen where its names have no room there.
  QImage picture() const;

signals:
  void picture_to_save();
  void numbers_to_save();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  void make_plot();
  void make_table();
  void make_actions();
  void lay_out();
  QAction* add_action(const char* name, const QString& text);
  void show_plot_or_table();
  void show_whole_button();
  void fill();
  void refit();
  bool take_plot_event(QEvent& event);
  bool take_key(int key, bool shift);
  void point_at(const QPointF& at);
  void read_off(double x);
  void forget_cursor();

  QCustomPlot* plot_ = nullptr;
  PlotScales* scales_ = nullptr;
  PlotCursor* cursor_ = nullptr;
  StudyTableView* table_ = nullptr;
  PlotOrTable* shown_as_ = nullptr;
  ReadOutLabel* read_out_ = nullptr;
  QLabel* nothing_ = nullptr;
  QToolButton* as_table_ = nullptr;
  QToolButton* whole_ = nullptr;
  std::optional<Study> study_;
  StudyFigure figure_;
  PlotShape shape_;
};

} // namespace feedwright
