// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Names of curves at the right of a plot's frame, each at the end of its curve.

#include "studies/study_figure.h"

#include <QFont>
#include <QObject>
#include <QPen>
#include <QPolygonF>
#include <QSizeF>
#include <QStringList>

#include <vector>

class QCPAxisRect;
class QCPItemLine;
class QCPItemText;
class QCustomPlot;

namespace feedwright {

/// How the names beside a frame are broken.
struct EdgeNames {
  int width = 0;     ///< of the margin at the right of the frame; 1 where no curve is named there
  int lines = 1;     ///< that a name may have
  bool fit = true;   ///< whether all have room in that size of plot, and leave some to the curves
  bool spare = true; ///< whether spare curves are drawn and have theirs
  bool operator==(const EdgeNames&) const = default;
};
EdgeNames edge_names(const StudyPanel& panel, const QFont& font, const QSize& plot);

/// A name in as few lines as that width asks for.
QStringList edge_lines(const QString& name, const EdgeNames& names, const QFont& font);

/// In few words, where there are some.
const QString& short_name(const StudyCurve& curve);

/// Puts each name as near as can be to where its curve meets the frame, behind a piece of the
/// curve's line, at every layout. Names that have no room in the height of the frame stand over and
/// under it too; those beyond that are not shown, the last of the figure first.
class EdgeKeeper : public QObject {
  Q_OBJECT
public:
  /// Dies with the plot or with the next figure.
  EdgeKeeper(QCustomPlot& plot, QCPAxisRect& rect);

  void add(QCPItemText* item, const StudyCurve& curve, const QPen& pen);

private:
  struct Name {
    QCPItemText* item;
    QCPItemLine* leader;
    QCPItemLine* sample;
    std::vector<double> x, y;
  };
  struct Place {
    const Name* name;
    double y, height;
  };

  void arrange();
  std::vector<Place> in_view(double most_height) const;
  static void show(const Name& name, bool shown);

  QCustomPlot& plot_;
  QCPAxisRect& rect_;
  std::vector<Name> names_;
};

} // namespace feedwright
