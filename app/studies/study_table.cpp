// SPDX-License-Identifier: GPL-3.0-or-later

// A study's figure as a table, and the table as text.

#include "limits/number_text.h"
#include "studies/study_figure.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

constexpr int digits = 5;

class TableMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  explicit TableMaker(const StudyFigure& figure) : figure_(figure) {}

  StudyTable make() {
    figure_.stacks.empty() ? add_points() : add_stacks();
    return std::move(out_);
  }

private:
  struct Column {
    const std::vector<double>* x;
    const std::vector<double>* y;
  };

  void add_column(const QString& label, const QString& unit, const std::vector<double>& x,
                  const std::vector<double>& y) {
    out_.head << tr("%1, %2", "what a column holds, its unit").arg(label, unit);
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
    out_.head << x_axis_label(figure_);
    if (figure_.top) {
      out_.head << top_axis_label(figure_);
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
    out_.head << tr("Marked");
    const std::vector<double> xs = all_x();
    for (std::size_t row = 0; row < xs.size(); ++row) {
      add_row(xs, row);
    }
    add_marked();
  }

  QStringList start_of_row(double x) const {
    QStringList cells{number_text(x, digits)};
    if (figure_.top) {
      cells << number_text(x * figure_.top->per_x, digits);
    }
    return cells;
  }

  void add_row(const std::vector<double>& xs, std::size_t row) {
    QStringList cells = start_of_row(xs[row]);
    for (const Column& column : columns_) {
      const auto y = *column.x == xs ? std::optional((*column.y)[row])
                                     : value_at(*column.x, *column.y, xs[row]);
      cells << (y ? number_text(*y, digits) : QString());
    }
    out_.rows.push_back(cells << QString());
  }

  void add_marked() {
    const QStringList blank(qsizetype(columns_.size()), QString());
    for (const StudyPanel& panel : figure_.panels) {
      for (const StudyMark& mark : panel.marks) {
        out_.rows.push_back(start_of_row(mark.x) + blank + QStringList(mark_text(mark)));
      }
      for (const StudyLine& line : panel.lines) {
        const QStringList start =
            line.upright ? start_of_row(line.value) : QStringList(figure_.top ? 2 : 1, QString());
        out_.rows.push_back(start + blank + QStringList(line.label));
      }
    }
  }

  void add_stacks() {
    const StudyPanel& panel = figure_.panels.front();
    out_.head << tr("Column") << tr("Part or level") << y_axis_label(panel) << tr("Marked");
    for (const StudyStack& stack : figure_.stacks) {
      for (const StackPart& part : stack.parts) {
        out_.rows.push_back({stack.name, part.label, number_text(part.size, digits), {}});
      }
      for (const StackTick& tick : stack.ticks) {
        out_.rows.push_back(
            {stack.name, tick.label, number_text(tick.at, digits),
             tick.verdict == Verdict::open ? QString() : tick_text(tick, panel.y_unit)});
      }
      for (const StackNote& note : stack.notes) {
        out_.rows.push_back({stack.name, {}, {}, note.full});
      }
    }
  }

  const StudyFigure& figure_;
  std::vector<Column> columns_;
  StudyTable out_;
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
