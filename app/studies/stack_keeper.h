// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Columns of parts that add up, with a word beside each part and level, laid out at every layout.

#include "studies/column_measure.h"
#include "studies/study_figure.h"
#include "window/style.h"

#include <QFont>
#include <QObject>

#include <vector>

class QCPAxisRect;
class QCustomPlot;
class QSize;

namespace feedwright {

class StackKeeper : public QObject {
  Q_OBJECT
public:
  /// Dies with the plot or with the next figure.
  StackKeeper(QCustomPlot& plot, QCPAxisRect& rect, const StudyFigure& figure, const Look& look,
              const QFont& font);

  /// The column that stands at that place of the plot, by its number.
  std::size_t column_at(double x) const;

  /// Whether in a plot of that size every number has the whole name of what it is.
  bool names_fit(const QSize& plot);

  /// What the figure's columns want: across, so that every number is whole and most names are; and
  /// in lines of text, so that every part and level has its word.
  static double wanted_width(const StudyFigure& figure, const QFont& font);
  static int wanted_lines(const StudyFigure& figure);
  /// Lines that the columns' names take below the axis.
  static int name_lines(const StudyFigure& figure, const QFont& font);

private:
  using Column = StackColumn;
  using Word = StackColumn::Word;
  using Note = StackColumn::Note;
  using Part = StackColumn::Part;
  using Level = StackColumn::Level;

  void add(const StudyStack& stack, const QString& unit);
  void add_parts(Column& column, const StudyStack& stack, const QString& unit);
  void add_levels(Column& column, const StudyStack& stack, const QString& unit);
  Word word(const QString& with_unit, const QString& without_unit, const QString& full,
            const QColor& colour, bool strong);
  QString beyond(double at, const QString& text) const;
  void arrange();
  double sum_named() const;
  int lines_up() const;
  ColumnMeasure measure() const;
  void choose_words();
  void arrange(Column& column, double left, double width);
  void arrange_words(Column& column, const ColumnMeasure::Across& at, double left, double right);
  std::vector<Word*> words_with_room(Column& column, double height);
  void arrange_notes(Column& column, double left, double right);
  void break_names(const std::vector<Word*>& words, double room, double height);
  /// As much of each name as has room up to what stands beside it.
  void write_words(const std::vector<std::size_t>& order);
  void write_name(Word& word, double right) const;
  double free_to(const std::vector<std::size_t>& order, std::size_t place,
                 const QRectF& word) const;
  double height_of(double at) const;

  QCustomPlot& plot_;
  QCPAxisRect& rect_;
  Look look_;
  QFont font_;
  double top_; ///< of the scale as the figure gives it
  std::vector<Column> columns_;
  ColumnWords shown_;
  std::vector<double> edges_; ///< where columns begin, in the order they stand in
};

} // namespace feedwright
