// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/study_figure.h"

#include <QTableWidget>

namespace feedwright {

/// A study's figure as a table to be read, selected and copied, never edited.
class StudyTableView : public QTableWidget {
  Q_OBJECT
public:
  explicit StudyTableView(QWidget* parent = nullptr);

  void show_figure(const StudyFigure& figure);
  /// The cells of the selection's rectangle, or of the whole table with its heading; tabs between.
  QString selected_text() const;

private:
  StudyTable shown_;
};

} // namespace feedwright
