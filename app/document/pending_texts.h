// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Texts that were typed and are not taken: those that cannot be, and answers that are still being
// written. They wait here, not in the machine and not in its file, until they are taken or given
// up.

#include "document/typed_place.h"

#include <QObject>
#include <QString>

#include <map>
#include <vector>

namespace feedwright {

using TypedTexts = std::map<TypedAt, QString>;

class PendingTexts : public QObject {
  Q_OBJECT
public:
  using QObject::QObject;

  /// The text kept for the place; nothing if there is none.
  std::optional<QString> at(const TypedAt& place) const;
  void keep(const TypedAt& place, const QString& text);
  void give_up(const TypedAt& place);
  void give_up_all();
  bool empty() const { return texts_.empty(); }

  /// Fields first, then answers.
  std::vector<TypedAt> places() const;
  /// In a field of the part; answers are written elsewhere.
  bool any_in(std::size_t axis, PartSlot slot) const;
  /// For anything of the axis, or of the machine itself.
  bool any_on(std::optional<std::size_t> axis) const;

  /// Texts go with what they were typed for. Gives those whose place is gone; `returning` are those
  /// of an earlier step that this one takes back, by their places afterwards. `changed` is left to
  /// the caller, once everything stands in its new place.
  TypedTexts follow(const TypedMove& move, TypedTexts returning);

signals:
  void changed();

private:
  TypedTexts texts_;
};

} // namespace feedwright
