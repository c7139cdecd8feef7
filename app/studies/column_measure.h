// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/column_widths.h"
#include "studies/stack_column.h"

#include <QFont>

namespace feedwright {

/// Lines that a name beside a column may take.
inline constexpr int most_name_lines = 3;

/// What is written beside a column's parts.
struct ColumnWords {
  bool units = true;   ///< beside each number, where that leaves room to the names
  bool littles = true; ///< have their words, where that leaves room to the others

  bool has(const StackColumn::Word& word) const { return littles || !word.little; }
  /// Words and notes.
  int count(const StackColumn& column) const;
};

/// What a column takes across.
class ColumnMeasure {
public:
  /// `usual`: as wide as a column is where all are alike; `lines`: of text up a column.
  ColumnMeasure(const QFont& font, double usual, int lines, const ColumnWords& words)
      : font_(font), usual_(usual), lines_(lines), words_(words) {}

  /// Where a column's things stand, from its edge.
  struct Across {
    double name, bar, bar_end, numbers, names;
  };
  Across across(const StackColumn& column) const;
  double letter() const;

  ColumnWants wants(const StackColumn& column) const;
  /// The narrowest room in which the names, broken, have as many lines as there are up the column.
  double named(const StackColumn& column) const;

private:
  double bar() const;
  double name_width(const StackColumn& column) const;
  double number_width(const StackColumn& column) const;
  double least(const StackColumn& column) const;
  double wanted(const StackColumn& column, double named) const;
  int lines_at(const StackColumn& column, const Across& at, double names) const;

  QFont font_;
  double usual_;
  int lines_;
  ColumnWords words_;
};

} // namespace feedwright
