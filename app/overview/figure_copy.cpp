// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/figure_table.h"

#include "text/words.h"

#include <QApplication>
#include <QClipboard>

#include <algorithm>

namespace feedwright {

namespace {

/// Tabulators and line ends part cells and rows.
QString plain_cell(const QString& text) {
  return text.simplified();
}

} // namespace

QString FigureTable::tab_separated() const {
  const FigureContent& all = content();
  QStringList lines;
  const auto line = [&](const QString& name, const auto& text_of_cell, std::size_t row) {
    QStringList cells{plain_cell(name)};
    for (const FigureCell& cell : all.rows[row]) {
      cells << plain_cell(text_of_cell(cell));
    }
    lines << cells.join(QLatin1Char('\t'));
  };
  QStringList heads{QString()};
  for (const QString& head : all.heads) {
    heads << plain_cell(head);
  }
  lines << heads.join(QLatin1Char('\t'));
  for (std::size_t row = 0; row < all.rows.size(); ++row) {
    const QString& name = all.names[qsizetype(row)];
    line(
        name, [](const FigureCell& cell) { return cell.text; }, row);
    const auto& cells = all.rows[row];
    if (std::ranges::any_of(cells, [](const FigureCell& c) { return !c.against.isEmpty(); })) {
      line(
          tr("%1, wanted").arg(name), [](const FigureCell& cell) { return cell.against; }, row);
    }
    const auto judged = [](const FigureCell& cell) { return cell.verdict.has_value(); };
    if (std::ranges::any_of(cells, judged)) {
      line(
          tr("%1, reads").arg(name),
          [](const FigureCell& cell) {
            return cell.verdict ? words::verdict_word(*cell.verdict) : QString();
          },
          row);
    }
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void FigureTable::copy() const {
  QApplication::clipboard()->setText(tab_separated());
}

} // namespace feedwright
