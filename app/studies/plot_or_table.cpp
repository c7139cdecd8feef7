// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_or_table.h"

#include <QAction>
#include <QLayout>
#include <QToolButton>
#include <QWidget>

namespace feedwright {

PlotOrTable::PlotOrTable(QWidget& plot, QWidget& table, QAction& other, QToolButton& button,
                         QWidget& holder)
    : QObject(&holder), plot_(plot), table_(table), other_(other), button_(button),
      holder_(holder) {
  connect(&other_, &QAction::triggered, this, [this] {
    table_wanted_ = !table_wanted_;
    emit wanted();
  });
  holder_.setFocusProxy(&plot_);
  name_other();
}

void PlotOrTable::name_other() {
  const bool table = is_table();
  other_.setText(table ? tr("Plot") : tr("Table"));
  other_.setToolTip(!table           ? tr("The same as a table of numbers")
                    : room_for_plot_ ? tr("Back to the plot")
                                     : tr("The names of the plot have no room here; it comes back "
                                          "where there is more"));
  other_.setEnabled(room_for_plot_);
  button_.setAccessibleName(other_.text());
}

QSize PlotOrTable::room() const {
  return table_.isVisible() ? table_.size() : plot_.size();
}

void PlotOrTable::show() {
  const bool table = is_table();
  name_other();
  const bool focused = plot_.hasFocus() || table_.hasFocus();
  plot_.setVisible(!table);
  table_.setVisible(table);
  holder_.layout()->activate(); // what comes into view has its room at once
  holder_.setFocusProxy(table ? &table_ : &plot_);
  if (focused) {
    holder_.setFocus();
  }
}

} // namespace feedwright
