// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/limits_view.h"

#include "limits/cautions.h"
#include "limits/grave_cautions.h"
#include "limits/ladder_widget.h"
#include "text/fault_place.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/changing_line.h"
#include "window/plain_label.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

namespace feedwright {

namespace {

constexpr int edge = 8;
constexpr int gap = 4;
constexpr int between_ladders = 18;
constexpr LimitScale scales[] = {LimitScale::feed, LimitScale::thrust, LimitScale::other};

} // namespace

LimitsView::LimitsView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("limits_view"));
  setAccessibleName(tr("Limits"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  lay_out();
  connect(&document_, &MachineDocument::changed, this, &LimitsView::refresh);
  connect(&document_, &MachineDocument::selection_changed, this, &LimitsView::refresh);
  connect(&document_.pending(), &PendingTexts::changed, this, &LimitsView::refresh);
  refresh();
}

void LimitsView::lay_out() {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(edge, gap, edge, gap);
  layout->setSpacing(gap);
  not_computed_ = plain_label({}, this);
  not_computed_->setObjectName(QStringLiteral("limits_not_computed"));
  not_computed_->setAccessibleName(tr("Limits are not computed"));
  layout->addWidget(not_computed_);
  const auto add_notes = [layout](Notes& notes) {
    notes.layout = new QVBoxLayout;
    notes.layout->setSpacing(gap);
    layout->addLayout(notes.layout);
  };
  faults_ = new QVBoxLayout;
  faults_->setSpacing(gap);
  layout->addLayout(faults_);
  grave_ = new GraveCautions(this);
  grave_->setObjectName(QStringLiteral("grave_cautions"));
  layout->addWidget(grave_);
  const char* names[] = {"feed_ladder", "thrust_ladder", "margin_ladder"};
  for (std::size_t i = 0; i < ladders_.size(); ++i) {
    ladders_[i] = new LadderWidget(this);
    ladders_[i]->setObjectName(QString::fromLatin1(names[i]));
    connect(ladders_[i], &LadderWidget::row_chosen, this, &LimitsView::choose);
    connect(ladders_[i], &LadderWidget::row_pointed_at, this, &LimitsView::say);
  }
  pair_ = new QBoxLayout(QBoxLayout::TopToBottom);
  pair_->addWidget(ladders_[0], 1);
  pair_->addWidget(ladders_[1], 1);
  layout->addLayout(pair_);
  layout->addLayout(make_line());
  layout->addWidget(ladders_[2]);
  add_notes(ordinary_);
  layout->addStretch(1);
}

/// Under the ladders of feed and force, where it is in sight: what stands farther down may not be.
QBoxLayout* LimitsView::make_line() {
  sentence_ = new ChangingLine(QStringLiteral("limit_sentence"), this);
  to_cautions_ = new QToolButton(this);
  to_cautions_->setObjectName(QStringLiteral("to_cautions"));
  to_cautions_->setAutoRaise(true);
  to_cautions_->setFocusPolicy(Qt::TabFocus);
  connect(to_cautions_, &QToolButton::clicked, this, &LimitsView::bring_cautions_in_sight);
  auto* line = new QHBoxLayout;
  line->addWidget(sentence_, 1);
  line->addWidget(to_cautions_);
  return line;
}

void LimitsView::tell_cautions(const QStringList& subjects) {
  cautions_ = int(subjects.size());
  const QString count = tr("△ %n caution(s)", nullptr, cautions_);
  QStringList parts = subjects;
  parts.removeDuplicates();
  const QString about = tr("%n caution(s) below: %1", "parts they are about", cautions_)
                            .arg(parts.join(QStringLiteral(", ")));
  if (to_cautions_->text() != count) { // else the layout around is made anew
    to_cautions_->setText(count);
  }
  to_cautions_->setToolTip(about);
  to_cautions_->setAccessibleName(about);
  to_cautions_->setVisible(!subjects.isEmpty());
}

void LimitsView::bring_cautions_in_sight() {
  QWidget* up = parentWidget();
  while (up != nullptr && qobject_cast<QScrollArea*>(up) == nullptr) {
    up = up->parentWidget();
  }
  if (auto* area = qobject_cast<QScrollArea*>(up)) {
    area->ensureWidgetVisible(ordinary_.labels[std::size_t(cautions_ - 1)], 0, edge);
    area->ensureWidgetVisible(ordinary_.labels.front(), 0, edge);
  }
}

void LimitsView::refresh() {
  const AxisResults* results = document_.current();
  not_computed_->setVisible(results == nullptr);
  grave_->setVisible(results != nullptr);
  sentence_->setVisible(results != nullptr);
  for (LadderWidget* ladder : ladders_) {
    ladder->setVisible(results != nullptr);
  }
  results != nullptr ? show_results(*results) : show_faults();
}

void LimitsView::show_faults() {
  const auto& faults = document_.faults();
  not_computed_->setText(faults.empty()
                             ? tr("Not computed: there is no axis.")
                             : tr("Not computed. Nothing can be said of the limits until this is "
                                  "put right:"));
  clear_faults();
  for (const Fault& fault : faults) {
    const auto there = fault.slot ? std::optional(Selection{fault.axis, *fault.slot,
                                                            QString::fromStdString(fault.member)})
                                  : std::nullopt;
    add_row(QStringLiteral("fault"), words::fault_in_machine(fault, document_.machine()), there);
  }
  show_notes(ordinary_, {});
  tell_cautions({});
}

/// A sentence above the ladders with the way to the field it is about.
void LimitsView::add_row(const QString& name, const QString& text,
                         const std::optional<Selection>& there) {
  const auto number = fault_rows_.size();
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  QLabel* label = plain_label(text, row);
  label->setObjectName(QStringLiteral("%1_%2").arg(name).arg(number));
  line->addWidget(label, 1);
  if (there) {
    auto* door = new QPushButton(tr("Show"), row);
    door->setObjectName(QStringLiteral("go_to_%1_%2").arg(name).arg(number));
    door->setAccessibleName(tr("Show %1").arg(text));
    connect(door, &QPushButton::clicked, this, [this, there] { document_.select(*there); });
    line->addWidget(door, 0, Qt::AlignTop);
  }
  faults_->addWidget(row);
  row->show();
  fault_rows_.push_back(row);
}

/// What is typed and not taken is not in the results: they must not pass for those of the text.
void LimitsView::show_waiting() {
  const std::size_t axis = document_.selection().axis;
  for (const TypedAt& place : document_.pending().places()) {
    if (place.answer || place.axis_or_machine().value_or(axis) != axis) {
      continue;
    }
    const auto field = field_of(document_.machine(), axis, place.slot, place.field());
    if (!field) {
      continue;
    }
    const QString text = document_.pending().at(place).value_or(QString());
    const QString name = words::field_name(place.slot, field->info.member);
    const QString value = place.row_and_column() ? QString() : words::field_text(*field);
    add_row(QStringLiteral("waiting"),
            value.isEmpty()
                ? tr("▲ Computed without “%1”, which stands in %2 and is not taken.", "text, field")
                      .arg(text, name)
                : tr("▲ Computed with %1 %2: “%3” stands in the field and is not taken.",
                     "field, value, text")
                      .arg(name, value, text),
            Selection{axis, place.slot, text_of(place.field())});
  }
}

void LimitsView::clear_faults() {
  for (QWidget* row : fault_rows_) {
    // One of their buttons may be what brought us here.
    row->hide();
    row->setParent(nullptr);
    row->deleteLater();
  }
  fault_rows_.clear();
}

void LimitsView::show_results(const AxisResults& results) {
  usual_sentence_.clear();
  for (std::size_t i = 0; i < ladders_.size(); ++i) {
    Ladder ladder = ladder_of(results, scales[i], document_.units());
    for (const LadderRow& row : ladder.rows) {
      const bool governs_feed = row.governs && ladder.scale == LimitScale::feed;
      if (row.id == chosen_ || (governs_feed && usual_sentence_.isEmpty())) {
        usual_sentence_ = row.tooltip;
      }
    }
    ladders_[i]->mark_chosen(chosen_);
    ladders_[i]->setVisible(!ladder.rows.empty());
    ladders_[i]->show_ladder(std::move(ladder));
  }
  for (int i = 0; i < pair_->count(); ++i) { // longer names, more room
    pair_->setStretch(i, ladders_[std::size_t(i)]->easy_width());
  }
  say({});
  clear_faults();
  show_waiting();
  QStringList grave;
  QStringList ordinary;
  QStringList subjects;
  const std::vector<Answer>& answers = document_.current_axis()->answers;
  for (const Caution& caution : cautions_of(results.findings, answers, document_.units())) {
    const QString sign = caution.grave ? QStringLiteral("▲") : QStringLiteral("△");
    const QString text =
        tr("%1 %2: %3", "sign, part, sentence").arg(sign, caution.subjects, caution.text);
    (caution.grave ? grave : ordinary)
        .append(caution.answer.isEmpty() ? text : text + QLatin1Char('\n') + caution.answer);
    if (!caution.grave) {
      subjects << caution.subjects;
    }
  }
  ordinary += answered_limits(results.limits, answers, document_.units());
  grave_->show_texts(grave);
  grave_->setVisible(!grave.isEmpty());
  show_notes(ordinary_, ordinary);
  tell_cautions(subjects);
}

void LimitsView::show_notes(Notes& notes, const QStringList& texts) {
  std::vector<QLabel*>& labels = notes.labels;
  while (qsizetype(labels.size()) < texts.size()) {
    QLabel* label = plain_label({}, this);
    label->setObjectName(notes.name.arg(labels.size()));
    notes.layout->addWidget(label);
    labels.push_back(label);
  }
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const bool used = qsizetype(i) < texts.size();
    if (used && labels[i]->text() != texts[qsizetype(i)]) {
      labels[i]->setText(texts[qsizetype(i)]);
      labels[i]->setAccessibleName(texts[qsizetype(i)]);
    }
    labels[i]->setVisible(used);
  }
}

/// On one line, so that nothing moves when the pointer does; in full for those who hover over it.
void LimitsView::say(const QString& sentence) {
  sentence_->show_text(sentence.isEmpty() ? usual_sentence_ : sentence);
}

void LimitsView::fit_to_width() {
  constexpr int lines_wide = 38;
  const bool wide = width() >= lines_wide * fontMetrics().height();
  pair_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  pair_->setSpacing(wide ? between_ladders : gap);
}

void LimitsView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_to_width();
}

void LimitsView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange) {
    fit_to_width();
  }
  QWidget::changeEvent(event);
}

void LimitsView::choose(LimitId id) {
  const LimitDescriptor& about = descriptor(id);
  const AxisResults* results = document_.current();
  chosen_ = id;
  // An open limit leads to the input it wants.
  if (results != nullptr && results->limit(id).verdict == Verdict::open &&
      !results->limit(id).missing.member.empty()) {
    const InputRef& missing = results->limit(id).missing;
    document_.select(
        {document_.selection().axis, static_cast<PartSlot>(missing.slot), text_of(missing.member)});
  } else {
    document_.select({document_.selection().axis, about.part, text_of(about.member)});
  }
  // The same field may have been open before: then nothing else says that this was chosen.
  refresh();
  emit limit_chosen(id);
}

} // namespace feedwright
