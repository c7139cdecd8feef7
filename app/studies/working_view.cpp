// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/working_view.h"

#include "limits/number_text.h"
#include "sizing/size_axis.h"
#include "studies/formula_label.h"
#include "studies/result_picker.h"
#include "studies/term_rows.h"
#include "studies/working_trail.h"
#include "text/symbol_text.h"
#include "text/text_of.h"
#include "text/words.h"
#include "text/working_words.h"
#include "window/plain_label.h"
#include "window/steady_area.h"
#include "working/sensitivity.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QShortcut>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

QLabel* faint_label(QWidget* parent, const char* name) {
  QLabel* label = plain_label({}, parent);
  label->setObjectName(QString::fromLatin1(name));
  label->setForegroundRole(QPalette::PlaceholderText);
  return label;
}

void say(QLabel* label, const QString& text) {
  label->setText(text);
  label->setVisible(!text.isEmpty());
}

} // namespace

WorkingView::WorkingView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("working_view"));
  setAccessibleName(tr("Working"));
  lay_out();
  connect_parts();
  add_shortcuts();
}

void WorkingView::connect_parts() {
  movers_later_.setSingleShot(true);
  connect(&movers_later_, &QTimer::timeout, this, &WorkingView::show_movers);
  connect(trail_, &WorkingTrail::moved, this, [this] {
    by_hand_ = true;
    if (isVisible()) {
      refresh();
      area_->ensureVisible(0, 0);
    }
  });
  connect(results_, &ResultPicker::picked, trail_, &WorkingTrail::start_at);
  connect(copy_, &QToolButton::clicked, this, &WorkingView::copy);
  connect(formula_, &FormulaLabel::term_chosen, this,
          [this](std::size_t term) { follow(terms_->rows()[term]); });
  connect(terms_, &TermsTable::followed, this,
          [this](int row) { follow(terms_->rows()[std::size_t(row)]); });
  connect(terms_, &TermsTable::row_pointed_at, this, [this](int row) {
    formula_->mark_term(row >= 0 ? std::optional(std::size_t(row)) : std::nullopt);
  });
  connect(terms_, &QTableWidget::currentCellChanged, this, [this](int row) {
    formula_->mark_term(row >= 0 ? std::optional(std::size_t(row)) : std::nullopt);
  });
  for (const TermsTable* table : {terms_, movers_}) {
    connect(table, &TermsTable::width_changed, this,
            [this] { TermsTable::align(*terms_, *movers_); });
  }
  connect(movers_, &TermsTable::followed, this,
          [this](int row) { follow(movers_->rows()[std::size_t(row)]); });
}

void WorkingView::add_shortcuts() {
  const auto shortcut = [this](const QKeySequence& keys, void (WorkingView::*act)()) {
    auto* made = new QShortcut(keys, this);
    made->setContext(Qt::WidgetWithChildrenShortcut);
    connect(made, &QShortcut::activated, this, act);
  };
  shortcut(QKeySequence::Copy, &WorkingView::copy);
  shortcut(QKeySequence(Qt::ALT | Qt::Key_Left), &WorkingView::go_back);
  shortcut(QKeySequence(Qt::ALT | Qt::Key_Right), &WorkingView::go_forward);
}

QWidget* WorkingView::make_bar() {
  auto* bar = new QWidget(this);
  auto* across = new QHBoxLayout(bar);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(4);
  trail_ = new WorkingTrail(this);
  results_ = new ResultPicker(this);
  results_->setObjectName(QStringLiteral("working_result"));
  copy_ = new QToolButton(this);
  copy_->setObjectName(QStringLiteral("working_copy"));
  copy_->setText(tr("Copy"));
  copy_->setAccessibleName(tr("Copy the working"));
  copy_->setToolTip(
      tr("Copies equation, symbols and source as text, and the equation as MathML (Ctrl+C)"));
  copy_->setFocusPolicy(Qt::StrongFocus);
  across->addWidget(trail_->back_button());
  across->addWidget(trail_->forward_button());
  across->addWidget(results_, 1);
  across->addWidget(copy_);
  return bar;
}

void WorkingView::make_content(QWidget* content) {
  meaning_ = plain_label({}, content);
  meaning_->setObjectName(QStringLiteral("working_meaning"));
  formula_ = new FormulaLabel(content);
  formula_->setObjectName(QStringLiteral("working_formula"));
  solved_ = faint_label(content, "working_solved");
  shares_ = plain_label({}, content);
  shares_->setObjectName(QStringLiteral("working_shares"));
  terms_ = new TermsTable(content);
  terms_->setObjectName(QStringLiteral("working_terms"));
  terms_->setAccessibleName(tr("Symbols of the equation"));
  movers_title_ = plain_label(tr("Figures behind it that move it most:"), content);
  movers_ = new TermsTable(content);
  movers_->setObjectName(QStringLiteral("working_movers"));
  movers_->setAccessibleName(tr("Figures that move the result most"));
  movers_->horizontalHeader()->hide();
  validity_ = faint_label(content, "working_validity");
  source_ = faint_label(content, "working_source");
  auto* down = new QVBoxLayout(content);
  down->setContentsMargins(0, 0, 4, 0);
  down->setSpacing(4);
  for (QWidget* one : std::initializer_list<QWidget*>{meaning_, formula_, solved_, shares_, terms_,
                                                      movers_title_, movers_, validity_, source_}) {
    down->addWidget(one);
  }
  down->addStretch(1);
}

void WorkingView::lay_out() {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 2, 0, 0);
  layout->setSpacing(3);
  layout->addWidget(make_bar());
  layout->addWidget(trail_);
  area_ = new SteadyArea(this);
  area_->setObjectName(QStringLiteral("working_scroll"));
  auto* content = new QWidget(area_);
  content->setBackgroundRole(QPalette::Base);
  make_content(content);
  area_->setWidget(content);
  layout->addWidget(area_, 1);
}

ResultId WorkingView::chosen() const {
  return trail_->chosen();
}

void WorkingView::choose(ResultId result) {
  by_hand_ = true;
  trail_->start_at(result);
}

void WorkingView::go_back() {
  trail_->back();
}

void WorkingView::go_forward() {
  trail_->forward();
}

void WorkingView::refresh() {
  const AxisResults* results = document_.current();
  results_->setEnabled(results != nullptr);
  copy_->setEnabled(results != nullptr);
  if (results == nullptr) {
    show_nothing(tr("Not computed: the machine has faults, listed with the limits."));
    return;
  }
  const std::size_t axis = document_.selection().axis;
  if (!by_hand_ && opened_on_ != axis && results->governing) {
    // What a builder asks first: why not faster.
    trail_->begin(descriptor(*results->governing).result);
    opened_on_ = axis;
  }
  results_->show_results(*results, chosen());
  Working working;
  size_axis(document_.machine(), *document_.current_axis(), working);
  if (const WorkingStep* step = working.find(chosen())) {
    show_step(
        write_step(*step, document_.machine(), document_.selection().axis, words::decimal_mark()));
  } else {
    show_without_step(*results);
  }
}

void WorkingView::show_nothing(const QString& why) {
  movers_later_.stop();
  movers_of_.reset();
  movers_->show_rows({});
  meaning_->setText(why);
  formula_->clear();
  terms_->show_rows({});
  for (QWidget* part : std::initializer_list<QWidget*>{
           formula_, solved_, shares_, terms_, movers_title_, movers_, validity_, source_}) {
    part->hide();
  }
}

/// Taken from others without an equation of its own, such as the limit that governs; or open.
void WorkingView::show_without_step(const AxisResults& results) {
  const ResultId id = chosen();
  const auto value = descriptor(id).get(results);
  std::vector<TermRow> rows;
  if (value) {
    const Unit& unit = document_.units().unit_of(value->kind, descriptor(id).unit);
    show_nothing(tr("%1 It is %2.", "meaning of a result, its value")
                     .arg(words::result_meaning(id), words::quantity(*value, unit.symbol)));
    const auto limit = id == ResultId::governing_feed     ? results.governing
                       : id == ResultId::governing_thrust ? results.governing_thrust_limit
                                                          : std::nullopt;
    if (limit) {
      rows.push_back(result_row(descriptor(*limit).result, results, document_.units()));
    }
  } else {
    QString why = tr("This result is open: an input or target it needs is missing.");
    for (const LimitDescriptor& about : limit_descriptors()) {
      const Limit& limit = results.limit(about.id);
      if (about.result == id && !limit.reached && !limit.missing.member.empty()) {
        why = tr("This result is open. %1", "what is missing").arg(words::open_reason(limit));
        rows.push_back(input_row(limit.missing, std::nullopt, document_));
        break;
      }
    }
    show_nothing(why);
  }
  terms_->setVisible(!rows.empty());
  terms_->show_rows(std::move(rows));
  TermsTable::align(*terms_, *movers_);
}

void WorkingView::show_step(const WrittenStep& step) {
  meaning_->setText(words::result_meaning(step.result));
  QStringList about;
  std::vector<TermRow> rows;
  for (const WrittenTerm& term : step.terms) {
    rows.push_back(term_row(term));
    about << tr("%1 = %2, %3", "symbol, value, what it is")
                 .arg(plain_symbols(rows.back().symbol), rows.back().value, rows.back().about);
  }
  formula_->show_step(step, about);
  formula_->show();
  say(solved_, words::solved_by(step.solved));
  terms_->setVisible(!rows.empty());
  terms_->show_rows(std::move(rows));
  TermsTable::align(*terms_, *movers_);
  show_shares(step);
  shown_terms_ = step.terms;
  // Sized anew for every input: at once for another result, while somebody edits in their pauses.
  constexpr int pause = 60;
  movers_later_.start(movers_of_ == step.result ? pause : 0);
  show_notes(step.result);
}

/// The largest part of a sum, and the next.
void WorkingView::show_shares(const WrittenStep& step) {
  std::vector<const WrittenPart*> parts;
  for (const WrittenPart& part : step.parts) {
    parts.push_back(&part);
  }
  std::stable_sort(parts.begin(), parts.end(),
                   [](const WrittenPart* a, const WrittenPart* b) { return a->share > b->share; });
  constexpr std::size_t most = 3;
  constexpr double least = 0.01;
  QStringList texts;
  for (std::size_t i = 0; i < parts.size() && i < most; ++i) {
    if (parts[i]->share < least) {
      break;
    }
    const QString name = parts[i]->term ? terms_->rows()[*parts[i]->term].about
                                        : plain_symbols(text_of(write_line(parts[i]->what)));
    texts << tr("%1 %2 %", "part of a sum, its per cent")
                 .arg(name, number_text(std::round(100.0 * parts[i]->share), 3));
  }
  say(shares_, parts.size() < 2 || texts.isEmpty()
                   ? QString()
                   : tr("The largest part: %1.").arg(texts.join(QStringLiteral(", "))));
}

/// The figures behind the equation's symbols.
void WorkingView::show_movers() {
  constexpr std::size_t most = 4;
  if (document_.current() == nullptr) {
    return;
  }
  movers_of_ = chosen();
  std::vector<TermRow> rows;
  for (const Sensitivity& one :
       sensitivities(document_.machine(), document_.selection().axis, chosen())) {
    // What the equation itself says needs no second line.
    constexpr double alike = 0.05;
    const bool said = std::ranges::any_of(shown_terms_, [&](const WrittenTerm& term) {
      return term.input == one.input && term.share &&
             std::abs(*term.share - one.share) < alike * std::abs(one.share);
    });
    if (!said && rows.size() < most) {
      rows.push_back(input_row(one.input, one.share, document_));
    }
  }
  movers_title_->setVisible(!rows.empty());
  movers_->setVisible(!rows.empty());
  movers_->show_rows(std::move(rows));
  TermsTable::align(*terms_, *movers_);
}

void WorkingView::show_notes(ResultId id) {
  say(validity_, words::result_validity(id));
  const QString source = words::result_source(id);
  say(source_, source.isEmpty() ? QString() : tr("Source: %1").arg(source));
}

void WorkingView::follow(const TermRow& row) {
  if (row.input) {
    document_.select({document_.selection().axis, static_cast<PartSlot>(row.input->slot),
                      text_of(row.input->member)});
  } else if (row.result) {
    trail_->go_on_to(*row.result);
  }
}

QString WorkingView::as_text() const {
  QStringList lines{words::result_name(chosen()), meaning_->text(), formula_->plain_text()};
  for (const QLabel* note : {solved_, shares_}) {
    lines << note->text();
  }
  lines << terms_->all_as_text() << validity_->text() << source_->text();
  lines.removeAll(QString());
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void WorkingView::copy() {
  auto* copied = new QMimeData;
  const QWidget* at = QApplication::focusWidget();
  for (const TermsTable* table : {terms_, movers_}) {
    if (at == table) {
      copied->setText(table->as_text());
      QApplication::clipboard()->setMimeData(copied);
      return;
    }
  }
  if (formula_->plain_text().isEmpty()) {
    delete copied;
    return;
  }
  copied->setText(as_text());
  copied->setData(QStringLiteral("application/mathml+xml"), formula_->mathml().toUtf8());
  QApplication::clipboard()->setMimeData(copied);
}

} // namespace feedwright
