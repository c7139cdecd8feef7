// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/plots.h"
#include "studies/study_figure.h"

#include <QWidget>

#include <optional>
#include <vector>

class QAction;
class QCPAxisRect;
class QCustomPlot;
class QLabel;
class QTableWidget;
class QToolButton;

namespace feedwright {

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
  /// Picture and numbers of the plot; of the table, its selected cells or all.
  void copy();
  /// Twice as fine as on the screen.
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
  QAction* add_action(const char* name, const QString& text);
  void show_plot_or_table();
  void fill();
  void refit();
  bool is_table() const;
  void name_other();
  QSize room() const;
  void fill_table();
  bool take_plot_event(QEvent& event);
  bool take_key(int key, bool shift);
  void start_cursor(int steps);
  void read_off(double x);
  double x_at(const QCPAxisRect& rect, double pixel) const;
  void draw_cursor();
  void say(const QString& text);
  void show_said();
  void forget_cursor();
  int lines_to_read() const;
  void show_full_text(const QPoint& at, const QPoint& on_screen) const;
  void reset_zoom();
  void zoom(double factor);
  void pan(double across, double up);
  void set_zoomed(bool zoomed);

  QCustomPlot* plot_ = nullptr;
  QTableWidget* table_ = nullptr;
  QLabel* read_out_ = nullptr;
  QLabel* nothing_ = nullptr;
  QToolButton* as_table_ = nullptr;
  QAction* other_ = nullptr; ///< to the table, or back to the plot
  bool table_wanted_ = false;
  bool room_for_plot_ = true; ///< for its names; a bare number says nothing
  QToolButton* whole_ = nullptr;
  std::optional<Study> study_;
  StudyFigure figure_;
  std::optional<double> cursor_;
  bool pointed_ = false; ///< the cursor is the pointer's, and goes with it
  QString said_;         ///< in full; the line below shows as much as has room
  PlotShape shape_;
  bool zoomed_ = false;
};

} // namespace feedwright
