// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/machine_view.h"

#include "fields/wheel_guard.h"
#include "overview/concern_list.h"
#include "overview/overview_content.h"
#include "sheet/sheet_words.h"
#include "sheet/together_rows.h"
#include "text/fault_place.h"
#include "text/words.h"
#include "window/plain_label.h"
#include "window/scrolling.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

/// Of a page below the tables, in lines of text.
constexpr int least_lines = 8;

QWidget* on_paper(QWidget* widget) {
  widget->setBackgroundRole(QPalette::Base);
  widget->setAutoFillBackground(true);
  return widget;
}

} // namespace

MachineView::MachineView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("machine_view"));
  setAccessibleName(tr("Machine"));
  on_paper(this);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  state_ = new QStackedWidget(this);
  state_->addWidget(scrolling(on_paper(make_results()), QStringLiteral("machine_scroll")));
  state_->addWidget(scrolling(on_paper(make_faults()), QStringLiteral("machine_faults_scroll")));
  layout->addWidget(state_);
  connect(&document_, &MachineDocument::changed, this, &MachineView::refresh);
  connect(&document_.pending(), &PendingTexts::changed, this, &MachineView::take_pending);
  refresh();
}

FigureTable* MachineView::add_table(const QString& name, const QString& spoken, bool whole,
                                    QWidget* parent) {
  auto* table = new FigureTable(name, spoken, whole, parent);
  connect(table, &FigureTable::door_chosen, this,
          [this](const FigureDoor& door) { go(door.selection, door.limit); });
  return table;
}

QWidget* MachineView::make_results() {
  auto* all = new QWidget(this);
  auto* layout = new QVBoxLayout(all);
  layout->setContentsMargins(8, 6, 8, 6);
  layout->setSpacing(6);
  title_ = plain_label({}, all);
  title_->setObjectName(QStringLiteral("machine_title"));
  QFont bold = title_->font();
  bold.setBold(true);
  title_->setFont(bold);
  layout->addWidget(title_);
  axes_ = add_table(QStringLiteral("axes_compared"), tr("Axes side by side"), true, all);
  layout->addWidget(axes_);
  limits_ = add_table(QStringLiteral("machine_limits"), tr("All axes at once"), true, all);
  layout->addWidget(limits_);
  layout->addWidget(make_pages(), 1);
  return all;
}

QWidget* MachineView::make_pages() {
  auto* all = new QWidget(this);
  auto* layout = new QVBoxLayout(all);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addLayout(make_chooser(all));
  pages_ = new QStackedWidget(all);
  // Its pages scroll by themselves: they take the room that is left.
  pages_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
  pages_->setMinimumHeight(fontMetrics().lineSpacing() * least_lines);
  layout->addWidget(pages_, 1);
  concerns_ = new ConcernList(document_, all);
  connect(concerns_, &ConcernList::door_chosen, this, &MachineView::go);
  add_page(tr("What deserves care"), concerns_);
  shares_ = add_table(QStringLiteral("axis_shares"), tr("What each axis asks"), true, all);
  add_page(tr("Supply"), page_with_lines(shares_, share_lines_, QStringLiteral("share_line_%1")));
  controller_ =
      add_table(QStringLiteral("controller_figures"), tr("Controller figures"), true, all);
  add_page(tr("Controller"),
           page_with_lines(controller_, controller_lines_, QStringLiteral("controller_line_%1")));
  purchases_ = add_table(QStringLiteral("parts_to_buy"), tr("Parts to buy"), true, all);
  std::vector<QLabel*> none;
  add_page(tr("Parts to buy"), page_with_lines(purchases_, none, {}));
  connect(tabs_, &QTabBar::currentChanged, pages_, &QStackedWidget::setCurrentIndex);
  connect(copy_, &QPushButton::clicked, this, [this] {
    // With the list of concerns in sight it is the axes' table that is meant.
    const FigureTable* tables[] = {axes_, shares_, controller_, purchases_};
    tables[tabs_->currentIndex()]->copy();
  });
  return all;
}

/// Tabs, or a box with the same entries, and what copies the table.
QBoxLayout* MachineView::make_chooser(QWidget* all) {
  tabs_ = new QTabBar(all);
  tabs_->setObjectName(QStringLiteral("machine_tabs"));
  tabs_->setAccessibleName(tr("About the machine"));
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  box_ = new QComboBox(all);
  box_->setObjectName(QStringLiteral("machine_box"));
  box_->setAccessibleName(tabs_->accessibleName());
  box_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  new WheelGuard(box_);
  box_->hide();
  connect(box_, &QComboBox::activated, tabs_, &QTabBar::setCurrentIndex);
  connect(tabs_, &QTabBar::currentChanged, box_, &QComboBox::setCurrentIndex);
  copy_ = new QPushButton(tr("Copy the table"), all);
  copy_->setObjectName(QStringLiteral("copy_machine_table"));
  copy_->setAutoDefault(false);
  chooser_ = new QBoxLayout(QBoxLayout::LeftToRight);
  chooser_->addWidget(tabs_, 1);
  chooser_->addWidget(box_);
  chooser_->addStretch();
  chooser_->addWidget(copy_);
  return chooser_;
}

/// Tabs where all have room, else the box; the button beside it or below.
void MachineView::fit_chooser() {
  constexpr int around = 40; // edges and a scroll bar
  const int room = width() - around;
  const int copy = copy_->sizeHint().width() + chooser_->spacing();
  const bool tabs = tabs_->sizeHint().width() + copy <= room;
  if (tabs != box_->isHidden()) {
    const bool focused = tabs_->hasFocus() || box_->hasFocus();
    tabs_->setVisible(tabs);
    box_->setVisible(!tabs);
    if (focused) {
      (tabs ? static_cast<QWidget*>(tabs_) : box_)->setFocus(Qt::OtherFocusReason);
    }
  }
  const bool below = !tabs && box_->sizeHint().width() + copy > room;
  chooser_->setDirection(below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  chooser_->setAlignment(copy_, below ? Qt::AlignLeading : Qt::Alignment());
}

QWidget* MachineView::add_page(const QString& title, QWidget* page) {
  tabs_->addTab(title);
  box_->addItem(title);
  QScrollArea* area =
      scrolling(on_paper(page), QStringLiteral("machine_page_%1").arg(pages_->count()));
  pages_->addWidget(area);
  return area;
}

QWidget* MachineView::page_with_lines(FigureTable* table, std::vector<QLabel*>& lines,
                                      const QString& name) {
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 2, 4, 2);
  layout->setSpacing(4);
  layout->addWidget(table);
  constexpr int most_lines = 12;
  for (int line = 0; line < most_lines && !name.isEmpty(); ++line) {
    QLabel* label = plain_label({}, page);
    label->setObjectName(name.arg(line));
    layout->addWidget(label);
    lines.push_back(label);
  }
  layout->addStretch();
  return page;
}

QWidget* MachineView::make_faults() {
  auto* all = new QWidget(this);
  faults_ = new QVBoxLayout(all);
  faults_->setContentsMargins(8, 6, 8, 6);
  faults_->setSpacing(6);
  QLabel* head =
      plain_label(tr("Not computed. Nothing can be said of the machine until this is put "
                     "right:"),
                  all);
  head->setObjectName(QStringLiteral("machine_not_computed"));
  faults_->addWidget(head);
  faults_->addStretch();
  return all;
}

void MachineView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) {
    refresh();
  }
}

void MachineView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && pages_ != nullptr) {
    pages_->setMinimumHeight(fontMetrics().lineSpacing() * least_lines);
    fit_chooser();
  }
}

void MachineView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_chooser();
}

void MachineView::refresh() {
  // Hidden behind an axis it would only take time from each edit.
  stale_ = !isVisible();
  if (stale_) {
    return;
  }
  const bool computed = !document_.results().empty();
  state_->setCurrentIndex(computed ? 0 : 1);
  computed ? show_results() : show_faults();
}

/// Answers that are being written; what they are written to is as it was.
void MachineView::take_pending() {
  if (!stale_ && !document_.results().empty()) {
    concerns_->show_concerns(found_);
  }
}

void MachineView::show_answer(const TypedAt& place) {
  tabs_->setCurrentIndex(0);
  if (QWidget* row = concerns_->write_on(place)) {
    row->parentWidget()->layout()->activate();
    qobject_cast<QScrollArea*>(pages_->widget(0))->ensureWidgetVisible(row);
  }
}

void MachineView::show_results() {
  const Machine& machine = document_.machine();
  const MachineResults together = size_machine(machine, document_.results());
  const SizedMachine sized{machine, document_.results(), together, document_.units()};
  axes_->show_content(axes_compared(sized));
  limits_->show_content(machine_limits(sized));
  shares_->show_content(axis_shares(sized));
  controller_->show_content(controller_figures(sized));
  purchases_->show_content(parts_to_buy(machine));
  found_ = concerns_of(machine, document_.results(), together);
  concerns_->show_concerns(found_);
  const QString name = QString::fromStdString(machine.name);
  const auto waiting = std::ranges::count_if(
      found_.list, [](const Concern& concern) { return !concern.answer.has_value(); });
  title_->setText(tr("%1 · %2 · %3 · %4", "machine, axes, motors, concerns")
                      .arg(name.isEmpty() ? tr("Machine without a name") : name,
                           tr("%n axis(es)", nullptr, int(machine.axes.size())),
                           tr("%n motor(s)", nullptr, int(together.motors)),
                           tr("%n to settle", nullptr, int(waiting))));
  std::vector<std::string> letters;
  for (const Axis& axis : machine.axes) {
    letters.push_back(axis.basics.letter);
  }
  show_lines(share_lines_,
             sheet::together_sentences({together, machine.answers, letters, document_.units()}));
  show_lines(controller_lines_,
             {tr("%n output(s) for motors in all; the two motors of one axis get the same steps, "
                 "each from an output of its own.",
                 nullptr, int(together.motors)),
              sheet::care_text()});
}

void MachineView::show_lines(std::vector<QLabel*>& lines, const QStringList& texts) {
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const bool used = qsizetype(i) < texts.size();
    lines[i]->setText(used ? texts[qsizetype(i)] : QString());
    lines[i]->setVisible(used);
  }
}

void MachineView::show_faults() {
  for (QWidget* row : fault_rows_) {
    // One of their buttons may be what brought us here.
    row->hide();
    row->deleteLater();
  }
  fault_rows_.clear();
  int number = 0;
  for (const Fault& fault : document_.faults()) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    const QString text = words::fault_in_machine(fault, document_.machine());
    QLabel* label = plain_label(text, row);
    label->setObjectName(QStringLiteral("machine_fault_%1").arg(number));
    line->addWidget(label, 1);
    if (fault.slot) {
      auto* door = new QPushButton(tr("Show"), row);
      door->setObjectName(QStringLiteral("show_fault_%1").arg(number));
      door->setAccessibleName(tr("Show %1").arg(text));
      const Selection there{fault.axis, *fault.slot, QString::fromStdString(fault.member),
                            of_machine(*fault.slot)};
      connect(door, &QPushButton::clicked, this, [this, there] { go(there, std::nullopt); });
      line->addWidget(door, 0, Qt::AlignTop);
    }
    faults_->insertWidget(faults_->count() - 1, row);
    row->show();
    fault_rows_.push_back(row);
    ++number;
  }
}

void MachineView::go(const Selection& selection, const std::optional<LimitId>& limit) {
  // A door to supply or controller keeps the machine in sight; document.select sees to that.
  document_.select(selection);
  if (limit) {
    emit limit_chosen(*limit);
  }
}

} // namespace feedwright
