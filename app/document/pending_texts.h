// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Texts that were typed into fields and could not be taken. They wait here, not in the machine and
// not in its file, until they are taken or given up.

#include "machine/machine.h"

#include <QObject>
#include <QString>

#include <map>
#include <tuple>
#include <vector>

namespace feedwright {

/// Where a text was typed. The cell of a table is "member/row/column".
struct TypedAt {
  std::size_t axis = 0; ///< zero for parts of the machine
  PartSlot slot = PartSlot::drive;
  std::string member;

  /// The place in one way of saying it: machine parts belong to no axis.
  static TypedAt of(std::size_t axis, PartSlot slot, std::string_view member);
  /// The field's own member, without the cell.
  std::string_view field() const;
  friend bool operator<(const TypedAt& a, const TypedAt& b) {
    return std::tie(a.axis, a.slot, a.member) < std::tie(b.axis, b.slot, b.member);
  }
  friend bool operator==(const TypedAt&, const TypedAt&) = default;
};

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

  std::vector<TypedAt> places() const;
  bool any_in(std::size_t axis, PartSlot slot) const;
  /// In a part of the axis; parts of the machine count for none.
  bool any_on(std::size_t axis) const;

  /// Texts go with their axis when axes are added, removed or moved, and are given up with it.
  void follow(const Machine& before, const Machine& after);

signals:
  void changed();

private:
  std::map<TypedAt, QString> texts_;
};

} // namespace feedwright
