// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/listed_parts.h"

#include "text/words.h"

#include <QCoreApplication>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Parts)

public:
  static QString taken(PartSlot slot, const std::string& name) {
    return tr("%1: %2", "part: the listed part it became")
        .arg(words::part_name(slot), QString::fromStdString(name));
  }
};

} // namespace

void take_listed(MachineDocument& document, PartSlot slot, const ListedPart& part,
                 std::size_t load_case) {
  Machine changed = document.machine();
  const std::size_t axis = document.selection().axis;
  auto& cases = changed.axes.at(axis).duty.load_cases;
  if (part.kind == ListedKind::material && cases.empty()) {
    cases.emplace_back();
  }
  if (take_part(changed, axis, slot, part, load_case)) {
    document.edit(std::move(changed), Words::taken(slot, part.name));
  }
}

} // namespace feedwright
