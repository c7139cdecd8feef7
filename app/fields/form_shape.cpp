// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/form_shape.h"

#include "text/text_of.h"

#include <QWidget>

namespace feedwright {

FormShape FormShaper::shape(const MachineDocument& document, const std::vector<PartSlot>& shown,
                            const QWidget& around) {
  const std::size_t axis = document.selection().axis;
  QString parts = QString::number(axis);
  for (const PartSlot slot : shown) {
    const auto type = part_type(document.machine(), axis, slot);
    parts += QStringLiteral("/%1:%2").arg(static_cast<int>(slot)).arg(text_of(type));
  }
  constexpr int characters = 46;
  if (around.width() < characters * around.fontMetrics().averageCharWidth()) {
    return {std::move(parts), true};
  }
  if (!measured_ || measured_->parts != parts || measured_->font != around.font()) {
    measured_ = {parts, around.font(),
                 form_widths(document.machine(), axis, shown, around.fontMetrics())};
  }
  const bool narrow = !have_room(measured_->widths, around.width());
  return {std::move(parts), narrow};
}

} // namespace feedwright
