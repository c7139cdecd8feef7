// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/concern_group.h"

#include "overview/concern_row.h"
#include "text/machine_words.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace feedwright {

bool may_share_heading(const Concern& concern) {
  return concern.finding && !concern.grave;
}

namespace {

/// Where the concerns are: every axis with every part if that is what they are, else each place.
QString places_of(const std::vector<ConcernRow*>& rows, const Machine& machine) {
  QStringList axes;
  QStringList parts;
  QStringList each;
  for (const ConcernRow* row : rows) {
    const Concern& concern = *row->concern();
    const QString axis = words::axis_or_machine(machine, concern.axis);
    const QString part = words::part_name(concern.part);
    axes << (axes.contains(axis) ? QStringList() : QStringList{axis});
    parts << (parts.contains(part) ? QStringList() : QStringList{part});
    each << words::concern_subject(concern, machine);
  }
  const QString comma = QStringLiteral(", ");
  return axes.size() * parts.size() == each.size()
             ? QStringLiteral("%1 · %2").arg(axes.join(comma), parts.join(comma))
             : each.join(comma);
}

} // namespace

ConcernGroup::ConcernGroup(const QString& key, QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("concerns_") + key);
  line_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
  line_->setContentsMargins(0, 2, 0, 2);
  line_->setSpacing(6);
  text_ = plain_label({}, this);
  text_->setObjectName(QStringLiteral("concerns_text_") + key);
  text_->setAlignment(Qt::AlignTop | Qt::AlignLeading);
  line_->addWidget(text_, 1);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(6);
  show_ = new QPushButton(this);
  show_->setObjectName(QStringLiteral("show_all_") + key);
  unfold_ = new QPushButton(this);
  unfold_->setObjectName(QStringLiteral("unfold_") + key);
  for (QPushButton* button : {show_, unfold_}) {
    button->setAutoDefault(false);
    buttons->addWidget(button, 0, Qt::AlignTop);
  }
  buttons->addStretch();
  line_->addLayout(buttons);
  connect(show_, &QPushButton::clicked, this, [this] { rows_.front()->show_place(); });
  connect(unfold_, &QPushButton::clicked, this, [this] { set_open(!open_); });
}

void ConcernGroup::show_rows(const std::vector<ConcernRow*>& rows, const Machine& machine,
                             const FileUnits& units) {
  rows_ = rows;
  const Concern& first = *rows.front()->concern();
  subject_ = places_of(rows, machine);
  const QString text =
      tr("%1, %2: %3", "weight, places, sentence")
          .arg(words::concern_weight(first), subject_, words::concern_text(first, units));
  if (text_->text() != text) {
    text_->setText(text);
    text_->setAccessibleName(text);
  }
  show_->setText(tr("Show"));
  show_->setAccessibleName(tr("Show the first of %1").arg(subject_));
  // Nobody must lose sight of what is being written.
  open_ = open_ || std::ranges::any_of(rows_, &ConcernRow::is_writing);
  show_state();
  fit_buttons();
}

void ConcernGroup::set_open(bool open) {
  open_ = open || std::ranges::any_of(rows_, &ConcernRow::is_writing);
  show_state();
}

void ConcernGroup::show_state() {
  const int count = static_cast<int>(rows_.size());
  unfold_->setText((open_ ? QStringLiteral("▾ ") : QStringLiteral("▸ ")) +
                   tr("Each of %n", "cautions that say the same", count));
  unfold_->setAccessibleName(
      open_ ? tr("Each of %n, open: %1", "cautions, their places", count).arg(subject_)
            : tr("Each of %n, closed: %1", "cautions, their places", count).arg(subject_));
  for (ConcernRow* row : rows_) {
    row->set_inset(true);
    row->setVisible(open_);
  }
}

/// Below the text where they would leave it no room.
void ConcernGroup::fit_buttons() {
  constexpr int least_letters = 30;
  const int buttons =
      show_->sizeHint().width() + unfold_->sizeHint().width() + 2 * line_->spacing();
  const bool below = width() - buttons < least_letters * fontMetrics().averageCharWidth();
  line_->setDirection(below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

QWidget* ConcernGroup::follow(QWidget* before) {
  if (before != nullptr) {
    setTabOrder(before, show_);
  }
  setTabOrder(show_, unfold_);
  return unfold_;
}

void ConcernGroup::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  fit_buttons();
}

void ConcernGroup::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange && !rows_.empty()) {
    fit_buttons();
  }
}

} // namespace feedwright
