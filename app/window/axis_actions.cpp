// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/axis_actions.h"

#include "document/new_machine.h"

#include <QCoreApplication>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(AxisActions)

public:
  static QString added(const std::string& letter) {
    return tr("add axis %1").arg(QString::fromStdString(letter));
  }
  static QString copied(const std::string& from, const std::string& to) {
    return tr("copy axis %1 as %2").arg(QString::fromStdString(from), QString::fromStdString(to));
  }
  static QString removed(const std::string& letter) {
    return tr("remove axis %1").arg(QString::fromStdString(letter));
  }
};

void put_axis(MachineDocument& document, Axis axis, const QString& name) {
  Machine changed = document.machine();
  changed.axes.push_back(std::move(axis));
  document.edit(std::move(changed), name);
  document.select({document.machine().axes.size() - 1, PartSlot::targets, {}});
}

} // namespace

void add_axis(MachineDocument& document) {
  const Axis axis = new_axis(document.machine());
  put_axis(document, axis, Words::added(axis.basics.letter));
}

void copy_axis(MachineDocument& document) {
  if (const Axis* from = document.current_axis()) {
    const Axis copy = copied_axis(document.machine(), document.selection().axis);
    put_axis(document, copy, Words::copied(from->basics.letter, copy.basics.letter));
  }
}

void remove_axis(MachineDocument& document) {
  const std::size_t at = document.selection().axis;
  // A machine keeps at least one axis.
  if (document.machine().axes.size() < 2) {
    return;
  }
  Machine changed = document.machine();
  const std::string letter = changed.axes[at].basics.letter;
  changed.axes.erase(changed.axes.begin() + static_cast<std::ptrdiff_t>(at));
  document.edit(std::move(changed), Words::removed(letter));
}

} // namespace feedwright
