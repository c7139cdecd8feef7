// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/listed_parts.h"

#include "text/words.h"

#include <QCoreApplication>
#include <QTableWidget>

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

/// The load case a material goes to: the one at hand, else the last.
std::size_t chosen_load_case(const QWidget& form) {
  const auto* table = form.findChild<QTableWidget*>(QStringLiteral("load_cases"));
  if (table == nullptr || table->rowCount() == 0) {
    return 0;
  }
  const int row = table->currentRow() >= 0 ? table->currentRow() : table->rowCount() - 1;
  return static_cast<std::size_t>(row);
}

} // namespace

void take_listed(MachineDocument& document, PartSlot slot, const ListedPart& part,
                 const QWidget& form) {
  Machine changed = document.machine();
  const std::size_t axis = document.selection().axis;
  auto& cases = changed.axes.at(axis).duty.load_cases;
  if (part.kind == ListedKind::material && cases.empty()) {
    cases.emplace_back();
  }
  if (take_part(changed, axis, slot, part, chosen_load_case(form))) {
    document.edit(std::move(changed), Words::taken(slot, part.name));
  }
}

} // namespace feedwright
