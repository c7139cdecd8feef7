// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The frame of a panel: its scales, and room around it for what is written
// there.

#include "studies/plots.h"

#include <QList>

class QCPAxis;
class QObject;
class QString;

namespace feedwright {

/// Lines over that panel's frame.
int lines_over(const StudyPanel& panel, bool one_of_many, const PlotShape& shape);

class PanelFrames {
public:
  PanelFrames(const StudyFigure& figure, const Look& look, const PlotShape& shape);

  /// `beside`: room at its right.
  void frame(QCPAxisRect& rect, const StudyPanel& panel, bool lowest, int beside) const;

  /// One time (or feed) for all panels, and the scale along the top with the
  /// one below; as long as `keeper` lives.
  void tie_together(const QList<QCPAxisRect*>& rects, const QObject& keeper) const;

private:
  bool many() const { return figure_.panels.size() > 1; }
  void set_across(QCPAxisRect& rect, const StudyPanel& panel, bool lowest) const;
  void set_up(QCPAxisRect& rect, const StudyPanel& panel, bool lowest) const;
  void set_far_sides(QCPAxisRect& rect) const;
  void make_room(QCPAxisRect& rect, const StudyPanel& panel, int beside) const;
  void set_axis(QCPAxis& axis, const QString& label) const;

  const StudyFigure& figure_;
  const Look& look_;
  const PlotShape& shape_;
};

} // namespace feedwright
