// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/pending_texts.h"

#include <algorithm>

namespace feedwright {

namespace {

/// Where the axis stands afterwards; nothing if it is gone. An axis that was itself edited stays.
std::optional<std::size_t> place_after(std::size_t axis, const Machine& before,
                                       const Machine& after) {
  const auto& was = before.axes;
  const auto& is = after.axes;
  if (axis >= was.size()) {
    return std::nullopt;
  }
  if (axis < is.size() && is[axis] == was[axis]) {
    return axis;
  }
  const auto found = std::ranges::find(is, was[axis]);
  if (found != is.end()) {
    return static_cast<std::size_t>(found - is.begin());
  }
  return is.size() == was.size() ? std::optional(axis) : std::nullopt;
}

} // namespace

TypedAt TypedAt::of(std::size_t axis, PartSlot slot, std::string_view member) {
  return {of_machine(slot) ? 0 : axis, slot, std::string(member)};
}

std::string_view TypedAt::field() const {
  return std::string_view(member).substr(0, member.find('/'));
}

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
  for (const auto& [place, text] : texts_) {
    all.push_back(place);
  }
  return all;
}

bool PendingTexts::any_in(std::size_t axis, PartSlot slot) const {
  return std::ranges::any_of(texts_, [&](const auto& entry) {
    return entry.first.slot == slot && (of_machine(slot) || entry.first.axis == axis);
  });
}

bool PendingTexts::any_on(std::size_t axis) const {
  return std::ranges::any_of(texts_, [&](const auto& entry) {
    return !of_machine(entry.first.slot) && entry.first.axis == axis;
  });
}

void PendingTexts::follow(const Machine& before, const Machine& after) {
  std::map<TypedAt, QString> moved;
  for (const auto& [place, text] : texts_) {
    const auto axis =
        of_machine(place.slot) ? std::optional(place.axis) : place_after(place.axis, before, after);
    if (axis) {
      moved[{*axis, place.slot, place.member}] = text;
    }
  }
  if (moved != texts_) {
    texts_ = std::move(moved);
    emit changed();
  }
}

} // namespace feedwright
