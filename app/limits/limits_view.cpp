// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/limits_view.h"

#include "limits/finding_order.h"
#include "limits/ladder_widget.h"
#include "text/words.h"

#include <QLabel>
#include <QVBoxLayout>

namespace feedwright {

namespace {

QLabel* plain_label(const QString& name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

} // namespace

LimitsView::LimitsView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("limits_view"));
  setAccessibleName(tr("Limits"));
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 4, 8, 8);
  layout->setSpacing(8);
  not_computed_ = plain_label(QStringLiteral("limits_not_computed"), this);
  not_computed_->setAccessibleName(tr("Limits are not computed"));
  layout->addWidget(not_computed_);
  const char* names[] = {"feed_ladder", "thrust_ladder", "margin_ladder"};
  for (std::size_t i = 0; i < ladders_.size(); ++i) {
    ladders_[i] = new LadderWidget(this);
    ladders_[i]->setObjectName(QString::fromLatin1(names[i]));
    connect(ladders_[i], &LadderWidget::row_chosen, this, &LimitsView::choose);
    layout->addWidget(ladders_[i]);
  }
  notes_layout_ = new QVBoxLayout;
  notes_layout_->setSpacing(4);
  layout->addLayout(notes_layout_);
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
  std::vector<QString> texts;
  for (const Fault& fault : faults) {
    texts.push_back(QStringLiteral("– ") + words::fault_text(fault));
  }
  show_notes(texts);
}

void LimitsView::show_results(const AxisResults& results) {
  constexpr LimitScale scales[] = {LimitScale::feed, LimitScale::thrust, LimitScale::other};
  for (std::size_t i = 0; i < ladders_.size(); ++i) {
    ladders_[i]->show_ladder(ladder_of(results, scales[i]));
  }
  std::vector<QString> texts;
  for (const Finding& finding : by_weight(results.findings)) {
    const QString sign = is_grave(finding.code) ? QStringLiteral("▲") : QStringLiteral("△");
    texts.push_back(
        tr("%1 %2: %3", "sign, part, sentence")
            .arg(sign, words::part_name(finding.subject), words::finding_text(finding)));
  }
  show_notes(texts);
}

void LimitsView::show_notes(const std::vector<QString>& texts) {
  while (notes_.size() < texts.size()) {
    notes_.push_back(plain_label(QStringLiteral("finding_%1").arg(notes_.size()), this));
    notes_layout_->addWidget(notes_.back());
  }
  for (std::size_t i = 0; i < notes_.size(); ++i) {
    const bool used = i < texts.size();
    if (used && notes_[i]->text() != texts[i]) {
      notes_[i]->setText(texts[i]);
      notes_[i]->setAccessibleName(texts[i]);
    }
    notes_[i]->setVisible(used);
  }
}

void LimitsView::choose(LimitId id) {
  const LimitDescriptor& about = descriptor(id);
  const AxisResults* results = document_.current();
  // An open limit leads to the input it wants.
  if (results != nullptr && results->limit(id).verdict == Verdict::open &&
      !results->limit(id).missing.member.empty()) {
    const InputRef& missing = results->limit(id).missing;
    document_.select({document_.selection().axis, static_cast<PartSlot>(missing.slot),
                      QString::fromUtf8(missing.member.data(), qsizetype(missing.member.size()))});
  } else {
    document_.select({document_.selection().axis, about.part,
                      QString::fromUtf8(about.member.data(), qsizetype(about.member.size()))});
  }
  emit limit_chosen(id);
}

} // namespace feedwright
