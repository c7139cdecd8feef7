// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A study painted by itself, without the window about it.

#include "studies/study_canvas.h"

#include <QCoreApplication>
#include <QLabel>
#include <QTableWidget>
#include <QToolButton>
#include <qcustomplot.h>

namespace feedwright::testing {

/// In a size, and in points of letters where they are not the usual ones.
struct PaintedStudy {
  static constexpr QSize usual_size{665, 280}; ///< in a window of 1280 by 800

  PaintedStudy(Study study, const StudyFigure& figure, QSize size = usual_size, int points = 0) {
    if (points > 0) {
      QFont font = canvas.font();
      font.setPointSize(points);
      canvas.setFont(font);
    }
    canvas.resize(size);
    canvas.show();
    canvas.show_figure(study, figure);
    QCoreApplication::processEvents();
    QCoreApplication::processEvents();
    if (plot().isVisible()) {
      plot().replot(QCustomPlot::rpImmediateRefresh);
    }
  }

  QCustomPlot& plot() { return canvas.plot(); }
  QTableWidget& table() { return *canvas.findChild<QTableWidget*>(QStringLiteral("study_table")); }
  QToolButton& button() {
    return *canvas.findChild<QToolButton*>(QStringLiteral("study_table_button"));
  }
  QString sentence() { return canvas.findChild<QLabel*>(QStringLiteral("study_read_out"))->text(); }

  StudyCanvas canvas;
};

} // namespace feedwright::testing
