// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/limits_view.h"

#include "limits/cautions.h"
#include "limits/ladder_widget.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QLabel>
#include <QVBoxLayout>

namespace feedwright {

LimitsView::LimitsView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("limits_view"));
  setAccessibleName(tr("Limits"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 4, 8, 8);
  layout->setSpacing(8);
  not_computed_ = plain_label({}, this);
  not_computed_->setObjectName(QStringLiteral("limits_not_computed"));
  not_computed_->setAccessibleName(tr("Limits are not computed"));
  layout->addWidget(not_computed_);
  const auto add_notes = [layout](Notes& notes) {
    notes.layout = new QVBoxLayout;
    notes.layout->setSpacing(4);
    layout->addLayout(notes.layout);
  };
  add_notes(grave_);
  const char* names[] = {"feed_ladder", "thrust_ladder", "margin_ladder"};
  for (std::size_t i = 0; i < ladders_.size(); ++i) {
    ladders_[i] = new LadderWidget(this);
    ladders_[i]->setObjectName(QString::fromLatin1(names[i]));
    connect(ladders_[i], &LadderWidget::row_chosen, this, &LimitsView::choose);
    layout->addWidget(ladders_[i]);
  }
  add_notes(ordinary_);
  layout->addStretch();
  connect(&document_, &MachineDocument::changed, this, &LimitsView::refresh);
  connect(&document_, &MachineDocument::selection_changed, this, &LimitsView::refresh);
  refresh();
}

void LimitsView::refresh() {
  const AxisResults* results = document_.current();
  not_computed_->setVisible(results == nullptr);
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
  QStringList texts;
  for (const Fault& fault : faults) {
    texts.append(QStringLiteral("– ") + words::fault_text(fault));
  }
  show_notes(grave_, texts);
  show_notes(ordinary_, {});
}

void LimitsView::show_results(const AxisResults& results) {
  constexpr LimitScale scales[] = {LimitScale::feed, LimitScale::thrust, LimitScale::other};
  for (std::size_t i = 0; i < ladders_.size(); ++i) {
    ladders_[i]->show_ladder(ladder_of(results, scales[i]));
  }
  QStringList grave;
  QStringList ordinary;
  const std::vector<Answer>& answers = document_.current_axis()->answers;
  for (const Caution& caution : cautions_of(results.findings, answers, document_.units())) {
    const QString sign = caution.grave ? QStringLiteral("▲") : QStringLiteral("△");
    const QString text =
        tr("%1 %2: %3", "sign, part, sentence").arg(sign, caution.subjects, caution.text);
    (caution.grave ? grave : ordinary)
        .append(caution.answer.isEmpty() ? text : text + QLatin1Char('\n') + caution.answer);
  }
  ordinary += answered_limits(results.limits, answers, document_.units());
  show_notes(grave_, grave);
  show_notes(ordinary_, ordinary);
}

void LimitsView::show_notes(Notes& notes, const QStringList& texts) {
  std::vector<QLabel*>& labels = notes.labels;
  const QString name =
      &notes == &grave_ ? QStringLiteral("grave_finding_%1") : QStringLiteral("finding_%1");
  while (qsizetype(labels.size()) < texts.size()) {
    QLabel* label = plain_label({}, this);
    label->setObjectName(name.arg(labels.size()));
    notes.layout->addWidget(label);
    labels.push_back(label);
  }
  const Look look = Look::of(palette());
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const bool used = qsizetype(i) < texts.size();
    if (used && labels[i]->text() != texts[qsizetype(i)]) {
      labels[i]->setText(texts[qsizetype(i)]);
      labels[i]->setAccessibleName(texts[qsizetype(i)]);
    }
    if (&notes == &grave_ && labels[i]->palette().color(QPalette::Text) != look.over) {
      QPalette strong = labels[i]->palette();
      strong.setColor(QPalette::WindowText, look.over);
      strong.setColor(QPalette::Text, look.over);
      labels[i]->setPalette(strong);
    }
    labels[i]->setVisible(used);
  }
}

void LimitsView::choose(LimitId id) {
  const LimitDescriptor& about = descriptor(id);
  const AxisResults* results = document_.current();
  // An open limit leads to the input it wants.
  if (results != nullptr && results->limit(id).verdict == Verdict::open &&
      !results->limit(id).missing.member.empty()) {
    const InputRef& missing = results->limit(id).missing;
    document_.select(
        {document_.selection().axis, static_cast<PartSlot>(missing.slot), text_of(missing.member)});
  } else {
    document_.select({document_.selection().axis, about.part, text_of(about.member)});
  }
  emit limit_chosen(id);
}

} // namespace feedwright
