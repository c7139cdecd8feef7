// SPDX-License-Identifier: GPL-3.0-or-later

// A study's figure as a table, and the table as text.

#include "limits/number_text.h"
#include "studies/study_figure.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr int digits = 5;

/// A number waits for all others of its column before it is written.
struct TableCell {
  QString text = {};
  std::optional<double> number = std::nullopt;
};
using TableRow = std::vector<TableCell>;

/// The numbers of one column, all with the same decimals, so that they stand under each other: as
/// many as its largest has with five digits, and no more than the numbers need.
class ColumnWriter {
public:
  ColumnWriter(const std::vector<TableRow>& rows, std::size_t column) {
    for (const TableRow& row : rows) {
      largest_ = std::max(largest_, std::abs(row[column].number.value_or(0.0)));
    }
    const int whole = largest_ > 0.0 ? int(std::floor(std::log10(largest_))) + 1 : 1;
    const int most = std::max(0, digits - whole);
    for (const TableRow& row : rows) {
      if (row[column].number) {
        decimals_ = std::max(decimals_, needed(*row[column].number, most));
      }
    }
  }

  QString text(double value) const {
    constexpr double smallest_plain = 1e-4;
    constexpr double largest_plain = 1e7;
    if (largest_ > 0.0 && (largest_ < smallest_plain || largest_ >= largest_plain)) {
      return number_text(value, digits);
    }
    QString written = fixed(value, decimals_);
    if (written.startsWith(QLatin1Char('-')) && written == fixed(-0.0, decimals_)) {
      written.remove(0, 1);
    }
    return words::decimal_mark() == DecimalMark::comma
               ? written.replace(QLatin1Char('.'), QLatin1Char(','))
               : written;
  }

private:
  static QString fixed(double value, int decimals) { return QString::number(value, 'f', decimals); }

  static int needed(double value, int most) {
    const QString written = fixed(value, most);
    int decimals = most;
    while (decimals > 0 && written[written.size() - 1 - (most - decimals)] == QLatin1Char('0')) {
      --decimals;
    }
    return decimals;
  }

  double largest_ = 0.0;
  int decimals_ = 0;
};

class TableMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  explicit TableMaker(const StudyFigure& figure) : figure_(figure) {}

  StudyTable make() {
    figure_.stacks.empty() ? add_points() : add_stacks();
    std::vector<QStringList> written(rows_.size());
    for (std::size_t column = 0; column < std::size_t(head_.size()); ++column) {
      const ColumnWriter writer(rows_, column);
      for (std::size_t row = 0; row < rows_.size(); ++row) {
        const TableCell& cell = rows_[row][column];
        written[row] << (cell.number ? writer.text(*cell.number) : cell.text);
      }
    }
    return {head_, written};
  }

private:
  struct Column {
    const std::vector<double>* x;
    const std::vector<double>* y;
  };

  void add_column(const QString& label, const QString& unit, const std::vector<double>& x,
                  const std::vector<double>& y) {
    head_ << tr("%1, %2", "what a column holds, its unit").arg(label, unit);
    columns_.push_back({&x, &y});
  }

  /// Every x of every curve; where one curve has two points at an x, both.
  std::vector<double> all_x() const {
    std::vector<double> all;
    for (const Column& column : columns_) {
      std::vector<double> merged;
      std::ranges::set_union(all, *column.x, std::back_inserter(merged));
      all = std::move(merged);
    }
    return all;
  }

  void add_points() {
    head_ << x_axis_label(figure_);
    if (figure_.top) {
      head_ << top_axis_label(figure_);
    }
    for (const StudyPanel& panel : figure_.panels) {
      for (const StudyCurve& curve : panel.curves) {
        add_column(curve.label, panel.y_unit, curve.x, curve.y);
      }
      for (const StudyBand& band : panel.bands) {
        if (band.ground == StudyBand::Ground::plain) {
          add_column(tr("%1 up to", "region").arg(band.label), panel.y_unit, band.x, band.high);
        }
      }
    }
    head_ << tr("Marked");
    const std::vector<double> xs = all_x();
    for (std::size_t row = 0; row < xs.size(); ++row) {
      add_row(xs, row);
    }
    add_marked();
  }

  TableRow start_of_row(std::optional<double> x) const {
    TableRow cells{{{}, x}};
    if (figure_.top) {
      cells.push_back({{}, x ? std::optional(*x * figure_.top->per_x) : std::nullopt});
    }
    return cells;
  }

  void add_row(const std::vector<double>& xs, std::size_t row) {
    TableRow cells = start_of_row(xs[row]);
    for (const Column& column : columns_) {
      const auto y = *column.x == xs ? std::optional((*column.y)[row])
                                     : value_at(*column.x, *column.y, xs[row]);
      cells.push_back({{}, y});
    }
    cells.emplace_back();
    rows_.push_back(std::move(cells));
  }

  void add_marked_row(std::optional<double> x, const QString& text) {
    TableRow cells = start_of_row(x);
    cells.resize(cells.size() + columns_.size());
    cells.push_back({text});
    rows_.push_back(std::move(cells));
  }

  void add_marked() {
    for (const StudyPanel& panel : figure_.panels) {
      for (const StudyMark& mark : panel.marks) {
        add_marked_row(mark.x, mark_text(mark));
      }
      for (const StudyLine& line : panel.lines) {
        add_marked_row(line.upright ? std::optional(line.value) : std::nullopt, line.label);
      }
    }
  }

  void add_stacks() {
    const StudyPanel& panel = figure_.panels.front();
    head_ << tr("Column") << tr("Part or level") << y_axis_label(panel) << tr("Marked");
    for (const StudyStack& stack : figure_.stacks) {
      for (const StackPart& part : stack.parts) {
        rows_.push_back({{stack.name}, {part.label}, {{}, part.size}, {}});
      }
      for (const StackTick& tick : stack.ticks) {
        rows_.push_back(
            {{stack.name},
             {tick.label},
             {{}, tick.at},
             {tick.verdict == Verdict::open ? QString() : tick_text(tick, panel.y_unit)}});
      }
      for (const StackNote& note : stack.notes) {
        rows_.push_back({{stack.name}, {}, {}, {note.full}});
      }
    }
  }

  const StudyFigure& figure_;
  std::vector<Column> columns_;
  QStringList head_;
  std::vector<TableRow> rows_;
};

template <class Cell>
QString lines_of(const StudyTable& table, QLatin1Char separator, const Cell& cell) {
  QString text;
  const auto add = [&](const QStringList& cells) {
    for (qsizetype i = 0; i < cells.size(); ++i) {
      text += (i > 0 ? QString(separator) : QString()) + cell(cells[i]);
    }
    text += QLatin1Char('\n');
  };
  add(table.head);
  std::ranges::for_each(table.rows, add);
  return text;
}

} // namespace

StudyTable as_table(const StudyFigure& figure) {
  return TableMaker(figure).make();
}

QString as_tab_separated(const StudyTable& table) {
  return lines_of(table, QLatin1Char('\t'), [](const QString& cell) { return cell; });
}

// Quoted as RFC 4180 says.
QString as_comma_separated(const StudyTable& table) {
  return lines_of(table, QLatin1Char(','), [](QString cell) {
    if (cell.contains(QLatin1Char(',')) || cell.contains(QLatin1Char('"'))) {
      cell.replace(QLatin1Char('"'), QStringLiteral("\"\""));
      cell = QLatin1Char('"') + cell + QLatin1Char('"');
    }
    return cell;
  });
}

} // namespace feedwright
