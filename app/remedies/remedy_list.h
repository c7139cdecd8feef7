// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "remedies/remedy_text.h"
#include "window/steady_area.h"

#include <vector>

class QVBoxLayout;

namespace feedwright {

class RemedyRow;

/// Remedies as rows below each other that scroll; the arrow keys go from row to row.
class RemedyList : public SteadyArea {
  Q_OBJECT
public:
  explicit RemedyList(QWidget* parent);

  void show_rows(std::vector<RemedyText> texts);
  /// Rows, shown or not, from the top down.
  QWidgetList stops() const;
  /// Takes in what is to scroll with the rows, above them.
  void put_above(QWidget& head);

signals:
  void pressed(std::size_t row);

private:
  RemedyRow& row(std::size_t index);
  void go_to(std::ptrdiff_t index);

  QVBoxLayout* column_ = nullptr;
  std::vector<RemedyRow*> rows_; ///< as many as there ever were; the others are hidden
  std::size_t shown_ = 0;
};

} // namespace feedwright
