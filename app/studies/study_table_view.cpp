// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_table_view.h"

#include <QHeaderView>

namespace feedwright {

StudyTableView::StudyTableView(QWidget* parent) : QTableWidget(parent) {
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setSelectionMode(QAbstractItemView::ContiguousSelection);
  verticalHeader()->hide();
  setTabKeyNavigation(false);
  setContextMenuPolicy(Qt::ActionsContextMenu);
}

void StudyTableView::show_figure(const StudyFigure& figure) {
  shown_ = as_table(figure);
  setUpdatesEnabled(false);
  clear();
  setColumnCount(int(shown_.head.size()));
  setRowCount(int(shown_.rows.size()));
  setHorizontalHeaderLabels(shown_.head);
  for (std::size_t row = 0; row < shown_.rows.size(); ++row) {
    for (qsizetype column = 0; column < shown_.rows[row].size(); ++column) {
      const QString& text = shown_.rows[row][column];
      auto* item = new QTableWidgetItem(text);
      const bool number = !text.isEmpty() && (text.back().isDigit() || text.front().isDigit());
      item->setTextAlignment(
          (number && column + 1 < shown_.head.size() ? Qt::AlignTrailing : Qt::AlignLeading) |
          Qt::AlignVCenter);
      setItem(int(row), int(column), item);
    }
  }
  setAccessibleDescription(figure.summary);
  resizeColumnsToContents();
  const int letters = fontMetrics().height();
  verticalHeader()->setDefaultSectionSize(letters + letters / 3);
  setUpdatesEnabled(true);
}

QString StudyTableView::selected_text() const {
  const auto ranges = selectedRanges();
  if (ranges.isEmpty()) {
    return as_tab_separated(shown_);
  }
  QString text;
  for (const QTableWidgetSelectionRange& range : ranges) {
    for (int row = range.topRow(); row <= range.bottomRow(); ++row) {
      QStringList cells;
      for (int column = range.leftColumn(); column <= range.rightColumn(); ++column) {
        const QTableWidgetItem* cell = item(row, column);
        cells << (cell != nullptr ? cell->text() : QString());
      }
      text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
  }
  return text;
}

} // namespace feedwright
