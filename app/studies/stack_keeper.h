// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Columns of parts that add up, with a word beside each part and level, laid out at every layout.

#include "studies/study_figure.h"
#include "window/style.h"

#include <QFont>
#include <QObject>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <vector>

class QCPAxisRect;
class QCPItemLine;
class QCPItemRect;
class QCPItemText;
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
  /// A number, never cut, and what it is of, which may be broken or shortened.
  struct Word {
    QCPItemText* number;
    QCPItemText* name;
    QCPItemLine* leader;
    QString with_unit, without_unit, full;
    double at;     ///< on the scale
    double weight; ///< the least goes first where there is no room
    bool little;   ///< hardly to be seen in its column
    QRectF area = {};
  };
  struct Note {
    QCPItemText* item;
    QString full;
    QRectF area = {};
  };
  struct Part {
    QCPItemRect* item;
    double low, high;
  };
  struct Level {
    QCPItemLine* item;
    double at;
    QCPItemLine* reach = nullptr; ///< from the foot of the one part it measures
    double foot = 0.0;
  };
  struct Column {
    QCPItemText* name;
    QStringList name_lines;
    std::vector<Part> parts;
    std::vector<Level> levels;
    std::vector<Word> words;
    std::vector<Note> notes;
  };
  /// Where a column's things stand, from its edge.
  struct Across {
    double bar, bar_end, numbers, names;
  };

  void add(const StudyStack& stack, const QString& unit);
  void add_parts(Column& column, const StudyStack& stack, const QString& unit);
  void add_levels(Column& column, const StudyStack& stack, const QString& unit);
  Word word(const QString& with_unit, const QString& without_unit, const QString& full,
            const QColor& colour, bool strong);
  QString beyond(double at, const QString& text) const;
  void arrange();
  double letter() const;
  Across across(const Column& column, double usual) const;
  double name_width(const Column& column) const;
  double number_width(const Column& column) const;
  /// What the column wants so that no number of it is cut; no name, broken into lines; and no word.
  double least_width(std::size_t number, double usual) const;
  double named_width(std::size_t number, double usual) const;
  double wanted_width(std::size_t number, double usual, double named) const;
  double sum_named() const;
  int lines_up() const;
  bool is_written(const Word& word) const { return littles_ || !word.little; }
  int written(const Column& column) const;
  int lines_at(const Column& column, const Across& at, double names) const;
  void choose_units();
  std::vector<double> widths(double room) const;
  static double bar_width(double usual);
  void arrange(Column& column, double left, double width);
  void arrange_words(Column& column, const Across& at, double left, double right);
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
  bool units_ = true;         ///< beside each number, where that leaves room to the names
  bool littles_ = true;       ///< have their words, where that leaves room to the others
  std::vector<double> edges_; ///< where columns begin, in the order they stand in
};

} // namespace feedwright
