// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/concern_list.h"

#include "text/machine_words.h"
#include "text/text_of.h"
#include "window/plain_label.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <numeric>
#include <utility>

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
    connect(row, &ConcernRow::answer_begun, this, [this, row = row] { unfold(*row); });
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
  std::vector<Entry> entries = gathered(waiting);
  show_headings(entries);
  if (entries != waiting_ || answered != answered_) {
    arrange(entries, answered);
  }
}

/// What says the same comes together where the first of it stands; of cautions of one kind those
/// that stand alone come first.
std::vector<ConcernList::Entry> ConcernList::gathered(const std::vector<ConcernRow*>& waiting) {
  std::vector<Entry> entries;
  std::vector<int> weights; // of the entries: each kind of caution has its own
  int weight = 0;
  std::string_view code;
  for (ConcernRow* row : waiting) {
    const auto& concern = row->concern();
    const bool shared = concern && may_share_heading(*concern);
    if (!shared || concern->code() != code) {
      ++weight;
      code = shared ? concern->code() : std::string_view();
    }
    const QString key = shared ? text_of(concern->code()) + QLatin1Char('_') +
                                     words::concern_text(*concern, document_.units())
                               : QString();
    const auto found = std::ranges::find(entries, key, &Entry::key);
    if (shared && found != entries.end()) {
      found->rows.push_back(row);
    } else {
      entries.push_back({key, {row}});
      weights.push_back(weight);
    }
  }
  std::vector<std::size_t> places(entries.size());
  std::iota(places.begin(), places.end(), std::size_t{0});
  std::ranges::stable_sort(places, {}, [&](std::size_t at) {
    return std::pair(weights[at], entries[at].rows.size() > 1);
  });
  std::vector<Entry> sorted;
  sorted.reserve(entries.size());
  for (const std::size_t at : places) {
    sorted.push_back(std::move(entries[at]));
  }
  return sorted;
}

ConcernGroup* ConcernList::heading_of(const QString& key) {
  ConcernGroup*& heading = headings_[key];
  if (heading == nullptr) {
    heading = new ConcernGroup(key.section(QLatin1Char('_'), 0, -2), this);
  }
  return heading;
}

void ConcernList::show_headings(std::vector<Entry>& entries) {
  std::vector<ConcernGroup*> used;
  for (Entry& entry : entries) {
    if (entry.rows.size() > 1) {
      entry.heading = heading_of(entry.key);
      entry.heading->show_rows(entry.rows, document_.machine(), document_.units());
      used.push_back(entry.heading);
    }
  }
  std::erase_if(headings_, [&](const auto& kept) {
    const bool gone = std::ranges::find(used, kept.second) == used.end();
    if (gone) {
      kept.second->hide();
      kept.second->deleteLater();
    }
    return gone;
  });
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

/// The heading that the row stands under, if any.
void ConcernList::unfold(const ConcernRow& row) {
  for (const Entry& entry : waiting_) {
    if (entry.heading != nullptr && std::ranges::find(entry.rows, &row) != entry.rows.end()) {
      entry.heading->set_open(true);
    }
  }
}

QWidget* ConcernList::write_on(const TypedAt& place) {
  const auto found = places_.find(place);
  if (found == places_.end()) {
    return nullptr;
  }
  unfold(*found->second);
  found->second->write_on();
  return found->second;
}

void ConcernList::arrange(const std::vector<Entry>& waiting,
                          const std::vector<ConcernRow*>& answered) {
  std::vector<ConcernRow*> used = answered;
  for (const Entry& entry : waiting) {
    used.insert(used.end(), entry.rows.begin(), entry.rows.end());
  }
  drop_unused(used);
  while (layout_->count() > 0) {
    delete layout_->takeAt(0);
  }
  layout_->addWidget(waiting_head_);
  QWidget* before = nullptr;
  const auto place = [&](const std::vector<ConcernRow*>& rows, bool grouped) {
    for (ConcernRow* row : rows) {
      layout_->addWidget(row);
      if (!grouped) {
        row->set_inset(false);
        row->show();
      }
      before = row->follow(before);
    }
  };
  for (const Entry& entry : waiting) {
    if (entry.heading != nullptr) {
      layout_->addWidget(entry.heading);
      entry.heading->show();
      before = entry.heading->follow(before);
    }
    place(entry.rows, entry.heading != nullptr);
  }
  layout_->addWidget(answered_head_);
  place(answered, false);
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
