// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/concern_list.h"

#include "text/text_of.h"
#include "window/plain_label.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

QString key_of(const Machine& machine, std::optional<std::size_t> axis, std::string_view code,
               std::string_view part, AnswerTo to) {
  QStringList parts{axis ? QString::fromStdString(machine.axes.at(*axis).basics.letter)
                         : QStringLiteral("machine"),
                    text_of(code)};
  if (to == AnswerTo::finding) {
    parts << text_of(part);
  }
  return parts.join(QLatin1Char('_'));
}

} // namespace

ConcernList::ConcernList(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("concern_list"));
  setAccessibleName(tr("What deserves care"));
  layout_ = new QVBoxLayout(this);
  layout_->setContentsMargins(2, 4, 4, 4);
  layout_->setSpacing(2);
  const auto add_head = [this](const char* name) {
    QLabel* head = plain_label({}, this);
    head->setObjectName(QString::fromLatin1(name));
    QFont font = head->font();
    font.setBold(true);
    head->setFont(font);
    return head;
  };
  waiting_head_ = add_head("concerns_waiting");
  answered_head_ = add_head("concerns_answered");
  layout_->addWidget(waiting_head_);
  layout_->addWidget(answered_head_);
  layout_->addStretch();
}

ConcernRow* ConcernList::row_of(const QString& key) {
  ConcernRow*& row = rows_[key];
  if (row == nullptr) {
    row = new ConcernRow(document_, key, this);
    connect(row, &ConcernRow::door_chosen, this, &ConcernList::door_chosen);
  }
  return row;
}

void ConcernList::show_concerns(const Concerns& concerns) {
  const Machine& machine = document_.machine();
  std::vector<ConcernRow*> waiting;
  std::vector<ConcernRow*> answered;
  places_.clear();
  for (const Concern& concern : concerns.list) {
    ConcernRow* row =
        row_of(key_of(machine, concern.axis, concern.code(), concern.part_name(), concern.kind()));
    places_[place_of(concern)] = row;
    row->show_concern(concern);
    (concern.answer ? answered : waiting).push_back(row);
  }
  for (const IdleAnswer& idle : concerns.idle) {
    const Answer& answer = idle.answer;
    ConcernRow* row = row_of(QStringLiteral("idle_") +
                             key_of(machine, idle.axis, answer.code, answer.part, answer.to));
    row->show_idle(idle);
    answered.push_back(row);
  }
  const int to_settle = static_cast<int>(waiting.size());
  for (ConcernRow* row : show_lost()) {
    waiting.push_back(row);
  }
  waiting_head_->setText(to_settle == 0
                             ? tr("Nothing waits for an answer.")
                             : tr("%n to settle, the gravest first", nullptr, to_settle));
  answered_head_->setText(tr("%n answered", nullptr, int(answered.size())));
  answered_head_->setVisible(!answered.empty());
  if (waiting != waiting_ || answered != answered_) {
    arrange(waiting, answered);
  }
}

/// Answers that were being written to what is no longer found: nobody else would show them.
std::vector<ConcernRow*> ConcernList::show_lost() {
  const Machine& machine = document_.machine();
  std::vector<ConcernRow*> lost;
  for (const TypedAt& place : document_.pending().places()) {
    const auto axis = place.axis_or_machine();
    if (!place.answer || places_.contains(place) || (axis && *axis >= machine.axes.size())) {
      continue;
    }
    const AnsweredThing& thing = *place.answer;
    ConcernRow* row =
        row_of(QStringLiteral("lost_") + key_of(machine, axis, thing.code, thing.part, thing.to));
    places_[place] = row;
    row->show_lost(place);
    lost.push_back(row);
  }
  return lost;
}

QWidget* ConcernList::write_on(const TypedAt& place) {
  const auto found = places_.find(place);
  if (found == places_.end()) {
    return nullptr;
  }
  found->second->write_on();
  return found->second;
}

void ConcernList::arrange(const std::vector<ConcernRow*>& waiting,
                          const std::vector<ConcernRow*>& answered) {
  std::vector<ConcernRow*> used = waiting;
  used.insert(used.end(), answered.begin(), answered.end());
  drop_unused(used);
  while (layout_->count() > 0) {
    delete layout_->takeAt(0);
  }
  layout_->addWidget(waiting_head_);
  QWidget* before = nullptr;
  const auto place = [&](const std::vector<ConcernRow*>& rows) {
    for (ConcernRow* row : rows) {
      layout_->addWidget(row);
      row->show();
      before = row->follow(before);
    }
  };
  place(waiting);
  layout_->addWidget(answered_head_);
  place(answered);
  layout_->addStretch();
  waiting_ = waiting;
  answered_ = answered;
}

void ConcernList::drop_unused(const std::vector<ConcernRow*>& used) {
  for (auto row = rows_.begin(); row != rows_.end();) {
    if (std::ranges::find(used, row->second) == used.end()) {
      // It may be its own button that took it away.
      row->second->hide();
      row->second->deleteLater();
      row = rows_.erase(row);
    } else {
      ++row;
    }
  }
}

} // namespace feedwright
