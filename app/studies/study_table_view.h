// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/study_figure.h"

#include <QTableWidget>

#include <vector>

namespace feedwright {

/// A study's figure as a table to be read, selected and copied, never edited. Heads and words break
/// before it scrolls sideways.
class StudyTableView : public QTableWidget {
  Q_OBJECT
public:
  explicit StudyTableView(QWidget* parent = nullptr);

  void show_figure(const StudyFigure& figure);
  /// The cells of the selection's rectangle, or of the whole table with its heading; tabs between.
  QString selected_text() const;

protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  /// Pixels that a column takes in one line, with its head in two, and broken between all words.
  struct Need {
    int whole, halved, least;
  };

  void fill();
  void measure();
  void share_width();
  std::vector<int> widths() const;
  void fit_rows(const std::vector<int>& wide);

  StudyTable shown_;
  std::vector<Need> needs_;
};

} // namespace feedwright
