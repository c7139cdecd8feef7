// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Columns of parts that add up, with a word beside each part and level, laid out at every layout.

#include "studies/study_figure.h"
#include "window/style.h"

#include <QFont>
#include <QObject>
#include <QRectF>

#include <vector>

class QCPAxisRect;
class QCPItemLine;
class QCPItemRect;
class QCPItemText;
class QCustomPlot;

namespace feedwright {

class StackKeeper : public QObject {
  Q_OBJECT
public:
  /// Dies with the plot or with the next figure.
  StackKeeper(QCustomPlot& plot, QCPAxisRect& rect, const StudyFigure& figure, const Look& look,
              const QFont& font);

  /// The column that stands at that place of the plot, by its number.
  std::size_t column_at(double x) const;

private:
  struct Word {
    QCPItemText* item;
    QCPItemLine* leader;
    double at;     ///< on the scale
    double weight; ///< the least goes first where there is no room
    QRectF area = {};
  };
  struct Part {
    QCPItemRect* item;
    double low, high;
  };
  struct Level {
    QCPItemLine* item;
    double at;
  };
  struct Column {
    QCPItemText* name;
    std::vector<Part> parts;
    std::vector<Level> levels;
    std::vector<Word> words;
    std::vector<Word> notes;
  };

  void add(const StudyStack& stack, const QString& unit);
  Word word(const QString& text, double at, double weight, const QColor& colour, bool strong);
  QString beyond(double at, const QString& text) const;
  void arrange();
  /// What the column wants so that no word of it is cut.
  double wanted_width(std::size_t number, double usual) const;
  std::vector<double> widths(double room) const;
  static double bar_width(double usual);
  double words_left(double usual) const;
  void arrange(Column& column, double left, double width);
  void arrange_words(Column& column, double bar_end, double left, double right);
  void arrange_notes(Column& column, double left, double right);
  /// As much of each as has room up to what stands beside it.
  void write_words(const std::vector<std::size_t>& order);
  double free_to(const std::vector<std::size_t>& order, std::size_t place,
                 const QRectF& word) const;
  double height_of(double at) const;

  QCustomPlot& plot_;
  QCPAxisRect& rect_;
  Look look_;
  QFont font_;
  double top_; ///< of the scale as the figure gives it
  std::vector<Column> columns_;
  std::vector<double> edges_; ///< where columns begin, in the order they stand in
};

} // namespace feedwright
