// SPDX-License-Identifier: GPL-3.0-or-later
#include "remedies/remedy_list.h"

#include "remedies/remedy_row.h"

#include <QVBoxLayout>

#include <utility>

namespace feedwright {

RemedyList::RemedyList(QWidget* parent) : SteadyArea(parent) {
  setObjectName(QStringLiteral("remedies_scroll"));
  auto* inside = new QWidget(this);
  column_ = new QVBoxLayout(inside);
  column_->setContentsMargins(0, 0, 6, 0);
  column_->setSpacing(1);
  column_->addStretch();
  setWidget(inside);
}

void RemedyList::show_rows(std::vector<RemedyText> texts) {
  shown_ = texts.size();
  for (std::size_t i = 0; i < shown_; ++i) {
    row(i).show_text(std::move(texts[i]));
    row(i).show();
  }
  for (std::size_t i = shown_; i < rows_.size(); ++i) {
    rows_[i]->hide();
  }
}

void RemedyList::put_above(QWidget& head) {
  if (column_->indexOf(&head) < 0) {
    column_->insertWidget(0, &head);
    head.show();
  }
}

QWidgetList RemedyList::stops() const {
  return {rows_.begin(), rows_.end()};
}

RemedyRow& RemedyList::row(std::size_t index) {
  while (rows_.size() <= index) {
    auto* made = new RemedyRow(widget());
    const std::size_t at = rows_.size();
    made->setObjectName(QStringLiteral("remedy_%1").arg(at));
    connect(made, &RemedyRow::clicked, this, [this, at] { emit pressed(at); });
    connect(made, &RemedyRow::neighbour_wanted, this,
            [this, at](int step) { go_to(static_cast<std::ptrdiff_t>(at) + step); });
    column_->insertWidget(column_->count() - 1, made); // before the stretch
    rows_.push_back(made);
  }
  return *rows_[index];
}

void RemedyList::go_to(std::ptrdiff_t index) {
  if (index >= 0 && index < std::ptrdiff_t(shown_)) {
    RemedyRow* to = rows_[std::size_t(index)];
    to->setFocus(Qt::TabFocusReason);
    ensureWidgetVisible(to, 0, 0);
  }
}

} // namespace feedwright
