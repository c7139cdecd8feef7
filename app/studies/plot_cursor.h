// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QObject>

#include <optional>

class QCPAxisRect;
class QCustomPlot;

namespace feedwright {

/// Where a plot is read off: at a hairline through all its panels, or at a column, which needs
/// none.
class PlotCursor : public QObject {
  Q_OBJECT
public:
  explicit PlotCursor(QCustomPlot& plot);

  std::optional<double> at() const { return at_; }
  /// It is the pointer's, and goes with it.
  bool pointed() const { return pointed_; }
  void set_pointed(bool pointed) { pointed_ = pointed; }
  /// Of another study. Its line went with the plot's items.
  void drop();
  /// Takes its line off the plot.
  void forget();
  /// As near to x as is in view; a line there, but in columns.
  void put(double x, std::size_t columns, const QColor& colour);
  /// Steps from the middle, or on from where it is; in columns, from one to the next.
  double after(int steps, std::size_t columns) const;
  /// Of the first or the last that is in view.
  double end(bool last) const;
  /// What is under the pointer. Columns are as wide as their words; each is read off at its middle.
  double x_at(const QCPAxisRect& rect, double pixel) const;

private:
  void draw(const QColor& colour);

  QCustomPlot& plot_;
  std::optional<double> at_;
  bool pointed_ = false;
};

} // namespace feedwright
