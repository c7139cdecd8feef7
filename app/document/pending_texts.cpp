// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/pending_texts.h"

#include <algorithm>

namespace feedwright {

std::optional<QString> PendingTexts::at(const TypedAt& place) const {
  const auto found = texts_.find(place);
  return found != texts_.end() ? std::optional(found->second) : std::nullopt;
}

void PendingTexts::keep(const TypedAt& place, const QString& text) {
  if (at(place) != text) {
    texts_[place] = text;
    emit changed();
  }
}

void PendingTexts::give_up(const TypedAt& place) {
  if (texts_.erase(place) > 0) {
    emit changed();
  }
}

void PendingTexts::give_up_all() {
  if (!texts_.empty()) {
    texts_.clear();
    emit changed();
  }
}

std::vector<TypedAt> PendingTexts::places() const {
  std::vector<TypedAt> all;
  all.reserve(texts_.size());
  for (const auto& [place, text] : texts_) {
    all.push_back(place);
  }
  return all;
}

bool PendingTexts::any_in(std::size_t axis, PartSlot slot) const {
  return std::ranges::any_of(texts_, [&](const auto& entry) {
    const TypedAt& at = entry.first;
    return !at.answer && at.slot == slot && (of_machine(slot) || at.axis == axis);
  });
}

bool PendingTexts::any_on(std::optional<std::size_t> axis) const {
  return std::ranges::any_of(
      texts_, [&](const auto& entry) { return entry.first.axis_or_machine() == axis; });
}

TypedTexts PendingTexts::follow(const TypedMove& move, TypedTexts returning) {
  TypedTexts gone;
  TypedTexts moved;
  for (const auto& [place, text] : texts_) {
    const auto to = move ? move(place) : std::optional(place);
    to ? moved[*to] = text : gone[place] = text;
  }
  // What was typed since has come to stand there: it is the later one.
  moved.merge(returning);
  texts_ = std::move(moved);
  return gone;
}

} // namespace feedwright
