// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/part_chooser.h"

#include "fields/wheel_guard.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

PartChooser::PartChooser(MachineDocument& document, QWidget* parent)
    : QComboBox(parent), document_(document) {
  setObjectName(QStringLiteral("part_chooser"));
  setAccessibleName(tr("Part"));
  QFont larger = font();
  larger.setBold(true);
  larger.setPointSizeF(larger.pointSizeF() * 1.15);
  setFont(larger);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  new WheelGuard(this);
  connect(this, &QComboBox::activated, this, [this](int index) {
    document_.select(
        {document_.selection().axis, static_cast<PartSlot>(itemData(index).toInt()), {}});
  });
  connect(&document_.pending(), &PendingTexts::changed, this, &PartChooser::refresh);
  refresh();
}

void PartChooser::add(PartSlot slot, const QString& name, bool waits) {
  addItem(waits ? tr("%1 (typed text waits)", "part").arg(name) : name, static_cast<int>(slot));
}

void PartChooser::refresh() {
  const PendingTexts& pending = document_.pending();
  const Selection& at = document_.selection();
  clear();
  const bool machine_waits =
      std::ranges::any_of(machine_slots, [&](PartSlot slot) { return pending.any_in(0, slot); });
  add(PartSlot::supply, tr("Machine"), machine_waits);
  if (document_.current_axis() != nullptr) {
    for (const PartSlot slot : axis_slots) {
      add(slot, words::part_name(slot), pending.any_in(at.axis, slot));
    }
  }
  setCurrentIndex(findData(static_cast<int>(of_machine(at.slot) ? PartSlot::supply : at.slot)));
}

} // namespace feedwright
