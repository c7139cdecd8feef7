// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/pending_texts.h"

namespace feedwright {

class EntryEdit;

/// What is typed into one line of typing, and the same text among the pending ones. A text that was
/// given up there no longer counts as typed here, and one that was kept there by somebody else
/// since comes to be shown here.
class TypedKeeper {
public:
  TypedKeeper(EntryEdit& edit, PendingTexts& pending, TypedAt place)
      : edit_(&edit), pending_(&pending), place_(std::move(place)) {}

  /// Whether something is typed that is not in the machine.
  bool holds() const;
  /// Puts what is typed among the pending texts.
  void keep();
  /// Shows the pending text if it is not shown yet; true if that was so.
  bool restore();
  /// The line shows a text that counts.
  void forget() { kept_.reset(); }
  void give_up() { pending_->give_up(place_); }

private:
  EntryEdit* edit_;
  PendingTexts* pending_;
  TypedAt place_;
  std::optional<QString> kept_;
};

} // namespace feedwright
