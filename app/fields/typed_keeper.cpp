// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/typed_keeper.h"

#include "fields/entry_edit.h"

namespace feedwright {

bool TypedKeeper::holds() const {
  return edit_->holds_typed() && (!kept_ || pending_->at(place_));
}

void TypedKeeper::keep() {
  if (holds()) {
    kept_ = edit_->text();
    pending_->keep(place_, *kept_);
  }
}

bool TypedKeeper::restore() {
  const auto text = pending_->at(place_);
  if (!text || text == kept_) {
    return false;
  }
  kept_ = text;
  edit_->show_typed(*text);
  return true;
}

} // namespace feedwright
