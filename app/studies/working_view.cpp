// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/working_view.h"

#include "fields/wheel_guard.h"
#include "sizing/size_axis.h"
#include "studies/formula_label.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

namespace feedwright {

WorkingView::WorkingView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("working_view"));
  results_ = new QComboBox(this);
  results_->setObjectName(QStringLiteral("working_result"));
  results_->setAccessibleName(tr("Result"));
  results_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  new WheelGuard(results_);
  connect(results_, &QComboBox::activated, this, [this](int index) {
    chosen_ = static_cast<ResultId>(results_->itemData(index).toInt());
    refresh();
  });
  meaning_ = plain_label({}, this);
  formula_ = new FormulaLabel(this);
  formula_->setObjectName(QStringLiteral("working_formula"));
  solved_ = plain_label({}, this);
  solved_->setForegroundRole(QPalette::PlaceholderText);
  terms_ = new QTableWidget(0, 4, this);
  terms_->setObjectName(QStringLiteral("working_terms"));
  terms_->setAccessibleName(tr("Symbols of the equation"));
  terms_->setHorizontalHeaderLabels({tr("symbol"), tr("value"), tr("what it is"), tr("origin")});
  terms_->verticalHeader()->hide();
  terms_->verticalHeader()->setDefaultSectionSize(terms_->fontMetrics().height() + 8);
  terms_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  terms_->setSelectionBehavior(QAbstractItemView::SelectRows);
  terms_->setSelectionMode(QAbstractItemView::SingleSelection);
  terms_->setTabKeyNavigation(false);
  terms_->setItemDelegateForColumn(0, new SymbolDelegate(terms_));
  terms_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  terms_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
  terms_->setToolTip(tr("Enter or a double click goes to the field or to the working of the row."));
  connect(terms_, &QTableWidget::cellActivated, this, [this](int row, int) { follow(row); });
  source_ = plain_label({}, this);
  source_->setForegroundRole(QPalette::PlaceholderText);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 2, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(results_, 0, Qt::AlignLeft);
  layout->addWidget(meaning_);
  layout->addWidget(formula_);
  layout->addWidget(solved_);
  layout->addWidget(terms_, 1);
  layout->addWidget(source_);
}

void WorkingView::choose(ResultId result) {
  chosen_ = result;
  if (isVisible()) {
    refresh();
  }
}

void WorkingView::refresh() {
  const AxisResults* results = document_.current();
  if (results == nullptr) {
    results_->setEnabled(false);
    show_nothing(tr("Not computed: the machine has faults, listed with the limits."));
    return;
  }
  results_->setEnabled(true);
  fill_results(*results);
  Working working;
  size_axis(document_.machine(), *document_.current_axis(), working);
  if (const WorkingStep* step = working.find(chosen_)) {
    show_step(
        write_step(*step, document_.machine(), document_.selection().axis, words::decimal_mark()));
  } else {
    // Taken from others without an equation of its own: which limit is lowest.
    const auto value = descriptor(chosen_).get(*results);
    show_nothing(value ? words::result_meaning(chosen_) + QStringLiteral(" = ") +
                             words::result_value(chosen_, *results)
                       : tr("This result is open: an input or target it needs is missing."));
  }
}

void WorkingView::fill_results(const AxisResults& results) {
  results_->clear();
  for (const ResultDescriptor& result : result_descriptors()) {
    if (result.get(results)) {
      results_->addItem(words::result_name(result.id), static_cast<int>(result.id));
    }
  }
  int at = results_->findData(static_cast<int>(chosen_));
  if (at < 0) {
    results_->addItem(words::result_name(chosen_), static_cast<int>(chosen_));
    at = results_->count() - 1;
  }
  results_->setCurrentIndex(at);
}

void WorkingView::show_nothing(const QString& why) {
  meaning_->setText(why);
  formula_->show_lines({});
  solved_->hide();
  source_->hide();
  terms_->hide();
}

void WorkingView::show_step(const WrittenStep& step) {
  meaning_->setText(words::result_meaning(step.result));
  const QString symbol = QString::fromStdString(step.symbol);
  const QString equals = QStringLiteral(" = ");
  QStringList lines{symbol + equals + QString::fromStdString(step.formula)};
  if (step.with_numbers != step.formula && step.with_numbers != step.value) {
    lines << equals.mid(1) + QString::fromStdString(step.with_numbers);
  }
  lines << equals.mid(1) + QString::fromStdString(step.value);
  formula_->show_lines(lines);
  solved_->setText(words::solved_by(step.solved));
  solved_->setVisible(!step.solved.empty());
  const QString source = words::result_source(step.result);
  source_->setText(tr("Source: %1").arg(source));
  source_->setVisible(!source.isEmpty());
  terms_->setRowCount(0);
  shown_terms_.clear();
  for (const WrittenTerm& term : step.terms) {
    add_term(term);
  }
  terms_->setVisible(!step.terms.empty());
}

void WorkingView::add_term(const WrittenTerm& term) {
  QString about;
  QString origin;
  if (term.input) {
    const auto slot = static_cast<PartSlot>(term.input->slot);
    about = tr("%1 (%2)", "field (part)")
                .arg(words::field_name(slot, term.input->member), words::part_name(slot));
    origin = words::origin_name(term.origin);
  } else if (term.result) {
    about = words::result_name(*term.result);
    origin = tr("computed");
  } else {
    about = words::constant_name(term.symbol);
    origin = tr("fixed");
  }
  const int row = terms_->rowCount();
  terms_->insertRow(row);
  const QString cells[] = {QString::fromStdString(term.symbol), QString::fromStdString(term.value),
                           about, origin};
  for (int column = 0; column < 4; ++column) {
    auto* item = new QTableWidgetItem(cells[column]);
    if (column == 1) {
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    }
    terms_->setItem(row, column, item);
  }
  shown_terms_.push_back(term);
}

void WorkingView::follow(int row) {
  if (row < 0 || row >= static_cast<int>(shown_terms_.size())) {
    return;
  }
  const WrittenTerm term = shown_terms_[static_cast<std::size_t>(row)];
  if (term.input) {
    document_.select({document_.selection().axis, static_cast<PartSlot>(term.input->slot),
                      text_of(term.input->member)});
  } else if (term.result) {
    chosen_ = *term.result;
    refresh();
  }
}

} // namespace feedwright
