// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_table_view.h"

#include "studies/word_widths.h"
#include "window/letters.h"
#include "window/text_measure.h"

#include <QEvent>
#include <QHeaderView>
#include <QResizeEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr int beside_cell = 10; // of its text: what the style keeps free and the grid
constexpr int beside_head = 14;

} // namespace

StudyTableView::StudyTableView(QWidget* parent) : QTableWidget(parent) {
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setSelectionMode(QAbstractItemView::ContiguousSelection);
  verticalHeader()->hide();
  setTabKeyNavigation(false);
  setContextMenuPolicy(Qt::ActionsContextMenu);
}

void StudyTableView::show_figure(const StudyFigure& figure) {
  shown_ = as_table(figure);
  setAccessibleDescription(figure.summary);
  setUpdatesEnabled(false);
  needs_.clear(); // of the table before: filling may resize, which shares width by them
  fill();
  measure();
  share_width();
  setUpdatesEnabled(true);
}

void StudyTableView::fill() {
  clear();
  setRowCount(0); // and with the rows their heights
  setColumnCount(int(shown_.head.size()));
  const int letters = fontMetrics().height();
  verticalHeader()->setDefaultSectionSize(letters + letters / 3);
  setRowCount(int(shown_.rows.size()));
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
}

void StudyTableView::measure() {
  needs_.clear();
  const QFont head_font = horizontalHeader()->font();
  const TextMeasure letters(font());
  const auto to_pixels = [](double head, double cells) {
    return int(std::ceil(std::max(head + beside_head, cells + beside_cell)));
  };
  for (qsizetype column = 0; column < shown_.head.size(); ++column) {
    double whole = 0.0;
    double least = 0.0;
    for (const QStringList& row : shown_.rows) {
      whole = std::max(whole, letters.width(row[column]));
      least = std::max(least, widest_word(row[column], font()));
    }
    const QString& head = shown_.head[column];
    needs_.push_back({to_pixels(widest_line({head}, head_font), whole),
                      to_pixels(widest_line(broken_name(head, 2, head_font), head_font), least),
                      to_pixels(widest_word(head, head_font), least)});
  }
}

/// Each in one line, if all have room so; else broken, and of the rest its share. Where even that
/// is too much it scrolls, and then with heads that leave room to rows.
std::vector<int> StudyTableView::widths() const {
  // With room for the bar, whether it is there or not: it comes with the rows that break.
  const int room = width() - 2 * frameWidth() - verticalScrollBar()->sizeHint().width();
  int whole = 0;
  int least = 0;
  for (const Need& need : needs_) {
    whole += need.whole;
    least += need.least;
  }
  const double share =
      whole <= room ? 1.0 : double(room - least) / double(std::max(1, whole - least));
  std::vector<int> made;
  for (const Need& need : needs_) {
    made.push_back(least > room ? need.halved
                                : need.least + int(share * (need.whole - need.least)));
  }
  return made;
}

void StudyTableView::share_width() {
  const std::vector<int> wide = widths();
  QStringList heads;
  for (std::size_t column = 0; column < wide.size(); ++column) {
    setColumnWidth(int(column), wide[column]);
    heads << broken(shown_.head[qsizetype(column)], horizontalHeader()->font(),
                    wide[column] - beside_head + 2)
                 .join(QLatin1Char('\n'));
  }
  setHorizontalHeaderLabels(heads);
  fit_rows(wide);
  updateGeometries(); // the heads have another height
}

/// As high as the words in them are, broken.
void StudyTableView::fit_rows(const std::vector<int>& wide) {
  const TextMeasure letters(font());
  const int line = fontMetrics().height();
  for (std::size_t row = 0; row < shown_.rows.size(); ++row) {
    qsizetype lines = 1;
    for (std::size_t column = 0; column < wide.size(); ++column) {
      const QString& text = shown_.rows[row][qsizetype(column)];
      const int room = wide[column] - beside_cell + 2;
      if (letters.width(text) > room) {
        lines = std::max(lines, broken(text, font(), room).size());
      }
    }
    const int height = int(lines) * line + line / 3;
    if (rowHeight(int(row)) != height) {
      setRowHeight(int(row), height);
    }
  }
}

void StudyTableView::changeEvent(QEvent* event) {
  QTableWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && !needs_.empty()) {
    measure();
    share_width();
  }
}

void StudyTableView::resizeEvent(QResizeEvent* event) {
  QTableWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width() && !needs_.empty()) {
    share_width();
  }
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
